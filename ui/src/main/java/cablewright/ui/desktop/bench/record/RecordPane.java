// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.record;

import cablewright.lessons.bench.edit.RecordDifference;
import cablewright.lessons.bench.edit.RecordDifference.What;
import cablewright.lessons.bench.edit.RecordSpoiler;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorPane;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.PickField;
import cablewright.ui.desktop.bench.form.SwitchField;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The editor of the as-built record. */
public final class RecordPane extends EditorPane {

    private static final double MOST_METRES = 200_000;

    private final RecordViewModel model;
    private final ObservableValue<LengthUnit> unit;
    private final Texts texts;
    private final DifferenceWords differences;
    private final VBox items = new VBox();
    private final VBox lacking = new VBox();
    private final Map<String, ItemRow> rows = new LinkedHashMap<>();
    private final Label summary = new Label();
    private final Label lengthDifference = differenceLabel("record-length-difference");
    private final Label endDifference = differenceLabel("record-end-difference");

    /**
     * Makes the editor.
     *
     * @param document the document on the Bench
     * @param unit the unit of lengths
     * @param texts the sentences of the editors
     */
    public RecordPane(DocumentViewModel document, ObservableValue<LengthUnit> unit, Texts texts) {
        this(document, unit, texts, new SplittableRandom()::nextLong);
    }

    /**
     * Makes the editor with chance of its own.
     *
     * @param document the document on the Bench
     * @param unit the unit of lengths
     * @param texts the sentences of the editors
     * @param chance decides which item is spoilt, and how far
     */
    public RecordPane(DocumentViewModel document, ObservableValue<LengthUnit> unit, Texts texts, LongSupplier chance) {
        super("record-editor", texts.say("record.name"));
        this.texts = texts;
        this.differences = new DifferenceWords(texts);
        this.unit = unit;
        this.model = new RecordViewModel(document, texts, chance);
        summary.setId("record-summary");
        summary.setWrapText(true);
        summary.setMinHeight(Region.USE_PREF_SIZE);
        items.getStyleClass().add("item-rows");
        lacking.getStyleClass().add("item-rows");
        add(tools(), summary, items, lacking, line());
        document.documentProperty().addListener((o, before, now) -> show());
        unit.addListener((o, before, now) -> tell());
        // A row that is written in keeps its place until it is left.
        items.focusWithinProperty().addListener((o, before, now) -> show());
        show();
    }

    private Words words() {
        return Words.in(unit.getValue(), texts.locale());
    }

    private static Label differenceLabel(String id) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add("difference");
        return label;
    }

    private FlowPane tools() {
        Button make = new Button(texts.say("record.make"));
        make.setId("record-make");
        make.setAccessibleText(texts.say("record.make.name"));
        make.setOnAction(event -> model.makeFromCable());
        MenuButton spoil = new MenuButton(texts.say("record.spoil"));
        spoil.setId("record-spoil");
        spoil.setAccessibleText(texts.say("record.spoil.name"));
        for (RecordSpoiler way : RecordSpoiler.values()) {
            String word = way.name().toLowerCase(Locale.ROOT).replace('_', '-');
            MenuItem item = new MenuItem(texts.say("record.spoil." + word));
            item.setId("record-spoil-" + word);
            item.setOnAction(event -> model.spoil(way));
            spoil.getItems().add(item);
            spoil.setOnShowing(event -> disable(spoil));
        }
        MenuButton add = new MenuButton(texts.say("record.add"));
        add.setId("record-add");
        add.setAccessibleText(texts.say("record.add.name"));
        for (EventKind kind : ItemRow.drawable()) {
            MenuItem item = new MenuItem(words().kind(kind));
            item.setId("record-add-" + kind.id());
            item.setOnAction(event -> model.add(kind).map(rows::get).ifPresent(ItemRow::start));
            add.getItems().add(item);
        }
        FlowPane tools = new FlowPane(make, spoil, add);
        tools.getStyleClass().add("editor-tools");
        return tools;
    }

    private void disable(MenuButton spoil) {
        for (int i = 0; i < RecordSpoiler.values().length; i++) {
            spoil.getItems().get(i).setDisable(!model.canSpoil(RecordSpoiler.values()[i]));
        }
    }

    /** What the drawings say of the whole line. */
    private VBox line() {
        TypedField length = new TypedField("record-length", texts.say("record.length"), lengthModel())
                .narrow(8)
                .unit(unit.getValue().symbol())
                .whenEmpty(texts.say("record.length.none"));
        unit.addListener((o, before, now) -> length.unit(now.symbol()));
        PickField<RecordedEnd.Kind> end = new PickField<>(
                "record-end",
                texts.say("record.end"),
                model.document(),
                now -> List.of(RecordedEnd.Kind.values()),
                now -> now.record().farEnd().kind(),
                model::end,
                kind -> words().recordedEnd(new RecordedEnd(kind, "-")));
        HBox.setHgrow(end, Priority.ALWAYS);
        HBox both = new HBox(length, end);
        both.setAlignment(Pos.TOP_LEFT);
        both.getStyleClass().add("item-head");
        VBox line = new VBox(
                both,
                lengthDifference,
                endDifference,
                new TypedField(
                        "record-end-label",
                        texts.say("record.end.label"),
                        new FieldViewModel(
                                model.document(), now -> now.record().farEnd().label(), model::endLabel)),
                new TypedField(
                        "record-note",
                        texts.say("record.note"),
                        new FieldViewModel(model.document(), now -> now.record().note(), model::note)),
                new SwitchField(
                        "record-may-lie",
                        texts.say("record.warn"),
                        model.document(),
                        now -> now.record().mayLie(),
                        model::warn));
        line.getStyleClass().add("section-fields");
        return line;
    }

    private FieldViewModel lengthModel() {
        return new FieldViewModel(
                        model.document(),
                        now -> now.record().lengthMetres().isPresent()
                                ? entry().show(now.record().lengthMetres().getAsDouble())
                                : "",
                        typed -> typed.isBlank()
                                ? model.length(OptionalDouble.empty())
                                : entry().take(typed, texts, metres -> model.length(OptionalDouble.of(metres))))
                .following(unit);
    }

    private NumberEntry entry() {
        LengthUnit shown = unit.getValue();
        return new NumberEntry(shown.symbol(), shown.toMetres(1), 0, MOST_METRES, false, 2);
    }

    private void show() {
        List<String> ids = model.record().items().stream().map(RecordedItem::id).toList();
        boolean sameItems = rows.size() == ids.size() && rows.keySet().containsAll(ids);
        boolean waits = sameItems && items.isFocusWithin();
        if (!waits && !List.copyOf(rows.keySet()).equals(ids)) {
            Map<String, ItemRow> kept = new LinkedHashMap<>(rows);
            rows.clear();
            ids.forEach(
                    id -> rows.put(id, kept.computeIfAbsent(id, it -> new ItemRow(it, model, unit, words(), texts))));
            items.getChildren().setAll(rows.values());
        }
        tell();
    }

    private void tell() {
        List<RecordDifference> all = model.differencesProperty().get();
        String count = all.isEmpty()
                ? texts.say("record.agrees")
                : texts.say(all.size() == 1 ? "record.differs.one" : "record.differs", all.size());
        boolean unwarned = !all.isEmpty() && !model.record().mayLie();
        summary.setText(unwarned ? count + " " + texts.say("record.unwarned") : count);
        rows.forEach((id, row) -> row.tell(of(all, id)));
        show(lengthDifference, all, What.LENGTH);
        show(endDifference, all, What.END);
        List<Node> notDrawn = new ArrayList<>();
        for (RecordDifference one : all) {
            if (one.what() == What.NOT_DRAWN) {
                notDrawn.add(notDrawn(one));
            }
        }
        lacking.getChildren().setAll(notDrawn);
    }

    private String sentence(RecordDifference difference) {
        return "≠ " + differences.tell(difference, model.document().now().cable(), words());
    }

    private String of(List<RecordDifference> all, String id) {
        return all.stream()
                .filter(one -> one.subject().equals(id))
                .map(this::sentence)
                .collect(Collectors.joining(" "));
    }

    private void show(Label label, List<RecordDifference> all, What what) {
        String text = all.stream()
                .filter(one -> one.what() == what)
                .map(this::sentence)
                .collect(Collectors.joining(" "));
        label.setText(text);
        label.setVisible(!text.isEmpty());
        label.setManaged(!text.isEmpty());
    }

    private Node notDrawn(RecordDifference difference) {
        Label label = differenceLabel("not-drawn-" + difference.subject());
        label.setText(sentence(difference));
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(label);
        row.getStyleClass().addAll("item-head", "item-row");
        row.setAlignment(Pos.CENTER_LEFT);
        if (!difference.subject().isEmpty()) {
            Button draw = new Button(texts.say("record.draw"));
            draw.setId("record-draw-" + difference.subject());
            draw.setMinWidth(Region.USE_PREF_SIZE);
            draw.setAccessibleText(texts.say("record.draw.name", difference.subject()));
            draw.setOnAction(event -> model.draw(difference.subject()));
            row.getChildren().add(draw);
        }
        return row;
    }
}
