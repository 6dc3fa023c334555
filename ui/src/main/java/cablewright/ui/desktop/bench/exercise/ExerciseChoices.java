// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.exercise.Permitted;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.quantity.Quantity;
import cablewright.ui.words.LengthUnit;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/** The lists of what a trainee may set, as they are typed. */
final class ExerciseChoices {

    private static final int NANO_DIGITS = 9;
    private static final int MICRO_DIGITS = 6;
    private static final double MICRO = 1e-6;

    private ExerciseChoices() {}

    /** Pulses by their widths; a new one is a half-sine. */
    static ListText<Stimulus> pulses() {
        return new ListText<>(
                it -> time(it.resolutionSeconds()),
                text -> new HalfSine(Quantity.TIME.parse(text)),
                Comparator.comparingDouble(Stimulus::resolutionSeconds),
                "");
    }

    /** Steps by their rise; a new one is a raised cosine. */
    static ListText<Stimulus> steps() {
        return new ListText<>(
                it -> time(it.resolutionSeconds()),
                text -> new RaisedCosineStep(Quantity.TIME.parse(text)),
                Comparator.comparingDouble(Stimulus::resolutionSeconds),
                "");
    }

    static ListText<Double> ranges(LengthUnit unit) {
        return new ListText<>(
                metres -> digits(BigDecimal.valueOf(rounded(unit.fromMetres(metres)))) + "\u00a0" + unit.symbol(),
                Quantity.LENGTH::parse,
                Comparator.naturalOrder(),
                unit.symbol());
    }

    static ListText<Double> gains() {
        return new ListText<>(
                gain -> digits(BigDecimal.valueOf(gain)) + "\u00a0dB",
                Quantity.LEVEL::parse,
                Comparator.naturalOrder(),
                "dB");
    }

    static ListText<Integer> averages() {
        return new ListText<>(String::valueOf, ExerciseChoices::whole, Comparator.naturalOrder(), "");
    }

    private static Integer whole(String text) {
        try {
            return Integer.valueOf(text);
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException("\"" + text + "\" is not a whole number, such as 64", notANumber);
        }
    }

    static String time(double seconds) {
        BigDecimal exact = BigDecimal.valueOf(seconds);
        return seconds < MICRO
                ? digits(exact.movePointRight(NANO_DIGITS)) + "\u00a0ns"
                : digits(exact.movePointRight(MICRO_DIGITS)) + "\u00a0µs";
    }

    private static String digits(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }

    private static double rounded(double value) {
        return Math.rint(value * 1000) / 1000;
    }

    static List<Stimulus> ofShape(Permitted permitted, boolean step) {
        return permitted.stimuli().stream().filter(it -> it.isStep() == step).toList();
    }
}
