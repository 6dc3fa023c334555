// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.port.SimulatedPort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReturnLossClassTest {

    private static final double C = 299_792_458.0;

    /** ρ = jωL/(2Z0 + jωL) worked out by hand: 0.754 nH in 75 Ω at 1 GHz is 30 dB; 0.134 pF across the same. */
    @Test
    void thirtyDecibelsAtOneGigahertzAreThreeQuartersOfANanohenry() {
        assertEquals(0.7554e-9, ReturnLossClass.DROP_SPLICE.seriesInductanceHenries(75, 0), 0.002e-9);
        assertEquals(0.1343e-12, ReturnLossClass.DROP_SPLICE.shuntCapacitanceFarads(75, 0), 0.0005e-12);
    }

    /** TIA-568 connecting hardware, limit lines from memory: 24 − 20 log(f/100) at 250 MHz, 28 − 20 log(f/100) at 500 MHz. */
    @Test
    void categoriesAreTheirLimitLinesAtTheTopOfTheBand() {
        assertEquals(24 - 20 * Math.log10(2.5), ReturnLossClass.CATEGORY_6.returnLossDecibels(), 0.005);
        assertEquals(28 - 20 * Math.log10(5), ReturnLossClass.CATEGORY_6A.returnLossDecibels(), 0.005);
    }

    @ParameterizedTest
    @EnumSource(ReturnLossClass.class)
    void theSolverFindsTheReturnLossOfEachClassAtTheTopOfItsBand(ReturnLossClass asked) {
        for (double worse : new double[] {-6, 0, 8}) {
            double wanted = asked.returnLossDecibels() - worse;
            Event coil = new Splice("s", 1, asked.seriesInductanceHenries(75, worse), 0, 0);
            assertEquals(wanted, returnLoss(coil, asked.topHertz()), 0.01);
            double plug = 0.02;
            Event inside = new Connector("s", 1, asked.insideImpedanceOhms(75, plug, worse), plug, 0);
            assertEquals(wanted, returnLoss(inside, asked.topHertz()), 0.01);
        }
    }

    private static double returnLoss(Event event, double hertz) {
        CableType type = TestCables.lossless(75, 0.85 * C);
        Cable cable = TestCables.cable(type, 2, FarEnd.Terminated.byOhms(75), event);
        ComplexArray reflection = new SimulatedPort(cable, 75).sweep(hertz);
        return -20 * Math.log10(reflection.magnitude(0));
    }
}
