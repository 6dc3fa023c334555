// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.text.Texts;
import cablewright.ui.quantity.Quantity;
import cablewright.ui.words.LengthUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * The unit in which a dial is read and typed.
 *
 * @param symbol its symbol
 * @param inSi how much one of it is in SI units
 */
public record DialUnit(String symbol, double inSi) {

    private static final MathContext DIGITS = new MathContext(4);
    private static final double CENTI = 1e-2;

    static DialUnit of(Dial dial, LengthUnit length) {
        switch (dial.measure()) {
            case LENGTH:
                return new DialUnit(length.symbol(), length.toMetres(1));
            case RESISTANCE:
                return new DialUnit("Ω", 1);
            case SHARE:
                return new DialUnit("%", CENTI);
            case FACTOR:
                return new DialUnit("×", 1);
            case INDUCTANCE:
                return dial.travel().to() < 1e-4 ? new DialUnit("nH", 1e-9) : new DialUnit("mH", 1e-3);
            case CAPACITANCE:
                return dial.travel().to() < 5e-9 ? new DialUnit("pF", 1e-12) : new DialUnit("nF", 1e-9);
            case FREQUENCY:
                return new DialUnit("MHz", 1e6);
            case LEVEL:
                return new DialUnit("dB", 1);
            case TEMPERATURE:
                return new DialUnit("°C", 1);
            default:
                return new DialUnit("S/m", 1);
        }
    }

    /** Writes a value, given in SI units, as it is typed: a number without its unit. */
    String number(double si) {
        BigDecimal value = new BigDecimal(si / inSi, DIGITS);
        boolean isLength = symbol.equals("m") || symbol.equals("ft");
        if (isLength && value.abs().compareTo(BigDecimal.ONE) >= 0) {
            value = new BigDecimal(si / inSi).setScale(2, java.math.RoundingMode.HALF_UP);
        }
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** Writes a value with its unit. */
    String text(double si) {
        return number(si) + "\u00a0" + symbol;
    }

    /**
     * Reads what was typed, with this unit or with another that the quantity takes.
     *
     * @throws IllegalArgumentException with a sentence, if it is no number
     */
    double parse(String typed, Dial dial, Texts texts) {
        String text =
                typed.replace('\u00a0', ' ').strip().replace('\u2212', '-').replace(',', '.');
        String bare = text.endsWith(symbol)
                ? text.substring(0, text.length() - symbol.length()).strip()
                : text;
        try {
            double value = Double.parseDouble(bare);
            if (Double.isFinite(value) && bare.matches("[-+0-9.eE]+")) {
                return value * inSi;
            }
        } catch (NumberFormatException e) {
            // Perhaps it has another unit.
        }
        try {
            switch (dial.measure()) {
                case LENGTH:
                    return Quantity.LENGTH.parse(text);
                case RESISTANCE:
                    return Quantity.RESISTANCE.parse(text);
                case FREQUENCY:
                    return Quantity.FREQUENCY.parse(text);
                default:
                    throw new IllegalArgumentException(text.toLowerCase(Locale.ROOT));
            }
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(texts.say("fault.number", symbol), e);
        }
    }
}
