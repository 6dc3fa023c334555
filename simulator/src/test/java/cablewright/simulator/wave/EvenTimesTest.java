// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.port.SimulatedPort;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against the lattice (bounce) diagram of a lossless line between two resistors, a closed form: the wave at the port is
 * r f(t) + (1 − r²) g Σ (−r g)^k f(t − (k+1)T), with r at the source and g at the load (for instance Johnson & Graham,
 * High-Speed Signal Propagation, 2003, chapter on reflections; the sum follows from first principles).
 */
class EvenTimesTest {

    private static final double SOURCE = 150;
    private static final double LOAD = 100;
    private static final double LINE = 75;
    private static final double LENGTH = 100;

    private static final double THERE_AND_BACK = 2 * LENGTH / (0.85 * 299_792_458.0);

    /** A stimulus, the largest error that is stated for it, and the largest at the very corner of an echo. */
    record Stated(Stimulus stimulus, double error, double atCorner) {}

    static List<Stated> stimuli() {
        return List.of(
                new Stated(new RaisedCosineStep(2e-9), 2e-9, 1e-7),
                new Stated(new RectangularPulse(20e-9, 2e-9), 2e-9, 1e-7),
                new Stated(new HalfSine(5e-9), 2e-9, 3e-7),
                new Stated(new GaussianPulse(5e-9), 2e-9, 2e-9),
                new Stated(new GaussianStep(2e-9), 2e-9, 2e-9));
    }

    private static SimulatedPort port() {
        Run run = new Run(Catalogue.standard().type("lossless-75"), LENGTH);
        return new SimulatedPort(new Cable("lattice", List.of(run), List.of(), FarEnd.Terminated.byOhms(LOAD)), SOURCE);
    }

    private static double lattice(Stimulus stimulus, double seconds) {
        double r = (LINE - SOURCE) / (LINE + SOURCE);
        double g = (LOAD - LINE) / (LOAD + LINE);
        double sum = r * stimulus.at(seconds);
        double size = (1 - r * r) * g;
        for (int k = 1; k < 60; k++) {
            sum += size * stimulus.at(seconds - k * THERE_AND_BACK);
            size *= -r * g;
        }
        return sum;
    }

    private static double error(EvenTimes times, Stimulus stimulus, int index) {
        return Math.abs(times.reflected().sample(index)
                - lattice(stimulus, times.reflected().time(index)));
    }

    /** Whether an echo has a corner within an eighth of an edge, that of the launch left out. */
    private static boolean nearCorner(Stimulus stimulus, double seconds) {
        double edge = stimulus.shortestEdgeSeconds();
        double[] corners = {0, edge, stimulus.widthSeconds(), stimulus.widthSeconds() + edge, stimulus.settledSeconds()
        };
        return Arrays.stream(corners)
                .map(corner -> (seconds - corner) / THERE_AND_BACK)
                .anyMatch(k -> k > 0.5 && Math.abs(k - Math.rint(k)) * THERE_AND_BACK < edge / 8);
    }

    @ParameterizedTest
    @MethodSource("stimuli")
    void valuesAreThoseOfTheLatticeAtExactlyTheTimesAsked(Stated stated) {
        for (int count : new int[] {3, 1999, 4001}) {
            double last = 3.37e-6;
            EvenTimes times = EvenTimes.of(port(), stated.stimulus(), last, count);
            assertEquals(last, times.reflected().time(count - 1), 1e-12 * last);
            assertTrue(times.samplesPerEdge() >= EvenTimes.FINE_SAMPLES_PER_EDGE);
            for (int i = 0; i < count; i++) {
                double allowed =
                        nearCorner(stated.stimulus(), times.reflected().time(i)) ? stated.atCorner() : stated.error();
                assertEquals(0, error(times, stated.stimulus(), i), allowed, stated.stimulus() + " of " + count);
            }
        }
    }

    /** Where an echo begins, on a grid that has a sample just there. */
    @ParameterizedTest
    @MethodSource("stimuli")
    void cornersOfEchoesAreAsExactAsStated(Stated stated) {
        EvenTimes times = EvenTimes.of(port(), stated.stimulus(), 2 * THERE_AND_BACK, 4001);
        assertEquals(0, error(times, stated.stimulus(), 2000), stated.atCorner());
        assertEquals(0, error(times, stated.stimulus(), 0), 2e-9);
    }

    @Test
    void aLongRecordIsTakenMoreCoarselyAndTooLongARecordIsRefused() {
        EvenTimes coarse = EvenTimes.of(port(), new RaisedCosineStep(1e-9), 20e-6, 4001);
        assertTrue(coarse.samplesPerEdge() < EvenTimes.FINE_SAMPLES_PER_EDGE && coarse.samplesPerEdge() >= 20);
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> EvenTimes.of(port(), new RaisedCosineStep(1e-12), 1e-3, 4001));
        assertTrue(refusal.getMessage().contains("choose a shorter range"), refusal.getMessage());
    }
}
