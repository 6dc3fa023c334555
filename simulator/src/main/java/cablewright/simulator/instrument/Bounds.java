// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

/** Refusals of values that can't be set, naming field, value and what is allowed. */
final class Bounds {

    private Bounds() {}

    static double between(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + least + " to " + most);
        }
        return value;
    }
}
