// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.util.Locale;

/** Numbers in their one canonical form: the shortest that reads back as the same double; whole ones without a point. */
final class Numbers {

    private static final double MOST_WHOLE = 1e15;

    private Numbers() {}

    static String text(double value) {
        boolean negativeZero = value == 0 && 1 / value < 0;
        if (value == Math.rint(value) && Math.abs(value) < MOST_WHOLE && !negativeZero) {
            return Long.toString((long) value);
        }
        return NumberOutput.toString(value, true).replace(".0E", "e").toLowerCase(Locale.ROOT);
    }
}
