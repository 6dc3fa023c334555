// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.words.LengthUnit;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The one distance axis of the three tracks: how much there is, how much is shown, and where the cursor stands. */
public final class AxisViewModel {

    private static final double STEPS_ACROSS = 400;
    private static final double COARSE_STEPS = 20;
    private static final double ZOOM_STEP = 1.5;

    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private final ReadOnlyObjectWrapper<DistanceView> view = new ReadOnlyObjectWrapper<>();
    private final DoubleProperty cursorMetres = new SimpleDoubleProperty();
    private Extent extent;

    /** How far a key moves the cursor. */
    public enum Stride {
        /** One sample of the trace. */
        FINE,
        /** A four-hundredth of what is shown. */
        USUAL,
        /** A twentieth of what is shown. */
        COARSE
    }

    /** Makes an axis of 100 m. */
    public AxisViewModel() {
        extent = Extent.ofRange(100);
        view.set(wholeOf(extent));
    }

    private static DistanceView wholeOf(Extent extent) {
        return new DistanceView(extent.fromMetres(), extent.toMetres(), 0, 1);
    }

    /**
     * Takes another range. What is shown stays, where the new range holds it; otherwise all of the new range is shown.
     *
     * @param rangeMetres the range [m]
     */
    public void setRange(double rangeMetres) {
        Extent next = Extent.ofRange(rangeMetres);
        if (next.equals(extent)) {
            return;
        }
        boolean wasWhole = view.get().spanMetres() >= extent.spanMetres() * (1 - 1e-9);
        boolean fits =
                view.get().fromMetres() >= next.fromMetres() && view.get().toMetres() <= next.toMetres();
        extent = next;
        if (wasWhole || !fits) {
            view.set(wholeOf(next));
        }
        moveCursorTo(cursorMetres.get());
    }

    public Extent extent() {
        return extent;
    }

    /**
     * Returns what is shown, on an axis of one pixel: each track puts it on its own pixels.
     *
     * @return the view
     */
    public ReadOnlyObjectProperty<DistanceView> viewProperty() {
        return view.getReadOnlyProperty();
    }

    /**
     * Returns the position of the cursor.
     *
     * @return distance at the set velocity [m]
     */
    public DoubleProperty cursorMetresProperty() {
        return cursorMetres;
    }

    public ObjectProperty<LengthUnit> unitProperty() {
        return unit;
    }

    /**
     * Moves the cursor.
     *
     * @param metres where to [m]; kept within the extent
     */
    public void moveCursorTo(double metres) {
        cursorMetres.set(Math.max(extent.fromMetres(), Math.min(extent.toMetres(), metres)));
    }

    /**
     * Moves the cursor by a key, and what is shown with it.
     *
     * @param direction 1 toward greater distances, −1 toward smaller ones
     * @param stride how far
     * @param sampleMetres distance of two samples of the trace [m]
     */
    public void stepCursor(int direction, Stride stride, double sampleMetres) {
        showCursorAt(cursorMetres.get() + direction * strideMetres(stride, sampleMetres));
    }

    /**
     * Returns how far a key moves things.
     *
     * @param stride which stride
     * @param sampleMetres distance of two samples of the trace [m]
     * @return distance [m]
     */
    public double strideMetres(Stride stride, double sampleMetres) {
        double usual = view.get().spanMetres() / STEPS_ACROSS;
        return stride == Stride.FINE ? sampleMetres : stride == Stride.USUAL ? usual : COARSE_STEPS * usual;
    }

    /**
     * Moves the cursor, and what is shown with it.
     *
     * @param metres where to [m]
     */
    public void showCursorAt(double metres) {
        moveCursorTo(metres);
        view.set(view.get().showing(cursorMetres.get(), extent));
    }

    /**
     * Shows less, nearer.
     *
     * @param aboutMetres the distance that stays where it is [m]
     */
    public void zoomIn(double aboutMetres) {
        zoomBy(ZOOM_STEP, aboutMetres);
    }

    /**
     * Shows more.
     *
     * @param aboutMetres the distance that stays where it is [m]
     */
    public void zoomOut(double aboutMetres) {
        zoomBy(1 / ZOOM_STEP, aboutMetres);
    }

    /**
     * Shows less or more.
     *
     * @param factor above 1 shows less
     * @param aboutMetres the distance that stays where it is [m]
     */
    public void zoomBy(double factor, double aboutMetres) {
        view.set(view.get().zoomed(aboutMetres, factor, extent));
    }

    /**
     * Shifts what is shown.
     *
     * @param metres toward greater distances [m]
     */
    public void pan(double metres) {
        view.set(view.get().panned(metres, extent));
    }

    /**
     * Shifts by a share of what is shown.
     *
     * @param share 0.5 is half a screen toward greater distances
     */
    public void panByShare(double share) {
        pan(share * view.get().spanMetres());
    }

    /** Shows all. */
    public void showAll() {
        view.set(wholeOf(extent));
    }

    /**
     * Returns whether only a part is shown.
     *
     * @return true after zooming in
     */
    public boolean isZoomed() {
        return view.get().spanMetres() < extent.spanMetres() * (1 - 1e-9);
    }
}
