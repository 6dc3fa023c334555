// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.form;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** What a field for a file asks the system for. */
public enum FileWish {
    /** A file that is there. */
    OPEN,
    /** A name for a new file. */
    SAVE,
    /** A folder. */
    FOLDER;

    Optional<Path> ask(Window window, String title, String now) {
        File chosen = this == FOLDER ? folder(window, title, now) : file(window, title, now);
        return Optional.ofNullable(chosen).map(File::toPath);
    }

    private File file(Window window, String title, String now) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        typed(now).ifPresent(path -> {
            chooser.setInitialFileName(String.valueOf(path.getFileName()));
            parent(path).ifPresent(chooser::setInitialDirectory);
        });
        return this == SAVE ? chooser.showSaveDialog(window) : chooser.showOpenDialog(window);
    }

    private static File folder(Window window, String title, String now) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        typed(now).flatMap(FileWish::parent).ifPresent(chooser::setInitialDirectory);
        return chooser.showDialog(window);
    }

    private static Optional<File> parent(Path path) {
        return Optional.ofNullable(path.toAbsolutePath().getParent())
                .map(Path::toFile)
                .filter(File::isDirectory);
    }

    /**
     * Reads a name that was typed.
     *
     * @param text the name
     * @return the path; empty where nothing was typed, or no path is written so
     */
    public static Optional<Path> typed(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text.strip()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
