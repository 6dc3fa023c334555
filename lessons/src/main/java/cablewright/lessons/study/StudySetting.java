// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** A setting of the instrument that a study can vary, named as its column is. */
public enum StudySetting {
    /** Width at half height of a half-sine pulse [s]. */
    PULSE("pulse_s", "width at half height of a half-sine pulse, s", v -> s -> s.withStimulus(new HalfSine(v))),
    /** Rise of a raised-cosine step, 10–90 % [s]. */
    STEP("step_s", "10-90 % rise of a raised-cosine step, s", v -> s -> s.withStimulus(new RaisedCosineStep(v))),
    /** Velocity of propagation over that of light. */
    VELOCITY("velocity", "set velocity of propagation over that of light", v -> s -> s.withVelocityFraction(v)),
    /** Range shown [m]. */
    RANGE("range_m", "range shown, m", v -> s -> s.withRangeMetres(v)),
    /** Gain [dB]. */
    GAIN("gain_db", "gain of the receiver, dB", v -> s -> s.withGainDecibels(v)),
    /** How many records are averaged; rounded to a whole number. */
    AVERAGES("averages", "records averaged, rounded", v -> s -> s.withAverages((int) Math.rint(v)));

    private final String column;
    private final String meaning;
    private final DoubleFunction<UnaryOperator<Settings>> change;

    StudySetting(String column, String meaning, DoubleFunction<UnaryOperator<Settings>> change) {
        this.column = column;
        this.meaning = meaning;
        this.change = change;
    }

    /**
     * Returns the name of its column, unit included.
     *
     * @return the name
     */
    public String column() {
        return column;
    }

    String meaning() {
        return meaning;
    }

    Settings applied(Settings settings, double value) {
        return change.apply(value).apply(settings);
    }

    /** The value that is set; for a pulse or a step its width or rise, whichever is set. */
    double of(Settings settings) {
        return switch (this) {
            case PULSE, STEP -> settings.stimulus().resolutionSeconds();
            case VELOCITY -> settings.velocityFraction();
            case RANGE -> settings.rangeMetres();
            case GAIN -> settings.gainDecibels();
            case AVERAGES -> settings.averages();
        };
    }

    /**
     * Finds a setting.
     *
     * @param column its column's name
     * @return the setting, if there is one
     */
    public static Optional<StudySetting> ofColumn(String column) {
        return Arrays.stream(values()).filter(s -> s.column.equals(column)).findFirst();
    }

    static String allColumns() {
        return Arrays.stream(values()).map(StudySetting::column).collect(Collectors.joining(", "));
    }
}
