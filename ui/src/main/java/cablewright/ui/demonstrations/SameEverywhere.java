// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.OffCentreReel;
import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;

/** A mistake that is the same everywhere. */
final class SameEverywhere implements Demonstration {

    private static final List<String> TYPES = List.of("hardline-500", "drop-6-foam");
    private static final double PICO = 1e-12;
    private static final double MOST_RETURN_LOSS = 60;

    @Override
    public String id() {
        return "same";
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
        return List.of(
                Control.number("eccentricity", 0, 0.95, 0.5),
                Control.onOff("partial"),
                Control.length("from", 5, 60, 40),
                Control.length("stretch", 1, 35, 20),
                Control.time("pulse", 2e-9, 50e-9, 5e-9),
                Control.choice("cable", TYPES.size()));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        CableType type = Catalogue.standard().type(TYPES.get(values.choice("cable")));
        boolean partial = values.isOn("partial");
        double from = partial ? values.get("from") : 0;
        double to = partial ? from + values.get("stretch") : 100;
        OffCentreReel reel = new OffCentreReel(type, 100, values.get("eccentricity"), from, to, values.get("pulse"));
        return Optional.of(drawn(reel, reel.outcome(), new CurveFigures(id(), words)));
    }

    private Figure drawn(OffCentreReel reel, OffCentreReel.Outcome outcome, CurveFigures paper) {
        return new Figure(
                paper.say("title"),
                List.of(
                        new Figure.Row(
                                1.1,
                                List.of(
                                        new Figure.Part(0.42, cut(reel, outcome, paper)),
                                        new Figure.Part(1, trace(reel, outcome, paper)))),
                        Figure.Row.of(1, step(reel, outcome, paper), sweep(outcome, paper))),
                caption(reel, outcome, paper),
                paper.say(
                        "settings",
                        reel.type().title(),
                        paper.quantities().shortLength(reel.reelMetres()),
                        paper.quantities().time(reel.pulseSeconds())));
    }

    private static Panel cut(OffCentreReel reel, OffCentreReel.Outcome outcome, CurveFigures paper) {
        SectionDrawing off = reel.eccentricity() > 0
                ? reel.type().section().offCentre(reel.eccentricity()).drawing()
                : reel.type().section().drawing();
        return new Panel.Cut(
                paper.say("cut"),
                reel.type().section().drawing(),
                Optional.of(off),
                List.of(
                        paper.say("cut.sound", CurveFigures.number(outcome.soundOhms(), 1)),
                        paper.say("cut.off", CurveFigures.number(outcome.offCentreOhms(), 1))));
    }

    private static Panel trace(OffCentreReel reel, OffCentreReel.Outcome outcome, CurveFigures paper) {
        List<Panel.Line> lines = List.of(
                paper.trace(paper.say("this"), outcome.trace(), Tone.MAIN, false),
                paper.trace(paper.say("sound"), outcome.soundTrace(), Tone.OTHER, true));
        Panel.Plot plot = new Panel.Plot(
                paper.say("trace"),
                paper.distance(-2, 1.12 * reel.reelMetres()),
                Axis.linear(paper.common("percent"), -12, 12),
                lines);
        plot = plot.withNoise(300 * outcome.noiseVolts(), paper.common("noise"));
        return reel.isWholeReel()
                ? plot
                : plot.with(List.of(
                        paper.mark(paper.say("from"), reel.fromMetres(), Tone.THIRD),
                        paper.mark(paper.say("to"), reel.toMetres(), Tone.THIRD)));
    }

    private static Panel step(OffCentreReel reel, OffCentreReel.Outcome outcome, CurveFigures paper) {
        return new Panel.Plot(
                paper.say("step"),
                paper.distance(-2, 0.95 * reel.reelMetres()),
                Axis.linear(paper.common("percent"), -12, 12),
                List.of(
                        paper.trace(paper.say("this"), outcome.step(), Tone.MAIN, false),
                        paper.trace(paper.say("sound"), outcome.soundStep(), Tone.OTHER, true)));
    }

    private static Panel sweep(OffCentreReel.Outcome outcome, CurveFigures paper) {
        int last = outcome.returnLoss().count() - 1;
        return new Panel.Plot(
                paper.say("sweep"),
                paper.megahertz(outcome.returnLoss().x(0), outcome.returnLoss().x(last)),
                Axis.linear(paper.common("decibels"), 0, MOST_RETURN_LOSS),
                List.of(
                        paper.sweep(paper.say("this"), outcome.returnLoss(), Tone.MAIN, false),
                        paper.sweep(paper.say("sound"), outcome.soundReturnLoss(), Tone.OTHER, true)));
    }

    private static String caption(OffCentreReel reel, OffCentreReel.Outcome outcome, CurveFigures paper) {
        String numbers = paper.say(
                "numbers",
                CurveFigures.number(reel.eccentricity(), 2),
                CurveFigures.number(outcome.offCentreOhms(), 1),
                CurveFigures.number(outcome.soundOhms(), 1),
                CurveFigures.number(100 * outcome.launchReflection(), 1),
                CurveFigures.number(outcome.lossFactor(), 2),
                CurveFigures.number(outcome.offCentreFaradsPerMetre() / PICO, 1),
                CurveFigures.number(outcome.soundFaradsPerMetre() / PICO, 1));
        String trace = reel.isWholeReel()
                ? paper.say(
                        "flat",
                        CurveFigures.number(100 * Math.abs(outcome.betweenVolts()), 2),
                        CurveFigures.number(100 * outcome.noiseVolts(), 2))
                : paper.say("edges");
        return numbers + " " + trace + " " + paper.say("caught", CurveFigures.number(outcome.rippleHertz() / 1e6, 2));
    }
}
