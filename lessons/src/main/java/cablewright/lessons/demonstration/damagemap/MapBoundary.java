// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import java.util.ArrayList;
import java.util.List;

/**
 * The line on a map that parts what is at least so visible from what is less, found by marching squares (W. E. Lorensen and
 * H. E. Cline, SIGGRAPH 1987, in two dimensions; from memory). Where noise is what hides, the line runs where the contrast
 * passes its threshold, on the logarithm between two cells; elsewhere half way.
 */
public final class MapBoundary {

    private final DamageMap map;
    private final Visibility least;
    private final double threshold;
    private final List<Segment> segments = new ArrayList<>();

    /**
     * A piece of the line, in rows and columns of the map; whole numbers are the middles of cells.
     *
     * @param fromColumn where it begins
     * @param fromRow where it begins
     * @param toColumn where it ends
     * @param toRow where it ends
     */
    public record Segment(double fromColumn, double fromRow, double toColumn, double toRow) {}

    private MapBoundary(DamageMap map, Visibility least) {
        this.map = map;
        this.least = least;
        double sigmas =
                least == Visibility.CLEAR ? VisibilityRules.CLEAR_OVER_NOISE : VisibilityRules.MARGINAL_OVER_NOISE;
        this.threshold = sigmas * map.noiseVolts();
    }

    /**
     * Finds the line.
     *
     * @param map a map
     * @param least clear or marginal: the least visibility on the one side
     * @return its pieces, in no order
     */
    public static List<Segment> of(DamageMap map, Visibility least) {
        MapBoundary boundary = new MapBoundary(map, least);
        for (int row = 0; row + 1 < map.settings().rows(); row++) {
            for (int column = 0; column + 1 < map.settings().columns(); column++) {
                boundary.square(row, column);
            }
        }
        return boundary.segments;
    }

    private boolean seen(int row, int column) {
        return map.visibility(row, column).compareTo(least) <= 0;
    }

    /** The crossings of a square's four sides, in turn; two of them make a piece, four make two. */
    private void square(int row, int column) {
        double[][] crossings = new double[4][];
        int found = 0;
        int[][] corners = {{row, column}, {row, column + 1}, {row + 1, column + 1}, {row + 1, column}};
        for (int side = 0; side < 4; side++) {
            int[] a = corners[side];
            int[] b = corners[(side + 1) % 4];
            if (seen(a[0], a[1]) != seen(b[0], b[1])) {
                double share = share(a, b);
                crossings[found++] = new double[] {a[1] + share * (b[1] - a[1]), a[0] + share * (b[0] - a[0])};
            }
        }
        for (int i = 0; i + 1 < found; i += 2) {
            double[] from = crossings[i];
            double[] to = crossings[i + 1];
            segments.add(new Segment(from[0], from[1], to[0], to[1]));
        }
    }

    private double share(int[] a, int[] b) {
        double before = Math.log(map.contrastVolts(a[0], a[1]) / threshold);
        double after = Math.log(map.contrastVolts(b[0], b[1]) / threshold);
        boolean crosses = Double.isFinite(before) && Double.isFinite(after) && before * after < 0;
        return crosses ? before / (before - after) : 0.5;
    }
}
