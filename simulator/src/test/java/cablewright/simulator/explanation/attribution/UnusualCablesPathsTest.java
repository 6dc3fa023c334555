// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import static cablewright.simulator.TestCables.cable;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Cables as the demonstrations have them: what comes back is told path by path to more than 99 % of its energy. */
class UnusualCablesPathsTest {

    private static final CableType DROP = Catalogue.standard().type("drop-6-foam");
    private static final CableType PAIR = Catalogue.standard().type("pair-24");

    private static Cable drop(Event... events) {
        return cable(DROP, 100, FarEnd.Terminated.byOhms(75), events);
    }

    private static Event split(double metres, boolean putRight) {
        return new Split(
                "split",
                20,
                metres,
                new SplitShape(SplitLayout.TWISTED, OptionalDouble.of(1.5)),
                putRight,
                NeighbourEnd.MATCHED,
                NeighbourEnd.MATCHED);
    }

    static Stream<Arguments> cables() {
        Stimulus pulse = new HalfSine(5e-9);
        return Stream.of(
                Arguments.of(
                        "off centre, whole reel",
                        cable(
                                DROP,
                                100,
                                new FarEnd.Open(),
                                new OffCentreCore("core", 0, 100, 0.4, Profile.FLAT, OptionalDouble.empty())),
                        pulse),
                Arguments.of(
                        "off centre, a stretch",
                        drop(new OffCentreCore("core", 40, 20, 0.4, Profile.RAISED_COSINE, OptionalDouble.empty())),
                        pulse),
                Arguments.of(
                        "uneven from end to end",
                        drop(new ImpedanceVariation("swing", 0, 100, 0.004, 1, OptionalLong.empty(), false)),
                        pulse),
                Arguments.of(
                        "water",
                        drop(new WaterIngress(
                                "w", 30, 30, 45, WaterDistribution.MAXWELL_GARNETT, 0.1, new Water(12, 0.02), 3)),
                        pulse),
                Arguments.of("gradual damage", drop(new GradualDamage("g", 30, 20, 0.8, Profile.RAISED_COSINE)), pulse),
                Arguments.of(
                        "several runs",
                        new Cable(
                                "runs",
                                List.of(new Run(DROP, 40), new Run(PAIR, 30), new Run(DROP, 30)),
                                List.of(new TouchingConductors("fault", 80, OptionalDouble.of(100))),
                                new FarEnd.Open()),
                        pulse),
                Arguments.of(
                        "split and put right",
                        cable(PAIR, 60, FarEnd.Terminated.byOhms(100), split(15, true)),
                        new RaisedCosineStep(1e-9)),
                Arguments.of(
                        "split for good",
                        cable(PAIR, 60, FarEnd.Terminated.byOhms(100), split(40, false)),
                        new RaisedCosineStep(1e-9)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cables")
    void pathsExplainWhatComesBack(String name, Cable line, Stimulus stimulus) {
        double ohms = line.runs().get(0).type().nominalImpedanceOhms();
        double velocity = line.runs().get(0).type().section().velocityFraction();
        Settings settings = new Settings(stimulus, velocity, 1.3 * line.lengthMetres(), 0, 64);
        for (LineEnd end : LineEnd.values()) {
            Attribution attribution = Attribution.of(line, Instrument.usual(ohms), settings, end);
            assertTrue(
                    attribution.explainedEnergyShare() > 0.99,
                    name + " from the " + end + ": " + attribution.explainedEnergyShare());
        }
    }
}
