// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.util.Arrays;

/** A closed outline of straight pieces, short enough to look round where it is meant to be. */
public final class Outline {

    private static final double PIECE = 2;

    private final double[] xs;
    private final double[] ys;

    private Outline(double[] xs, double[] ys) {
        this.xs = xs;
        this.ys = ys;
    }

    /**
     * An ellipse.
     *
     * @param x across, of its centre
     * @param y down, of its centre
     * @param radiusX half of its width
     * @param radiusY half of its height
     * @return its outline
     */
    public static Outline ellipse(double x, double y, double radiusX, double radiusY) {
        int corners = corners(2 * Math.PI * Math.max(radiusX, radiusY));
        double[] xs = new double[corners];
        double[] ys = new double[corners];
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * i / corners;
            xs[i] = x + radiusX * Math.cos(turn);
            ys[i] = y + radiusY * Math.sin(turn);
        }
        return new Outline(xs, ys);
    }

    private static int corners(double length) {
        return (int) Math.max(12, Math.min(120, Math.ceil(length / PIECE)));
    }

    /**
     * The part of a disc that lies below a chord.
     *
     * @param x across, of its centre
     * @param y down, of its centre
     * @param radius its radius
     * @param depth how much is cut off at the top, 0 to twice the radius
     * @return its outline
     */
    public static Outline cutDisc(double x, double y, double radius, double depth) {
        double held = Math.max(0, Math.min(2 * radius, depth));
        double half = Math.acos(1 - held / radius);
        int corners = corners(2 * (Math.PI - half) * radius) + 1;
        double[] xs = new double[corners];
        double[] ys = new double[corners];
        for (int i = 0; i < corners; i++) {
            double turn = half + 2 * (Math.PI - half) * i / (corners - 1);
            xs[i] = x + radius * Math.sin(turn);
            ys[i] = y - radius * Math.cos(turn);
        }
        return new Outline(xs, ys);
    }

    /**
     * A box with round corners.
     *
     * @param box the box
     * @param radius radius of its corners
     * @return its outline
     */
    public static Outline roundBox(Box box, double radius) {
        double r = Math.min(radius, Math.min(box.width(), box.height()) / 2);
        int each = corners(2 * Math.PI * r) / 4 + 1;
        double[] xs = new double[4 * each];
        double[] ys = new double[4 * each];
        for (int corner = 0; corner < 4; corner++) {
            double x = corner == 0 || corner == 3 ? box.right() - r : box.x() + r;
            double y = corner < 2 ? box.bottom() - r : box.y() + r;
            for (int i = 0; i < each; i++) {
                double turn = Math.PI / 2 * (corner + (double) i / (each - 1));
                xs[corner * each + i] = x + r * Math.cos(turn);
                ys[corner * each + i] = y + r * Math.sin(turn);
            }
        }
        return new Outline(xs, ys);
    }

    /**
     * A polygon.
     *
     * @param points across and down in turn, of each corner
     * @return its outline
     */
    public static Outline polygon(double... points) {
        double[] xs = new double[points.length / 2];
        double[] ys = new double[points.length / 2];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = points[2 * i];
            ys[i] = points[2 * i + 1];
        }
        return new Outline(xs, ys);
    }

    double[] xs() {
        return xs.clone();
    }

    double[] ys() {
        return ys.clone();
    }

    double[] closedXs() {
        return closed(xs);
    }

    double[] closedYs() {
        return closed(ys);
    }

    private static double[] closed(double[] values) {
        double[] closed = Arrays.copyOf(values, values.length + 1);
        closed[values.length] = values[0];
        return closed;
    }
}
