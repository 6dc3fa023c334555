// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.WaterInCable;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Water: where it came in, where it went, and how it lies. */
final class WhereWaterWent implements Demonstration {

    private static final List<WaterDistribution> PICTURES = List.of(
            WaterDistribution.FILM_UNDER_SHIELD,
            WaterDistribution.FILM_ON_CORE,
            WaterDistribution.MAXWELL_GARNETT,
            WaterDistribution.BRUGGEMAN,
            WaterDistribution.PARALLEL_BOUND);
    private static final List<Tone> TONES = List.of(Tone.MAIN, Tone.OTHER, Tone.THIRD, Tone.FOURTH, Tone.FIFTH);
    private static final double CABLE_METRES = 120;
    private static final double START_METRES = 70;

    @Override
    public String id() {
        return "water";
    }

    @Override
    public int answers() {
        return 3;
    }

    @Override
    public int rightAnswer() {
        return 1;
    }

    @Override
    public int rightReason() {
        return 2;
    }

    @Override
    public List<Control> controls() {
        return List.of(
                Control.choice("picture", PICTURES.size()),
                Control.share("fraction", 0, 0.5, 0.05),
                Control.length("soaked", 1, 40, 15),
                Control.share("drying", 0, 1, 0),
                new Control("salt", Control.Form.LINEAR, Control.Measure.NUMBER, 0, 5, 0.01),
                Control.time("pulse", 2e-9, 50e-9, 5e-9));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        CableType type = Catalogue.standard().type("drop-6-foam");
        WaterInCable shown = new WaterInCable(
                type,
                CABLE_METRES,
                START_METRES,
                values.get("soaked"),
                PICTURES.get(values.choice("picture")),
                values.get("fraction"),
                new Water(15, values.get("salt")),
                values.get("drying"),
                values.get("pulse"));
        WaterInCable.Outcome outcome = shown.outcome();
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(
                        new Figure.Row(
                                1.1,
                                List.of(
                                        new Figure.Part(0.42, cut(shown, outcome, paper)),
                                        new Figure.Part(1, trace(shown, outcome, paper)))),
                        Figure.Row.of(1, impedance(shown, paper))),
                caption(shown, outcome, paper),
                paper.say(
                        "settings",
                        type.title(),
                        paper.quantities().time(shown.pulseSeconds()),
                        CurveFigures.number(shown.water().conductivitySiemensPerMetre(), 2))));
    }

    private static Panel cut(WaterInCable shown, WaterInCable.Outcome outcome, CurveFigures paper) {
        boolean wet = shown.volumeFraction() > 0;
        return new Panel.Cut(
                paper.say("cut"),
                shown.type().section().drawing(),
                wet
                        ? Optional.of(shown.type()
                                .section()
                                .wet(shown.picture(), shown.volumeFraction(), shown.water())
                                .drawing())
                        : Optional.empty(),
                List.of(
                        paper.say("cut.dry", CurveFigures.number(outcome.dryOhms(), 1)),
                        paper.say("cut.wet", CurveFigures.number(outcome.wetOhms(), 1))));
    }

    private static Panel trace(WaterInCable shown, WaterInCable.Outcome outcome, CurveFigures paper) {
        List<Panel.Line> lines = List.of(
                paper.trace(paper.say("wet"), outcome.trace(), Tone.MAIN, false),
                paper.trace(paper.say("dry"), outcome.dryTrace(), Tone.OTHER, true));
        return new Panel.Plot(
                        paper.say("trace"),
                        paper.distance(0, 1.2 * CABLE_METRES),
                        paper.percent(lines, 20, CABLE_METRES),
                        lines)
                .withNoise(300 * outcome.noiseVolts(), paper.common("noise"))
                .with(List.of(
                        paper.mark(paper.say("from"), START_METRES, Tone.THIRD),
                        paper.mark(paper.say("to"), START_METRES + shown.soakedMetres(), Tone.THIRD)));
    }

    private static Panel impedance(WaterInCable shown, CurveFigures paper) {
        List<Panel.Line> lines = new ArrayList<>();
        for (int i = 0; i < PICTURES.size(); i++) {
            lines.add(new Panel.Line(
                    paper.say("picture." + i),
                    CurveFigures.scaled(shown.impedanceAgainstShare(PICTURES.get(i)), 100, 1),
                    TONES.get(i),
                    i % 2 == 1));
        }
        return new Panel.Plot(
                        paper.say("impedance"),
                        Axis.linear(paper.say("impedance.x"), 0, 50),
                        Axis.linear(paper.common("ohms"), 0, 80),
                        lines)
                .with(List.of(new Panel.Mark("", 100 * shown.volumeFraction(), Tone.QUIET)));
    }

    private static String caption(WaterInCable shown, WaterInCable.Outcome outcome, CurveFigures paper) {
        String numbers = paper.say(
                "numbers",
                CurveFigures.number(100 * shown.volumeFraction(), 0),
                paper.say("picture.lies." + PICTURES.indexOf(shown.picture())),
                CurveFigures.number(outcome.wetOhms(), 1),
                CurveFigures.number(outcome.dryOhms(), 1),
                CurveFigures.number(100 * outcome.entryReflection(), 1),
                CurveFigures.number(outcome.wetVelocityFraction(), 2),
                paper.quantities().length(shown.soakedMetres()),
                paper.quantities().length(outcome.shownMetres()));
        return shown.dryingShare() > 0.05 ? numbers + " " + paper.say("dried") : numbers;
    }
}
