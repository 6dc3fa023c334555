// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A small invented lesson for tests: a splice, a pinch and a soaked length on 133 m of drop coax. */
public final class Examples {

    private Examples() {}

    /**
     * Makes the lesson.
     *
     * @return two exercises; the second asks a question first
     */
    public static Lesson lesson() {
        return new Lesson(
                "examples",
                "Examples at Saltmarsh Point",
                "For tests.",
                "All of it is invented.",
                0.7,
                List.of(exercise("quay-3", Optional.empty()), exercise("quay-4", Optional.of(question()))));
    }

    /**
     * Makes one exercise.
     *
     * @param id its name
     * @param question what is asked before its trace
     * @return the exercise
     */
    public static Exercise exercise(String id, Optional<Prediction> question) {
        return new Exercise(
                id,
                "Quay camera",
                "Picture tears since the **storm**. 133 m of drop coax, velocity 0.850.",
                List.of(Caution.LIVE_PLANT_POWER, Caution.LOCAL_CODES),
                cable(),
                record(),
                Instrument.usual(75),
                new Start(settings(), LineEnd.NEAR),
                permitted(),
                OptionalDouble.empty(),
                List.of(new Hint("Two edges belong together.", 2)),
                "The pinch *dips* and recovers.",
                question,
                7,
                true);
    }

    private static Prediction question() {
        return new Prediction(
                "What does a pinch show?",
                List.of(
                        new Choice("up", "Up, then back", "No: impedance falls there."),
                        new Choice("down", "Down, then back", "Yes.")),
                "down",
                Optional.of(new Reasons(
                        List.of(
                                new Choice("nearer", "The shield is nearer to the core there", "Yes."),
                                new Choice("lossy", "A pinch loses power", "Hardly any.")),
                        "nearer")),
                "Impedance falls over a short length.");
    }

    /**
     * Makes the cable.
     *
     * @return the cable
     */
    public static Cable cable() {
        CableType type = Catalogue.standard().type("drop-6-foam");
        List<Event> events = List.of(
                new Splice("S1", 31.4, 3e-9, 0, 0.01),
                new Pinch("P1", 84.1, 0.12, 0.38, Profile.FLAT),
                new WaterIngress(
                        "W1", 101.4, 4.6, 103, WaterDistribution.FILM_UNDER_SHIELD, 0.25, new Water(12, 0.05), 0));
        return new Cable("Quay camera", List.of(new Run(type, 133)), events, FarEnd.Terminated.byOhms(75));
    }

    private static AsBuiltRecord record() {
        return new AsBuiltRecord(
                OptionalDouble.of(133),
                List.of(new RecordedItem("S1", 31, EventKind.SPLICE, "splice, pole 14")),
                new RecordedEnd(RecordedEnd.Kind.TERMINATED, "terminated at the lamp house"),
                "drawn 2019",
                false);
    }

    /**
     * Makes what is set at the start.
     *
     * @return the settings
     */
    public static Settings settings() {
        return new Settings(new HalfSine(5e-9), 0.85, 150, 24, 64);
    }

    private static Permitted permitted() {
        return new Permitted(
                List.of(new HalfSine(5e-9), new HalfSine(20e-9), new RaisedCosineStep(2e-9)),
                new VelocityRule(0.7, 0.95, OptionalDouble.of(0.85)),
                List.of(75.0, 150.0),
                List.of(0.0, 24.0),
                List.of(16, 64),
                List.of(LineEnd.NEAR, LineEnd.FAR));
    }
}
