// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.drawing.lattice.Lattice;
import cablewright.ui.drawing.lattice.LatticeSheet;
import cablewright.ui.drawing.lattice.LatticeText;
import cablewright.ui.drawing.pen.PictureFormat;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** A file for a lattice diagram; its name says in which format. */
public final class LatticeFile {

    private static final int COLUMNS = 110;
    private static final int LINES = 36;

    private final RootCommand root;
    private final Output output;
    private final Optional<PictureFormat> picture;

    /** Refuses, before any work is done, a name of another format or a file that could not be written. */
    public LatticeFile(RootCommand root, Path file, Path read) {
        this.root = root;
        this.picture = format(file);
        this.output = new Output(root.surroundings(), Optional.of(file)).notOver(read);
    }

    private static Optional<PictureFormat> format(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        for (PictureFormat format : PictureFormat.values()) {
            if (name.endsWith("." + format.name().toLowerCase(Locale.ROOT))) {
                return Optional.of(format);
            }
        }
        if (!name.endsWith(".txt")) {
            throw InputProblem.of("explain.latticeName", file);
        }
        return Optional.empty();
    }

    public void write(Lattice lattice) {
        output.write(picture.map(format -> new LatticeSheet(lattice).bytes(format))
                .orElseGet(() -> text(lattice).getBytes(StandardCharsets.UTF_8)));
    }

    private String text(Lattice lattice) {
        String drawn = new LatticeText(lattice, COLUMNS, LINES).draw();
        return root.surroundings().style().plain(lattice.title() + "\n" + lattice.caption() + "\n\n" + drawn);
    }
}
