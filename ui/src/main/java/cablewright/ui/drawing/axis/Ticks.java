// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import java.util.ArrayList;
import java.util.List;

/**
 * Marks of an axis at round numbers: steps of 1, 2 or 5 times a power of ten.
 *
 * @param step distance of two marks
 * @param digits digits after the point that the marks need
 * @param values the marks from low to high
 */
public record Ticks(double step, int digits, List<Double> values) {

    /** Copies the list. */
    public Ticks {
        values = List.copyOf(values);
    }

    /**
     * Sets marks between two numbers.
     *
     * @param low where the axis begins
     * @param high where it ends, above {@code low}
     * @param most how many marks there is room for, at least 1
     * @return the marks
     */
    public static Ticks between(double low, double high, int most) {
        double rough = (high - low) / Math.max(1, most);
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = 10 * power;
        for (double leading : new double[] {1, 2, 5}) {
            if (leading * power >= rough * (1 - 1e-9)) {
                step = leading * power;
                break;
            }
        }
        List<Double> values = new ArrayList<>();
        long last = (long) Math.floor(high / step + 1e-9);
        for (long i = (long) Math.ceil(low / step - 1e-9); i <= last; i++) {
            values.add(i * step);
        }
        return new Ticks(step, (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9)), values);
    }
}
