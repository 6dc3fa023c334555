// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.ui.words.Quantities;

/**
 * Something a person sets.
 *
 * @param id its name within the demonstration; the words for it have this key
 * @param form how it is set
 * @param measure what it measures
 * @param least least value; 0 for a choice or a switch
 * @param most greatest value; the number of the last choice, counted from 0; 1 for a switch
 * @param initial the value it begins with
 */
public record Control(String id, Form form, Measure measure, double least, double most, double initial) {

    /** Ways of setting. */
    public enum Form {
        /** A slider. */
        LINEAR,
        /** A slider whose way is logarithmic. */
        LOGARITHMIC,
        /** One of a few. */
        CHOICE,
        /** On or off. */
        SWITCH
    }

    /** What a value measures; values are in SI units. */
    public enum Measure {
        /** A length. */
        LENGTH,
        /** A time. */
        TIME,
        /** A share, shown in percent. */
        SHARE,
        /** A plain number with two digits after the point. */
        NUMBER,
        /** A whole number. */
        COUNT
    }

    /** Refuses a control that can't be set. */
    public Control {
        if (!(most > least) || !(initial >= least && initial <= most) || form == Form.LOGARITHMIC && !(least > 0)) {
            throw new IllegalArgumentException("control \"" + id + "\" goes from " + least + " to " + most
                    + " and begins at " + initial + "; it must rise and begin between");
        }
    }

    static Control length(String id, double least, double most, double initial) {
        return new Control(id, Form.LINEAR, Measure.LENGTH, least, most, initial);
    }

    static Control logLength(String id, double least, double most, double initial) {
        return new Control(id, Form.LOGARITHMIC, Measure.LENGTH, least, most, initial);
    }

    static Control time(String id, double least, double most, double initial) {
        return new Control(id, Form.LOGARITHMIC, Measure.TIME, least, most, initial);
    }

    static Control share(String id, double least, double most, double initial) {
        return new Control(id, Form.LINEAR, Measure.SHARE, least, most, initial);
    }

    static Control logShare(String id, double least, double most, double initial) {
        return new Control(id, Form.LOGARITHMIC, Measure.SHARE, least, most, initial);
    }

    static Control number(String id, double least, double most, double initial) {
        return new Control(id, Form.LINEAR, Measure.NUMBER, least, most, initial);
    }

    static Control count(String id, double least, double most, double initial) {
        return new Control(id, Form.LOGARITHMIC, Measure.COUNT, least, most, initial);
    }

    static Control choice(String id, int options) {
        return new Control(id, Form.CHOICE, Measure.COUNT, 0, options - 1.0, 0);
    }

    static Control onOff(String id) {
        return new Control(id, Form.SWITCH, Measure.COUNT, 0, 1, 0);
    }

    /**
     * Returns the value at a share of the slider's way.
     *
     * @param share 0 to 1
     * @return the value; a whole number where it counts
     */
    public double valueAt(double share) {
        double value =
                form == Form.LOGARITHMIC ? least * Math.pow(most / least, share) : least + share * (most - least);
        return measure == Measure.COUNT ? Math.rint(value) : Math.max(least, Math.min(most, value));
    }

    /**
     * Returns where on the slider's way a value lies.
     *
     * @param value the value
     * @return share, 0 to 1
     */
    public double shareOf(double value) {
        double held = Math.max(least, Math.min(most, value));
        return form == Form.LOGARITHMIC
                ? Math.log(held / least) / Math.log(most / least)
                : (held - least) / (most - least);
    }

    /**
     * Writes a value.
     *
     * @param value the value
     * @param quantities how numbers are written
     * @return number and unit
     */
    public String written(double value, Quantities quantities) {
        switch (measure) {
            case LENGTH:
                return quantities.shortLength(value);
            case TIME:
                return quantities.time(value);
            case SHARE:
                return Quantities.significant(100 * value) + "\u00a0%";
            case NUMBER:
                return Quantities.number(value, 2);
            default:
                return Quantities.number(value, 0);
        }
    }
}
