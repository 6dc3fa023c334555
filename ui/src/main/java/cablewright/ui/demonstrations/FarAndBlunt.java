// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.LossAndEdges;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What distance does to edges. */
final class FarAndBlunt implements Demonstration {

    private static final List<String> TYPES = List.of("coax-213-solid", "drop-6-foam", "hardline-500", "cat-5e");
    private static final List<Tone> TONES = List.of(Tone.MAIN, Tone.THIRD, Tone.FOURTH);
    private static final double LAW_HERTZ = 1e8;
    private static final double LAW_HERTZ_OF_PAIRS = 1e7;

    @Override
    public String id() {
        return "loss";
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
        return 1;
    }

    @Override
    public List<Control> controls() {
        return List.of(Control.choice("cable", TYPES.size()), Control.logLength("distance", 10, 1000, 400));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        CableType type = Catalogue.standard().type(TYPES.get(values.choice("cable")));
        double hertz = type.nominalImpedanceOhms() > 90 ? LAW_HERTZ_OF_PAIRS : LAW_HERTZ;
        double distance = values.get("distance");
        LossAndEdges.Outcome whole = new LossAndEdges(type, 2 * distance, hertz).outcome();
        LossAndEdges.Outcome half = new LossAndEdges(type, distance, hertz).outcome();
        LossAndEdges.Outcome quarter = new LossAndEdges(type, distance / 2, hertz).outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(
                        Figure.Row.of(1, law(whole, paper)),
                        Figure.Row.of(1, edges(List.of(quarter, half, whole), distance, paper))),
                caption(whole, half, distance, paper),
                paper.say("settings", type.title(), CurveFigures.number(hertz / 1e6, 0))));
    }

    private static Panel law(LossAndEdges.Outcome outcome, CurveFigures paper) {
        double shown = outcome.law().x(outcome.law().count() - 1);
        return new Panel.Plot(
                        paper.say("law"),
                        paper.nanoseconds(shown),
                        Axis.linear(paper.say("law.y"), 0, 100),
                        List.of(
                                paper.edge(paper.say("exact"), outcome.exact(), Tone.MAIN, false),
                                paper.edge(paper.say("erfc"), outcome.law(), Tone.OTHER, true)))
                .with(List.of(new Panel.Mark(paper.say("half"), 1e9 * outcome.halfSeconds(), Tone.THIRD)));
    }

    private static Panel edges(List<LossAndEdges.Outcome> outcomes, double distance, CurveFigures paper) {
        List<Panel.Line> lines = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            String name = paper.quantities().shortLength(distance * Math.pow(2, i - 2));
            lines.add(paper.edge(name, outcomes.get(i).exact(), TONES.get(i), i == 1));
        }
        LossAndEdges.Outcome nearest = outcomes.get(0);
        return new Panel.Plot(
                paper.say("edges"),
                paper.nanoseconds(nearest.exact().x(nearest.exact().count() - 1)),
                Axis.linear(paper.say("law.y"), 0, 100),
                lines);
    }

    private static String caption(
            LossAndEdges.Outcome whole, LossAndEdges.Outcome half, double distance, CurveFigures paper) {
        return paper.say(
                "numbers",
                paper.quantities().shortLength(distance),
                CurveFigures.number(whole.decibels(), 1),
                paper.quantities().time(whole.halfSeconds()),
                paper.quantities().time(whole.riseSeconds()),
                paper.quantities().time(half.halfSeconds()),
                paper.quantities().time(whole.exactHalfSeconds()));
    }
}
