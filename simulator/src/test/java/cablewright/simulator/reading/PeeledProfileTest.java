// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PeeledProfileTest {

    private static final double LAYER = 4e-9;

    /** A lossless line of layers of equal delay, each with a velocity of its own. */
    private static PortResponse layered(double endOhms, double... ohms) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < ohms.length; i++) {
            double velocity = 2e8 + 1e7 * (i % 5);
            runs.add(new Run(TestCables.lossless(ohms[i], velocity), velocity * LAYER / 2));
        }
        return new SimulatedPort(new Cable("Layers of a test", runs, List.of(), FarEnd.Terminated.byOhms(endOhms)), 75);
    }

    /**
     * A section of 60 between lines of 75 Ω reflects −1/9, then 1/9 (1 − 1/81) = +0.109739369, then +0.00135480702
     * (lattice by hand); a plain reading of impedance takes the re-reflections for impedance, peeling does not.
     */
    @Test
    void sectionOf60Between75ComesOutAsSuch() {
        PeeledProfile profile = PeeledProfile.of(layered(75, 75, 60, 75, 75), LAYER, 8 * LAYER);
        double[] expected = {75, 60, 75, 75, 75, 75, 75, 75};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], profile.ohms(i), 1e-5);
        }
        assertEquals(60, profile.ohmsAt(1.5 * LAYER), 1e-5);
        assertEquals(75, profile.ohmsAt(-1), 0);
    }

    @Property(tries = 40)
    void anySteppedLineWithoutLossComesOutExactly(
            @ForAll @Size(min = 2, max = 24) List<@DoubleRange(min = 40, max = 140) Double> ohms,
            @ForAll @DoubleRange(min = 40, max = 140) double end) {
        double[] layers = ohms.stream().mapToDouble(z -> z).toArray();
        PeeledProfile profile = PeeledProfile.of(layered(end, layers), LAYER, (layers.length + 1) * LAYER);
        for (int i = 0; i < layers.length; i++) {
            assertEquals(layers[i], profile.ohms(i), 1e-5 * layers[i]);
        }
        assertEquals(end, profile.ohms(layers.length), 1e-5 * end);
    }

    @Test
    void nothingIsPeeledBehindAFullReflection() {
        PortResponse port = new SimulatedPort(
                TestCables.cable(TestCables.lossless(75, 2e8), 2e8 * 5 * LAYER, new FarEnd.Open()), 75);
        assertEquals(10, PeeledProfile.of(port, LAYER, 30 * LAYER).count());
    }

    @Test
    void traceOfAStepIsPeeledWithinItsNoise() {
        Settings settings = new Settings(new RaisedCosineStep(2e-9), 0.667, 8, 0, 1024);
        Instrument instrument = Instrument.usual(75);
        Trace trace = new Reflectometer(instrument).measure(layered(75, 75, 60, 60, 90, 75, 75), settings, 5);
        PeeledProfile profile = PeeledProfile.of(trace, 75, LAYER);
        double[] expected = {75, 60, 60, 90, 75, 75, 75};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], profile.ohms(i), 0.6, "layer " + i);
        }
    }

    @Test
    void pulseAndTooShortLayersAreRefused() {
        Reflectometer reflectometer = new Reflectometer(Instrument.usual(75));
        Settings pulse = new Settings(new HalfSine(2e-9), 0.667, 8, 0, 1);
        Trace ofPulse = reflectometer.withoutNoise(layered(75, 75), pulse);
        Trace ofStep = reflectometer.withoutNoise(layered(75, 75), pulse.withStimulus(new RaisedCosineStep(2e-9)));
        assertThrows(IllegalArgumentException.class, () -> PeeledProfile.of(ofPulse, 75, LAYER));
        assertThrows(IllegalArgumentException.class, () -> PeeledProfile.of(ofStep, 75, 1e-9));
    }

    /** What loss does to the profile of a uniform line; the numbers stand in the class's own description, rounded. */
    @Test
    void lossLiftsTheProfileByWhatIsStated() {
        assertLift("hardline-500", 0.012, 0.040);
        assertLift("drop-6-foam", 0.041, 0.26);
        assertLift("pair-24", 0.082, 0.280);
        assertLift("cat-5e", 0.085, 0.290);
    }

    private static void assertLift(String id, double at10, double at100) {
        CableType type = Catalogue.standard().type(id);
        double z = type.section().impedanceOhms();
        SimulatedPort port = new SimulatedPort(TestCables.cable(type, 200, new FarEnd.Endless(type)), z);
        PeeledProfile profile = PeeledProfile.of(port, 2e-9, 2e-6);
        double perMetre = 2 / (type.section().velocityFraction() * 299_792_458.0);
        assertEquals(at10, profile.ohmsAt(10 * perMetre) / z - 1, 0.3 * at10, id);
        assertEquals(at100, profile.ohmsAt(100 * perMetre) / z - 1, 0.3 * at100, id);
    }
}
