// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

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
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/**
 * Draws events onto the cable. The symbols are our own: each shows the thing as it would look with the ground away, so that
 * kinds are distinguished by shape and not by colour.
 */
final class EventSymbols implements EventVisitor<Void> {

    private static final double LEAST_WIDTH = 12;

    private final Track track;
    private GraphicsContext g;
    private Body body;
    private double from;
    private double to;

    EventSymbols(Track track) {
        this.track = track;
    }

    /**
     * Draws one event.
     *
     * @param fromPixels where it starts
     * @param toPixels where it ends; widened about its middle where it is too short to be seen
     */
    void draw(
            GraphicsContext graphics,
            cablewright.simulator.cable.Event event,
            double fromPixels,
            double toPixels,
            Body on) {
        g = graphics;
        body = on;
        double least = LEAST_WIDTH * track.scale();
        double middle = (fromPixels + toPixels) / 2;
        from = Math.min(fromPixels, middle - least / 2);
        to = Math.max(toPixels, middle + least / 2);
        g.setLineWidth(1.5 * track.scale());
        visit(event);
    }

    private double middle() {
        return (from + to) / 2;
    }

    private double unit() {
        return track.scale();
    }

    private void box(double left, double top, double width, double height, double arc) {
        g.setFill(track.ink(Ink.HARDWARE));
        g.setStroke(track.ink(Ink.HARDWARE_EDGE));
        g.fillRoundRect(left, top, width, height, arc, arc);
        g.strokeRoundRect(left, top, width, height, arc, arc);
    }

    private void damageStroke() {
        g.setStroke(track.ink(Ink.DAMAGE));
        g.setLineWidth(2 * unit());
    }

    /** A sleeve over the cable. */
    @Override
    public Void splice(Splice event) {
        double w = 14 * unit();
        box(middle() - w / 2, body.top() - 4 * unit(), w, body.height() + 8 * unit(), 6 * unit());
        return null;
    }

    /** Two nuts that meet. */
    @Override
    public Void connector(Connector event) {
        double w = 7 * unit();
        box(middle() - w - unit(), body.top() - 3 * unit(), w, body.height() + 6 * unit(), 2 * unit());
        box(middle() + unit(), body.top() - 3 * unit(), w, body.height() + 6 * unit(), 2 * unit());
        return null;
    }

    /** A sleeve with specks of rust. */
    @Override
    public Void corrodedJoint(CorrodedJoint event) {
        double w = 14 * unit();
        box(middle() - w / 2, body.top() - 4 * unit(), w, body.height() + 8 * unit(), 6 * unit());
        g.setFill(track.ink(Ink.DAMAGE));
        double[] specks = {0.25, 0.2, 0.7, 0.35, 0.35, 0.55, 0.7, 0.75, 0.3, 0.85};
        for (int i = 0; i < specks.length; i += 2) {
            double r = 1.9 * unit();
            double x = middle() - w / 2 + specks[i] * w;
            double y = body.top() - 2 * unit() + specks[i + 1] * (body.height() + 4 * unit());
            g.fillOval(x - r, y - r, 2 * r, 2 * r);
        }
        return null;
    }

    /** A box with a spigot for the drop. */
    @Override
    public Void tap(Tap event) {
        double w = 17 * unit();
        drop(middle(), 10);
        box(middle() - w / 2, body.top() - 6 * unit(), w, body.height() + 12 * unit(), 2 * unit());
        return null;
    }

    private void drop(double x, double length) {
        g.setStroke(track.ink(Ink.HARDWARE_EDGE));
        g.setLineWidth(2.2 * unit());
        g.strokeLine(x, body.bottom(), x, body.bottom() + (6 + length) * unit());
        g.setLineWidth(1.5 * unit());
    }

    /** A wedge whose wide side sends out two legs. */
    @Override
    public Void splitter(Splitter event) {
        double w = 18 * unit();
        double out = event.inputAtFarSide() ? -1 : 1;
        double[] xs = {middle() - out * w / 2, middle() + out * w / 2, middle() + out * w / 2};
        double[] ys = {body.middle(), body.top() - 6 * unit(), body.bottom() + 6 * unit()};
        drop(middle() + out * w / 3, 10);
        g.setFill(track.ink(Ink.HARDWARE));
        g.setStroke(track.ink(Ink.HARDWARE_EDGE));
        g.fillPolygon(xs, ys, 3);
        g.strokePolygon(xs, ys, 3);
        return null;
    }

    /** A large box with cooling fins. */
    @Override
    public Void housing(Housing event) {
        double w = 26 * unit();
        box(middle() - w / 2, body.top() - 7 * unit(), w, body.height() + 14 * unit(), 4 * unit());
        for (int fin = -1; fin <= 1; fin++) {
            double x = middle() + fin * 6 * unit();
            g.strokeLine(x, body.top() - 3 * unit(), x, body.bottom() + 3 * unit());
        }
        return null;
    }

    /** A branch that hangs off the line. */
    @Override
    public Void bridgedTap(BridgedTap event) {
        g.setStroke(track.ink(Ink.SHIELD));
        g.setLineWidth(4 * unit());
        double y = body.bottom() + 10 * unit();
        g.strokeLine(middle(), body.bottom(), middle(), y);
        g.strokeLine(middle(), y, middle() + 30 * unit(), y);
        g.setFill(track.ink(Ink.HARDWARE));
        double r = 4.5 * unit();
        g.fillOval(middle() - r, body.middle() - r, 2 * r, 2 * r);
        g.setStroke(track.ink(Ink.HARDWARE_EDGE));
        g.setLineWidth(1.5 * unit());
        g.strokeOval(middle() - r, body.middle() - r, 2 * r, 2 * r);
        return null;
    }

    /** A can with turns of wire on it. */
    @Override
    public Void loadCoil(LoadCoil event) {
        double w = 22 * unit();
        box(middle() - w / 2, body.top() - 4 * unit(), w, body.height() + 8 * unit(), 8 * unit());
        double r = 3.2 * unit();
        for (int turn = -1; turn <= 1; turn++) {
            g.strokeOval(middle() + turn * 1.8 * r - r, body.middle() - r * 1.5, 2 * r, 3 * r);
        }
        return null;
    }

    /** A small box with two plates. */
    @Override
    public Void buildOut(BuildOut event) {
        double w = 16 * unit();
        box(middle() - w / 2, body.top() - 2 * unit(), w, body.height() + 4 * unit(), 3 * unit());
        g.strokeLine(
                middle() - 5 * unit(), body.middle() - 2 * unit(), middle() + 5 * unit(), body.middle() - 2 * unit());
        g.strokeLine(
                middle() - 5 * unit(), body.middle() + 2 * unit(), middle() + 5 * unit(), body.middle() + 2 * unit());
        return null;
    }

    /** A gap with torn edges; where something is left, a thread across it. */
    @Override
    public Void brokenConductor(BrokenConductor event) {
        gap(body.top() - 2 * unit(), body.bottom() + 2 * unit());
        if (event.seriesResistanceOhms().isPresent()) {
            g.setLineWidth(1.2 * unit());
            g.strokeLine(from - 2 * unit(), body.middle(), to + 2 * unit(), body.middle());
        }
        return null;
    }

    private void gap(double top, double bottom) {
        double w = 8 * unit();
        g.setFill(track.ink(Ink.PAPER));
        g.fillRect(middle() - w / 2, top, w, bottom - top);
        damageStroke();
        for (int side = -1; side <= 1; side += 2) {
            double x = middle() + side * w / 2;
            double step = (bottom - top) / 4;
            g.strokePolyline(
                    new double[] {x, x + side * 3 * unit(), x, x + side * 3 * unit(), x},
                    new double[] {top, top + step, top + 2 * step, top + 3 * step, bottom},
                    5);
        }
    }

    /** A spark from wall to wall; where some resistance is left, a dotted one. */
    @Override
    public Void touchingConductors(TouchingConductors event) {
        damageStroke();
        if (event.shuntResistanceOhms().isPresent()) {
            g.setLineDashes(2.5 * unit(), 2.5 * unit());
        }
        double h = body.height() + 8 * unit();
        double top = body.top() - 4 * unit();
        double swing = 5 * unit();
        g.strokePolyline(
                new double[] {middle() + swing, middle() - swing, middle() + swing, middle() - swing},
                new double[] {top, top + 0.45 * h, top + 0.55 * h, top + h},
                4);
        g.setLineDashes();
        return null;
    }

    /** A gap in one wire only. */
    @Override
    public Void oneSideOpen(OneSideOpen event) {
        gap(body.top() - 2 * unit(), body.middle() - 2 * unit());
        return null;
    }

    /** A plain box on the line. */
    @Override
    public Void seriesPart(SeriesPart event) {
        double w = 18 * unit();
        box(middle() - w / 2, body.middle() - 5 * unit(), w, 10 * unit(), 0);
        return null;
    }

    /** A plain box beside the line. */
    @Override
    public Void shuntPart(ShuntPart event) {
        drop(middle(), 2);
        double w = 12 * unit();
        box(middle() - w / 2, body.bottom() + 6 * unit(), w, 9 * unit(), 0);
        return null;
    }

    @Override
    public Void pinch(Pinch event) {
        dent();
        return null;
    }

    @Override
    public Void kink(Kink event) {
        dent();
        return null;
    }

    @Override
    public Void waterIngress(WaterIngress event) {
        waves();
        return null;
    }

    @Override
    public Void offCentreCore(OffCentreCore event) {
        bracket(track.ink(Ink.DAMAGE), false);
        return null;
    }

    @Override
    public Void gradualDamage(GradualDamage event) {
        wedges();
        return null;
    }

    @Override
    public Void spreadPair(SpreadPair event) {
        bracket(track.ink(Ink.DAMAGE), false);
        return null;
    }

    @Override
    public Void split(Split event) {
        crossings(event.putRight());
        return null;
    }

    @Override
    public Void impedanceVariation(ImpedanceVariation event) {
        ripple();
        return null;
    }

    @Override
    public Void heat(Heat event) {
        bracket(track.ink(Ink.DAMAGE), true);
        return null;
    }

    /** A bite out of the shield, with the wedge that made it. */
    private void dent() {
        double depth = body.height() * 0.42;
        g.setFill(track.ink(Ink.PAPER));
        g.fillPolygon(
                new double[] {from, to, middle()},
                new double[] {body.top() - 1, body.top() - 1, body.top() + depth},
                3);
        damageStroke();
        g.strokePolyline(
                new double[] {from, middle(), to}, new double[] {body.top(), body.top() + depth, body.top()}, 3);
    }

    /** Waves on the stretch, whose blue the cable itself has. */
    private void waves() {
        g.setStroke(track.ink(Ink.WATER));
        g.setLineWidth(2 * unit());
        double y = body.top() - 4 * unit();
        double step = 6 * unit();
        g.beginPath();
        g.moveTo(from, y);
        for (double x = from; x < to - 1; x += step) {
            double next = Math.min(to, x + step);
            g.quadraticCurveTo((3 * x + next) / 4, y - 5 * unit(), (x + next) / 2, y);
            g.quadraticCurveTo((x + 3 * next) / 4, y + 5 * unit(), next, y);
        }
        g.stroke();
    }

    /** A bracket over the stretch; with tongues for heat. */
    private void bracket(Color colour, boolean tongues) {
        g.setStroke(colour);
        g.setLineWidth(1.6 * unit());
        double y = body.top() - 6 * unit();
        g.strokePolyline(new double[] {from, from, to, to}, new double[] {body.top() - 1, y, y, body.top() - 1}, 4);
        if (tongues) {
            for (double x = from + 4 * unit(); x < to - 2 * unit(); x += 9 * unit()) {
                g.strokeLine(x, y - 2 * unit(), x + 2 * unit(), y - 7 * unit());
            }
        }
    }

    private void ripple() {
        g.setStroke(track.ink(Ink.DAMAGE));
        g.setLineWidth(1.4 * unit());
        double y = body.top() - 4 * unit();
        double step = 4 * unit();
        int up = -1;
        for (double x = from; x < to - 1; x += step) {
            g.strokeLine(x, y - up * 2 * unit(), Math.min(to, x + step), y + up * 2 * unit());
            up = -up;
        }
    }

    /** Two wires that change places where the pair is split, run apart, and change back where it is put right. */
    private void crossings(boolean putRight) {
        damageStroke();
        double w = Math.min(9 * unit(), (to - from) / 3);
        double top = body.top() - 8 * unit();
        double bottom = body.top() - 2 * unit();
        double end = putRight ? to - w : to;
        g.strokeLine(from, bottom, from + w, top);
        g.strokeLine(from, top, from + w, bottom);
        g.strokeLine(from + w, top, end, top);
        g.strokeLine(from + w, bottom, end, bottom);
        if (putRight) {
            g.strokeLine(end, top, to, bottom);
            g.strokeLine(end, bottom, to, top);
        }
    }

    /** Two long wedges that meet: damage that grows and fades. */
    private void wedges() {
        g.setFill(track.ink(Ink.DAMAGE).deriveColor(0, 1, 1, 0.75));
        double y = body.top() - 3 * unit();
        g.fillPolygon(new double[] {from, middle(), to}, new double[] {y, y - 6 * unit(), y}, 3);
    }
}
