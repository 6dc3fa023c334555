// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import java.util.Arrays;

/** Draws the wave on the line at one moment, as high as the gain that is set makes it; what is higher is cut off. */
public final class WavePainter {

    private static final double FULL = 0.94;

    private final TrackSheet sheet;
    private final Box lane;

    /**
     * Prepares to draw.
     *
     * @param sheet where
     * @param lane the strip across the sheet that the wave has to itself
     */
    public WavePainter(TrackSheet sheet, Box lane) {
        this.sheet = sheet;
        this.lane = lane;
    }

    /**
     * Draws one moment.
     *
     * @param play the wave
     * @param frame the moment
     * @param clipVolts what is as high as the lane [V]
     */
    public void draw(WavePlay play, int frame, double clipVolts) {
        double middle = lane.y() + lane.height() / 2;
        int count = play.places();
        double[] xs = new double[count + 2];
        double[] ys = new double[count + 2];
        for (int i = 0; i < count; i++) {
            double share = Math.max(-1, Math.min(1, play.volts(frame, i) / clipVolts));
            xs[i] = sheet.pixel(play.shownMetres(i));
            ys[i] = middle - share * FULL * lane.height() / 2;
        }
        xs[count] = xs[count - 1];
        xs[count + 1] = xs[0];
        ys[count] = middle;
        ys[count + 1] = middle;
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
