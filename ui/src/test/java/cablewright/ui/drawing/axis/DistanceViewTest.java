// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DistanceViewTest {

    private static final Extent EXTENT = new Extent(0, 150);

    private static DistanceView whole() {
        return new DistanceView(0, 150, 50, 900);
    }

    @Property
    void pixelAndDistanceAreInverse(@ForAll @DoubleRange(min = -50, max = 300) double metres) {
        assertEquals(metres, whole().metres(whole().pixel(metres)), 1e-9);
    }

    @Property
    void zoomingKeepsTheChosenDistanceWhereItIs(
            @ForAll @DoubleRange(min = 20, max = 130) double metres,
            @ForAll @DoubleRange(min = 1, max = 50) double factor) {
        DistanceView zoomed = whole().zoomed(metres, factor, EXTENT);
        assertEquals(whole().pixel(metres), zoomed.pixel(metres), 1e-6);
    }

    @Property
    void noZoomOrPanLeavesTheExtent(
            @ForAll @DoubleRange(min = -10, max = 160) double metres,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double factor,
            @ForAll @DoubleRange(min = -500, max = 500) double pan) {
        DistanceView view = whole().zoomed(metres, factor, EXTENT).panned(pan, EXTENT);
        assertTrue(view.fromMetres() >= -1e-9 && view.toMetres() <= 150 + 1e-9, view.toString());
        assertTrue(view.spanMetres() >= 150 / Extent.DEEPEST_ZOOM * (1 - 1e-6), view.toString());
    }

    @Test
    void showingADistanceMovesTheAxisNoFurtherThanItMust() {
        DistanceView near = new DistanceView(0, 50, 0, 100);
        assertEquals(near, near.showing(30, EXTENT));
        assertEquals(80, near.showing(80, EXTENT).toMetres(), 1e-9);
    }

    @Test
    void anAxisOfNoLengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new DistanceView(5, 5, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new DistanceView(0, 5, 0, 0));
    }
}
