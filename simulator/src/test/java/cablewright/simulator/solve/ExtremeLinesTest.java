// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.port.SimulatedPort;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ends of what can be built: right by a closed form, or refused with the reason. */
class ExtremeLinesTest {

    private static final double OHMS = 50;
    private static final double VELOCITY = 2e8;
    private static final double[] SWEEP = {1e3, 1e6, 1e8};

    private static Cable open(double metres, Event... events) {
        return TestCables.cable(TestCables.lossless(OHMS, VELOCITY), metres, new FarEnd.Open(), events);
    }

    /** Open line without loss: Γ = exp(−2jωl/v) (Pozar, Microwave Engineering, 4th ed., section 2.3, from memory). */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 1, 1e4, 1e5})
    void lineOfAnyLengthTurnsThePhase(double metres) {
        Cable cable;
        try {
            cable = open(metres);
        } catch (IllegalArgumentException e) {
            assertTrue(e.getMessage().contains("allowed") || e.getMessage().contains("at most"), e.getMessage());
            return;
        }
        ComplexArray gamma = new SimulatedPort(cable, OHMS).sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            double turned = 4 * Math.PI * SWEEP[k] * metres / VELOCITY;
            assertEquals(Math.cos(turned), gamma.re(k), 1e-9 + 4e-16 * turned);
            assertEquals(-Math.sin(turned), gamma.im(k), 1e-9 + 4e-16 * turned);
        }
    }

    /** A wire in series and next to nothing across change nothing: ρ of 1 GΩ across 50 Ω is −2.5e-8. */
    @Test
    void resistancesOfNothingAndOfAGigaohmAreRight() {
        ComplexArray plain = new SimulatedPort(open(10), OHMS).sweep(SWEEP);
        ComplexArray wire = new SimulatedPort(open(10, new SeriesPart("a", 5, Lumped.resistor(0))), OHMS).sweep(SWEEP);
        ComplexArray leak = new SimulatedPort(open(10, new ShuntPart("a", 5, Lumped.resistor(1e9))), OHMS).sweep(SWEEP);
        ComplexArray bridge = new SimulatedPort(open(10, new ShuntPart("a", 5, Lumped.resistor(0))), OHMS).sweep(SWEEP);
        ComplexArray cut = new SimulatedPort(open(10, new SeriesPart("a", 5, Lumped.resistor(1e9))), OHMS).sweep(SWEEP);
        ComplexArray half = new SimulatedPort(open(5), OHMS).sweep(SWEEP);
        for (int k = 0; k < SWEEP.length; k++) {
            assertEquals(plain.re(k), wire.re(k), 1e-14);
            assertEquals(plain.re(k), leak.re(k), 2e-7);
            assertEquals(half.re(k), cut.re(k), 2e-7);
            assertEquals(-half.re(k), bridge.re(k), 1e-12);
        }
    }

    @Test
    void cableOfAMillionPartsIsRefusedWithTheReason() {
        List<Event> parts = new ArrayList<>();
        for (int i = 0; i < 1_000_000; i++) {
            parts.add(new ShuntPart("p" + i, 1e-3 * i, Lumped.resistor(1e6)));
        }
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> open(1000, parts.toArray(Event[]::new)));
        assertTrue(refused.getMessage().contains("1000000"), refused.getMessage());
    }
}
