// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.demonstration.VelocitySetting;
import cablewright.simulator.cable.Run;
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

/** A wrong velocity moves everything. */
final class WrongVelocity implements Demonstration {

    private static final double LENGTH_METRES = 125;
    private static final List<String> SECOND = List.of("drop-6-foam", "coax-6-solid", "hardline-500");

    @Override
    public String id() {
        return "velocity";
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
        return 1;
    }

    @Override
    public List<Control> controls() {
        return List.of(
                Control.number("set", 0.6, 0.95, 0.82),
                Control.choice("second", SECOND.size()),
                Control.share("share", 0.05, 0.95, 0.4),
                Control.time("pulse", 2e-9, 50e-9, 5e-9));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        CableType first = Catalogue.standard().type(SECOND.get(0));
        List<Run> runs = new ArrayList<>();
        double share = values.choice("second") == 0 ? 0 : values.get("share");
        runs.add(new Run(first, (1 - share) * LENGTH_METRES));
        if (share > 0) {
            CableType second = Catalogue.standard().type(SECOND.get(values.choice("second")));
            runs.add(new Run(second, share * LENGTH_METRES));
        }
        VelocitySetting setting = new VelocitySetting(runs, values.get("set"), values.get("pulse"));
        VelocitySetting.Outcome outcome = setting.outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(Figure.Row.of(1.2, trace(outcome, paper)), Figure.Row.of(1, shown(setting, outcome, paper))),
                caption(outcome, paper),
                paper.say(
                        "settings",
                        CurveFigures.number(setting.setFraction(), 2),
                        paper.quantities().time(setting.pulseSeconds()))));
    }

    private static Panel trace(VelocitySetting.Outcome outcome, CurveFigures paper) {
        double end = outcome.joints().get(outcome.joints().size() - 1).shownMetres();
        List<Panel.Line> lines = List.of(paper.trace("", outcome.trace(), Tone.MAIN, false));
        List<Panel.Mark> marks = new ArrayList<>(List.of(
                paper.mark(paper.say("is"), outcome.fault().trueMetres(), Tone.THIRD),
                paper.mark(paper.say("shows"), outcome.fault().shownMetres(), Tone.OTHER)));
        if (outcome.joints().size() > 1) {
            marks.add(paper.mark(paper.say("joint"), outcome.joints().get(0).shownMetres(), Tone.QUIET));
        }
        return new Panel.Plot(
                        paper.say("trace"),
                        paper.distance(0, 1.05 * Math.max(end, LENGTH_METRES)),
                        Axis.linear(paper.common("percent"), -20, 20),
                        lines)
                .with(marks);
    }

    private static Panel shown(VelocitySetting setting, VelocitySetting.Outcome outcome, CurveFigures paper) {
        Curve shown = Curve.of(0, LENGTH_METRES, 126, setting::shownMetres);
        Curve right = Curve.of(0, LENGTH_METRES, 2, metres -> metres);
        double perMetre = paper.length(1);
        double end = outcome.joints().get(outcome.joints().size() - 1).shownMetres();
        return new Panel.Plot(
                        paper.say("shown"),
                        Axis.linear(
                                paper.say("shown.x", paper.quantities().unit().symbol()),
                                0,
                                paper.length(LENGTH_METRES)),
                        Axis.linear(
                                paper.say("shown.y", paper.quantities().unit().symbol()),
                                0,
                                paper.length(1.05 * Math.max(end, LENGTH_METRES))),
                        List.of(
                                new Panel.Line(
                                        paper.say("asSet"),
                                        CurveFigures.scaled(shown, perMetre, perMetre),
                                        Tone.OTHER,
                                        false),
                                new Panel.Line(
                                        paper.say("asIs"),
                                        CurveFigures.scaled(right, perMetre, perMetre),
                                        Tone.THIRD,
                                        true)))
                .with(List.of(paper.mark("", outcome.fault().trueMetres(), Tone.QUIET)));
    }

    private static String caption(VelocitySetting.Outcome outcome, CurveFigures paper) {
        double error = outcome.fault().errorMetres();
        String away = Math.abs(error) < 0.05
                ? paper.say("right")
                : paper.say(error < 0 ? "short" : "long", paper.quantities().length(Math.abs(error)));
        String numbers = paper.say(
                "numbers",
                paper.quantities().length(outcome.fault().trueMetres()),
                paper.quantities().length(outcome.fault().shownMetres()),
                away,
                CurveFigures.number(outcome.rightFraction(), 3));
        return outcome.joints().size() > 1 ? numbers + " " + paper.say("mixed") : numbers;
    }
}
