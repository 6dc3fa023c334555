// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.bench.field.Measure;
import cablewright.lessons.bench.field.NumberField;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.simulator.check.Range;
import java.util.OptionalDouble;

/**
 * A number that can be set by slider and by typing.
 *
 * @param key key of its words
 * @param measure what it measures
 * @param value what it is; empty where it is left out
 * @param allowed what may be
 * @param travel over what the slider runs
 * @param mayBeAbsent whether it can be left out
 */
public record Dial(
        String key, Measure measure, OptionalDouble value, Range allowed, Travel travel, boolean mayBeAbsent) {

    static Dial of(NumberField field) {
        return new Dial(
                field.key(), field.measure(), field.value(), field.allowed(), field.slider(), field.mayBeAbsent());
    }

    static Dial of(String key, Measure measure, double value, Range allowed, Travel travel) {
        return new Dial(key, measure, OptionalDouble.of(value), allowed, travel, false);
    }

    /** The value at a place of the slider, rounded to what a hand can mean, and kept within what is allowed. */
    double at(double place) {
        double raw = travel.at(place);
        double span = travel.logarithmic() ? Math.abs(raw) : travel.to() - travel.from();
        double step = Math.pow(10, Math.floor(Math.log10(Math.max(span, 1e-30))) - 2);
        double tidy = place <= 0 ? travel.from() : place >= 1 ? travel.to() : Math.rint(raw / step) * step;
        double least = allowed.leastIsAllowed() ? allowed.least() : Math.nextUp(allowed.least());
        return Math.max(least, Math.min(allowed.most(), tidy));
    }
}
