// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.port.SimulatedPort;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Every number that an explanation states, worked out again from its cable. */
class HarbourLineNumbersTest {

    private static final double LIGHT = 299_792_458;

    private static Exercise exercise(String id) {
        return BuiltInLessons.first().exercise(id).orElseThrow();
    }

    private static void said(Exercise exercise, String format, double value) {
        String words = String.format(Locale.ROOT, format, value).replace('-', '−');
        String text = exercise.explanation().replace('\n', ' ');
        assertTrue(text.contains(words), () -> "\"" + words + "\" in " + text);
    }

    /** Height of an event's place in per cent of the outgoing wave. */
    private static double percent(Exercise exercise, String event, int place, double pulseSeconds) {
        Settings settings = Views.settings(exercise, pulseSeconds, 16);
        return 100
                * Views.sight(exercise, event, settings, LineEnd.NEAR)
                        .places()
                        .get(place)
                        .expectedVolts();
    }

    private static double readMetres(Exercise exercise, String event, double pulseSeconds) {
        Settings settings = Views.settings(exercise, pulseSeconds, 16);
        PlaceVisibility place =
                Views.sight(exercise, event, settings, LineEnd.NEAR).places().get(0);
        return Views.halfWayUp(exercise, event, place, settings, LineEnd.NEAR);
    }

    @Test
    void breakwaterCamera() {
        Exercise exercise = exercise("breakwater-camera");

        said(exercise, "%.0f %% of it with a 10 ns pulse", percent(exercise, "break", 0, 10e-9));
        said(exercise, "the rest was lost on %.0f m of cable", 2 * 73.5);
        said(exercise, "a bump of %.1f %% with a 2 ns pulse", percent(exercise, "s1", 0, 2e-9));
        said(exercise, "only %.1f %% high", percent(exercise, "s1", 0, 10e-9));
        said(exercise, "the noise of %.1f %%", 100 * exercise.instrument().noiseVoltsAfter(16));
        assertTrue(percent(exercise, "s1", 0, 10e-9)
                < 6 * 100 * exercise.instrument().noiseVoltsAfter(16));
    }

    @Test
    void pilotStationPhone() {
        Exercise exercise = exercise("pilot-station-phone");

        said(exercise, "%.0f %% with a 100 ns pulse", percent(exercise, "touch", 0, 100e-9));
        said(exercise, "%.0f %% with 25 ns", percent(exercise, "touch", 0, 25e-9));
        said(exercise, "a bump of %.1f %% with a 100 ns pulse", percent(exercise, "s1", 0, 100e-9));
        said(exercise, "and %.1f %% with 25 ns", percent(exercise, "s1", 0, 25e-9));
        said(exercise, "it shows at %.0f m with the 25 ns pulse", readMetres(exercise, "touch", 25e-9));
        said(exercise, "%.0f m with 100 ns", readMetres(exercise, "touch", 100e-9));
    }

    @Test
    void lampHouseFeeder() {
        Exercise exercise = exercise("lamp-house-feeder");

        said(exercise, "Connector at 84 m: %.1f %% with a 2 ns pulse", percent(exercise, "c1", 0, 2e-9));
        said(exercise, "Tap at 151 m: %.1f %%", percent(exercise, "t1", 0, 2e-9));
        said(exercise, "Connector at 198 m: %.1f %%", percent(exercise, "c2", 0, 2e-9));
        for (String event : List.of("c1", "t1", "c2")) {
            assertTrue(Math.abs(percent(exercise, event, 0, 25e-9)) < 0.3, "they sink below 0.3 %");
        }
        Trace trace = Views.trace(exercise, exercise.cable(), Views.settings(exercise, 10e-9, 64), LineEnd.NEAR);
        for (int i = trace.indexNear(230); i < trace.indexNear(245); i++) {
            assertTrue(Math.abs(trace.volts(i)) < 1e-3, "less than 0.1 %");
        }
    }

    @Test
    void antennaMast() {
        Exercise exercise = exercise("antenna-mast");

        said(exercise, "dips by %.1f %% with a 2 ns pulse", -percent(exercise, "c1", 0, 2e-9));
        said(exercise, "rise by %.1f %%", percent(exercise, "s1", 0, 2e-9));
        said(exercise, "%.1f %%: about 5 nH each", percent(exercise, "s2", 0, 2e-9));
        for (String event : List.of("c1", "s1", "s2")) {
            assertTrue(Math.abs(percent(exercise, event, 0, 10e-9)) < 0.5, "below 0.5 % with 10 ns");
            assertTrue(Math.abs(percent(exercise, event, 0, 25e-9)) < 0.25, "below 0.25 % with 25 ns");
        }
    }

    @Test
    void ferryGate() {
        Exercise exercise = exercise("ferry-gate");
        double set = exercise.start().settings().velocityFraction();

        said(exercise, "At 80 %% the end shows at %.1f m", 95 * set / 0.85);
        said(exercise, "At %.1f m the cable is pinched", (41.3 + 41.5) / 2);
        said(exercise, "it would have shown at %.1f m", 41.4 * set / 0.85);
        CrossSection sound = Catalogue.standard().type("drop-6-foam").section();
        said(exercise, "%.0f Ω are left of 75", sound.pinched(0.6).impedanceOhms());
        said(exercise, "a dip of %.1f %% with a 2 ns pulse", -percent(exercise, "press", 0, 2e-9));
        said(exercise, "and of %.1f %% with 10 ns", -percent(exercise, "press", 0, 10e-9));
        said(exercise, "up by %.1f %% with 2 ns", percent(exercise, "s1", 0, 2e-9));
    }

    @Test
    void slipwayCable() {
        Exercise exercise = exercise("slipway-cable");
        CrossSection wet = Catalogue.standard()
                .type("drop-11-foam")
                .section()
                .wet(WaterDistribution.MAXWELL_GARNETT, 0.08, new Water(12, 0.02));

        said(exercise, "what was 75 Ω is %.0f Ω there", wet.impedanceOhms());
        said(exercise, "the wave goes at %.0f %% of the speed of light", 100 * wet.velocityFraction());
        said(exercise, "falls by %.1f %% at 71 m", -percent(exercise, "wet", 0, 10e-9));
        said(exercise, "rises by %.1f %% where", percent(exercise, "wet", 1, 10e-9));
        double shown = 5.5 * 0.85 / wet.velocityFraction();
        said(exercise, "The 5.5 m show as %.1f m", shown);
        said(exercise, "everything beyond shows %.1f m too far", shown - 5.5);
        said(exercise, "of the record**: %.1f %% with a 5 ns pulse", percent(exercise, "s1", 0, 5e-9));
    }

    @Test
    void greenhouseSensor() {
        Exercise exercise = exercise("greenhouse-sensor");

        said(exercise, "Half of a 25 ns pulse is %.2f m", 25e-9 * 0.69 * LIGHT / 2);
        said(exercise, "half of a 10 ns pulse %.2f m", 10e-9 * 0.69 * LIGHT / 2);
        said(exercise, "Half of a 2 ns pulse is %.2f m", 2e-9 * 0.69 * LIGHT / 2);
        said(exercise, "up by %.1f %% with 2 ns, and back", percent(exercise, "box", 0, 2e-9));
        said(exercise, "up by %.1f %% with 2 ns and by", percent(exercise, "joint", 0, 2e-9));
        said(exercise, "and by %.1f %% with 10 ns", percent(exercise, "joint", 0, 10e-9));
        assertTrue(percent(exercise, "box", 0, 10e-9) < percent(exercise, "box", 0, 2e-9));
    }

    @Test
    void reelOnTheDock() {
        Exercise exercise = exercise("reel-on-the-dock");
        CrossSection section =
                Catalogue.standard().type("drop-6-foam").section().offCentre(0.45);
        double launch = (section.impedanceOhms() - 75) / (section.impedanceOhms() + 75);

        said(exercise, "This cable has %.0f Ω at every place", section.impedanceOhms());
        said(exercise, "meet 68 Ω, %.1f %% comes back", 100 * launch);
        said(exercise, "a return loss sweep, %.0f dB", -20 * Math.log10(-launch));
        assertEquals(0.85, section.velocityFraction(), 1e-12);
        said(exercise, "the end's echo is %.0f %% with a 10 ns pulse", 100 * top(exercise, exercise.cable()));
        Cable good = exercise.cable().withoutEvent("core");
        said(exercise, "where a good reel gives %.0f %%", 100 * top(exercise, good));
    }

    private static double top(Exercise exercise, Cable cable) {
        Trace trace = Views.trace(exercise, cable, Views.settings(exercise, 10e-9, 16), LineEnd.NEAR);
        double top = 0;
        for (int i = trace.indexNear(95); i < trace.indexNear(110); i++) {
            top = Math.max(top, trace.volts(i));
        }
        return top;
    }

    @Test
    void insideTheReelTheTraceIsThatOfAGoodOneWithinATenthOfAPerCent() {
        Exercise exercise = exercise("reel-on-the-dock");
        Cable good = exercise.cable().withoutEvent("core");
        for (double pulse : new double[] {2e-9, 10e-9, 25e-9}) {
            Settings settings = Views.settings(exercise, pulse, 16);
            for (LineEnd end : LineEnd.values()) {
                Trace bad = Views.trace(exercise, exercise.cable(), settings, end);
                Trace sound = Views.trace(exercise, good, settings, end);
                for (int i = bad.indexNear(8); i < bad.indexNear(98); i++) {
                    assertEquals(sound.volts(i), bad.volts(i), 1e-3);
                }
            }
        }
    }

    /** Without loss the inside of a line of any one impedance reflects nothing at all. */
    @Test
    void withoutLossTheInsideOfTheReelShowsNothingAtAll() {
        Exercise exercise = exercise("reel-on-the-dock");
        double ohms = Catalogue.standard()
                .type("drop-6-foam")
                .section()
                .offCentre(0.45)
                .impedanceOhms();
        CableType type = new CableType(
                "no-loss",
                "No loss",
                CableFamily.REFERENCE,
                ConstantsSection.lossless(ohms, 0.85),
                "definition",
                ohms,
                0.85,
                List.of());
        Cable cable = new Cable("reel", List.of(new Run(type, 100)), List.of(), new FarEnd.Open());
        Instrument quick = new Instrument(
                75,
                1e9,
                1,
                0,
                1e-9,
                0.004,
                12,
                1.25,
                4096,
                0,
                exercise.instrument().interference());
        Settings settings = Views.settings(exercise, 10e-9, 16);
        Trace trace = new Reflectometer(quick).withoutNoise(new SimulatedPort(cable, 75), settings);

        for (int i = trace.indexNear(8); i < trace.indexNear(98); i++) {
            assertEquals(0, trace.volts(i), 1e-6);
        }
    }

    @Test
    void thePredictionsStateTheLawsTheyRestOn() {
        Prediction end = exercise("lamp-house-feeder").prediction().orElseThrow();
        assertTrue(end.explanation().contains("(Z − Z0)/(Z + Z0)"));
        assertEquals(0.5, (225.0 - 75) / (225 + 75), "half comes back from 225 Ω");
        assertTrue(end.choice("half").orElseThrow().reason().contains("225 Ω"));
    }
}
