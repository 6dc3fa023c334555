// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.List;

/**
 * One axis of a plot.
 *
 * @param label what it measures, and in which unit
 * @param from where it begins
 * @param to where it ends, more than where it begins
 * @param logarithmic whether it is logarithmic; both ends are above 0 then
 */
public record Axis(String label, double from, double to, boolean logarithmic) {

    private static final double[] LEADING = {1, 2, 5};

    /** Refuses an axis of no length. */
    public Axis {
        if (!(to > from) || logarithmic && !(from > 0)) {
            throw new IllegalArgumentException("the axis \"" + label + "\" goes from " + from + " to " + to
                    + "; it must rise, and begin above 0 if it is logarithmic");
        }
    }

    /**
     * Makes a linear axis.
     *
     * @param label what it measures, and in which unit
     * @param from where it begins
     * @param to where it ends
     * @return the axis
     */
    public static Axis linear(String label, double from, double to) {
        return new Axis(label, from, to, false);
    }

    /**
     * Makes a logarithmic axis.
     *
     * @param label what it measures, and in which unit
     * @param from where it begins, above 0
     * @param to where it ends
     * @return the axis
     */
    public static Axis logarithmic(String label, double from, double to) {
        return new Axis(label, from, to, true);
    }

    /**
     * A mark of the axis.
     *
     * @param value where it stands
     * @param text its number
     */
    public record Tick(double value, String text) {}

    /**
     * Returns the share of the way along the axis.
     *
     * @param value a value
     * @return 0 where the axis begins, 1 where it ends
     */
    public double share(double value) {
        return logarithmic ? Math.log(value / from) / Math.log(to / from) : (value - from) / (to - from);
    }

    /**
     * Returns the value at a share of the way along the axis.
     *
     * @param share 0 where the axis begins, 1 where it ends
     * @return the value
     */
    public double valueAt(double share) {
        return logarithmic ? from * Math.pow(to / from, share) : from + share * (to - from);
    }

    /**
     * Chooses round marks.
     *
     * @param most how many have room
     * @return the marks in rising order
     */
    public List<Tick> ticks(int most) {
        List<Tick> ticks = new ArrayList<>();
        if (!logarithmic) {
            Ticks round = Ticks.between(from, to, most);
            round.values().forEach(v -> ticks.add(new Tick(v, Quantities.number(v, round.digits()))));
            return ticks;
        }
        boolean crowded = Math.log10(to / from) * LEADING.length > most;
        for (int power = (int) Math.floor(Math.log10(from)); Math.pow(10, power) <= to; power++) {
            for (double leading : LEADING) {
                double value = leading * Math.pow(10, power);
                boolean within = value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9);
                if (within && (leading == 1 || !crowded)) {
                    ticks.add(new Tick(value, Quantities.number(value, Math.max(0, -power))));
                }
            }
        }
        return ticks;
    }
}
