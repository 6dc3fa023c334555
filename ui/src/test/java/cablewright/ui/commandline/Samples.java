// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Cables and exercises for tests; places are invented. */
public final class Samples {

    private Samples() {}

    /** 100 m of lossless 75 ohm line of 85 % velocity, closed by a resistor. */
    public static Cable reference(double loadOhms) {
        return new Cable(
                "Reference line",
                List.of(new Run(Catalogue.standard().type("lossless-75"), 100)),
                List.of(),
                FarEnd.Terminated.byOhms(loadOhms));
    }

    /** A camera's coax with a splice and a pinch. */
    public static Cable camera() {
        return new Cable(
                "Quay camera 3",
                List.of(new Run(Catalogue.standard().type("drop-6-foam"), 133)),
                List.of(new Splice("s1", 31, 6e-9, 0, 0), new Pinch("p1", 84.2, 0.12, 0.58, Profile.FLAT)),
                FarEnd.Terminated.byOhms(75));
    }

    /** The camera's coax to be read. */
    public static Exercise exercise() {
        Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 20, 16);
        return new Exercise(
                "quay-3",
                "Quay camera 3",
                "Picture *tears* since the storm. Series-6 coax to a terminated end.",
                List.of(Caution.LIVE_PLANT_POWER, Caution.LOCAL_CODES),
                camera(),
                new AsBuiltRecord(
                        OptionalDouble.of(133),
                        List.of(new RecordedItem("s1", 31, EventKind.SPLICE, "splice S1, bollard 4")),
                        new RecordedEnd(RecordedEnd.Kind.TERMINATED, "75 ohm terminator"),
                        "drawn 2019",
                        false),
                Instrument.usual(75),
                new Start(settings, LineEnd.NEAR),
                new Permitted(
                        List.of(new HalfSine(2e-9), new HalfSine(5e-9), new RaisedCosineStep(1e-9)),
                        new VelocityRule(0.6, 0.9, OptionalDouble.of(0.85)),
                        List.of(50.0, 150.0, 300.0),
                        List.of(0.0, 20.0, 30.0),
                        List.of(1, 16, 64),
                        List.of(LineEnd.NEAR, LineEnd.FAR)),
                OptionalDouble.empty(),
                List.of(new Hint("Look near **84 m**.", 2)),
                "The pinch presses the shield toward the core.",
                Optional.empty(),
                7,
                true);
    }
}
