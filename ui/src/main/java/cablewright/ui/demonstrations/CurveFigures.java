// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.text.Texts;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.List;

/** Turns curves and figures of the simulator into what is drawn and said: lengths in the unit asked for, percent, MHz. */
final class CurveFigures {

    private static final double[] PERCENTS = {0.2, 0.5, 1, 2, 5, 10, 20, 50, 110};
    private static final double MEGA = 1e6;
    private static final double NANO = 1e-9;

    private final String id;
    private final LengthUnit unit;
    private final Quantities quantities;
    private final Texts texts;

    CurveFigures(String id, Words words) {
        this.id = id;
        this.unit = words.quantities().unit();
        this.quantities = words.quantities();
        this.texts = words.texts().sibling(Demonstrations.BUNDLE);
    }

    Quantities quantities() {
        return quantities;
    }

    /** A sentence of this demonstration. */
    String say(String key, Object... arguments) {
        return texts.say(id + "." + key, arguments);
    }

    /** A sentence that several demonstrations share. */
    String common(String key, Object... arguments) {
        return texts.say("common." + key, arguments);
    }

    double length(double metres) {
        return unit.fromMetres(metres);
    }

    Axis distance(double fromMetres, double toMetres) {
        return Axis.linear(common("distance", unit.symbol()), length(fromMetres), length(toMetres));
    }

    /** A trace in percent against distance. */
    Panel.Line trace(String name, Curve curve, Tone tone, boolean dashed) {
        return new Panel.Line(name, scaled(curve, 1 / unit.toMetres(1), 100), tone, dashed);
    }

    /** A sweep against MHz. */
    Panel.Line sweep(String name, Curve curve, Tone tone, boolean dashed) {
        return new Panel.Line(name, scaled(curve, 1 / MEGA, 1), tone, dashed);
    }

    /** A share in percent against ns. */
    Panel.Line edge(String name, Curve curve, Tone tone, boolean dashed) {
        return new Panel.Line(name, scaled(curve, 1 / NANO, 100), tone, dashed);
    }

    static Curve scaled(Curve curve, double timesX, double timesY) {
        double[] x = new double[curve.count()];
        double[] y = new double[curve.count()];
        for (int i = 0; i < x.length; i++) {
            x[i] = timesX * curve.x(i);
            y[i] = timesY * curve.y(i);
        }
        return new Curve(x, y);
    }

    Axis megahertz(double fromHertz, double toHertz) {
        return Axis.linear(common("megahertz"), fromHertz / MEGA, toHertz / MEGA);
    }

    Axis nanoseconds(double toSeconds) {
        return Axis.linear(common("nanoseconds"), 0, toSeconds / NANO);
    }

    /** Percent of the outgoing wave, wide enough for what lines show between two places, in steps that don't flicker. */
    Axis percent(List<Panel.Line> lines, double fromMetres, double toMetres) {
        double most = 0;
        for (Panel.Line line : lines) {
            int largest = line.curve().largestBetween(length(fromMetres), length(toMetres));
            most = largest < 0 ? most : Math.max(most, Math.abs(line.curve().y(largest)));
        }
        return percent(1.1 * most);
    }

    /** Percent of the outgoing wave, at least so many either way. */
    Axis percent(double least) {
        double chosen = PERCENTS[PERCENTS.length - 1];
        for (int i = PERCENTS.length - 1; i >= 0; i--) {
            chosen = PERCENTS[i] >= least ? PERCENTS[i] : chosen;
        }
        return Axis.linear(common("percent"), -chosen, chosen);
    }

    Panel.Mark mark(String text, double metres, Tone tone) {
        return new Panel.Mark(text, length(metres), tone);
    }

    static String number(double value, int digits) {
        return Quantities.number(value, digits);
    }
}
