// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import cablewright.simulator.instrument.Trace;
import java.util.Arrays;

/**
 * A trace thinned for a picture: where many samples fall on one column of pixels, only the first, the least, the most and
 * the last of them are kept, so that no peak is lost however long the record is.
 */
public final class TraceLine {

    private final double[] x;
    private final double[] share;
    private final int count;

    private TraceLine(double[] x, double[] share, int count) {
        this.x = x;
        this.share = share;
        this.count = count;
    }

    /**
     * Thins a trace.
     *
     * @param trace the trace
     * @param view the part of the axis to show; a trace taken at other settings is drawn at its own distances
     * @return the line, with one point beyond each edge where there is one
     */
    public static TraceLine of(Trace trace, DistanceView view) {
        int from = Math.max(0, trace.indexNear(view.fromMetres()) - 1);
        int to = Math.min(trace.count() - 1, trace.indexNear(view.toMetres()) + 1);
        int samples = to - from + 1;
        double x0 = view.pixel(trace.metres(from));
        double dx = samples > 1 ? view.pixel(trace.metres(from + 1)) - x0 : 1;
        return dx > 0.25 ? whole(trace, from, samples, x0, dx) : thinned(trace, from, samples, x0, dx);
    }

    private static TraceLine whole(Trace trace, int from, int samples, double x0, double dx) {
        double[] x = new double[samples];
        double[] share = new double[samples];
        for (int i = 0; i < samples; i++) {
            x[i] = x0 + i * dx;
            share[i] = trace.volts(from + i);
        }
        return new TraceLine(x, share, samples);
    }

    private static TraceLine thinned(Trace trace, int from, int samples, double x0, double dx) {
        int columns = (int) Math.ceil(samples * dx) + 2;
        double[] x = new double[4 * columns];
        double[] share = new double[4 * columns];
        int count = 0;
        int i = 0;
        while (i < samples) {
            double column = Math.floor(x0 + i * dx);
            int last = i;
            int least = i;
            int most = i;
            while (last + 1 < samples && x0 + (last + 1) * dx < column + 1) {
                last++;
                least = trace.volts(from + last) < trace.volts(from + least) ? last : least;
                most = trace.volts(from + last) > trace.volts(from + most) ? last : most;
            }
            int before = -1;
            for (int kept : new int[] {i, Math.min(least, most), Math.max(least, most), last}) {
                if (kept != before) {
                    x[count] = x0 + kept * dx;
                    share[count++] = trace.volts(from + kept);
                    before = kept;
                }
            }
            i = last + 1;
        }
        return new TraceLine(x, share, count);
    }

    /**
     * Returns how many points the line has.
     *
     * @return number of points
     */
    public int count() {
        return count;
    }

    /**
     * Returns where a point is.
     *
     * @param index which, from 0
     * @return pixel along the distance axis
     */
    public double x(int index) {
        return x[index];
    }

    /**
     * Returns how high a point is.
     *
     * @param index which, from 0
     * @return reflection in shares of the outgoing wave
     */
    public double share(int index) {
        return share[index];
    }

    /**
     * Returns all places.
     *
     * @return a fresh array of pixels along the distance axis
     */
    public double[] copyOfX() {
        return Arrays.copyOf(x, count);
    }

    /**
     * Returns all places down the picture.
     *
     * @param scale the vertical axis
     * @return a fresh array of pixels, counted downward
     */
    public double[] copyOfY(PercentScale scale) {
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            y[i] = scale.pixel(share[i]);
        }
        return y;
    }
}
