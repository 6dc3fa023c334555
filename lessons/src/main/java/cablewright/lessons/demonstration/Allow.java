// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

/** Refusals of values that can't be set, naming field, value and what is allowed. */
final class Allow {

    private Allow() {}

    static double between(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + least + " to " + most);
        }
        return value;
    }
}
