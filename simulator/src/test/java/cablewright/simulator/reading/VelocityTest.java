// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

class VelocityTest {

    /** d = VoP c t/2 at t = 1 µs, by arithmetic with c = 299 792 458 m/s. */
    @Test
    void aMicrosecondThereAndBackIsItsDistance() {
        double[][] table = {{0.66, 98.9315111}, {0.82, 122.914908}, {0.85, 127.411795}, {0.87, 130.409719}};
        for (double[] row : table) {
            Measured found = new VelocityFinding(row[0], 0).metres(Measured.exactly(1e-6));
            assertEquals(row[1], found.value(), 1e-6);
            assertEquals(
                    row[0],
                    VelocityFinding.fromKnownLength(Measured.exactly(row[1]), Measured.exactly(1e-6))
                            .fraction(),
                    1e-8);
        }
    }

    /** 0.82 set for a true 0.85 cable shows 100 m as 96.470588 m. */
    @Test
    void shownDistanceIsPutRightByTheTrueVelocity() {
        Measured put = new VelocityFinding(0.85, 0).metresForShown(Measured.exactly(96.470588), 0.82);
        assertEquals(100, put.value(), 1e-6);
    }

    @Test
    void distanceTakesTheRelativeErrorOfTheVelocity() {
        Measured metres = new VelocityFinding(0.85, 0.0085).metres(Measured.exactly(1e-6));
        assertEquals(0.01 * metres.value(), metres.uncertainty(), 1e-12);
    }

    /** First-order propagation held against draws from normal distributions. */
    @Test
    void uncertaintyIsTheSpreadOfManyMeasurements() {
        Measured spacing = new Measured(50, 0.2);
        Measured first = new Measured(100e-9, 1e-9);
        Measured second = new Measured(492e-9, 1.5e-9);
        VelocityFinding told = VelocityFinding.fromTwoMarks(spacing, first, second);
        SplittableRandom random = new SplittableRandom(1);
        DescriptiveStatistics found = new DescriptiveStatistics();
        for (int i = 0; i < 20_000; i++) {
            found.addValue(
                    VelocityFinding.fromTwoMarks(draw(spacing, random), draw(first, random), draw(second, random))
                            .fraction());
        }
        assertEquals(told.fraction(), found.getMean(), 1e-3 * told.fraction());
        assertEquals(told.uncertainty(), found.getStandardDeviation(), 0.02 * told.uncertainty());
    }

    private static Measured draw(Measured of, SplittableRandom random) {
        return Measured.exactly(of.value() + of.uncertainty() * random.nextGaussian());
    }

    @Test
    void marksInTheWrongOrderAreRefused() {
        Measured early = Measured.exactly(1e-7);
        Measured late = Measured.exactly(2e-7);
        assertThrows(
                IllegalArgumentException.class, () -> VelocityFinding.fromTwoMarks(Measured.exactly(10), late, early));
    }
}
