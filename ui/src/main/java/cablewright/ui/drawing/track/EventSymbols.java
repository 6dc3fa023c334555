// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.event.EventVisitor;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.BuildOut;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Cross;
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideEarthed;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Outline;
import cablewright.ui.drawing.pen.Pen;
import java.util.stream.DoubleStream;

/**
 * Draws events onto a cable, the same on screen and on paper. The symbols are our own: each shows the thing as it would look
 * with the ground away, so that kinds are distinguished by shape and not by colour.
 */
public final class EventSymbols implements EventVisitor<Void> {

    private static final double LEAST_WIDTH = 12;
    private static final double EDGE = 1.5;
    private static final double DAMAGE = 2;
    private static final int WAVE_PIECES = 8;
    private static final double BODY_SHARE = 0.28;
    private static final double USUAL_BODY = 24;
    private static final double SYMBOL_SHARE = 0.36;

    private final Pen pen;
    private final Palette palette;
    private final Body body;
    private final double s;
    private final double from;
    private final double to;

    private EventSymbols(Pen pen, Palette palette, Body body, double scale, double from, double to) {
        this.pen = pen;
        this.palette = palette;
        this.body = body;
        this.s = scale;
        double least = LEAST_WIDTH * scale;
        double middle = (from + to) / 2;
        this.from = Math.min(from, middle - least / 2);
        this.to = Math.max(to, middle + least / 2);
    }

    /**
     * Draws one event.
     *
     * @param sheet where
     * @param event the event
     * @param from where it starts, across
     * @param to where it ends; widened about its middle where it is too short to be seen
     * @param body the cable that it lies on
     */
    static void draw(TrackSheet sheet, Event event, double from, double to, Body body) {
        new EventSymbols(sheet.pen(), sheet.palette(), body, sheet.scale(), from, to).visit(event);
    }

    /**
     * Draws one event on a short length of cable that fills a box.
     *
     * @param pen what to draw with
     * @param palette the colours
     * @param event the event
     * @param box where
     */
    public static void drawAlone(Pen pen, Palette palette, Event event, Box box) {
        Body body = new Body(box.y() + BODY_SHARE * box.height(), box.bottom() - BODY_SHARE * box.height());
        double scale = body.height() / USUAL_BODY;
        pen.fill(box.x(), body.top(), box.width(), body.height(), palette.of(Ink.DIELECTRIC));
        for (double y : new double[] {body.top(), body.bottom() - 1}) {
            pen.fill(box.x(), y, box.width(), 1, palette.of(Ink.SHIELD));
        }
        double half = box.width() * SYMBOL_SHARE / 2;
        double middle = box.x() + box.width() / 2;
        new EventSymbols(pen, palette, body, scale, middle - half, middle + half).visit(event);
    }

    private double middle() {
        return (from + to) / 2;
    }

    private void line(double thickness, Ink ink, double... points) {
        dashed(thickness, 0, ink, points);
    }

    private void dashed(double thickness, double dash, Ink ink, double... points) {
        int count = points.length / 2;
        double[] xs = new double[count];
        double[] ys = new double[count];
        for (int i = 0; i < count; i++) {
            xs[i] = points[2 * i];
            ys[i] = points[2 * i + 1];
        }
        pen.line(xs, ys, thickness * s, dash * s, palette.of(ink));
    }

    private void hardware(Outline outline) {
        pen.draw(outline, palette.of(Ink.HARDWARE), EDGE * s, palette.of(Ink.HARDWARE_EDGE));
    }

    private void box(double left, double top, double width, double height, double radius) {
        hardware(Outline.roundBox(new Box(left, top, width, height), radius));
    }

    /** A box about the middle, taller than the cable by so much at each side. */
    private void sleeve(double width, double over, double radius) {
        box(middle() - width * s / 2, body.top() - over * s, width * s, body.height() + 2 * over * s, radius * s);
    }

    /** A sleeve over the cable. */
    @Override
    public Void splice(Splice event) {
        sleeve(14, 4, 3);
        return null;
    }

    /** Two nuts that meet. */
    @Override
    public Void connector(Connector event) {
        double w = 7 * s;
        box(middle() - w - s, body.top() - 3 * s, w, body.height() + 6 * s, s);
        box(middle() + s, body.top() - 3 * s, w, body.height() + 6 * s, s);
        return null;
    }

    /** A sleeve with specks of rust. */
    @Override
    public Void corrodedJoint(CorrodedJoint event) {
        double w = 14 * s;
        sleeve(14, 4, 3);
        double[] specks = {0.25, 0.2, 0.7, 0.35, 0.35, 0.55, 0.7, 0.75, 0.3, 0.85};
        for (int i = 0; i < specks.length; i += 2) {
            double x = middle() - w / 2 + specks[i] * w;
            double y = body.top() - 2 * s + specks[i + 1] * (body.height() + 4 * s);
            pen.disc(x, y, 1.9 * s, palette.of(Ink.DAMAGE));
        }
        return null;
    }

    /** A box with a spigot for the drop. */
    @Override
    public Void tap(Tap event) {
        drop(middle(), 10);
        sleeve(17, 6, 1);
        return null;
    }

    private void drop(double x, double length) {
        line(2.2, Ink.HARDWARE_EDGE, x, body.bottom(), x, body.bottom() + (6 + length) * s);
    }

    /** A wedge whose wide side sends out two legs. */
    @Override
    public Void splitter(Splitter event) {
        double half = (event.inputAtFarSide() ? -9 : 9) * s;
        drop(middle() + half * 2 / 3, 10);
        hardware(Outline.polygon(
                middle() - half,
                body.middle(),
                middle() + half,
                body.top() - 6 * s,
                middle() + half,
                body.bottom() + 6 * s));
        return null;
    }

    /** A large box with cooling fins. */
    @Override
    public Void housing(Housing event) {
        sleeve(26, 7, 2);
        for (int fin = -1; fin <= 1; fin++) {
            double x = middle() + fin * 6 * s;
            line(EDGE, Ink.HARDWARE_EDGE, x, body.top() - 3 * s, x, body.bottom() + 3 * s);
        }
        return null;
    }

    /** A branch that hangs off the line. */
    @Override
    public Void bridgedTap(BridgedTap event) {
        double y = body.bottom() + 10 * s;
        line(4, Ink.SHIELD, middle(), body.bottom(), middle(), y, middle() + 30 * s, y);
        hardware(Outline.ellipse(middle(), body.middle(), 4.5 * s, 4.5 * s));
        return null;
    }

    /** A can with turns of wire on it. */
    @Override
    public Void loadCoil(LoadCoil event) {
        sleeve(22, 4, 4);
        double r = 3.2 * s;
        for (int turn = -1; turn <= 1; turn++) {
            Outline wire = Outline.ellipse(middle() + turn * 1.8 * r, body.middle(), r, 1.5 * r);
            pen.draw(wire, EDGE * s, 0, palette.of(Ink.HARDWARE_EDGE));
        }
        return null;
    }

    /** A small box with two plates. */
    @Override
    public Void buildOut(BuildOut event) {
        sleeve(16, 2, 1.5);
        for (int plate = -1; plate <= 1; plate += 2) {
            double y = body.middle() + plate * 2 * s;
            line(EDGE, Ink.HARDWARE_EDGE, middle() - 5 * s, y, middle() + 5 * s, y);
        }
        return null;
    }

    /** A gap with torn edges; where something is left, a thread across it. */
    @Override
    public Void brokenConductor(BrokenConductor event) {
        gap(body.top() - 2 * s, body.bottom() + 2 * s);
        if (event.seriesResistanceOhms().isPresent()) {
            line(1.2, Ink.DAMAGE, from - 2 * s, body.middle(), to + 2 * s, body.middle());
        }
        return null;
    }

    private void gap(double top, double bottom) {
        double w = 8 * s;
        pen.fill(middle() - w / 2, top, w, bottom - top, palette.of(Ink.PAPER));
        for (int side = -1; side <= 1; side += 2) {
            double x = middle() + side * w / 2;
            double torn = x + side * 3 * s;
            double step = (bottom - top) / 4;
            line(DAMAGE, Ink.DAMAGE, x, top, torn, top + step, x, top + 2 * step, torn, top + 3 * step, x, bottom);
        }
    }

    /** A spark from wall to wall; where some resistance is left, a dotted one. */
    @Override
    public Void touchingConductors(TouchingConductors event) {
        double h = body.height() + 8 * s;
        double top = body.top() - 4 * s;
        double left = middle() - 5 * s;
        double right = middle() + 5 * s;
        double dash = event.shuntResistanceOhms().isPresent() ? 2.5 : 0;
        dashed(DAMAGE, dash, Ink.DAMAGE, right, top, left, top + 0.45 * h, right, top + 0.55 * h, left, top + h);
        return null;
    }

    /** A gap in one wire only. */
    @Override
    public Void oneSideOpen(OneSideOpen event) {
        gap(body.top() - 2 * s, body.middle() - 2 * s);
        return null;
    }

    /** A lead from one wire down to the sign of earth. */
    @Override
    public Void oneSideEarthed(OneSideEarthed event) {
        double x = middle();
        double foot = body.bottom() + 9 * s;
        line(DAMAGE, Ink.DAMAGE, x, body.middle() + 2 * s, x, foot);
        for (int i = 0; i < 3; i++) {
            double half = (6 - 2 * i) * s;
            line(DAMAGE, Ink.DAMAGE, x - half, foot + 3 * i * s, x + half, foot + 3 * i * s);
        }
        return null;
    }

    /** A wire of another pair that comes down on one wire of this one. */
    @Override
    public Void cross(Cross event) {
        double x = middle();
        double above = body.top() - 8 * s;
        line(DAMAGE, Ink.DAMAGE, x - 10 * s, above, x - 5 * s, above, x, body.middle() - 2 * s, x + 5 * s, above);
        line(DAMAGE, Ink.DAMAGE, x + 5 * s, above, x + 10 * s, above);
        return null;
    }

    /** A plain box on the line. */
    @Override
    public Void seriesPart(SeriesPart event) {
        box(middle() - 9 * s, body.middle() - 5 * s, 18 * s, 10 * s, 0);
        return null;
    }

    /** A plain box beside the line. */
    @Override
    public Void shuntPart(ShuntPart event) {
        drop(middle(), 2);
        box(middle() - 6 * s, body.bottom() + 6 * s, 12 * s, 9 * s, 0);
        return null;
    }

    /** A bite out of the shield, with the wedge that made it. */
    @Override
    public Void pinch(Pinch event) {
        dent();
        return null;
    }

    /** A bite out of the shield, with the wedge that made it. */
    @Override
    public Void kink(Kink event) {
        dent();
        return null;
    }

    private void dent() {
        double depth = body.top() + body.height() * 0.42;
        pen.fill(Outline.polygon(from, body.top() - 1, to, body.top() - 1, middle(), depth), palette.of(Ink.PAPER));
        line(DAMAGE, Ink.DAMAGE, from, body.top(), middle(), depth, to, body.top());
    }

    /** Waves on the stretch, whose blue the cable itself has. */
    @Override
    public Void waterIngress(WaterIngress event) {
        double y = body.top() - 4 * s;
        double length = 6 * s;
        int pieces = (int) Math.max(WAVE_PIECES, Math.round(WAVE_PIECES * (to - from) / length));
        double[] points = DoubleStream.iterate(0, i -> i <= pieces, i -> i + 1)
                .flatMap(i -> DoubleStream.of(
                        from + (to - from) * i / pieces, y - 2.5 * s * Math.sin(2 * Math.PI * i / WAVE_PIECES)))
                .toArray();
        line(DAMAGE, Ink.WATER, points);
        return null;
    }

    /** A bracket over the stretch. */
    @Override
    public Void offCentreCore(OffCentreCore event) {
        bracket();
        return null;
    }

    /** A bracket over the stretch. */
    @Override
    public Void spreadPair(SpreadPair event) {
        bracket();
        return null;
    }

    /** A bracket over the stretch, with tongues of heat. */
    @Override
    public Void heat(Heat event) {
        double y = bracket();
        for (double x = from + 4 * s; x < to - 2 * s; x += 9 * s) {
            line(1.6, Ink.DAMAGE, x, y - 2 * s, x + 2 * s, y - 7 * s);
        }
        return null;
    }

    private double bracket() {
        double y = body.top() - 6 * s;
        line(1.6, Ink.DAMAGE, from, body.top() - 1, from, y, to, y, to, body.top() - 1);
        return y;
    }

    /** A zigzag over the stretch. */
    @Override
    public Void impedanceVariation(ImpedanceVariation event) {
        double y = body.top() - 4 * s;
        double step = 4 * s;
        int up = -1;
        for (double x = from; x < to - 1; x += step) {
            line(1.4, Ink.DAMAGE, x, y - up * 2 * s, Math.min(to, x + step), y + up * 2 * s);
            up = -up;
        }
        return null;
    }

    /** Two wires that change places where the pair is split, run apart, and change back where it is put right. */
    @Override
    public Void split(Split event) {
        double w = Math.min(9 * s, (to - from) / 3);
        double top = body.top() - 8 * s;
        double bottom = body.top() - 2 * s;
        double end = event.putRight() ? to - w : to;
        double upper = event.putRight() ? bottom : top;
        double lower = event.putRight() ? top : bottom;
        line(DAMAGE, Ink.DAMAGE, from, bottom, from + w, top, end, top, to, upper);
        line(DAMAGE, Ink.DAMAGE, from, top, from + w, bottom, end, bottom, to, lower);
        return null;
    }

    /** Two long wedges that meet: damage that grows and fades. */
    @Override
    public Void gradualDamage(GradualDamage event) {
        double y = body.top() - 3 * s;
        Colour colour = palette.of(Ink.DAMAGE).faded(0.75);
        pen.fill(Outline.polygon(from, y, middle(), y - 6 * s, to, y), colour);
        return null;
    }
}
