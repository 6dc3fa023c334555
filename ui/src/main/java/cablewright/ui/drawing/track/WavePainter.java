// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import java.util.Arrays;

/** Draws the wave on the line at one moment, as high as the gain that is set makes it; what is higher is cut off. */
public final class WavePainter {

    private static final double MIDDLE = 50;
    private static final double HALF = 24;

    private final TrackSheet sheet;

    /**
     * Prepares to draw.
     *
     * @param sheet where
     */
    public WavePainter(TrackSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Draws one moment.
     *
     * @param play the wave
     * @param frame the moment
     * @param clipVolts what is as high as the lane [V]
     */
    public void draw(WavePlay play, int frame, double clipVolts) {
        double middle = sheet.top() + MIDDLE * sheet.scale();
        int count = play.places();
        double[] xs = new double[count + 2];
        double[] ys = new double[count + 2];
        for (int i = 0; i < count; i++) {
            double share = Math.max(-1, Math.min(1, play.volts(frame, i) / clipVolts));
            xs[i] = sheet.pixel(play.shownMetres(i));
            ys[i] = middle - share * HALF * sheet.scale();
        }
        xs[count] = xs[count - 1];
        xs[count + 1] = xs[0];
        ys[count] = middle;
        ys[count + 1] = middle;
        Box lane = new Box(
                sheet.left(),
                sheet.top(),
                sheet.view().widthPixels(),
                sheet.area().height());
        sheet.pen().within(lane, () -> {
            sheet.pen().shape(xs, ys, sheet.ink(Ink.TRACE).faded(0.16));
            sheet.pen()
                    .line(
                            Arrays.copyOf(xs, count),
                            Arrays.copyOf(ys, count),
                            2 * sheet.scale(),
                            0,
                            sheet.ink(Ink.TRACE));
        });
    }
}
