// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.referee;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.wave.EvenTimes;
import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The line engine against reference solutions made by other means: chain matrices with 40 digits, power series for lines
 * without loss, an inversion of the Laplace transform of its own. See src/test/python/referee.py, which wrote them.
 */
class RefereeTest {

    private static final double ALLOWED_IN_GAMMA = 1e-9;
    private static final double ALLOWED_IN_TIME = 1e-5;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "periodic",
                "random-200",
                "random-60-open",
                "ringing",
                "loaded-pair-88mH",
                "lossy-300-m",
                "taper-64-steps",
                "branches-lossy",
                "resistor-and-capacitor",
                "relaxing-dielectric",
                "endless-lossy",
                "sections-exact",
                "periodic-exact",
                "branches-exact"
            })
    void engineAgreesInFrequencyAndInTime(String name) throws IOException {
        RefereeCircuit circuit = RefereeCircuit.read(name);
        double[] hertz = circuit.gamma().stream().mapToDouble(row -> row[0]).toArray();
        ComplexArray gamma = circuit.reflection(Frequencies.ofSweep(hertz));
        double worstGamma = 0;
        for (int k = 0; k < hertz.length; k++) {
            double[] row = circuit.gamma().get(k);
            worstGamma = Math.max(worstGamma, Math.hypot(gamma.re(k) - row[1], gamma.im(k) - row[2]));
        }
        int count = circuit.volts().length;
        EvenTimes ours = EvenTimes.of(circuit, circuit.stimulus(), circuit.recordSeconds(), count);
        double worstVolts = 0;
        int at = 0;
        for (int i = 0; i < count; i++) {
            double off = Math.abs(ours.reflected().sample(i) - circuit.volts()[i]);
            at = off > worstVolts ? i : at;
            worstVolts = Math.max(worstVolts, off);
        }
        System.out.printf(
                "%-24s %3d elements: reflection coefficient off by %.1e, voltage by %.1e%n",
                name, circuit.network().size(), worstGamma, worstVolts);
        assertTrue(hertz.length >= 49 && worstGamma <= ALLOWED_IN_GAMMA, "reflection coefficient off by " + worstGamma);
        assertEquals(0, worstVolts, ALLOWED_IN_TIME, "at time " + at + " of " + count);
    }
}
