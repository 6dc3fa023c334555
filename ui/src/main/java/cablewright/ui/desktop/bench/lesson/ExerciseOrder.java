// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.IconButton;
import cablewright.ui.desktop.bench.form.TypedField;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;

/** The exercises in their order; the one that is selected is the one that is worked on. */
final class ExerciseOrder extends VBox {

    private static final double ROW_LETTERS = 2.85;
    private static final int MOST_ROWS = 8;

    private final LessonEditorViewModel model;
    private final Texts texts;
    private final ListView<String> list = new ListView<>();
    private final IntegerProperty rows = new SimpleIntegerProperty(1);
    private final Label letter = new Label();
    private boolean showing;

    ExerciseOrder(LessonEditorViewModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().add("section-fields");
        list.setId("lesson-exercises");
        list.setAccessibleText(texts.say("lesson.exercises.name"));
        list.setCellFactory(view -> new Row());
        list.getStyleClass().add("exercise-list");
        list.getSelectionModel().selectedIndexProperty().addListener((o, before, now) -> {
            if (!showing && now.intValue() >= 0) {
                model.select(now.intValue());
            }
        });
        // As high as its rows, in letters of whatever size the window has.
        list.prefHeightProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> ROW_LETTERS * letter.getFont().getSize() * (rows.get() + 0.2),
                        letter.fontProperty(),
                        rows));
        list.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        letter.setManaged(false);
        letter.setVisible(false);
        getChildren().addAll(list, tools(), exerciseId(), letter);
        model.document().documentProperty().addListener((o, before, now) -> show(now));
        show(model.document().now());
    }

    /** Wraps nothing: a long title is cut with dots and read in full. */
    private static final class Row extends ListCell<String> {
        @Override
        protected void updateItem(String item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty ? "" : item);
            setAccessibleText(empty ? "" : item);
        }
    }

    private void show(BenchDocument now) {
        showing = true;
        List<Exercise> all = now.lesson().exercises();
        List<String> titles = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            titles.add(texts.say("lesson.exercise", i + 1, all.get(i).title()));
        }
        if (!list.getItems().equals(titles)) {
            list.getItems().setAll(titles);
        }
        list.getSelectionModel().select(now.index());
        rows.set(Math.min(MOST_ROWS, all.size()));
        showing = false;
    }

    /** Alt and an arrow move the exercise, Delete takes it away. */
    private void pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        if (event.isAltDown() && (code == KeyCode.UP || code == KeyCode.DOWN)) {
            model.move(code == KeyCode.UP ? -1 : 1);
            event.consume();
        } else if (code == KeyCode.DELETE) {
            model.remove();
            event.consume();
        }
    }

    private FlowPane tools() {
        MenuButton add = new MenuButton(texts.say("lesson.add"));
        add.setId("lesson-add");
        add.setAccessibleText(texts.say("lesson.add.name"));
        for (BenchTemplate template : BenchTemplate.values()) {
            String word = template.name().toLowerCase(Locale.ROOT).replace('_', '-');
            MenuItem item =
                    new MenuItem(template.document(texts.locale()).exercise().title());
            item.setId("lesson-add-" + word);
            item.setOnAction(event -> model.add(template));
            add.getItems().add(item);
        }
        FlowPane tools = new FlowPane(
                button("up", Feather.ARROW_UP, () -> model.move(-1)),
                button("down", Feather.ARROW_DOWN, () -> model.move(1)),
                button("duplicate", Feather.COPY, model::duplicate),
                button("remove", Feather.TRASH_2, model::remove),
                add);
        tools.getStyleClass().add("editor-tools");
        return tools;
    }

    private IconButton button(String name, Feather icon, Runnable action) {
        return new IconButton("lesson-" + name, icon, texts.say("lesson." + name), action);
    }

    private TypedField exerciseId() {
        return new TypedField(
                "lesson-exercise-id",
                texts.say("lesson.exercise.id"),
                new FieldViewModel(model.document(), now -> now.exercise().id(), model::exerciseId));
    }
}
