// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Pen.Anchor;
import java.util.stream.DoubleStream;

/** Draws the impedance along the cable as a line of steps, on a scale that shows its lowest and its highest. */
final class ImpedancePainter {

    private static final double LEAST_SPAN_SHARE = 0.12;
    private static final double END_STUB = 22;
    private static final double MOST_RATIO = 3;
    private static final double LABELS_APART = 15;

    private final TrackSheet sheet;
    private final CableDrawing drawing;
    private final double top;
    private final double bottom;
    private final double usual;
    private final double low;
    private final double high;

    ImpedancePainter(TrackSheet sheet, CableDrawing drawing, double top, double bottom) {
        this.sheet = sheet;
        this.drawing = drawing;
        this.top = top;
        this.bottom = bottom;
        this.usual = drawing.usualOhms();
        double least = Math.max(usual / MOST_RATIO, ohms().min().orElse(usual));
        double most = Math.min(usual * MOST_RATIO, ohms().max().orElse(usual));
        double more = Math.max(0, LEAST_SPAN_SHARE * usual - (most - least)) / 2;
        this.low = least - more;
        this.high = most + more;
    }

    private DoubleStream ohms() {
        return DoubleStream.concat(
                DoubleStream.of(usual), drawing.stretches().stream().mapToDouble(stretch -> stretch.section()
                        .impedanceOhms()));
    }

    void draw() {
        drawSteps();
        drawLabels();
    }

    private double y(double ohms) {
        double share = (ohms - low) / (high - low);
        return bottom - Math.max(-0.15, Math.min(1.15, share)) * (bottom - top);
    }

    private void drawSteps() {
        DoubleStream.Builder xs = DoubleStream.builder();
        DoubleStream.Builder ys = DoubleStream.builder();
        for (CableDrawing.Stretch stretch : drawing.stretches()) {
            double from = sheet.held(stretch.shownFromMetres());
            double to = sheet.held(stretch.shownToMetres());
            if (to > from) {
                double y = y(stretch.section().impedanceOhms());
                xs.add(from).add(to);
                ys.add(y).add(y);
            }
        }
        double end = sheet.pixel(drawing.endShownMetres());
        if (end >= sheet.left() && end <= sheet.right()) {
            double y = endY();
            xs.add(end).add(Math.min(sheet.right(), end + END_STUB * sheet.scale()));
            ys.add(y).add(y);
        }
        double[] across = xs.build().toArray();
        if (across.length > 1) {
            double[] down = ys.build().toArray();
            sheet.pen().line(across, down, 1.6 * sheet.scale(), 0, sheet.ink(Ink.PROFILE));
        }
    }

    private double endY() {
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
        return y(load.resistanceOhms().orElse(usual));
    }

    private void drawLabels() {
        label(usual);
        for (double extreme :
                new double[] {ohms().min().orElse(usual), ohms().max().orElse(usual)}) {
            if (Math.abs(y(extreme) - y(usual)) >= LABELS_APART * sheet.scale()) {
                label(extreme);
            }
        }
    }

    private void label(double ohms) {
        double x = sheet.left() - 8 * sheet.scale();
        sheet.write(sheet.quantities().ohms(ohms), x, y(ohms), Anchor.END, Ink.FAINT);
    }
}
