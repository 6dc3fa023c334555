// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;

/**
 * How a study chooses its rows: every combination of the parameters' values, or points drawn at random. Each row is known
 * by its number alone, so that any shard can compute it.
 *
 * @param randomRows how many rows are drawn, 1 to 100 million; absent for a grid
 * @param seed seed of the draw
 */
public record Sampling(OptionalInt randomRows, long seed) {

    static final int MOST_ROWS = 100_000_000;
    private static final long STRIDE = 0x9E3779B97F4A7C15L;

    /** Refuses a number of rows out of bounds. */
    public Sampling {
        randomRows.ifPresent(rows -> {
            if (rows < 1 || rows > MOST_ROWS) {
                throw new IllegalArgumentException("a study has " + rows + " rows; allowed is 1 to " + MOST_ROWS);
            }
        });
    }

    /**
     * Every combination.
     *
     * @return a grid
     */
    public static Sampling grid() {
        return new Sampling(OptionalInt.empty(), 0);
    }

    /**
     * Points drawn evenly between the ends of each parameter.
     *
     * @param rows how many
     * @param seed seed of the draw
     * @return a random sample
     */
    public static Sampling random(int rows, long seed) {
        return new Sampling(OptionalInt.of(rows), seed);
    }

    int rows(List<Parameter> parameters) {
        if (randomRows.isPresent()) {
            return randomRows.getAsInt();
        }
        long rows = 1;
        for (Parameter parameter : parameters) {
            rows *= parameter.count();
            if (rows > MOST_ROWS) {
                throw new IllegalArgumentException("the grid has more than " + MOST_ROWS + " rows; take fewer values");
            }
        }
        return (int) rows;
    }

    /** The values of a row; in a grid the last parameter changes fastest. */
    double[] values(List<Parameter> parameters, int row) {
        double[] values = new double[parameters.size()];
        if (randomRows.isPresent()) {
            SplittableRandom random = new SplittableRandom(seed + STRIDE * (row + 1L));
            for (int i = 0; i < values.length; i++) {
                values[i] = parameters.get(i).at(random.nextDouble());
            }
            return values;
        }
        int left = row;
        for (int i = values.length - 1; i >= 0; i--) {
            values[i] = parameters.get(i).valueAt(left % parameters.get(i).count());
            left /= parameters.get(i).count();
        }
        return values;
    }

    String sentence() {
        return randomRows.isPresent() ? "random with seed " + seed : "grid";
    }
}
