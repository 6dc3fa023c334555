// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.text.QuantityMark;
import cablewright.simulator.reading.Measured;
import java.util.Locale;

/**
 * Writes quantities as people read them: a number, a thin choice of digits, a unit. Minus is the real minus sign.
 *
 * @param unit the unit of lengths
 */
public record Quantities(LengthUnit unit) {

    /** Stands between a number and its unit, so that no line breaks there. */
    private static final String GLUE = "\u00a0";

    private static final int MOST_DECIMALS = 5;
    private static final double NANO = 1e-9;
    private static final double MICRO = 1e-6;

    /**
     * Writes a length with one digit after the point.
     *
     * @param metres length [m]
     * @return such as "84.2 m" or "276.2 ft"
     */
    public String length(double metres) {
        return length(metres, 1);
    }

    /**
     * Writes a length.
     *
     * @param metres length [m]
     * @param digits digits after the point
     * @return such as "84.20 m"
     */
    public String length(double metres, int digits) {
        return number(unit.fromMetres(metres), digits) + GLUE + unit.symbol();
    }

    /**
     * Writes a length with the digits that its uncertainty leaves it (JCGM 100:2008, 7.2.6, number from memory).
     *
     * @param metres the length [m]
     * @return number and unit, as many decimals as the uncertainty has
     */
    public String value(Measured metres) {
        return length(metres.value(), decimals(metres));
    }

    /**
     * Writes the uncertainty of a length, to two significant digits.
     *
     * @param metres the length [m]
     * @return number and unit
     */
    public String uncertainty(Measured metres) {
        return length(metres.uncertainty(), decimals(metres));
    }

    private int decimals(Measured metres) {
        double uncertainty = unit.fromMetres(metres.uncertainty());
        int last = uncertainty > 0 ? 1 - (int) Math.floor(Math.log10(uncertainty)) : MOST_DECIMALS;
        return Math.max(0, Math.min(MOST_DECIMALS, last));
    }

    /**
     * Writes a length without digits that say nothing: "150 m", "0.12 m".
     *
     * @param metres length [m]
     * @return the length with at most three digits that count
     */
    public String shortLength(double metres) {
        return significant(unit.fromMetres(metres)) + GLUE + unit.symbol();
    }

    /**
     * Writes a stretch from one place to another.
     *
     * @param fromMetres where it begins [m]
     * @param toMetres where it ends [m]
     * @return such as "101.4–106.0 m"
     */
    public String stretch(double fromMetres, double toMetres) {
        return number(unit.fromMetres(fromMetres), 1) + "–" + length(toMetres);
    }

    /**
     * Writes the marked quantities of a text, lengths in the unit of lengths.
     *
     * @param text a text of a lesson
     * @return the text as people read it
     */
    public String inText(String text) {
        return QuantityMark.replaced(text, this::marked);
    }

    private String marked(QuantityMark mark) {
        return "m".equals(mark.unit())
                ? length(mark.value(), mark.digits())
                : number(mark.value(), mark.digits()) + GLUE + mark.unit();
    }

    /**
     * Writes a time in nanoseconds or, from one microsecond on, in microseconds.
     *
     * @param seconds time [s]
     * @return such as "661 ns" or "1.32 µs"
     */
    public String time(double seconds) {
        return Math.abs(seconds) < MICRO
                ? significant(seconds / NANO) + GLUE + "ns"
                : significant(seconds / MICRO) + GLUE + "µs";
    }

    /**
     * Writes a share of the outgoing wave in percent, with its sign.
     *
     * @param share the share; 0.01 is one percent
     * @return such as "+2.4 %"
     */
    public String percent(double share) {
        double percent = 100 * share;
        int digits = Math.abs(percent) < 0.995 ? 2 : 1;
        String text = number(percent, digits);
        return (percent > 0 && !isZero(text) ? "+" : "") + text + GLUE + "%";
    }

    /**
     * Writes a share as a level in decibels.
     *
     * @param share the share; its sign is dropped
     * @return 20 log10 of it, such as "−32.4 dB"; "no echo" words are the caller's where it is zero
     */
    public String decibels(double share) {
        double decibels = 20 * Math.log10(Math.abs(share));
        return Double.isInfinite(decibels) ? "−∞" + GLUE + "dB" : number(decibels, 1) + GLUE + "dB";
    }

    /**
     * Writes an impedance.
     *
     * @param ohms impedance [Ω]; infinite for an open
     * @return such as "75 Ω", "4.7 Ω" or "∞ Ω"
     */
    public String ohms(double ohms) {
        if (Double.isInfinite(ohms)) {
            return "∞" + GLUE + "Ω";
        }
        return number(ohms, Math.abs(ohms) < 9.95 ? 1 : 0) + GLUE + "Ω";
    }

    /**
     * Writes a number with a fixed count of digits after the point; a result of zero has no sign.
     *
     * @param value the number
     * @param digits digits after the point
     * @return the text
     */
    public static String number(double value, int digits) {
        String text = String.format(Locale.ROOT, "%." + digits + "f", value);
        if (text.startsWith("-")) {
            return isZero(text) ? text.substring(1) : "−" + text.substring(1);
        }
        return text;
    }

    /**
     * Writes a number with at most three digits that count and no needless zeros.
     *
     * @param value the number
     * @return such as "0.12", "5", "12.5", "1250"
     */
    public static String significant(double value) {
        double size = Math.abs(value);
        int digits = size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2;
        String text = number(value, digits);
        if (digits > 0) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return text;
    }

    private static boolean isZero(String text) {
        return text.chars().noneMatch(c -> c >= '1' && c <= '9');
    }
}
