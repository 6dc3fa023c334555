// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.ui.drawing.track.CableDrawing;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/** Draws the impedance along the cable as a line of steps, on a scale that shows its lowest and its highest. */
final class ImpedancePainter {

    private static final double LEAST_SPAN_SHARE = 0.12;
    private static final double END_STUB = 22;
    private static final double MOST_RATIO = 3;

    private final Track track;
    private double top;
    private double bottom;
    private double low;
    private double high;

    ImpedancePainter(Track track) {
        this.track = track;
    }

    void draw(GraphicsContext g, CableDrawing drawing, double topPixels, double bottomPixels) {
        top = topPixels;
        bottom = bottomPixels;
        scaleTo(drawing);
        drawSteps(g, drawing);
        drawLabels(g, drawing);
    }

    private void scaleTo(CableDrawing drawing) {
        double usual = drawing.usualOhms();
        low = usual;
        high = usual;
        for (CableDrawing.Stretch stretch : drawing.stretches()) {
            double ohms = bounded(stretch.section().impedanceOhms(), usual);
            low = Math.min(low, ohms);
            high = Math.max(high, ohms);
        }
        double least = LEAST_SPAN_SHARE * usual;
        if (high - low < least) {
            double more = (least - (high - low)) / 2;
            low -= more;
            high += more;
        }
    }

    private static double bounded(double ohms, double usual) {
        return Math.max(usual / MOST_RATIO, Math.min(usual * MOST_RATIO, ohms));
    }

    private double y(double ohms) {
        double share = (ohms - low) / (high - low);
        return bottom - Math.max(-0.15, Math.min(1.15, share)) * (bottom - top);
    }

    private void drawSteps(GraphicsContext g, CableDrawing drawing) {
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        double left = track.gutter();
        double right = track.getWidth() - track.rightMargin();
        for (CableDrawing.Stretch stretch : drawing.stretches()) {
            double from = Math.max(left, track.view().pixel(stretch.shownFromMetres()));
            double to = Math.min(right, track.view().pixel(stretch.shownToMetres()));
            if (to >= from) {
                double y = y(stretch.section().impedanceOhms());
                xs.add(from);
                ys.add(y);
                xs.add(to);
                ys.add(y);
            }
        }
        double end = track.view().pixel(drawing.endShownMetres());
        if (end >= left && end <= right) {
            double y = endY(drawing);
            xs.add(end);
            ys.add(y);
            xs.add(Math.min(right, end + END_STUB * track.scale()));
            ys.add(y);
        }
        g.setStroke(track.ink(Ink.PROFILE));
        g.setLineWidth(1.6 * track.scale());
        g.strokePolyline(array(xs), array(ys), xs.size());
    }

    private double endY(CableDrawing drawing) {
        FarEnd end = drawing.farEnd();
        if (end instanceof FarEnd.Open) {
            return y(Double.MAX_VALUE);
        }
        if (end instanceof FarEnd.Short) {
            return y(-Double.MAX_VALUE);
        }
        if (end instanceof FarEnd.Endless endless) {
            return y(endless.type().section().impedanceOhms());
        }
        Lumped load = ((FarEnd.Terminated) end).load();
        return y(load.resistanceOhms().orElse(drawing.usualOhms()));
    }

    private void drawLabels(GraphicsContext g, CableDrawing drawing) {
        g.setFill(track.ink(Ink.FAINT));
        g.setFont(track.smallFont());
        g.setTextAlign(TextAlignment.RIGHT);
        g.setTextBaseline(VPos.CENTER);
        double usual = drawing.usualOhms();
        double x = track.gutter() - 8 * track.scale();
        g.fillText(track.quantities().ohms(usual), x, y(usual));
        double apart = 15 * track.scale();
        double least = extreme(drawing, true);
        double most = extreme(drawing, false);
        if (Math.abs(y(least) - y(usual)) >= apart) {
            g.fillText(track.quantities().ohms(least), x, y(least));
        }
        if (Math.abs(y(most) - y(usual)) >= apart) {
            g.fillText(track.quantities().ohms(most), x, y(most));
        }
    }

    private static double extreme(CableDrawing drawing, boolean least) {
        return drawing.stretches().stream()
                .mapToDouble(stretch -> stretch.section().impedanceOhms())
                .reduce(drawing.usualOhms(), least ? Math::min : Math::max);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
