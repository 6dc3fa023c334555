// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

/**
 * What a study varies.
 *
 * @param name where it lies: a path into the cable file, such as {@code /cable/events/pinch/depthFraction}, or a {@link
 *     StudySetting} of the instrument, such as {@code pulse_s}
 * @param from first value, in SI units
 * @param to last value, in SI units
 * @param count how many values a grid takes, 1 to 100000; a random sample leaves it alone
 * @param logarithmic whether values are evenly spaced, or drawn, on a logarithmic scale
 */
public record Parameter(String name, double from, double to, int count, boolean logarithmic) {

    private static final int MOST_VALUES = 100_000;
    private static final int MOST_NAME = 200;

    /** Checks the ranges. */
    public Parameter {
        if (name == null
                || name.length() > MOST_NAME
                || !isPath(name) && StudySetting.ofColumn(name).isEmpty()) {
            throw new IllegalArgumentException(
                    "parameter \"" + name + "\" is neither a path into the cable file, such as "
                            + "/cable/events/pinch/depthFraction, nor a setting: " + StudySetting.allColumns());
        }
        if (!Double.isFinite(from) || !Double.isFinite(to)) {
            throw new IllegalArgumentException(
                    "parameter \"" + name + "\" goes from " + from + " to " + to + "; both must be numbers");
        }
        if (count < 1 || count > MOST_VALUES) {
            throw new IllegalArgumentException(
                    "parameter \"" + name + "\" has " + count + " values; allowed is 1 to " + MOST_VALUES);
        }
        if (logarithmic && !(from > 0 && to > 0)) {
            throw new IllegalArgumentException("parameter \"" + name + "\" goes from " + from + " to " + to
                    + "; on a logarithmic scale both must be greater than 0");
        }
    }

    private static boolean isPath(String name) {
        return name.startsWith("/") && name.chars().noneMatch(Character::isISOControl);
    }

    /** Distinguishes a path into the cable file from a setting of the instrument. */
    boolean isInFile() {
        return isPath(name);
    }

    /** A value of the grid. */
    double valueAt(int index) {
        return count == 1 ? from : at((double) index / (count - 1));
    }

    /** The value at a share of the way, 0 to 1; both ends exactly. */
    double at(double share) {
        if (share == 0 || share == 1) {
            return share == 0 ? from : to;
        }
        return logarithmic ? from * Math.pow(to / from, share) : from + share * (to - from);
    }

    String sentence() {
        return name + " from " + Figures.text(from) + " to " + Figures.text(to)
                + (count > 1 ? " in " + count + " values" : "") + (logarithmic ? ", logarithmic" : "");
    }
}
