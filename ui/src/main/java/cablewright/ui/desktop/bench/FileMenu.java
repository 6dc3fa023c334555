// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.FilesViewModel;
import java.nio.file.Path;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;

/** What can be done with documents and files. */
final class FileMenu extends MenuButton {

    private final BenchViewModel model;
    private final Texts texts;
    private final Menu recent;
    private final Menu asides;

    FileMenu(BenchViewModel model, FileDialogs dialogs) {
        this.model = model;
        this.texts = model.texts();
        setText(texts.say("menu.file"));
        setId("bench-file");
        getStyleClass().add("flat");
        setAccessibleText(texts.say("menu.file.name"));
        recent = new Menu(texts.say("menu.recent"));
        recent.setId("menu-recent");
        asides = new Menu(texts.say("menu.aside"));
        asides.setId("menu-aside");
        getItems()
                .addAll(
                        templates(),
                        item("menu.random", "", () -> new RandomSheet(model, this).open()),
                        item("menu.open", "Shortcut+O", dialogs::open),
                        recent,
                        asides,
                        new SeparatorMenuItem(),
                        item("menu.save", "Shortcut+S", dialogs::save),
                        item("menu.saveAs", "Shortcut+Shift+S", dialogs::saveAs),
                        item("menu.saveCable", "", dialogs::saveCable),
                        new SeparatorMenuItem(),
                        item("menu.changes", "", model.files()::tellChanges),
                        item("menu.duplicate", "", this::duplicate),
                        item("menu.fromThis", "", model.files()::startFromThis));
        setOnShowing(event -> {
            showRecent();
            showAsides();
        });
        showRecent();
        showAsides();
    }

    private Menu templates() {
        Menu menu = new Menu(texts.say("menu.new"));
        menu.setId("menu-new");
        for (BenchTemplate template : BenchTemplate.values()) {
            MenuItem item = new MenuItem(texts.say("template." + template.word()));
            item.setId("template-" + template.word());
            item.setOnAction(event -> model.files().start(template));
            menu.getItems().add(item);
        }
        return menu;
    }

    /** Keys are shown here and acted on by the Bench, so that they work while the menu was never opened. */
    private MenuItem item(String key, String keys, Runnable action) {
        MenuItem item = new MenuItem(texts.say(key));
        item.setId(key.replace('.', '-'));
        if (!keys.isEmpty()) {
            item.setAccelerator(KeyCombination.keyCombination(keys));
        }
        item.setOnAction(event -> action.run());
        return item;
    }

    private void duplicate() {
        Exercise exercise = model.document().now().exercise();
        model.duplicateExercise(texts.say("copyOf", exercise.title()));
    }

    private void showAsides() {
        asides.getItems().clear();
        for (FilesViewModel.Aside aside : model.files().asides()) {
            MenuItem item = new MenuItem(aside.title());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.files().bringBack(aside));
            asides.getItems().add(item);
        }
        asides.setVisible(!asides.getItems().isEmpty());
    }

    private void showRecent() {
        recent.getItems().clear();
        for (Path file : model.files().recent().files()) {
            MenuItem item = new MenuItem(file.toString());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.files().open(file));
            recent.getItems().add(item);
        }
        recent.setDisable(recent.getItems().isEmpty());
    }
}
