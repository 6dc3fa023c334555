// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.explanation.visibility.PlaceVisibility;
import java.util.Locale;
import java.util.Optional;

/**
 * One row of a study.
 *
 * @param row its number, from 0
 * @param values the parameters' values, in their order
 * @param visibility "clear", "marginal", "hidden", or "impossible" for a cable that can't be
 * @param reason why it is not clear; empty where it is
 * @param sight where and how the event shows best; absent for a cable that can't be
 * @param noiseVolts noise after averaging, root mean square [V]
 * @param impedanceOhms impedance where the event is worst, at 100 MHz [Ω]; NaN for a thing at one place
 * @param reflection ρ of a sharp edge to that impedance; NaN for a thing at one place
 * @param remark why the cable can't be; empty otherwise
 */
public record StudyRow(
        int row,
        double[] values,
        String visibility,
        String reason,
        Optional<PlaceVisibility> sight,
        double noiseVolts,
        double impedanceOhms,
        double reflection,
        String remark) {

    /** Copies the values. */
    public StudyRow {
        values = values.clone();
    }

    @Override
    public double[] values() {
        return values.clone();
    }

    static StudyRow impossible(int row, double[] values, String remark) {
        return new StudyRow(
                row, values, "impossible", "", Optional.empty(), Double.NaN, Double.NaN, Double.NaN, remark);
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The row as a line of the file, without its end. */
    String line() {
        StringBuilder line = new StringBuilder(Integer.toString(row));
        for (double value : values) {
            line.append(',').append(Figures.text(value));
        }
        line.append(',').append(visibility).append(',').append(reason);
        append(line, sight.map(PlaceVisibility::contrastVolts));
        append(line, sight.map(PlaceVisibility::expectedVolts));
        append(line, sight.map(PlaceVisibility::clutterVolts));
        line.append(',').append(Figures.text(noiseVolts));
        append(line, sight.map(PlaceVisibility::trueMetres));
        append(line, sight.map(PlaceVisibility::shownMetres));
        append(line, sight.map(PlaceVisibility::thereAndBackSeconds));
        line.append(',').append(Figures.text(impedanceOhms));
        line.append(',').append(Figures.text(reflection));
        return line.append(',').append(quoted(remark)).toString();
    }

    private static void append(StringBuilder line, Optional<Double> value) {
        line.append(',').append(Figures.text(value.orElse(Double.NaN)));
    }

    /** RFC 4180, on one line. */
    static String quoted(String text) {
        String oneLine = text.replaceAll("\\R", " ");
        boolean plain = oneLine.chars().noneMatch(c -> c == ',' || c == '"');
        return plain ? oneLine : '"' + oneLine.replace("\"", "\"\"") + '"';
    }
}
