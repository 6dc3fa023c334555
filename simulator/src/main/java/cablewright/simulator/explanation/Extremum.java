package cablewright.simulator.explanation;

import java.util.ArrayList;
import java.util.List;

/**
 * A place where a curve turns by more than a given height, and its feet. A foot is the nearest place on a side where the
 * curve has come nine tenths of the way to the next such turn; if that is farther than the pulse reaches, and the curve has
 * gone by the given height where the pulse ends, it is there.
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
            int left = foot(values, at, turns.get(i - 1));
            int right = foot(values, at, turns.get(i + 1));
            found.add(new Extremum(
                    at, within(values, at, left, leastHeight, reach), within(values, at, right, leastHeight, reach)));
        }
        return found;
    }

    private static int within(double[] values, int at, int foot, double leastHeight, int reach) {
        int end = at + Integer.signum(foot - at) * reach;
        boolean far = Math.abs(foot - at) > reach && Math.abs(values[end] - values[at]) >= leastHeight;
        return far ? end : foot;
    }

    private static int foot(double[] values, int at, int next) {
        double whole = values[next] - values[at];
        int step = Integer.signum(next - at);
        for (int i = at; i != next; i += step) {
            if ((values[i] - values[at]) / whole >= DOWN) {
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
