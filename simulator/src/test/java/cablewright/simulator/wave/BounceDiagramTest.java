// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.port.SimulatedPort;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Published bounce-diagram examples at the port. An outgoing wave of 1 V from a source of Rs is a source of 2 V behind Rs,
 * so each published voltage is half of its source's voltage times what is computed here.
 */
class BounceDiagramTest {

    private static final double SHARP_SECONDS = 1e-9;
    private static final double TOLERANCE = 1e-7;

    private static PortVoltage step(Cable cable, double sourceOhms, double recordSeconds) {
        return PortVoltage.of(
                new SimulatedPort(cable, sourceOhms), new RaisedCosineStep(SHARP_SECONDS), recordSeconds, 20);
    }

    private static double total(PortVoltage voltage, double seconds) {
        return voltage.outgoing().at(seconds) + voltage.reflected().at(seconds);
    }

    /** Sadiku, Elements of Electromagnetics, Ex. 11.8 (from memory): 12 V, 100 Ω, line 50 Ω 1e8 m/s 100 m, load 200 Ω. */
    @Test
    void sourceEndFollowsSadikuExample11Point8() {
        Cable line = cable(lossless(50, 1e8), 100, FarEnd.Terminated.byOhms(200));
        PortVoltage voltage = step(line, 100, 9e-6);
        double[] published = {4, 7.2, 7.84, 7.968};
        for (int k = 0; k < published.length; k++) {
            assertEquals(published[k], 6 * total(voltage, (2 * k + 1) * 1e-6), 6 * TOLERANCE);
        }
    }

    /** Paul, Analysis of Multiconductor Transmission Lines, ch. 8: shorted line, 150 Ω source, 100 V pulse of 6 µs. */
    @Test
    void sourceEndFollowsPaulsShortedLine() {
        Cable line = cable(lossless(50, 2e8), 400, new FarEnd.Short());
        PortVoltage voltage = PortVoltage.of(new SimulatedPort(line, 150), new RectangularPulse(6e-6, 4e-9), 20e-6, 20);
        double[] published = {25, -12.5, -37.5, -18.75, 18.75, 9.375, -9.375, -4.6875};
        double[] at = {2e-6, 5e-6, 7e-6, 9e-6, 11e-6, 13e-6, 15e-6, 17e-6};
        for (int k = 0; k < published.length; k++) {
            assertEquals(published[k], 50 * total(voltage, at[k]), 50 * TOLERANCE);
        }
    }

    /**
     * Ulaby, Fundamentals of Applied Electromagnetics, Problem 2.75: 60 V, 100 Ω, line 50 Ω, 1 m at 2c/3, load 25 Ω;
     * waves 20, −6.67, −2.22, 0.74, 0.25 V, added up at the source after each pair.
     */
    @Test
    void sourceEndFollowsUlabyProblem2Point75() {
        double v = 2.0 / 3 * 299_792_458.0;
        Cable line = cable(lossless(50, v), 1, FarEnd.Terminated.byOhms(25));
        PortVoltage voltage = PortVoltage.of(new SimulatedPort(line, 100), new RaisedCosineStep(0.2e-9), 60e-9, 20);
        double trip = 2 / v;
        double first = 20;
        double second = first - 20.0 / 3 - 20.0 / 9;
        double third = second + 20.0 / 27 + 20.0 / 81;
        assertEquals(first, 30 * total(voltage, 0.5 * trip), 30 * TOLERANCE);
        assertEquals(second, 30 * total(voltage, 1.5 * trip), 30 * TOLERANCE);
        assertEquals(third, 30 * total(voltage, 2.5 * trip), 30 * TOLERANCE);
    }

    /** Starr, Cioffi, Silverman, Understanding DSL Technology, ch. 3 (from memory): open stub −1/3, +4/9, −4/27, +4/81. */
    @Test
    void openBranchOfTheSameLineGivesTheStaircaseOfABridgedTap() {
        Cable branch = cable(lossless(100, 2e8), 20, new FarEnd.Open());
        Cable line = cable(lossless(100, 2e8), 400, FarEnd.Terminated.byOhms(100), new BridgedTap("b", 100, branch));
        PortVoltage voltage = step(line, 100, 3e-6);
        double[] levels = {-1.0 / 3, 1.0 / 9, -1.0 / 27, 1.0 / 81};
        for (int k = 0; k < levels.length; k++) {
            assertEquals(levels[k], voltage.reflected().at(1e-6 + (k + 0.5) * 0.2e-6), TOLERANCE);
        }
    }

    /** Physics of a mismatched section 75–60–75, recomputed: −0.111111, +0.109739, +0.0013548. */
    @Test
    void mismatchedSectionGivesItsThreeEchoes() {
        Cable line = new Cable(
                "Three lengths",
                List.of(
                        new Run(lossless(75, 2e8), 100),
                        new Run(lossless(60, 2e8), 20),
                        new Run(lossless(75, 2e8), 100)),
                List.of(),
                FarEnd.Terminated.byOhms(75));
        PortVoltage voltage = step(line, 75, 3e-6);
        double first = voltage.reflected().at(1.1e-6);
        double second = voltage.reflected().at(1.3e-6) - first;
        double third = voltage.reflected().at(1.5e-6) - first - second;
        assertEquals(-0.111111111, first, TOLERANCE);
        assertEquals(0.109739369, second, TOLERANCE);
        assertEquals(0.00135480702, third, TOLERANCE);
    }

    @Test
    void bothEndsOfASymmetricLineSeeTheSame() {
        Cable line = cable(lossless(75, 2e8), 100, new FarEnd.Open(), new Splice("s", 50, 1e-8, 0, 0));
        PortVoltage near = step(line, 75, 2e-6);
        PortVoltage far = step(line.seenFromFarEnd(), 75, 2e-6);
        for (int i = 0; i < near.reflected().count(); i++) {
            assertEquals(near.reflected().sample(i), far.reflected().sample(i), 1e-9);
        }
    }
}
