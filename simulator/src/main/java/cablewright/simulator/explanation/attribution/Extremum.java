// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import java.util.ArrayList;
import java.util.List;

/**
 * A place where a curve turns by more than a given height, and its feet. A foot is the next such turn on a side if the pulse
 * reaches that far. If not, it is where the pulse ends, when the curve has gone by the given height there; else where the
 * curve has come nine tenths of the way to the nearer in height of the two turns beside it, so that a small turn beside a
 * tall echo stands out by its own height.
 *
 * @param index which sample
 * @param leftFoot the sample of its left foot
 * @param rightFoot the sample of its right foot
 */
record Extremum(int index, int leftFoot, int rightFoot) {

    private static final double DOWN = 0.9;

    /** How far a curve stands out here. */
    double standsOut(double[] values) {
        return values[index] - (values[leftFoot] + values[rightFoot]) / 2;
    }

    /** Finds all that differ from the next ones on both sides by at least a height, for a pulse of so many samples. */
    static List<Extremum> of(double[] values, int from, double leastHeight, int reach) {
        List<Integer> turns = turns(values, from, leastHeight);
        List<Extremum> found = new ArrayList<>();
        for (int i = 1; i + 1 < turns.size(); i++) {
            int at = turns.get(i);
            int before = turns.get(i - 1);
            int after = turns.get(i + 1);
            double flank = Math.min(Math.abs(values[before] - values[at]), Math.abs(values[after] - values[at]));
            found.add(new Extremum(
                    at,
                    foot(values, at, before, flank, leastHeight, reach),
                    foot(values, at, after, flank, leastHeight, reach)));
        }
        return found;
    }

    private static int foot(double[] values, int at, int next, double flank, double leastHeight, int reach) {
        if (Math.abs(next - at) <= reach) {
            return next;
        }
        int step = Integer.signum(next - at);
        if (Math.abs(values[at + step * reach] - values[at]) >= leastHeight) {
            return at + step * reach;
        }
        for (int i = at; i != next; i += step) {
            if (Math.abs(values[i] - values[at]) >= DOWN * flank) {
                return i;
            }
        }
        return next;
    }

    /** Where the curve begins, every turn, and the farthest that it came after the last one. */
    private static List<Integer> turns(double[] values, int from, double height) {
        List<Integer> turns = new ArrayList<>();
        int high = from;
        int low = from;
        int way = 0;
        for (int i = from; i < values.length; i++) {
            high = values[i] > values[high] ? i : high;
            low = values[i] < values[low] ? i : low;
            if (way >= 0 && values[high] - values[i] >= height) {
                turns.add(high);
                way = -1;
                low = i;
                high = i;
            } else if (way <= 0 && values[i] - values[low] >= height) {
                turns.add(low);
                way = 1;
                low = i;
                high = i;
            }
        }
        if (way != 0) {
            turns.add(way > 0 ? high : low);
            if (Math.abs(values[turns.get(0)] - values[from]) >= height) {
                turns.add(0, from);
            }
        }
        return turns;
    }
}
