// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.model.FilesViewModel;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks in which file to save, where one must be named. */
final class FileDialogs {

    private final FilesViewModel files;
    private final Texts texts;
    private final Supplier<Window> window;

    FileDialogs(FilesViewModel files, Texts texts, Supplier<Window> window) {
        this.files = files;
        this.texts = texts;
        this.window = window;
    }

    /** Saves where the document came from, or asks where. */
    void save() {
        if (!files.save()) {
            saveAs();
        }
    }

    /** Asks where, and saves there. */
    void saveAs() {
        if (files.originProperty().get().isNewer()) {
            files.tellReadOnly();
            return;
        }
        ask("dialog.saveAs", files::saveAs);
    }

    /** Asks where, saves there, and then does something. */
    void saveAsThen(Runnable then) {
        ask("dialog.saveAs", file -> files.saveAs(file, then));
    }

    /** Asks where, and saves a copy of the cable there. */
    void saveCable() {
        ask("dialog.saveCable", files::saveCable);
    }

    /** Asks which, and opens it. */
    void open() {
        FileChooser chooser = chooser("dialog.open");
        Optional.ofNullable(chooser.showOpenDialog(window.get()))
                .map(File::toPath)
                .ifPresent(files::open);
    }

    private void ask(String title, Consumer<Path> chosen) {
        FileChooser chooser = chooser(title);
        chooser.setInitialFileName(files.suggestedName());
        Optional.ofNullable(chooser.showSaveDialog(window.get()))
                .map(File::toPath)
                .map(FileDialogs::withEnding)
                .ifPresent(chosen);
    }

    private static Path withEnding(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.contains(".") ? file : file.resolveSibling(name + ".json");
    }

    private FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say(title));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(texts.say("dialog.files"), "*.json"));
        files.originProperty()
                .get()
                .file()
                .map(Path::toAbsolutePath)
                .map(Path::getParent)
                .map(Path::toFile)
                .filter(File::isDirectory)
                .ifPresent(chooser::setInitialDirectory);
        return chooser;
    }
}
