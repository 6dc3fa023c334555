// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

/** Refusals of values that can't be, naming field, value and what is allowed. */
final class Checks {

    private Checks() {}

    static double between(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + least + " to " + most);
        }
        return value;
    }

    static double above(String field, double value, double floor) {
        if (!(value > floor && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(field + " is " + value + "; it must be finite and above " + floor);
        }
        return value;
    }

    static <T> T present(String field, T value) {
        if (value == null) {
            throw new IllegalArgumentException(field + " is missing; it must be given");
        }
        return value;
    }
}
