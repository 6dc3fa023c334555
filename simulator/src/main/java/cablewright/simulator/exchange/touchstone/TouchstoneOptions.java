// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The option line: {@code # unit kind format R n}, in any order, with GHz, S, MA and 50 for what is left out. A file of
 * version 1.1 may give each port its own resistance: {@code R n1 n2}.
 */
record TouchstoneOptions(FrequencyUnit unit, ParameterKind kind, ValueFormat format, List<Double> ohms) {

    private static final double LEAST_OHMS = 1e-6;
    private static final double MOST_OHMS = 1e9;
    private static final String ALLOWED =
            "Hz, kHz, MHz or GHz, then S, Y, Z, G or H, then RI, MA or DB, then R and a resistance in ohms";

    static TouchstoneOptions parse(TouchstoneLines lines) throws TouchstoneFormatException {
        FrequencyUnit unit = FrequencyUnit.GHZ;
        ParameterKind kind = ParameterKind.S;
        ValueFormat format = ValueFormat.MA;
        List<Double> ohms = List.of();
        String[] words = lines.line().substring(1).strip().split("\\s+");
        for (int i = 0; i < words.length; i++) {
            String word = words[i].toUpperCase(Locale.ROOT);
            Optional<FrequencyUnit> unitWord = FrequencyUnit.named(word);
            if (unitWord.isPresent()) {
                unit = unitWord.get();
            } else if (word.equals("R")) {
                ohms = resistances(lines, words, i + 1);
                i += ohms.size();
            } else if (named(ParameterKind.values(), word).isPresent()) {
                kind = named(ParameterKind.values(), word).get();
            } else if (named(ValueFormat.values(), word).isPresent()) {
                format = named(ValueFormat.values(), word).get();
            } else if (!word.isEmpty()) {
                throw lines.wrong("an option", words[i], ALLOWED);
            }
        }
        return new TouchstoneOptions(unit, kind, format, ohms.isEmpty() ? List.of(50.0) : ohms);
    }

    private static <E extends Enum<E>> Optional<E> named(E[] all, String word) {
        for (E one : all) {
            if (one.name().equals(word)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    private static List<Double> resistances(TouchstoneLines lines, String[] words, int from)
            throws TouchstoneFormatException {
        List<Double> ohms = new ArrayList<>();
        for (int i = from; i < words.length && !Character.isLetter(words[i].charAt(0)); i++) {
            ohms.add(resistance(lines, words[i]));
        }
        if (ohms.isEmpty()) {
            throw lines.wrong("the resistance after R", from < words.length ? words[from] : "", "a number of ohms");
        }
        return ohms;
    }

    static double resistance(TouchstoneLines lines, String word) throws TouchstoneFormatException {
        double ohms = lines.numberOf(word);
        if (!(ohms >= LEAST_OHMS && ohms <= MOST_OHMS)) {
            throw lines.wrong("a reference resistance", word, "1e-6 to 1e9 ohms");
        }
        return ohms;
    }

    /** The reference of each port: one number serves for all. */
    double[] referencesFor(int ports, TouchstoneLines lines) throws TouchstoneFormatException {
        if (ohms.size() != 1 && ohms.size() != ports) {
            throw lines.wrong(
                    "the number of resistances after R",
                    Integer.toString(ohms.size()),
                    "1 or, for each port, " + ports);
        }
        double[] each = new double[ports];
        for (int i = 0; i < ports; i++) {
            each[i] = ohms.get(ohms.size() == 1 ? 0 : i);
        }
        return each;
    }
}
