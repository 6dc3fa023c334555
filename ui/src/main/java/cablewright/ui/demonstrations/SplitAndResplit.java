// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.SplitPair;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;

/** Split and re-split: four wires, two joints. */
final class SplitAndResplit implements Demonstration {

    private static final double CABLE_METRES = 80;

    @Override
    public String id() {
        return "split";
    }

    @Override
    public int answers() {
        return 4;
    }

    @Override
    public int rightAnswer() {
        return 1;
    }

    @Override
    public int rightReason() {
        return 0;
    }

    @Override
    public List<Control> controls() {
        return List.of(
                Control.length("split", 5, 50, 25),
                Control.length("stretch", 2, 28, 15),
                Control.number("pitch", 1.2, 4, 1.5),
                Control.time("rise", 0.2e-9, 20e-9, 1e-9));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        double split = values.get("split");
        SplitPair shown = new SplitPair(
                Catalogue.standard().type("cat-5e"),
                CABLE_METRES,
                split,
                split + values.get("stretch"),
                values.get("pitch"),
                values.get("rise"));
        SplitPair.Outcome outcome = shown.outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(
                        Figure.Row.of(1, trace(shown, outcome, paper)),
                        Figure.Row.of(1, crosstalk(shown, outcome, paper))),
                caption(outcome, paper),
                paper.say("settings", shown.type().title(), paper.quantities().time(shown.riseSeconds()))));
    }

    private static List<Panel.Mark> marks(SplitPair shown, CurveFigures paper) {
        return List.of(
                paper.mark(paper.say("split"), shown.splitMetres(), Tone.OTHER),
                paper.mark(paper.say("resplit"), shown.resplitMetres(), Tone.THIRD));
    }

    private static Panel trace(SplitPair shown, SplitPair.Outcome outcome, CurveFigures paper) {
        return new Panel.Plot(
                        paper.say("trace"),
                        paper.distance(0, 1.1 * CABLE_METRES),
                        Axis.linear(paper.common("percent"), -10, 40),
                        List.of(paper.trace("", outcome.trace(), Tone.MAIN, false)))
                .with(marks(shown, paper));
    }

    private static Panel crosstalk(SplitPair shown, SplitPair.Outcome outcome, CurveFigures paper) {
        return new Panel.Plot(
                        paper.say("crosstalk"),
                        paper.distance(0, 1.1 * CABLE_METRES),
                        Axis.linear(paper.say("crosstalk.y"), -5, 30),
                        List.of(paper.trace("", outcome.crosstalkTrace(), Tone.FOURTH, false)))
                .with(marks(shown, paper));
    }

    private static String caption(SplitPair.Outcome outcome, CurveFigures paper) {
        return paper.say(
                "numbers",
                CurveFigures.number(outcome.pairOhms(), 0),
                CurveFigures.number(outcome.splitOhms(), 0),
                CurveFigures.number(100 * outcome.reflection(), 1),
                CurveFigures.number(outcome.crosstalkDecibels(), 1),
                CurveFigures.number(100 * outcome.crosstalk(), 1));
    }
}
