// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

/** Checks of single numbers; each says which field is wrong, its value, and what is allowed. */
public final class Limits {

    private Limits() {}

    /**
     * Accepts a finite number above zero.
     *
     * @param field name of the field, for the message
     * @param value the number
     * @return the number
     * @throws IllegalArgumentException if it is not finite or not above zero
     */
    public static double positive(String field, double value) {
        return require(value > 0 && Double.isFinite(value), field, value, "a finite number above 0");
    }

    /**
     * Accepts a finite number of zero or more.
     *
     * @param field name of the field, for the message
     * @param value the number
     * @return the number
     * @throws IllegalArgumentException if it is not finite or below zero
     */
    public static double notNegative(String field, double value) {
        return require(value >= 0 && Double.isFinite(value), field, value, "a finite number of 0 or more");
    }

    /**
     * Accepts a number from {@code low} up to and including {@code high}.
     *
     * @param field name of the field, for the message
     * @param value the number
     * @param low least value allowed
     * @param high greatest value allowed
     * @return the number
     * @throws IllegalArgumentException if it is outside or not a number
     */
    public static double within(String field, double value, double low, double high) {
        return require(value >= low && value <= high, field, value, "from " + low + " to " + high);
    }

    /**
     * Accepts a number from {@code low} up to but not including {@code high}.
     *
     * @param field name of the field, for the message
     * @param value the number
     * @param low least value allowed
     * @param high first value no longer allowed
     * @return the number
     * @throws IllegalArgumentException if it is outside or not a number
     */
    public static double below(String field, double value, double low, double high) {
        return require(value >= low && value < high, field, value, "from " + low + " to less than " + high);
    }

    /**
     * Accepts a number if a condition holds.
     *
     * @param holds whether the number is allowed
     * @param field name of the field, for the message
     * @param value the number
     * @param allowed what is allowed, in words
     * @return the number
     * @throws IllegalArgumentException if the condition does not hold
     */
    public static double require(boolean holds, String field, double value, String allowed) {
        if (!holds) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + allowed + ".");
        }
        return value;
    }
}
