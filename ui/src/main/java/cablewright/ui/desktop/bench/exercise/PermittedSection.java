// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.UsualView;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.PermittedEdits;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.PickField;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What the trainee may change: the choices of each setting, several in one field. */
final class PermittedSection extends VBox {

    private static final NumberEntry VELOCITY = NumberEntry.between("", 1, 0.05, 1, 4);

    private final ExerciseEditorViewModel model;
    private final Texts texts;
    private final ObservableValue<LengthUnit> unit;

    PermittedSection(ExerciseEditorViewModel model, ObservableValue<LengthUnit> unit, Words words) {
        this.model = model;
        this.texts = model.texts();
        this.unit = unit;
        getStyleClass().add("section-fields");
        getChildren()
                .addAll(
                        list(
                                "pulses",
                                ExerciseChoices::pulses,
                                it -> ExerciseChoices.ofShape(it, false),
                                (it, pulses) ->
                                        PermittedEdits.withStimuli(it, pulses, ExerciseChoices.ofShape(it, true))),
                        list(
                                "steps",
                                ExerciseChoices::steps,
                                it -> ExerciseChoices.ofShape(it, true),
                                (it, steps) ->
                                        PermittedEdits.withStimuli(it, ExerciseChoices.ofShape(it, false), steps)),
                        list(
                                "ranges",
                                () -> ExerciseChoices.ranges(unit.getValue()),
                                Permitted::rangesMetres,
                                PermittedEdits::withRanges),
                        list("gains", ExerciseChoices::gains, Permitted::gainsDecibels, PermittedEdits::withGains),
                        list("averages", ExerciseChoices::averages, Permitted::averages, PermittedEdits::withAverages),
                        velocities(),
                        ends(words),
                        usual());
    }

    private Optional<String> type(String field, Function<Permitted, Permitted> edit) {
        return model.type(
                texts.say("exercise.step.permitted"),
                "permitted/" + field,
                it -> ExerciseEdits.withPermitted(it, edit.apply(it.permitted())));
    }

    private <T> TypedField list(
            String name,
            Supplier<ListText<T>> form,
            Function<Permitted, List<T>> get,
            BiFunction<Permitted, List<T>, Permitted> with) {
        FieldViewModel field = new FieldViewModel(
                        model.document(),
                        now -> form.get().write(get.apply(now.exercise().permitted())),
                        typed -> type(name, it -> with.apply(it, form.get().read(typed, get.apply(it)))))
                .following(unit);
        return new TypedField("permitted-" + name, texts.say("permitted." + name), field)
                .whenEmpty(texts.say("permitted.none"));
    }

    private VBox velocities() {
        List<TypedField> fields = List.of(
                velocity(
                        "least",
                        it -> OptionalDouble.of(it.leastFraction()),
                        (it, value) -> new VelocityRule(value.getAsDouble(), it.mostFraction(), it.statedFraction()),
                        false),
                velocity(
                        "most",
                        it -> OptionalDouble.of(it.mostFraction()),
                        (it, value) -> new VelocityRule(it.leastFraction(), value.getAsDouble(), it.statedFraction()),
                        false),
                velocity(
                        "stated",
                        VelocityRule::statedFraction,
                        (it, value) -> new VelocityRule(it.leastFraction(), it.mostFraction(), value),
                        true));
        FlowPane row = new FlowPane();
        row.getStyleClass().add("field-flow");
        row.getChildren().addAll(fields);
        VBox all = new VBox(row);
        fields.forEach(field -> all.getChildren().add(field.problem()));
        return all;
    }

    private TypedField velocity(
            String name,
            Function<VelocityRule, OptionalDouble> get,
            BiFunction<VelocityRule, OptionalDouble, VelocityRule> with,
            boolean mayBeAbsent) {
        DoubleFunction<Optional<String>> set = value -> velocity(name, with, OptionalDouble.of(value));
        FieldViewModel field = new FieldViewModel(
                model.document(),
                now -> {
                    OptionalDouble held = get.apply(now.exercise().permitted().velocity());
                    return held.isPresent() ? VELOCITY.show(held.getAsDouble()) : "";
                },
                typed -> mayBeAbsent && typed.isBlank()
                        ? velocity(name, with, OptionalDouble.empty())
                        : VELOCITY.take(typed, texts, set));
        TypedField typed = new TypedField("velocity-" + name, texts.say("permitted.velocity." + name), field).narrow(6);
        return mayBeAbsent ? typed.whenEmpty(texts.say("permitted.velocity.sought")) : typed;
    }

    private Optional<String> velocity(
            String name, BiFunction<VelocityRule, OptionalDouble, VelocityRule> with, OptionalDouble value) {
        return type("velocity/" + name, it -> PermittedEdits.withVelocity(it, with.apply(it.velocity(), value)));
    }

    private PickField<List<LineEnd>> ends(Words words) {
        return new PickField<>(
                "permitted-ends",
                texts.say("permitted.ends"),
                model.document(),
                now -> List.of(List.of(LineEnd.NEAR), List.of(LineEnd.FAR), List.of(LineEnd.NEAR, LineEnd.FAR)),
                now -> now.exercise().permitted().ends().size() == 2
                        ? List.of(LineEnd.NEAR, LineEnd.FAR)
                        : now.exercise().permitted().ends(),
                chosen -> model.step(
                        texts.say("exercise.step.permitted"),
                        it -> ExerciseEdits.withPermitted(it, PermittedEdits.withEnds(it.permitted(), chosen))),
                chosen -> chosen.size() == 2 ? texts.say("permitted.ends.both") : words.end(chosen.get(0)));
    }

    private Button usual() {
        Button usual = new Button(texts.say("permitted.usual"));
        usual.setId("permitted-usual");
        usual.setAccessibleText(texts.say("permitted.usual.name"));
        usual.setOnAction(event -> model.step(
                texts.say("exercise.step.usual"),
                it -> ExerciseEdits.withPermitted(it, UsualView.permitted(it.cable()), UsualView.start(it.cable()))));
        return usual;
    }
}
