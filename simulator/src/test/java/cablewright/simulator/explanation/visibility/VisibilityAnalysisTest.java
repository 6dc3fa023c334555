// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import static cablewright.simulator.TestCables.cable;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class VisibilityAnalysisTest {

    private final CableType type = Catalogue.standard().type("drop-6-foam");
    private final Instrument instrument = Instrument.usual(75);
    private final Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 0, 64);

    private List<EventVisibility> sights(LineEnd end, Event... events) {
        Cable line = cable(type, 133, FarEnd.Terminated.byOhms(75), events);
        return VisibilityAnalysis.of(line, instrument, settings, end);
    }

    private static TouchingConductors partialShort(String id, double metres, double ohms) {
        return new TouchingConductors(id, metres, OptionalDouble.of(ohms));
    }

    private static SeriesPart resistor(String id, double metres, double ohms) {
        return new SeriesPart(id, metres, Lumped.resistor(ohms));
    }

    /** ρ = −Z0/(2R + Z0) for a shunt R (Pozar, sec. 4.3, from memory), less what the cable takes there and back. */
    @Test
    void expectedHeightIsTheReflectionLessTheLoss() {
        EventVisibility sight = sights(LineEnd.NEAR, partialShort("x", 40, 300)).get(0);
        double z = type.section().impedanceOhms();
        double rho = -z / (600 + z);
        double height = sight.best().expectedVolts();
        assertTrue(height < 0 && Math.abs(height) < Math.abs(rho), "height " + height + " of " + rho);
        assertTrue(Math.abs(height) > 0.6 * Math.abs(rho), "height " + height + " of " + rho);
        assertEquals(Visibility.CLEAR, sight.visibility());
        assertEquals(40, sight.best().shownMetres(), 0.4);
    }

    @Test
    void smallEventIsBelowTheNoiseAndALargerOneMarginal() {
        double noise = instrument.noiseVoltsAfter(64);
        List<EventVisibility> sights =
                sights(LineEnd.NEAR, resistor("tiny", 20, 150 * noise), resistor("small", 60, 150 * noise * 6));
        assertEquals(Optional.of(HiddenReason.BELOW_NOISE), sights.get(0).reason());
        assertEquals(Visibility.HIDDEN, sights.get(0).visibility());
        assertEquals(Visibility.MARGINAL, sights.get(1).visibility());
    }

    @Test
    void averagingBringsAnEventOutOfTheNoise() {
        SeriesPart event = resistor("small", 60, 150 * instrument.noiseVoltsAfter(64) * 6);
        Cable line = cable(type, 133, FarEnd.Terminated.byOhms(75), event);
        EventVisibility more = VisibilityAnalysis.of(line, instrument, settings.withAverages(1024), LineEnd.NEAR)
                .get(0);
        assertEquals(Visibility.CLEAR, more.visibility());
    }

    /** Loss makes a far echo late (τ₀ = (αl)²/(4πf)); its top must still be looked for where it comes. */
    @Test
    void bluntEchoFromFarAwayIsSeenAtItsTop() {
        Cable line = cable(type, 700, FarEnd.Terminated.byOhms(75), partialShort("x", 500, 30));
        Settings far = settings.withRangeMetres(700);
        EventVisibility sight =
                VisibilityAnalysis.of(line, instrument, far, LineEnd.NEAR).get(0);
        Trace with = new Reflectometer(instrument).withoutNoise(new SimulatedPort(line, 75), far);
        double top = 0;
        for (int i = with.indexNear(500); i < with.indexNear(520); i++) {
            top = Math.max(top, Math.abs(with.volts(i) - with.voltsAt(499)));
        }
        assertEquals(top, sight.best().contrastVolts(), 0.03 * top);
    }

    @Test
    void whatLiesBeyondAFullOpenIsHiddenByIt() {
        List<EventVisibility> sights = sights(
                LineEnd.NEAR, new BrokenConductor("open", 50, OptionalDouble.empty()), partialShort("x", 80, 100));
        assertEquals(
                Optional.of(HiddenReason.BEYOND_FULL_REFLECTION), sights.get(1).reason());
        assertEquals(Optional.of(Reflector.event("open")), sights.get(1).best().other());
        assertEquals(Visibility.CLEAR, sights.get(0).visibility());
    }

    @Test
    void fromTheOtherEndTheOpenNoLongerHidesIt() {
        List<EventVisibility> sights = sights(
                LineEnd.FAR, new BrokenConductor("open", 50, OptionalDouble.empty()), partialShort("x", 80, 100));
        assertEquals("x", sights.get(0).eventId());
        assertEquals(Visibility.CLEAR, sights.get(0).visibility());
        assertEquals(80, sights.get(0).best().trueMetres(), 1e-9);
        assertEquals(53, sights.get(0).best().shownMetres(), 0.5);
    }

    @Test
    void eventUnderTheOutgoingPulseIsInTheBlindZone() {
        EventVisibility sight =
                sights(LineEnd.NEAR, partialShort("x", 0.3, 300)).get(0);
        assertEquals(Optional.of(HiddenReason.BLIND_ZONE), sight.reason());
    }

    @Test
    void twoEventsNearerThanHalfThePulseMerge() {
        List<EventVisibility> sights = sights(LineEnd.NEAR, partialShort("a", 60, 300), partialShort("b", 60.2, 300));
        for (EventVisibility sight : sights) {
            assertEquals(Visibility.HIDDEN, sight.visibility());
            assertEquals(Optional.of(HiddenReason.MERGED), sight.reason());
        }
        assertEquals(Optional.of(Reflector.event("b")), sights.get(0).best().other());
    }

    @Test
    void twoEventsFurtherApartThanHalfThePulseStandAlone() {
        List<EventVisibility> sights = sights(LineEnd.NEAR, partialShort("a", 60, 300), partialShort("b", 62, 300));
        assertEquals(Visibility.CLEAR, sights.get(0).visibility());
        assertEquals(Visibility.CLEAR, sights.get(1).visibility());
    }

    @Test
    void soakedLengthHasTwoPlacesDownThenUp() {
        WaterIngress water =
                new WaterIngress("w", 80, 10, 82, WaterDistribution.MAXWELL_GARNETT, 0.05, new Water(15, 0.02), 0);
        EventVisibility sight = sights(LineEnd.NEAR, water).get(0);
        assertEquals(2, sight.places().size());
        assertTrue(sight.places().get(0).expectedVolts() < 0);
        assertTrue(sight.places().get(1).expectedVolts() > 0);
        assertEquals(80, sight.places().get(0).trueMetres(), 1e-9);
        assertEquals(90, sight.places().get(1).trueMetres(), 1e-9);
        // The wet stretch is slower, so its end is shown too far off.
        assertTrue(sight.places().get(1).shownMetres() > 90.3);
    }

    @Test
    void coreOffCentreAllAlongIsHiddenAtItsStartByTheOutgoingPulse() {
        OffCentreCore core = new OffCentreCore("c", 0, 133, 0.45, Profile.FLAT, OptionalDouble.empty());
        EventVisibility sight = sights(LineEnd.NEAR, core).get(0);
        assertEquals(Optional.of(HiddenReason.BLIND_ZONE), sight.places().get(0).reason());
        assertEquals(Optional.of(HiddenReason.MERGED), sight.places().get(1).reason());
        assertEquals(
                Optional.of(new Reflector.EndOfLine()), sight.places().get(1).other());
    }

    @Test
    void eventBeyondTheRangeSaysSo() {
        Cable line = cable(type, 300, FarEnd.Terminated.byOhms(75), partialShort("x", 250, 20));
        EventVisibility sight =
                VisibilityAnalysis.of(line, instrument, settings, LineEnd.NEAR).get(0);
        assertEquals(Optional.of(HiddenReason.BEYOND_RANGE), sight.reason());
    }

    /**
     * Matched-filter bound: with n independent samples across a pulse of energy E, no detector does better than
     * √E/σ (Turin, IRE Trans. IT-6, 311 (1960), from memory). What is called clear must pass it with a margin, and
     * what passes it by less than 3 must never be called clear.
     */
    @Test
    void nothingIsClearThatAMatchedFilterCouldNotFind() {
        int clear = 0;
        int beyondTheBound = 0;
        for (double ohms : new double[] {0.002, 0.005, 0.05, 0.1, 0.2, 0.5, 1, 2}) {
            EventVisibility sight =
                    sights(LineEnd.NEAR, resistor("x", 50, ohms)).get(0);
            double best = sight.best().contrastVolts() * Math.sqrt(2 * instrument.bandwidthHertz() * 5e-9);
            double bound = best / sight.noiseVolts();
            if (sight.visibility() == Visibility.CLEAR) {
                assertTrue(bound > 6, ohms + " Ω: " + bound);
                clear++;
            }
            if (bound < 3) {
                assertEquals(Visibility.HIDDEN, sight.visibility());
                beyondTheBound++;
            }
        }
        assertTrue(clear >= 2 && beyondTheBound >= 2, clear + " clear, " + beyondTheBound + " beyond the bound");
    }
}
