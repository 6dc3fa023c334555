// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.Comparison;
import cablewright.ui.desktop.bench.model.FilesViewModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** The bar of the Bench: files, undo and redo with the name of what they do, which exercise, what is not saved, compare. */
final class BenchBar extends HBox {

    private static final double LETTERS_FOR_NAMES = 82;

    private final BenchViewModel model;
    private final Texts texts;
    private final MenuButton exercises = new MenuButton();
    private final Label state = new Label();

    BenchBar(BenchViewModel model, FileDialogs files) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().add("bench-bar");
        setAlignment(Pos.CENTER_LEFT);
        DocumentViewModel document = model.document();
        exercises.setId("bench-exercises");
        exercises.getStyleClass().add("flat");
        state.setId("bench-state");
        state.getStyleClass().add("quiet");
        HBox.setHgrow(state, Priority.ALWAYS);
        state.setMaxWidth(Double.MAX_VALUE);
        getChildren()
                .addAll(
                        new FileMenu(model, files),
                        history("undo", Feather.CORNER_UP_LEFT, document.undoNameProperty(), document::undo),
                        history("redo", Feather.CORNER_UP_RIGHT, document.redoNameProperty(), document::redo),
                        exercises,
                        state,
                        comparison());
        document.documentProperty().addListener(changed -> showDocument());
        model.files().originProperty().addListener(changed -> showDocument());
        model.files().unsavedProperty().addListener(changed -> showDocument());
        showDocument();
    }

    /** Makes the switch that gives the editors more of the page than the tracks. */
    ToggleButton writing() {
        ToggleButton write = new ToggleButton(texts.say("bar.write"), new FontIcon(Feather.EDIT_3));
        write.setId("bench-write");
        write.getStyleClass().addAll("small-button", "switch");
        write.setMinWidth(Region.USE_PREF_SIZE);
        write.setAccessibleText(texts.say("bar.write.name"));
        write.setTooltip(new Tooltip(texts.say("bar.write.name")));
        return write;
    }

    private Button history(String id, Feather icon, ObservableValue<Optional<String>> name, Runnable action) {
        Button button = new Button("", new FontIcon(icon));
        button.setId("bench-" + id);
        button.getStyleClass().addAll("flat", "small-button");
        button.setMinWidth(Region.USE_PREF_SIZE);
        // Where there is little room the tooltip alone names the step.
        button.contentDisplayProperty()
                .bind(widthProperty()
                        .map(room -> room.doubleValue()
                                        > LETTERS_FOR_NAMES * state.getFont().getSize()
                                ? ContentDisplay.LEFT
                                : ContentDisplay.GRAPHIC_ONLY));
        button.setOnAction(event -> action.run());
        Tooltip tip = new Tooltip();
        button.setTooltip(tip);
        Runnable show = () -> {
            Optional<String> what = name.getValue();
            button.setDisable(what.isEmpty());
            button.setText(what.orElse(""));
            String said = texts.say("bar." + id, what.orElse(""));
            button.setAccessibleText(said);
            tip.setText(said);
        };
        name.addListener((o, before, now) -> show.run());
        show.run();
        return button;
    }

    private void showDocument() {
        List<Exercise> all = model.document().now().lesson().exercises();
        int index = model.document().now().index();
        String title = all.get(index).title();
        exercises.setText(all.size() == 1 ? title : texts.say("bar.exercise", index + 1, all.size(), title));
        exercises.setAccessibleText(texts.say("bar.exercises", index + 1, all.size(), title));
        ToggleGroup group = new ToggleGroup();
        exercises.getItems().clear();
        for (int i = 0; i < all.size(); i++) {
            int one = i;
            RadioMenuItem item =
                    new RadioMenuItem(texts.say("bar.choose", i + 1, all.get(i).title()));
            item.setToggleGroup(group);
            item.setSelected(i == index);
            item.setOnAction(event -> model.select(one));
            exercises.getItems().add(item);
        }
        state.setText(state());
    }

    private String state() {
        FilesViewModel.Origin origin = model.files().originProperty().get();
        String file = origin.file().map(Path::getFileName).map(String::valueOf).orElse(texts.say("state.noFile"));
        if (origin.isNewer()) {
            return texts.say("state.readOnly", file);
        }
        return texts.say(model.files().unsavedProperty().get() ? "state.unsaved" : "state.saved", file);
    }

    private MenuButton comparison() {
        MenuButton button = new MenuButton();
        button.setId("bench-compare");
        button.getStyleClass().add("flat");
        button.setMinWidth(Region.USE_PREF_SIZE);
        ToggleGroup group = new ToggleGroup();
        for (Comparison one : Comparison.values()) {
            RadioMenuItem item = new RadioMenuItem(texts.say(key(one)));
            item.setToggleGroup(group);
            item.setUserData(one);
            item.setOnAction(event -> model.comparisonProperty().set(one));
            button.getItems().add(item);
        }
        Runnable show = () -> {
            Comparison now = model.comparisonProperty().get();
            button.setText(texts.say(key(now)));
            button.setAccessibleText(texts.say("compare.name", texts.say(key(now))));
            group.getToggles().forEach(item -> item.setSelected(item.getUserData() == now));
        };
        model.comparisonProperty().addListener(changed -> show.run());
        show.run();
        return button;
    }

    private static String key(Comparison one) {
        return "compare." + one.name().toLowerCase(Locale.ROOT);
    }
}
