// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.text;

import java.util.Locale;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length inside a text, which readers see in their own unit. It is written in braces, in metres, with as many digits as
 * are meant: <code>{84.2 m}</code> reads "84.2 m" or "276.2 ft".
 */
public final class LengthMark {

    private static final Pattern MARK = Pattern.compile("\\{(\\d{1,7}(?:\\.(\\d{1,6}))?) m}");

    private LengthMark() {}

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
     * Writes the lengths of a text for a reader.
     *
     * @param text a text with marked lengths, or without any
     * @param written writes a length, given in metres and digits after the point
     * @return the text to read
     */
    public static String replaced(String text, BiFunction<Double, Integer, String> written) {
        return MARK.matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(written.apply(
                        Double.parseDouble(found.group(1)),
                        found.group(2) == null ? 0 : found.group(2).length())));
    }
}
