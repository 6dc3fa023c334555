// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LabelRowsTest {

    @Test
    void aLabelWithRoomStandsUnderItsPlace() {
        Optional<LabelRows.Place> place = new LabelRows(0, 200, 5, 2).next(100, 40);
        assertEquals(Optional.of(new LabelRows.Place(0, 80)), place);
    }

    @Property
    void noLabelCoversAnotherOrLeavesTheTrack(
            @ForAll @Size(max = 30) List<@DoubleRange(min = 0, max = 1000) Double> centres,
            @ForAll @DoubleRange(min = 5, max = 300) double width) {
        LabelRows rows = new LabelRows(0, 1000, 4, 2);
        List<LabelRows.Place> placed = new ArrayList<>();
        for (double centre : centres.stream().sorted().toList()) {
            rows.next(centre, width).ifPresent(placed::add);
        }
        for (int i = 0; i < placed.size(); i++) {
            LabelRows.Place one = placed.get(i);
            assertTrue(one.leftPixels() >= 0 && one.leftPixels() + width <= 1000 + 1e-9, one.toString());
            for (LabelRows.Place other : placed.subList(0, i)) {
                boolean apart =
                        one.row() != other.row() || Math.abs(one.leftPixels() - other.leftPixels()) >= width + 4 - 1e-9;
                assertTrue(apart, one + " covers " + other);
            }
        }
    }
}
