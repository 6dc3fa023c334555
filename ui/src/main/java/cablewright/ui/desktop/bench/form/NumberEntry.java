// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.text.Texts;
import cablewright.ui.words.Quantities;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A number as people type it: in a unit, within limits.
 *
 * @param unit the unit's symbol; empty for none
 * @param unitSize how large one of it is in SI units
 * @param least least value, in SI units
 * @param most greatest value, in SI units
 * @param leastIsAllowed whether the least value itself may be; if not, only what is above it
 * @param digits most digits after the point that are shown
 */
public record NumberEntry(String unit, double unitSize, double least, double most, boolean leastIsAllowed, int digits) {

    /**
     * A number from one limit to another, both allowed.
     *
     * @param unit the unit's symbol
     * @param unitSize how large one of it is in SI units
     * @param least least value, in SI units
     * @param most greatest value, in SI units
     * @param digits most digits after the point that are shown
     * @return the entry
     */
    public static NumberEntry between(String unit, double unitSize, double least, double most, int digits) {
        return new NumberEntry(unit, unitSize, least, most, true, digits);
    }

    /**
     * Writes a value as the field shows it.
     *
     * @param value the value, in SI units
     * @return the number in the unit, without the unit
     */
    public String show(double value) {
        String text = String.format(Locale.ROOT, "%." + digits + "f", value / unitSize);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    /**
     * Takes what was typed.
     *
     * @param typed the text; a comma serves as the decimal point, and the unit may stand behind
     * @param texts the sentences of the editors
     * @param set does something with the value, in SI units, and returns what is wrong if it can't be done
     * @return what is wrong; empty where it was taken
     */
    public Optional<String> take(String typed, Texts texts, DoubleFunction<Optional<String>> set) {
        Optional<Double> number = number(typed);
        if (number.isEmpty()) {
            return Optional.of(texts.say("number.none", allowed(texts)));
        }
        double value = number.get();
        boolean enough = leastIsAllowed ? value >= least : value > least;
        return enough && value <= most ? set.apply(value) : Optional.of(texts.say("number.outside", allowed(texts)));
    }

    private Optional<Double> number(String typed) {
        String plain = typed.strip().replace('−', '-').replace(',', '.');
        if (!unit.isEmpty() && plain.endsWith(unit)) {
            plain = plain.substring(0, plain.length() - unit.length()).strip();
        }
        try {
            // Through the decimal digits, so that 31.4 m reads back as 31.4 and 2 ns as 2e-9.
            double value =
                    new BigDecimal(plain).multiply(BigDecimal.valueOf(unitSize)).doubleValue();
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private String allowed(Texts texts) {
        String behind = unit.isEmpty() ? "" : "\u00a0" + unit;
        return texts.say(
                leastIsAllowed ? "number.from" : "number.above",
                Quantities.significant(least / unitSize),
                Quantities.significant(most / unitSize) + behind);
    }
}
