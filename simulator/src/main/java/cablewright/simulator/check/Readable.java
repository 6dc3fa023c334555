// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers and texts as a message shows them. A number that somebody may have typed is shown digit by digit; one with more
 * digits than people type comes from arithmetic and is rounded.
 */
public final class Readable {

    private static final int MOST_TYPED_DIGITS = 9;
    private static final int ROUNDED_DIGITS = 6;
    private static final int LEAST_PLAIN_EXPONENT = -4;
    private static final int MOST_PLAIN_EXPONENT = 14;
    private static final int MOST_QUOTED = 60;

    private Readable() {}

    /** Returns a number, rounded to six digits where it has more than nine. */
    public static String number(double value) {
        return rounded(value, RoundingMode.HALF_EVEN);
    }

    /** Returns a number as {@link #number(double)} does, with all its digits where it would look like another one. */
    public static String number(double value, double other) {
        String shown = number(value);
        return value != other && shown.equals(number(other)) ? exact(value) : shown;
    }

    /** Returns a number with all its digits. */
    public static String exact(double value) {
        return Double.isFinite(value) ? digits(decimal(value)) : Double.toString(value);
    }

    /** Returns a number as {@link #number(double)} does, but never rounds it to less. */
    static String noLess(double value) {
        return rounded(value, RoundingMode.CEILING);
    }

    /** Returns a number as {@link #number(double)} does, but never rounds it to more. */
    static String noMore(double value) {
        return rounded(value, RoundingMode.FLOOR);
    }

    private static String rounded(double value, RoundingMode mode) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal exact = decimal(value);
        return digits(
                exact.precision() > MOST_TYPED_DIGITS ? exact.round(new MathContext(ROUNDED_DIGITS, mode)) : exact);
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros();
    }

    private static String digits(BigDecimal value) {
        BigDecimal shortest = value.stripTrailingZeros();
        int exponent = shortest.precision() - shortest.scale() - 1;
        if (shortest.signum() == 0 || exponent >= LEAST_PLAIN_EXPONENT && exponent <= MOST_PLAIN_EXPONENT) {
            return shortest.toPlainString();
        }
        return shortest.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }

    /** Returns a text in quotation marks, shortened, with its control characters made visible. */
    public static String quoted(String text) {
        String head = text.length() > MOST_QUOTED ? text.substring(0, MOST_QUOTED) + "…" : text;
        StringBuilder shown = new StringBuilder("\"");
        head.codePoints().forEach(point -> {
            if (Characters.isPrintable(point)) {
                shown.appendCodePoint(point);
            } else {
                shown.append(String.format("\\u%04x", point));
            }
        });
        return shown.append('"').toString();
    }
}
