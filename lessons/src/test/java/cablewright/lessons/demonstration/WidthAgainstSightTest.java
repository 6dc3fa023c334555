// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WidthAgainstSightTest {

    private static final CableType DROP = Catalogue.standard().type("drop-6-foam");

    private static WidthAgainstSight demonstration(double pulseSeconds, double apartMetres, int averages) {
        return new WidthAgainstSight(DROP, pulseSeconds, 40, apartMetres, -0.05, averages);
    }

    /** physics.md §14: v w and v w/2 at 0.85 of the speed of light. */
    @ParameterizedTest
    @CsvSource({"2e-9, 0.509647179, 0.254823589", "10e-9, 2.548235893, 1.274117946", "100e-9, 25.48235893, 12.74117946"
    })
    void pulseIsAsLongAsItsWidthTimesTheVelocity(double width, double metres, double half) {
        WidthAgainstSight.Sight sight = demonstration(width, 5, 64).sight(width);
        assertEquals(metres, sight.pulseMetres(), 1e-4 * metres);
        assertEquals(half, sight.resolutionMetres(), 1e-4 * half);
    }

    @Test
    void blindZoneIsAtLeastHalfThePulse() {
        for (double width : new double[] {2e-9, 10e-9, 100e-9}) {
            WidthAgainstSight.Sight sight = demonstration(width, 5, 64).sight(width);
            assertTrue(sight.blindMetres() >= 0.95 * sight.resolutionMetres(), width + " s: " + sight);
        }
    }

    @Test
    void eventsMergeNearerThanHalfThePulseAndPartBeyond() {
        WidthAgainstSight.Outcome near = demonstration(10e-9, 0.4, 64).outcome();
        assertEquals(Optional.of(HiddenReason.MERGED), near.first().reason());
        WidthAgainstSight.Outcome far = demonstration(10e-9, 2.5, 64).outcome();
        assertEquals(Visibility.CLEAR, far.first().visibility());
        assertEquals(Visibility.CLEAR, far.second().visibility());
    }

    @Test
    void widerPulseAndMoreAveragesReachFarther() {
        double narrow = demonstration(5e-9, 5, 64).sight(5e-9).reachMetres();
        double wide = demonstration(5e-9, 5, 64).sight(500e-9).reachMetres();
        double averaged = demonstration(5e-9, 5, 1024).sight(5e-9).reachMetres();
        assertTrue(wide > 1.5 * narrow, narrow + " m, " + wide + " m");
        assertTrue(averaged > 1.2 * narrow, narrow + " m, " + averaged + " m");
    }

    /** The reach is where the very event, taken through the whole cable, stands six times above the noise. */
    @Test
    void eventAtTheReachStandsSixTimesAboveTheNoise() {
        double reach = demonstration(5e-9, 5, 64).sight(5e-9).reachMetres();
        WidthAgainstSight.Outcome there = new WidthAgainstSight(DROP, 5e-9, reach, 50, -0.05, 64).outcome();
        assertEquals(6, there.first().best().contrastVolts() / there.noiseVolts(), 0.2);
    }
}
