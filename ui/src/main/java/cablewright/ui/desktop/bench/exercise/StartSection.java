// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.PickField;
import cablewright.ui.desktop.bench.form.SwitchField;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What is set when the exercise opens, whether the end is known, and how near a place must be. */
final class StartSection extends VBox {

    private static final double MOST_TOLERANCE_METRES = 10_000;

    private final ExerciseEditorViewModel model;
    private final Texts texts;
    private final ObservableValue<LengthUnit> unit;

    StartSection(ExerciseEditorViewModel model, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.texts = model.texts();
        this.unit = unit;
        getStyleClass().add("section-fields");
        FlowPane settings = new FlowPane();
        settings.getStyleClass().add("field-flow");
        PickField<Double> range = pick(
                "range",
                Permitted::rangesMetres,
                it -> it.settings().rangeMetres(),
                (it, metres) -> new Start(it.settings().withRangeMetres(metres), it.end()),
                metres -> words().quantities().shortLength(metres));
        unit.addListener((o, before, now) -> range.retell());
        settings.getChildren()
                .addAll(
                        pick(
                                "end",
                                Permitted::ends,
                                Start::end,
                                (Start it, LineEnd end) -> new Start(it.settings(), end),
                                end -> words().end(end)),
                        pick(
                                "stimulus",
                                Permitted::stimuli,
                                it -> it.settings().stimulus(),
                                (it, stimulus) -> new Start(it.settings().withStimulus(stimulus), it.end()),
                                stimulus -> words().stimulus(stimulus)),
                        velocity(),
                        range,
                        pick(
                                "gain",
                                Permitted::gainsDecibels,
                                it -> it.settings().gainDecibels(),
                                (it, gain) -> new Start(it.settings().withGainDecibels(gain), it.end()),
                                gain -> Quantities.significant(gain) + "\u00a0dB"),
                        pick(
                                "averages",
                                Permitted::averages,
                                it -> it.settings().averages(),
                                (it, averages) -> new Start(it.settings().withAverages(averages), it.end()),
                                String::valueOf));
        getChildren().addAll(settings, endIsGiven(), tolerance());
    }

    private Words words() {
        return Words.in(unit.getValue(), texts.locale());
    }

    private static UnaryOperator<Exercise> edit(UnaryOperator<Start> start) {
        return it -> ExerciseEdits.withPermitted(it, it.permitted(), start.apply(it.start()));
    }

    private <T> PickField<T> pick(
            String name,
            Function<Permitted, List<T>> choices,
            Function<Start, T> get,
            BiFunction<Start, T, Start> with,
            Function<T, String> written) {
        return new PickField<>(
                "start-" + name,
                texts.say("start." + name),
                model.document(),
                now -> choices.apply(now.exercise().permitted()),
                now -> get.apply(now.exercise().start()),
                chosen -> model.step(texts.say("exercise.step.start"), edit(it -> with.apply(it, chosen))),
                written);
    }

    private TypedField velocity() {
        FieldViewModel field = new FieldViewModel(
                model.document(),
                now -> entry().show(now.exercise().start().settings().velocityFraction()),
                typed -> entry().take(typed, texts, this::setVelocity));
        return new TypedField("start-velocity", texts.say("start.velocity"), field).narrow(6);
    }

    private Optional<String> setVelocity(double value) {
        return model.type(
                texts.say("exercise.step.start"),
                "start/velocity",
                edit(it -> new Start(it.settings().withVelocityFraction(value), it.end())));
    }

    /** What may be set is what the trainee may set. */
    private NumberEntry entry() {
        Permitted permitted = model.exercise().permitted();
        return NumberEntry.between(
                "",
                1,
                permitted.velocity().leastFraction(),
                permitted.velocity().mostFraction(),
                4);
    }

    private SwitchField endIsGiven() {
        return new SwitchField(
                "exercise-end-given",
                texts.say("exercise.endIsGiven"),
                model.document(),
                now -> now.exercise().endIsGiven(),
                given ->
                        model.step(texts.say("exercise.step.endIsGiven"), it -> ExerciseEdits.withEndGiven(it, given)));
    }

    private TypedField tolerance() {
        FieldViewModel field = new FieldViewModel(
                        model.document(),
                        now -> now.exercise().toleranceMetres().isPresent()
                                ? metres().show(now.exercise().toleranceMetres().getAsDouble())
                                : "",
                        typed -> typed.isBlank()
                                ? setTolerance(OptionalDouble.empty())
                                : metres().take(typed, texts, metres -> setTolerance(OptionalDouble.of(metres))))
                .following(unit);
        TypedField typed = new TypedField("exercise-tolerance", texts.say("exercise.tolerance"), field)
                .whenEmpty(texts.say("exercise.tolerance.usual"))
                .unit(unit.getValue().symbol());
        unit.addListener((o, before, now) -> typed.unit(now.symbol()));
        return typed;
    }

    private NumberEntry metres() {
        LengthUnit shown = unit.getValue();
        return new NumberEntry(shown.symbol(), shown.toMetres(1), 0, MOST_TOLERANCE_METRES, false, 2);
    }

    private Optional<String> setTolerance(OptionalDouble metres) {
        return model.type(
                texts.say("exercise.step.tolerance"), "tolerance", it -> ExerciseEdits.withTolerance(it, metres));
    }
}
