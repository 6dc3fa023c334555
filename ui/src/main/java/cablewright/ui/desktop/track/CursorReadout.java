// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.pen.Box;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * The small box beside the cursor. It stands where it covers neither trace nor pennants, and stays there if it can; in a
 * low plot it is a line of text above it.
 */
final class CursorReadout extends StackPane {

    private static final PseudoClass FLAT = PseudoClass.getPseudoClass("flat");
    private static final double GAP = 14;
    private static final double CLOTH_WEIGHT = 60;

    private final Label place = new Label();
    private final Label height = new Label();
    private final Label impedance = new Label();
    private final Label more = new Label();
    private final Pane tall = new VBox();
    private final Pane flat = new HBox();
    private int corner;

    CursorReadout() {
        getStyleClass().add("cursor-read-out");
        place.getStyleClass().add("cursor-place");
        flat.getStyleClass().add("cursor-flat");
        setManaged(false);
        setMouseTransparent(true);
        setId("cursor-read-out");
    }

    /** Shows a reading in three lines and what else there is to say, or all in one line where the plot is low. */
    void show(TraceTrackViewModel.Reading reading, String further, boolean low) {
        Pane wanted = low ? flat : tall;
        if (!getChildren().contains(wanted)) {
            wanted.getChildren().setAll(place, height, impedance, more);
            getChildren().setAll(wanted);
            pseudoClassStateChanged(FLAT, low);
        }
        place.setText(reading.place());
        height.setText(reading.height());
        impedance.setText(reading.impedance());
        more.setText(further);
        more.setManaged(!further.isEmpty());
        more.setVisible(!further.isEmpty());
        setVisible(true);
    }

    void place(TraceTrack track, ReducedCurve line, PercentScale vertical, Box plot) {
        double cursor = track.view().pixel(track.cursorMetres());
        applyCss();
        double w = Math.ceil(prefWidth(-1));
        double h = Math.ceil(prefHeight(w));
        if (isFlat()) {
            resizeRelocate(track.view().leftPixels(), 0, w, plot.y());
            return;
        }
        int best = corner;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            int candidate = (corner + i) % 4;
            double x = x(candidate, cursor, w, track);
            double y = y(candidate, h, plot, track);
            double covered = covered(line, vertical, x, y, w, h)
                    + (fits(x, w, track) ? 0 : 1e6)
                    + track.flags().clothsUnder(x, y, w, h) * CLOTH_WEIGHT;
            if (covered < least - 1e-9) {
                least = covered;
                best = candidate;
            }
        }
        corner = best;
        resizeRelocate(
                Math.round(within(x(best, cursor, w, track), w, track)), Math.round(y(best, h, plot, track)), w, h);
    }

    boolean isFlat() {
        return getChildren().contains(flat);
    }

    /** A box too wide for either side of the cursor lies across it, but within the track. */
    private static double within(double x, double w, TraceTrack track) {
        return Math.max(track.view().leftPixels(), Math.min(x, track.view().rightPixels() - w));
    }

    private static boolean fits(double x, double w, TraceTrack track) {
        return x >= track.view().leftPixels() && x + w <= track.view().rightPixels();
    }

    /** Corners: right below, right above, left below, left above. */
    private static double x(int corner, double cursor, double w, TraceTrack track) {
        double gap = GAP * track.scale();
        return corner < 2 ? cursor + gap : cursor - gap - w;
    }

    private static double y(int corner, double h, Box plot, TraceTrack track) {
        double margin = 6 * track.scale();
        return corner % 2 == 0 ? plot.bottom() - h - margin : plot.y() + margin;
    }

    /** How much of the trace, in pixels across, would lie under the box. */
    private static double covered(ReducedCurve line, PercentScale vertical, double x, double y, double w, double h) {
        double covered = 0;
        for (int i = 1; i < line.count(); i++) {
            if (line.x(i) >= x && line.x(i) <= x + w) {
                double a = vertical.pixel(line.value(i - 1));
                double b = vertical.pixel(line.value(i));
                if (Math.max(a, b) >= y && Math.min(a, b) <= y + h) {
                    covered += Math.max(1, line.x(i) - line.x(i - 1));
                }
            }
        }
        return covered;
    }
}
