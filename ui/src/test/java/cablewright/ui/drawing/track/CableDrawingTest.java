// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.shell.Examples;
import java.util.List;
import org.junit.jupiter.api.Test;

class CableDrawingTest {

    private static final double TOP_HERTZ = 1e9;

    private final Cable cable = Examples.cable();

    private CableDrawing drawn(LineEnd end, double velocity) {
        return CableDrawing.of(cable, end, velocity, TOP_HERTZ);
    }

    /** Shown distance is set velocity times travel time, so sound cable shows at true distance times set over true velocity. */
    @Test
    void soundCableShowsAtSetOverTrueVelocity() {
        double trueVelocity = cable.runs().get(0).type().section().velocityFraction();
        double splice = drawn(LineEnd.NEAR, 0.80).marks().get(0).shownFromMetres();
        assertEquals(31.4 * 0.80 / trueVelocity, splice, 1e-6);
    }

    @Test
    void aSoakedLengthShowsLongerThanItIs() {
        double trueVelocity = cable.runs().get(0).type().section().velocityFraction();
        CableDrawing.Mark water = drawn(LineEnd.NEAR, trueVelocity).marks().get(2);
        assertTrue(water.shownToMetres() - water.shownFromMetres() > 4.6, "water slows the wave");
    }

    @Test
    void fromTheFarEndTheLastEventComesFirst() {
        CableDrawing drawing = drawn(LineEnd.FAR, 0.85);
        List<String> ids =
                drawing.marks().stream().map(mark -> mark.event().id()).toList();
        assertEquals(List.of("W1", "P1", "S1"), ids);
    }

    @Test
    void thereIsACutOfSoundCableAndOneOfEachCondition() {
        CableDrawing drawing = drawn(LineEnd.NEAR, 0.85);
        assertEquals(3, drawing.cuts().size());
        assertEquals(
                1, drawing.cuts().stream().filter(cut -> cut.event().isEmpty()).count());
        double sound = cable.runs().get(0).type().section().impedanceOhms();
        assertEquals(sound, drawing.usualOhms(), 1e-9);
        drawing.cuts().stream()
                .filter(cut -> cut.event().isPresent())
                .forEach(cut -> assertTrue(cut.section().impedanceOhms() < sound, cut.toString()));
    }
}
