// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.reflect.AnnotatedElement;
import java.util.Optional;

/**
 * A range of finite numbers.
 *
 * @param least lower limit
 * @param leastIsAllowed whether the lower limit itself is allowed
 * @param most upper limit
 * @param mostIsAllowed whether the upper limit itself is allowed
 */
public record Range(double least, boolean leastIsAllowed, double most, boolean mostIsAllowed) {

    /** Returns the range from a least to a greatest value, both allowed. */
    public static Range between(double least, double most) {
        return new Range(least, true, most, true);
    }

    /** Returns the range above a value, up to a greatest value that is allowed. */
    public static Range above(double floor, double most) {
        return new Range(floor, false, most, true);
    }

    /** Returns the range from a least value that is allowed up to, but without, a ceiling. */
    public static Range below(double least, double ceiling) {
        return new Range(least, true, ceiling, false);
    }

    /**
     * Returns the range that is stated on a component of a record.
     *
     * @param type the record
     * @param component name of the component
     * @throws IllegalStateException if the record has no such component, or no range is stated on it
     */
    public static Range of(Class<?> type, String component) {
        return Components.of(type)
                .named(component)
                .range()
                .orElseThrow(() -> new IllegalStateException("no range is stated on " + component + " of " + type));
    }

    static Optional<Range> on(AnnotatedElement element) {
        return Components.find(element, Between.class)
                .map(it -> between(it.least(), it.most()))
                .or(() -> Components.find(element, Above.class).map(it -> above(it.floor(), it.most())))
                .or(() -> Components.find(element, Below.class).map(it -> below(it.least(), it.ceiling())));
    }

    /** Returns whether a value lies within. */
    public boolean contains(double value) {
        return Double.isFinite(value)
                && (leastIsAllowed ? value >= least : value > least)
                && (mostIsAllowed ? value <= most : value < most);
    }

    /** Returns whether there is a lower limit. */
    public boolean hasLeast() {
        return least > -Double.MAX_VALUE;
    }

    /** Returns whether there is an upper limit. */
    public boolean hasMost() {
        return most < Double.MAX_VALUE;
    }

    /** Returns the range in words, such as "0.1 to 50" or "above 0, at most 40". What it names as allowed is allowed. */
    public String words() {
        String from = Readable.noLess(least);
        String to = Readable.noMore(most);
        if (hasLeast() && hasMost()) {
            if (leastIsAllowed) {
                return from + (mostIsAllowed ? " to " : " to below ") + to;
            }
            return "above " + from + (mostIsAllowed ? ", at most " : ", below ") + to;
        }
        if (hasLeast()) {
            return leastIsAllowed ? from + " or more" : "above " + from;
        }
        return hasMost() ? (mostIsAllowed ? "at most " : "below ") + to : "any finite number";
    }
}
