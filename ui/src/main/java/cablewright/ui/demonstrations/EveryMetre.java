// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.EveryMetreTheSame;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;

/** Every metre the same wrong. */
final class EveryMetre implements Demonstration {

    private static final double MOST_RETURN_LOSS = 80;

    @Override
    public String id() {
        return "every";
    }

    @Override
    public int answers() {
        return 3;
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
                Control.logLength("pitch", 0.2, 5, 1),
                Control.logShare("swing", 1e-4, 0.02, 1e-3),
                Control.length("cable", 20, 300, 100),
                Control.time("pulse", 2e-9, 100e-9, 25e-9));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        EveryMetreTheSame shown = new EveryMetreTheSame(
                Catalogue.standard().type("drop-6-foam"),
                values.get("cable"),
                values.get("pitch"),
                values.get("swing"),
                values.get("pulse"));
        EveryMetreTheSame.Outcome outcome = shown.outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(Figure.Row.of(1, trace(shown, outcome, paper)), Figure.Row.of(1, sweep(outcome, paper))),
                caption(shown, outcome, paper),
                paper.say(
                        "settings",
                        shown.type().title(),
                        paper.quantities().shortLength(shown.cableMetres()),
                        paper.quantities().time(shown.pulseSeconds()))));
    }

    private static Panel trace(EveryMetreTheSame shown, EveryMetreTheSame.Outcome outcome, CurveFigures paper) {
        List<Panel.Line> lines = List.of(
                paper.trace(paper.say("this"), outcome.trace(), Tone.MAIN, false),
                paper.trace(paper.say("even"), outcome.evenTrace(), Tone.OTHER, true));
        return new Panel.Plot(
                        paper.say("trace"),
                        paper.distance(0, 1.1 * shown.cableMetres()),
                        Axis.linear(paper.common("percent"), -2, 2),
                        lines)
                .withNoise(300 * outcome.noiseVolts(), paper.common("noise"));
    }

    private static Panel sweep(EveryMetreTheSame.Outcome outcome, CurveFigures paper) {
        int last = outcome.returnLoss().count() - 1;
        return new Panel.Plot(
                        paper.say("sweep"),
                        paper.megahertz(
                                outcome.returnLoss().x(0), outcome.returnLoss().x(last)),
                        Axis.linear(paper.common("decibels"), 0, MOST_RETURN_LOSS),
                        List.of(
                                paper.sweep(paper.say("this"), outcome.returnLoss(), Tone.MAIN, false),
                                paper.sweep(paper.say("even"), outcome.evenReturnLoss(), Tone.OTHER, true)))
                .with(List.of(new Panel.Mark(paper.say("spike"), outcome.spikeHertz() / 1e6, Tone.THIRD)));
    }

    private static String caption(EveryMetreTheSame shown, EveryMetreTheSame.Outcome outcome, CurveFigures paper) {
        return paper.say(
                "numbers",
                paper.quantities().shortLength(shown.pitchMetres()),
                CurveFigures.number(outcome.spikeHertz() / 1e6, 1),
                CurveFigures.number(-20 * Math.log10(outcome.spikeReflection()), 1),
                CurveFigures.number(-20 * Math.log10(outcome.losslessReflection()), 1),
                CurveFigures.number(100 * outcome.swingVolts(), 2),
                CurveFigures.number(300 * outcome.noiseVolts(), 2));
    }
}
