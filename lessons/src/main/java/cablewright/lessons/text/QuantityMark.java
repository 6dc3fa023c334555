// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.text;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A quantity inside a text, in braces: number, unit and, behind a bar, where the number comes from. Readers see lengths in their
 * own unit, and never what stands behind the bar: <code>{84.2 m}</code> reads "84.2 m" or "276.2 ft", <code>{-24 % | height touch
 * 100ns}</code> reads "−24 %".
 *
 * @param value the number, in the unit
 * @param digits digits after the point
 * @param unit the unit's symbol
 * @param source where the number comes from; empty where it is given
 */
public record QuantityMark(double value, int digits, String unit, Optional<String> source) {

    private static final Pattern MARK =
            Pattern.compile("\\{([-−]?\\d{1,7}(?:\\.(\\d{1,6}))?)\\s(m|%|ns|Ω|dB|MHz)(?:\\s\\|\\s([^{}|]{1,120}))?}");

    /**
     * Marks a length.
     *
     * @param metres the length, not negative [m]
     * @param digits digits after the point
     * @return such as <code>{84.2 m}</code>
     */
    public static String of(double metres, int digits) {
        return String.format(Locale.ROOT, "{%." + digits + "f m}", metres);
    }

    /**
     * Finds the quantities of a text.
     *
     * @param text the text
     * @return its quantities, in order
     */
    public static Stream<QuantityMark> in(String text) {
        return MARK.matcher(text).results().map(QuantityMark::of);
    }

    private static QuantityMark of(MatchResult found) {
        return new QuantityMark(
                Double.parseDouble(found.group(1).replace('−', '-')),
                found.group(2) == null ? 0 : found.group(2).length(),
                found.group(3),
                Optional.ofNullable(found.group(4))
                        .map(source -> source.replaceAll("\\s+", " ").strip()));
    }

    /**
     * Writes the quantities of a text for a reader.
     *
     * @param text a text with marked quantities, or without any
     * @param written writes a quantity
     * @return the text to read
     */
    public static String replaced(String text, Function<QuantityMark, String> written) {
        return MARK.matcher(text).replaceAll(found -> Matcher.quoteReplacement(written.apply(of(found))));
    }
}
