// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.IndexedRows;
import cablewright.ui.desktop.bench.form.MarkdownField;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.Order;
import cablewright.ui.desktop.bench.form.RowButtons;
import cablewright.ui.desktop.bench.form.TypedField;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Hints in the order in which they are given, each with what it costs. */
final class HintsSection extends VBox {

    private static final int MOST_HINTS = 10;
    private static final double USUAL_COST_MARKS = 2;
    private static final NumberEntry COST = NumberEntry.between("", 1, 0, 100, 2);

    private final ExerciseEditorViewModel model;
    private final Texts texts;

    HintsSection(ExerciseEditorViewModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().add("section-fields");
        Button add = new Button(texts.say("hint.add"));
        add.setId("hint-add");
        add.setAccessibleText(texts.say("hint.add.name"));
        add.setOnAction(event -> add());
        model.document()
                .documentProperty()
                .addListener((o, before, now) ->
                        add.setDisable(now.exercise().hints().size() >= MOST_HINTS));
        getChildren()
                .addAll(
                        new IndexedRows(
                                model.document(), now -> now.exercise().hints().size(), this::row),
                        add);
    }

    private void add() {
        Hint hint = new Hint(texts.say("hint.first"), USUAL_COST_MARKS);
        edit(texts.say("hint.step.add"), hints -> Order.with(hints, hint));
    }

    private void edit(String name, UnaryOperator<List<Hint>> edit) {
        model.step(name, it -> ExerciseEdits.withHints(it, edit.apply(it.hints())));
    }

    private Optional<String> type(int index, String field, UnaryOperator<Hint> edit) {
        return model.type(
                texts.say("hint.step.write"),
                "hint/" + field + "/" + index,
                it -> ExerciseEdits.withHints(
                        it,
                        Order.replaced(it.hints(), index, edit.apply(it.hints().get(index)))));
    }

    private Optional<Hint> hint(BenchDocument now, int index) {
        List<Hint> hints = now.exercise().hints();
        return index < hints.size() ? Optional.of(hints.get(index)) : Optional.empty();
    }

    private Node row(int index) {
        int number = index + 1;
        TypedField cost = new TypedField(
                        "hint-cost-" + number,
                        texts.say("hint.cost", number),
                        new FieldViewModel(
                                model.document(),
                                now -> hint(now, index)
                                        .map(it -> COST.show(it.costMarks()))
                                        .orElse(""),
                                typed -> COST.take(
                                        typed, texts, marks -> type(index, "cost", it -> new Hint(it.text(), marks)))))
                .narrow(5)
                .unit(texts.say("hint.marks"));
        HBox.setHgrow(cost, Priority.ALWAYS);
        HBox head = new HBox(
                cost,
                new RowButtons(
                        "hint",
                        "hint",
                        number,
                        texts,
                        by -> edit(texts.say("hint.step.move"), hints -> Order.moved(hints, index, by)),
                        () -> edit(texts.say("hint.step.remove"), hints -> Order.without(hints, index))));
        head.setAlignment(Pos.TOP_LEFT);
        MarkdownField text = new MarkdownField(
                "hint-text-" + number,
                texts.say("hint.text", number),
                new FieldViewModel(
                        model.document(),
                        now -> hint(now, index).map(Hint::text).orElse(""),
                        typed -> type(index, "text", it -> new Hint(typed, it.costMarks()))),
                texts);
        VBox row = new VBox(head, cost.problem(), text);
        row.getStyleClass().add("item-row");
        return row;
    }
}
