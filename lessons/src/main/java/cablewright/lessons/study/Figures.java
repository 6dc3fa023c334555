// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import com.fasterxml.jackson.core.io.NumberOutput;

/** Numbers as text, the shortest that reads back as the same double, alike on every machine. */
final class Figures {

    private static final double MOST_WHOLE = 1e15;

    private Figures() {}

    static String text(double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        boolean negativeZero = value == 0 && 1 / value < 0;
        if (value == Math.rint(value) && Math.abs(value) < MOST_WHOLE && !negativeZero) {
            return Long.toString((long) value);
        }
        return NumberOutput.toString(value, true);
    }
}
