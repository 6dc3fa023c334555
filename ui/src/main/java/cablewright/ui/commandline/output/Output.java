// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.file.FileFault;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.InputProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where a command's data go: a file, which is there whole or not at all, or standard output. */
public final class Output {

    private final Environment surroundings;
    private final Optional<Path> file;

    /**
     * Chooses where data go.
     *
     * @param surroundings where the program runs
     * @param file the file; empty, or "-", for standard output
     */
    public Output(Environment surroundings, Optional<Path> file) {
        this.surroundings = surroundings;
        this.file = file.filter(path -> !path.toString().equals("-")).map(surroundings.folder()::resolve);
    }

    public boolean isFile() {
        return file.isPresent();
    }

    /** Refuses, before any work is done, a file that could not be written or that is one of those that were read. */
    public Output notOver(Path read) {
        if (file.isPresent() && Files.exists(file.get()) && Files.exists(read)) {
            try {
                if (Files.isSameFile(file.get(), read)) {
                    throw InputProblem.of("output.same", file.get());
                }
            } catch (IOException e) {
                throw new InputProblem(FileFault.writing(file.get(), e));
            }
        }
        return checked();
    }

    /** Refuses, before any work is done, a file that could not be written. */
    public Output checked() {
        if (file.isPresent()) {
            Path folder = folderOf(file.get());
            if (Files.isDirectory(file.get())) {
                throw InputProblem.of("output.folder", file.get());
            }
            if (!Files.isDirectory(folder)) {
                throw InputProblem.of("output.noFolder", file.get(), folder);
            }
        }
        return this;
    }

    public void write(byte[] bytes) {
        write(out -> out.write(bytes));
    }

    /** Writes data that need not fit into memory; only faults of where they go are said to be such. */
    public void write(AtomicSave.Contents contents) {
        if (file.isEmpty()) {
            surroundings.writeOut(contents);
            return;
        }
        try {
            AtomicSave.save(file.get(), contents);
        } catch (IOException e) {
            throw new InputProblem(FileFault.writing(file.get(), e));
        }
    }

    private static Path folderOf(Path target) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null) {
            throw new UncheckedIOException(new IOException(target + " is not a file"));
        }
        return folder;
    }
}
