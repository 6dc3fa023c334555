// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.quantity;

import cablewright.simulator.check.Readable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A kind of quantity with the units in which people write it. A number without its unit is refused wherever it could be
 * taken for another one: a pulse of "2" might be ns or µs, a length of "150" metres or feet.
 */
public enum Quantity {
    /** A time; SI unit s. */
    TIME("time", "2ns", false, "ps 1e-12 ns 1e-9 us 1e-6 \u00b5s 1e-6 \u03bcs 1e-6 ms 1e-3 s 1"),
    /** A length or distance; SI unit m. */
    LENGTH("length", "150m", false, "mm 1e-3 cm 1e-2 m 1 km 1e3 ft 0.3048 in 0.0254"),
    /** A frequency; SI unit Hz. */
    FREQUENCY("frequency", "10MHz", false, "Hz 1 kHz 1e3 MHz 1e6 GHz 1e9"),
    /** A resistance or impedance; SI unit Ω. */
    RESISTANCE("resistance", "75ohm", false, "ohm 1 \u2126 1 \u03a9 1 kohm 1e3 k\u2126 1e3 k\u03a9 1e3"),
    /** A voltage, relative to an outgoing wave of 1 V, so that a percentage of that wave serves too; SI unit V. */
    VOLTAGE("voltage", "4mV", false, "V 1 mV 1e-3 uV 1e-6 \u00b5V 1e-6 \u03bcV 1e-6 % 1e-2"),
    /** A gain or loss in decibels. */
    LEVEL("gain", "20dB", false, "dB 1"),
    /** A velocity of propagation as a fraction of that of light: 0.85, 85% or 0.85c. */
    VELOCITY("velocity of propagation", "0.85", true, "c 1 % 1e-2");

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)[ \u00a0]*(.*)");

    private static final int MOST_CHARACTERS = 60;
    private static final int MOST_EXPONENT = 400;

    private final String word;
    private final String example;
    private final boolean bareAllowed;
    private final Map<String, BigDecimal> units;

    Quantity(String word, String example, boolean bareAllowed, String units) {
        this.word = word;
        this.example = example;
        this.bareAllowed = bareAllowed;
        Map<String, BigDecimal> table = new LinkedHashMap<>();
        List<String> words = List.of(units.split(" "));
        for (int i = 0; i < words.size(); i += 2) {
            table.put(words.get(i), new BigDecimal(words.get(i + 1)));
        }
        this.units = table;
    }

    /**
     * Returns what the quantity is called in a sentence.
     *
     * @return a word or two
     */
    public String word() {
        return word;
    }

    public String example() {
        return example;
    }

    /**
     * Reads a value.
     *
     * @param text number and unit, with or without a space between
     * @return the value in the SI unit, as the double nearest to what was written
     * @throws IllegalArgumentException if the text isn't one; the message is a sentence that quotes it and says what is
     *     allowed
     */
    public double parse(String text) {
        String trimmed = text.strip().replace('\u2212', '-');
        Matcher matcher = NUMBER_AND_UNIT.matcher(trimmed);
        if (trimmed.length() > MOST_CHARACTERS || !matcher.matches()) {
            throw new IllegalArgumentException(
                    "\"" + shortened(text) + "\" is not a " + word + "; write a number and a unit, such as " + example);
        }
        BigDecimal number = number(matcher.group(1), text);
        if (number.signum() == 0 && matcher.group(2).isBlank()) {
            return inReach(0, text);
        }
        BigDecimal factor = factor(matcher.group(2).strip(), text);
        return inReach(number.multiply(factor).doubleValue(), text);
    }

    /**
     * Writes a value as people type it: in the base unit from a tenth on, or in the unit a thousand times as small or as large
     * that fits.
     *
     * @param value the value in the SI unit
     * @return text that reads back as the value
     */
    public String text(double value) {
        if (bareAllowed) {
            return Readable.exact(value);
        }
        BigDecimal exact = new BigDecimal(Double.toString(value));
        List<Map.Entry<String, BigDecimal>> candidates = units.entrySet().stream()
                .filter(unit -> isThousands(unit.getValue()) && !isTwin(unit.getKey()))
                .sorted(Map.Entry.comparingByValue())
                .toList();
        Map.Entry<String, BigDecimal> best = candidates.get(0);
        for (Map.Entry<String, BigDecimal> unit : candidates) {
            boolean isBase = unit.getValue().compareTo(BigDecimal.ONE) == 0;
            BigDecimal reached = isBase ? new BigDecimal("0.1") : unit.getValue();
            if (exact.abs().compareTo(reached) >= 0 || value == 0 && isBase) {
                best = unit;
            }
        }
        return Readable.exact(
                        exact.divide(best.getValue(), MathContext.DECIMAL64).doubleValue())
                + best.getKey();
    }

    private static boolean isThousands(BigDecimal factor) {
        BigDecimal plain = factor.stripTrailingZeros();
        return plain.precision() == 1 && plain.unscaledValue().intValueExact() == 1 && plain.scale() % 3 == 0;
    }

    private double inReach(double value, String text) {
        if (this == VELOCITY && value > 1) {
            throw new IllegalArgumentException("\"" + shortened(text)
                    + "\" is faster than light; write a velocity as a fraction such as 0.85, or as 85%");
        }
        return value;
    }

    private BigDecimal number(String digits, String text) {
        BigDecimal number = new BigDecimal(digits);
        if (Math.abs((long) number.scale() - number.precision()) > MOST_EXPONENT) {
            throw new IllegalArgumentException(
                    "\"" + shortened(text) + "\" is out of reach; write a " + word + " such as " + example);
        }
        return number;
    }

    private BigDecimal factor(String unit, String text) {
        if (unit.isEmpty()) {
            return factorOfBare(text);
        }
        if (unit.startsWith(",")) {
            throw new IllegalArgumentException("\"" + shortened(text)
                    + "\" has a comma; write decimals with a point, such as " + decimalExample());
        }
        return unit(unit)
                .orElseThrow(() -> new IllegalArgumentException("\"" + shortened(text) + "\" has the unit \""
                        + shortened(unit) + "\"; a " + word + " takes " + allowedUnits() + ", such as " + example));
    }

    private BigDecimal factorOfBare(String text) {
        if (bareAllowed) {
            return BigDecimal.ONE;
        }
        throw new IllegalArgumentException("\"" + shortened(text) + "\" has no unit; a " + word + " takes "
                + allowedUnits() + ", such as " + example);
    }

    private Optional<BigDecimal> unit(String written) {
        if (units.containsKey(written)) {
            return Optional.of(units.get(written));
        }
        return units.entrySet().stream()
                .filter(entry -> sameButForCase(entry.getKey(), written))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Case is forgiven where no two units differ by it alone; mHz, which would be a thousandth of a hertz, is not. */
    private boolean sameButForCase(String unit, String written) {
        boolean forgiven = this == FREQUENCY || this == RESISTANCE || this == LEVEL;
        return forgiven && unit.equalsIgnoreCase(written.replaceFirst("(?i)ohms$", "ohm")) && !written.equals("mHz");
    }

    private String allowedUnits() {
        return String.join(
                ", ", units.keySet().stream().filter(unit -> !isTwin(unit)).toList());
    }

    /** Whether a unit is another spelling of one that is listed already. */
    private static boolean isTwin(String unit) {
        return unit.chars().anyMatch(c -> c > 127);
    }

    private String decimalExample() {
        return this == VELOCITY ? example : "2.5" + units.keySet().iterator().next();
    }

    private static String shortened(String text) {
        return text.length() <= MOST_CHARACTERS ? text : text.substring(0, MOST_CHARACTERS) + "…";
    }
}
