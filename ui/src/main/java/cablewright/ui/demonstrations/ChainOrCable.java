// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.LadderOrLine;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** When does a chain of coils and capacitors stop being a cable. */
final class ChainOrCable implements Demonstration {

    private static final double LINE_METRES = 100;
    private static final double MOST_RETURN_LOSS = 60;

    @Override
    public String id() {
        return "ladder";
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
        return 1;
    }

    @Override
    public List<Control> controls() {
        return List.of(Control.count("sections", 2, 1000, 50), Control.time("pulse", 5e-9, 1e-6, 50e-9));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        LadderOrLine shown = new LadderOrLine(75, 0.85, LINE_METRES, (int) values.get("sections"), values.get("pulse"));
        LadderOrLine.Outcome outcome = shown.outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(Figure.Row.of(1, trace(outcome, paper)), Figure.Row.of(1, sweep(shown, outcome, paper))),
                caption(shown, outcome, paper),
                paper.say(
                        "settings",
                        paper.quantities().shortLength(LINE_METRES),
                        shown.sections(),
                        paper.quantities().time(shown.pulseSeconds()))));
    }

    private static Panel trace(LadderOrLine.Outcome outcome, CurveFigures paper) {
        List<Panel.Line> lines = new ArrayList<>();
        lines.add(paper.trace(paper.say("chain"), outcome.ladderTrace(), Tone.MAIN, false));
        lines.add(paper.trace(paper.say("line"), outcome.lineTrace(), Tone.OTHER, true));
        outcome.steppedTrace()
                .ifPresent(stepped -> lines.add(paper.trace(paper.say("stepped"), stepped, Tone.THIRD, true)));
        return new Panel.Plot(
                paper.say("trace"),
                paper.distance(0, 2.2 * LINE_METRES),
                Axis.linear(paper.common("percent"), -60, 120),
                lines);
    }

    private static Panel sweep(LadderOrLine shown, LadderOrLine.Outcome outcome, CurveFigures paper) {
        int last = outcome.returnLoss().count() - 1;
        return new Panel.Plot(
                        paper.say("sweep"),
                        paper.megahertz(0, outcome.returnLoss().x(last)),
                        Axis.linear(paper.common("decibels"), 0, MOST_RETURN_LOSS),
                        List.of(paper.sweep("", outcome.returnLoss(), Tone.MAIN, false)))
                .with(List.of(
                        new Panel.Mark(paper.say("onePercent"), outcome.onePercentHertz() / 1e6, Tone.THIRD),
                        new Panel.Mark(paper.say("cutoff"), outcome.cutoffHertz() / 1e6, Tone.OTHER),
                        new Panel.Mark(paper.say("needed"), 0.5e-6 / shown.pulseSeconds(), Tone.QUIET)));
    }

    private static String caption(LadderOrLine shown, LadderOrLine.Outcome outcome, CurveFigures paper) {
        String late = Double.isInfinite(outcome.lateBy())
                ? paper.say("late.never")
                : paper.say("late", CurveFigures.number(100 * outcome.lateBy(), outcome.lateBy() < 0.01 ? 2 : 1));
        return paper.say(
                        "numbers",
                        shown.sections(),
                        CurveFigures.number(outcome.cutoffHertz() / 1e6, 1),
                        CurveFigures.number(outcome.onePercentHertz() / 1e6, 1),
                        CurveFigures.number(outcome.sectionsPerWavelength(), 0))
                + " " + late;
    }
}
