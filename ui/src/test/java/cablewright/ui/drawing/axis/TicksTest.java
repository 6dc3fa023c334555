// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TicksTest {

    @Test
    void aRangeOf150WithRoomForEightHasMarksEvery20() {
        Ticks ticks = Ticks.between(0, 150, 8);
        assertEquals(20, ticks.step(), 1e-12);
        assertEquals(0, ticks.digits());
        assertEquals(List.of(0.0, 20.0, 40.0, 60.0, 80.0, 100.0, 120.0, 140.0), ticks.values());
    }

    @Test
    void marksUnderOneCarryTheDigitsTheyNeed() {
        assertEquals(1, Ticks.between(0, 1, 5).digits());
        assertEquals(2, Ticks.between(0, 0.1, 5).digits());
    }

    @Property
    void neverMoreMarksThanThereIsRoomForAndAllWithinAndRound(
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double low,
            @ForAll @DoubleRange(min = 0.01, max = 1e5) double span,
            @ForAll @IntRange(min = 1, max = 20) int most) {
        Ticks ticks = Ticks.between(low, low + span, most);
        assertTrue(ticks.values().size() <= most + 1, ticks.toString());
        double slack = 1e-6 * (Math.abs(low) + span);
        for (double value : ticks.values()) {
            assertTrue(value >= low - slack && value <= low + span + slack, ticks.toString());
            assertEquals(Math.rint(value / ticks.step()), value / ticks.step(), 1e-6);
        }
        double leading = ticks.step() / Math.pow(10, Math.floor(Math.log10(ticks.step()) + 1e-9));
        assertTrue(List.of(1L, 2L, 5L, 10L).contains(Math.round(leading)), "leading digit " + leading);
    }
}
