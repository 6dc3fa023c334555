// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.ui.desktop.shell.Examples;
import org.junit.jupiter.api.Test;

class ReducedCurveTest {

    private final Trace trace = new Reflectometer(Instrument.usual(75))
            .measure(new SimulatedPort(Examples.cable(), 75), Examples.settings(), 1);

    @Test
    void thinningKeepsEveryPeakOfTheTrace() {
        for (double width : new double[] {40, 300, 900}) {
            ReducedCurve line = ReducedCurve.of(trace, new DistanceView(0, 150, 0, width));
            double least = 0;
            double most = 0;
            for (int i = 0; i < line.count(); i++) {
                least = Math.min(least, line.value(i));
                most = Math.max(most, line.value(i));
            }
            double trueLeast = 0;
            double trueMost = 0;
            for (int i = trace.indexNear(0); i <= trace.indexNear(150); i++) {
                trueLeast = Math.min(trueLeast, trace.volts(i));
                trueMost = Math.max(trueMost, trace.volts(i));
            }
            assertEquals(trueLeast, least, 0);
            assertEquals(trueMost, most, 0);
            assertTrue(line.count() <= 2 * (width + 3), "at most two points for each column");
        }
    }

    @Test
    void pointsRunFromLeftToRightAndStandAtTheirDistances() {
        DistanceView view = new DistanceView(80, 90, 100, 800);
        ReducedCurve line = ReducedCurve.of(trace, view);
        for (int i = 0; i < line.count(); i++) {
            assertTrue(i == 0 || line.x(i) > line.x(i - 1));
            assertEquals(trace.voltsAt(view.metres(line.x(i))), line.value(i), 1e-9);
        }
        assertTrue(line.x(0) <= 100 && line.x(line.count() - 1) >= 900, "the line reaches both edges");
    }
}
