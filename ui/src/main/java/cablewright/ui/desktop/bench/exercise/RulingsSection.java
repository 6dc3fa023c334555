// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.PartMarks;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.PickField;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** How the instructor wants single events marked: verdict, tolerance, accepted kinds and the marks of the parts. */
final class RulingsSection extends VBox {

    private static final double MOST_TOLERANCE_METRES = 10_000;
    private static final double MOST_MARKS = 100;

    private final ExerciseEditorViewModel model;
    private final ObservableValue<LengthUnit> unit;
    private final Texts texts;
    private List<Event> listed = List.of();

    RulingsSection(ExerciseEditorViewModel model, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.unit = unit;
        this.texts = model.texts();
        getStyleClass().add("section-fields");
        model.document().documentProperty().addListener((o, before, now) -> list());
        unit.addListener((o, before, now) -> {
            listed = List.of();
            list();
        });
        list();
    }

    private Words words() {
        return Words.in(unit.getValue(), texts.locale());
    }

    /** Rows are made anew only where the events differ, so that a field that is typed in stays. */
    private void list() {
        List<Event> now = model.exercise().cable().events();
        if (now.equals(listed) && !getChildren().isEmpty()) {
            return;
        }
        listed = now;
        getChildren().clear();
        Label summary = new Label(texts.say(now.isEmpty() ? "ruling.none" : "ruling.summary"));
        summary.setWrapText(true);
        summary.getStyleClass().add("quiet");
        getChildren().add(summary);
        now.forEach(event -> getChildren().add(row(event)));
    }

    private VBox row(Event event) {
        Label title = new Label(texts.say(
                "asked.title", words().kind(event.kind()), words().quantities().length(event.startMetres())));
        title.getStyleClass().add("finding-title");
        FlowPane fields = new FlowPane(
                verdict(event.id()),
                tolerance(event.id()),
                marks(
                        event.id(),
                        "place",
                        PartMarks::placeMarks,
                        (it, value) -> new PartMarks(value, it.kindMarks(), it.verdictMarks())),
                marks(
                        event.id(),
                        "kind",
                        PartMarks::kindMarks,
                        (it, value) -> new PartMarks(it.placeMarks(), value, it.verdictMarks())),
                marks(
                        event.id(),
                        "verdictMarks",
                        PartMarks::verdictMarks,
                        (it, value) -> new PartMarks(it.placeMarks(), it.kindMarks(), value)),
                kinds(event.id()));
        fields.getStyleClass().add("field-flow");
        VBox row = new VBox(title, fields);
        row.getStyleClass().add("item-row");
        return row;
    }

    private EventRuling ruling(String eventId) {
        return model.exercise().ruling(eventId).orElse(EventRuling.usual(eventId));
    }

    private Optional<String> step(String eventId, UnaryOperator<EventRuling> edit) {
        return model.step(
                texts.say("exercise.step.ruling"),
                it -> ExerciseEdits.withRuling(it, edit.apply(it.ruling(eventId).orElse(EventRuling.usual(eventId)))));
    }

    private Optional<String> type(String eventId, String field, UnaryOperator<EventRuling> edit) {
        return model.type(
                texts.say("exercise.step.ruling"),
                "ruling/" + eventId + "/" + field,
                it -> ExerciseEdits.withRuling(it, edit.apply(it.ruling(eventId).orElse(EventRuling.usual(eventId)))));
    }

    private PickField<Optional<Verdict>> verdict(String eventId) {
        return new PickField<>(
                "ruling-verdict-" + eventId,
                texts.say("ruling.verdict"),
                model.document(),
                now -> List.of(Optional.empty(), Optional.of(Verdict.BELONGS), Optional.of(Verdict.DAMAGE)),
                now -> ruling(eventId).verdict(),
                chosen -> step(
                        eventId,
                        it -> new EventRuling(
                                it.eventId(), chosen, it.toleranceMetres(), it.acceptedKinds(), it.marks())),
                chosen -> chosen.map(words()::verdict).orElse(texts.say("ruling.usual")));
    }

    private TypedField tolerance(String eventId) {
        LengthUnit shown = unit.getValue();
        NumberEntry entry = new NumberEntry(shown.symbol(), shown.toMetres(1), 0, MOST_TOLERANCE_METRES, false, 2);
        FieldViewModel field = new FieldViewModel(
                model.document(),
                now -> ruling(eventId).toleranceMetres().isPresent()
                        ? entry.show(ruling(eventId).toleranceMetres().getAsDouble())
                        : "",
                typed -> typed.isBlank()
                        ? setTolerance(eventId, OptionalDouble.empty())
                        : entry.take(typed, texts, metres -> setTolerance(eventId, OptionalDouble.of(metres))));
        return new TypedField("ruling-tolerance-" + eventId, texts.say("ruling.tolerance"), field)
                .narrow(6)
                .whenEmpty(texts.say("ruling.usual"))
                .unit(shown.symbol());
    }

    private Optional<String> setTolerance(String eventId, OptionalDouble metres) {
        return type(
                eventId,
                "tolerance",
                it -> new EventRuling(it.eventId(), it.verdict(), metres, it.acceptedKinds(), it.marks()));
    }

    private TypedField marks(
            String eventId,
            String part,
            ToDoubleFunction<PartMarks> get,
            BiFunction<PartMarks, Double, PartMarks> with) {
        NumberEntry entry = NumberEntry.between("", 1, 0, MOST_MARKS, 2);
        FieldViewModel field = new FieldViewModel(
                model.document(),
                now -> entry.show(get.applyAsDouble(ruling(eventId).marks().orElse(PartMarks.USUAL))),
                typed -> entry.take(
                        typed,
                        texts,
                        value -> type(
                                eventId,
                                part,
                                it -> withMarks(it, with.apply(it.marks().orElse(PartMarks.USUAL), value)))));
        return new TypedField("ruling-" + part + "-" + eventId, texts.say("ruling.marks." + part), field).narrow(4);
    }

    private static EventRuling withMarks(EventRuling it, PartMarks marks) {
        Optional<PartMarks> set = marks.equals(PartMarks.USUAL) ? Optional.empty() : Optional.of(marks);
        return new EventRuling(it.eventId(), it.verdict(), it.toleranceMetres(), it.acceptedKinds(), set);
    }

    private MenuButton kinds(String eventId) {
        MenuButton menu = new MenuButton();
        menu.setId("ruling-kinds-" + eventId);
        menu.setAccessibleText(texts.say("ruling.kinds.name"));
        for (EventKind kind : EventKind.values()) {
            CheckMenuItem item = new CheckMenuItem(words().kind(kind));
            item.setId("ruling-kind-" + kind.id() + "-" + eventId);
            item.setSelected(ruling(eventId).acceptedKinds().contains(kind));
            item.setOnAction(event -> {
                accept(eventId, kind, item.isSelected());
                menu.setText(accepted(eventId));
            });
            menu.getItems().add(item);
        }
        menu.setText(accepted(eventId));
        return menu;
    }

    private String accepted(String eventId) {
        return texts.say("ruling.kinds", ruling(eventId).acceptedKinds().size());
    }

    private void accept(String eventId, EventKind kind, boolean on) {
        List<EventKind> kinds = new ArrayList<>(Arrays.stream(EventKind.values())
                .filter(one ->
                        one == kind ? on : ruling(eventId).acceptedKinds().contains(one))
                .toList());
        step(eventId, it -> new EventRuling(it.eventId(), it.verdict(), it.toleranceMetres(), kinds, it.marks()));
    }
}
