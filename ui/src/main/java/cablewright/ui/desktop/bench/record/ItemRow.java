// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.record;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.IconButton;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.PickField;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;

/** One item of the drawings: where, what, in which words, and in what the cable differs. */
final class ItemRow extends VBox {

    private static final double MOST_METRES = 200_000;
    private static final int COLUMNS = 6;

    private final String itemId;
    private final RecordViewModel model;
    private final Label difference = new Label();
    private final TypedField place;

    ItemRow(String itemId, RecordViewModel model, ObservableValue<LengthUnit> unit, Words words, Texts texts) {
        this.itemId = itemId;
        this.model = model;
        getStyleClass().add("item-row");
        place = new TypedField("item-place-" + itemId, texts.say("record.item.place", itemId), placeModel(unit, texts))
                .narrow(COLUMNS)
                .unit(unit.getValue().symbol())
                .unnamed();
        unit.addListener((o, before, now) -> place.unit(now.symbol()));
        PickField<EventKind> kind = new PickField<>(
                        "item-kind-" + itemId,
                        texts.say("record.item.kind", itemId),
                        model.document(),
                        now -> kinds(),
                        now -> item(now).map(RecordedItem::kind).orElse(EventKind.SPLICE),
                        chosen -> model.kind(itemId, chosen),
                        words::kind)
                .unnamed();
        HBox.setHgrow(kind, Priority.ALWAYS);
        HBox head = new HBox(
                place,
                kind,
                new IconButton(
                        "item-remove-" + itemId,
                        Feather.TRASH_2,
                        texts.say("record.item.remove", itemId),
                        () -> model.remove(itemId)));
        head.setAlignment(Pos.TOP_LEFT);
        head.getStyleClass().add("item-head");
        TypedField label = new TypedField(
                        "item-label-" + itemId,
                        texts.say("record.item.label", itemId),
                        new FieldViewModel(
                                model.document(),
                                now -> item(now).map(RecordedItem::label).orElse(""),
                                typed -> model.label(itemId, typed)))
                .unnamed();
        difference.setId("item-difference-" + itemId);
        difference.setWrapText(true);
        difference.setMinHeight(Region.USE_PREF_SIZE);
        difference.getStyleClass().add("difference");
        getChildren().addAll(head, place.problem(), label, difference);
    }

    private FieldViewModel placeModel(ObservableValue<LengthUnit> unit, Texts texts) {
        return new FieldViewModel(
                        model.document(),
                        now -> item(now)
                                .map(it -> entry(unit.getValue()).show(it.positionMetres()))
                                .orElse(""),
                        typed -> entry(unit.getValue()).take(typed, texts, metres -> model.place(itemId, metres)))
                .following(unit);
    }

    private static NumberEntry entry(LengthUnit unit) {
        return NumberEntry.between(unit.symbol(), unit.toMetres(1), 0, MOST_METRES, 2);
    }

    private Optional<RecordedItem> item(BenchDocument now) {
        return now.record().items().stream()
                .filter(item -> item.id().equals(itemId))
                .findFirst();
    }

    /** What can be drawn: hardware, and what is drawn already. */
    private List<EventKind> kinds() {
        List<EventKind> kinds = new ArrayList<>(drawable());
        item(model.document().now())
                .map(RecordedItem::kind)
                .filter(kind -> !kinds.contains(kind))
                .ifPresent(kinds::add);
        return kinds;
    }

    /** Hardware that drawings show. */
    static List<EventKind> drawable() {
        return Arrays.stream(EventKind.values())
                .filter(kind -> kind.nature() == Nature.HARDWARE && kind != EventKind.ELEMENT)
                .toList();
    }

    /** Says in what the cable differs; nothing where it does not. */
    void tell(String sentence) {
        difference.setText(sentence);
        difference.setVisible(!sentence.isEmpty());
        difference.setManaged(!sentence.isEmpty());
    }

    /** Puts the focus on its distance. */
    void start() {
        place.start();
    }
}
