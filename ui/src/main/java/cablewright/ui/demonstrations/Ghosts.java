// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.BounceRay;
import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.demonstration.GhostPaths;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Ghosts: the lattice diagram and the trace, from both ends. */
final class Ghosts implements Demonstration {

    private static final double CABLE_METRES = 120;
    private static final double LEAST_DRAWN = 2e-3;

    @Override
    public String id() {
        return "ghosts";
    }

    @Override
    public int answers() {
        return 4;
    }

    @Override
    public int rightAnswer() {
        return 2;
    }

    @Override
    public int rightReason() {
        return 2;
    }

    @Override
    public List<Control> controls() {
        return List.of(
                Control.length("first", 10, 50, 30),
                Control.length("apart", 5, 35, 20),
                Control.share("reflection", 0.05, 0.6, 0.3),
                Control.time("pulse", 2e-9, 30e-9, 5e-9));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        double first = values.get("first");
        GhostPaths paths = new GhostPaths(
                Catalogue.standard().type("hardline-500"),
                CABLE_METRES,
                first,
                first + values.get("apart"),
                -values.get("reflection"),
                values.get("pulse"));
        GhostPaths.Outcome outcome = paths.outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(
                        Figure.Row.of(1.3, lattice(paths, outcome, paper)),
                        Figure.Row.of(1, near(paths, outcome, paper)),
                        Figure.Row.of(1, far(paths, outcome, paper))),
                caption(paths, outcome, paper),
                paper.say(
                        "settings",
                        paths.type().title(),
                        paper.quantities().shortLength(CABLE_METRES),
                        paper.quantities().time(paths.pulseSeconds()))));
    }

    private static Axis distance(CurveFigures paper) {
        return paper.distance(0, 1.1 * CABLE_METRES);
    }

    private static List<Panel.Mark> marks(GhostPaths paths, CurveFigures paper) {
        return List.of(
                paper.mark(paper.say("first"), paths.firstMetres(), Tone.THIRD),
                paper.mark(paper.say("second"), paths.secondMetres(), Tone.THIRD));
    }

    private static Panel lattice(GhostPaths paths, GhostPaths.Outcome outcome, CurveFigures paper) {
        List<Panel.Stroke> strokes = new ArrayList<>();
        for (BounceRay ray : outcome.rays()) {
            if (Math.abs(ray.amplitude()) >= LEAST_DRAWN) {
                strokes.add(new Panel.Stroke(
                        paper.length(ray.fromMetres()),
                        1e9 * ray.fromSeconds(),
                        paper.length(ray.toMetres()),
                        1e9 * ray.toSeconds(),
                        Math.sqrt(Math.abs(ray.amplitude())),
                        ray.bounces() > 1 ? Tone.OTHER : Tone.MAIN));
            }
        }
        return new Panel.Plot(
                paper.say("lattice"),
                distance(paper),
                Axis.linear(paper.common("nanoseconds"), 0, 0.9e9 * outcome.lastSeconds()),
                List.of(),
                strokes,
                marks(paths, paper),
                0,
                "");
    }

    private static Panel near(GhostPaths paths, GhostPaths.Outcome outcome, CurveFigures paper) {
        List<Panel.Mark> marks = new ArrayList<>(marks(paths, paper));
        marks.add(paper.mark(paper.say("ghost"), outcome.ghostMetres(), Tone.OTHER));
        return trace(paper.say("near"), outcome, outcome.trace(), marks, paper);
    }

    /** LessonTexts from the near end too, so that what is real stands where it stands above. */
    private static Panel far(GhostPaths paths, GhostPaths.Outcome outcome, CurveFigures paper) {
        Curve far = outcome.farTrace();
        int count = far.count();
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = CABLE_METRES - far.x(count - 1 - i);
            y[i] = far.y(count - 1 - i);
        }
        List<Panel.Mark> marks = new ArrayList<>(marks(paths, paper));
        marks.add(paper.mark(paper.say("ghost"), outcome.ghostFromFarMetres(), Tone.OTHER));
        return trace(paper.say("far"), outcome, new Curve(x, y), marks, paper);
    }

    /** Drawn so that the ghost can be seen, though what is real goes beyond the edge then. */
    private static Panel trace(
            String title, GhostPaths.Outcome outcome, Curve curve, List<Panel.Mark> marks, CurveFigures paper) {
        List<Panel.Line> lines = List.of(paper.trace("", curve, Tone.MAIN, false));
        return new Panel.Plot(title, distance(paper), paper.percent(400 * Math.abs(outcome.ghostEcho())), lines)
                .with(marks);
    }

    private static String caption(GhostPaths paths, GhostPaths.Outcome outcome, CurveFigures paper) {
        return paper.say(
                "numbers",
                paper.quantities().length(paths.firstMetres()),
                paper.quantities().length(paths.secondMetres()),
                paper.quantities().length(outcome.ghostMetres()),
                CurveFigures.number(100 * outcome.ghostEcho(), 2),
                CurveFigures.number(100 * outcome.secondEcho(), 1),
                paper.quantities().length(outcome.ghostFromFarMetres()));
    }
}
