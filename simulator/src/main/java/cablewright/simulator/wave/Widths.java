// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

/** The range of widths and rise times that a stimulus may have. */
final class Widths {

    static final double LEAST_SECONDS = 1e-12;
    static final double MOST_SECONDS = 1e-2;

    private Widths() {}

    static double require(String field, double seconds) {
        if (!(seconds >= LEAST_SECONDS && seconds <= MOST_SECONDS)) {
            throw new IllegalArgumentException(
                    field + " is " + seconds + "; allowed is " + LEAST_SECONDS + " to " + MOST_SECONDS);
        }
        return seconds;
    }
}
