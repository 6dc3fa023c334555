// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.demonstration.WidthAgainstSight;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** What a wider pulse costs and what it buys. */
final class WidthAndSight implements Demonstration {

    private static final double FIRST_METRES = 40;
    private static final int WIDTHS = 13;
    private static final double LEAST_WIDTH = 2e-9;
    private static final double MOST_WIDTH = 1e-6;

    @Override
    public String id() {
        return "width";
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
        return 0;
    }

    @Override
    public List<Control> controls() {
        return List.of(
                Control.time("pulse", LEAST_WIDTH, 500e-9, 10e-9),
                Control.logLength("apart", 0.1, 30, 3),
                Control.logShare("reflection", 0.005, 0.3, 0.05),
                Control.count("averages", 1, 4096, 64));
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener listener) {
        WidthAgainstSight shown = new WidthAgainstSight(
                Catalogue.standard().type("drop-6-foam"),
                values.get("pulse"),
                FIRST_METRES,
                values.get("apart"),
                -values.get("reflection"),
                (int) values.get("averages"));
        WidthAgainstSight.Outcome outcome = shown.outcome();
        double[] widths = IntStream.range(0, WIDTHS)
                .mapToDouble(i -> LEAST_WIDTH * Math.pow(MOST_WIDTH / LEAST_WIDTH, i / (WIDTHS - 1.0)))
                .toArray();
        WidthAgainstSight.Sight[] sights = IntStream.range(0, WIDTHS)
                .parallel()
                .mapToObj(i -> shown.sight(widths[i]))
                .toArray(WidthAgainstSight.Sight[]::new);
        CurveFigures paper = new CurveFigures(id(), words);
        return Optional.of(new Figure(
                paper.say("title"),
                List.of(
                        Figure.Row.of(1, trace(shown, outcome, paper)),
                        Figure.Row.of(1, sights(shown, widths, sights, paper))),
                caption(outcome, paper),
                paper.say(
                        "settings",
                        shown.type().title(),
                        paper.quantities().time(shown.pulseSeconds()),
                        shown.averages())));
    }

    private static Panel trace(WidthAgainstSight shown, WidthAgainstSight.Outcome outcome, CurveFigures paper) {
        double to = FIRST_METRES + shown.apartMetres() + 15;
        List<Panel.Line> lines = List.of(paper.trace("", outcome.trace(), Tone.MAIN, false));
        return new Panel.Plot(
                        paper.say("trace"),
                        paper.distance(0, to),
                        paper.percent(lines, Math.min(35, outcome.sight().blindMetres() + 1), to),
                        lines)
                .withNoise(300 * outcome.noiseVolts(), paper.common("noise"))
                .with(List.of(
                        paper.mark(paper.say("first"), FIRST_METRES, Tone.THIRD),
                        paper.mark(paper.say("second"), FIRST_METRES + shown.apartMetres(), Tone.THIRD),
                        paper.mark(paper.say("blind"), outcome.sight().blindMetres(), Tone.OTHER)));
    }

    private static Panel sights(
            WidthAgainstSight shown, double[] widths, WidthAgainstSight.Sight[] sights, CurveFigures paper) {
        double[] nanoseconds =
                IntStream.range(0, WIDTHS).mapToDouble(i -> 1e9 * widths[i]).toArray();
        Curve resolution = curve(nanoseconds, i -> paper.length(sights[i].resolutionMetres()));
        Curve blind = curve(nanoseconds, i -> paper.length(Math.max(0.01, sights[i].blindMetres())));
        Curve reach = curve(nanoseconds, i -> paper.length(Math.max(0.01, sights[i].reachMetres())));
        return new Panel.Plot(
                        paper.say("sights"),
                        Axis.logarithmic(paper.say("sights.x"), 1e9 * LEAST_WIDTH, 1e9 * MOST_WIDTH),
                        Axis.logarithmic(
                                paper.say("sights.y", paper.quantities().unit().symbol()),
                                paper.length(0.1),
                                paper.length(20_000)),
                        List.of(
                                new Panel.Line(paper.say("reach"), reach, Tone.THIRD, false),
                                new Panel.Line(paper.say("blindZone"), blind, Tone.OTHER, true),
                                new Panel.Line(paper.say("resolution"), resolution, Tone.MAIN, false)))
                .with(List.of(new Panel.Mark(
                        paper.quantities().time(shown.pulseSeconds()), 1e9 * shown.pulseSeconds(), Tone.QUIET)));
    }

    private static Curve curve(double[] x, IntToDoubleFunction y) {
        return new Curve(x, IntStream.range(0, x.length).mapToDouble(y).toArray());
    }

    private static String caption(WidthAgainstSight.Outcome outcome, CurveFigures paper) {
        WidthAgainstSight.Sight sight = outcome.sight();
        return paper.say(
                        "numbers",
                        paper.quantities().shortLength(sight.pulseMetres()),
                        paper.quantities().shortLength(sight.resolutionMetres()),
                        paper.quantities().shortLength(sight.blindMetres()),
                        paper.quantities().shortLength(sight.reachMetres()))
                + " "
                + sightSentence("first.sight", outcome.first(), paper)
                + " "
                + sightSentence("second.sight", outcome.second(), paper);
    }

    private static String sightSentence(String key, EventVisibility sight, CurveFigures paper) {
        String visibility = paper.common(sight.visibility().name().toLowerCase(Locale.ROOT));
        String reason = sight.reason()
                .map(r -> ", " + paper.common("reason." + r.name().toLowerCase(Locale.ROOT)))
                .orElse("");
        return paper.say(key, visibility + reason);
    }
}
