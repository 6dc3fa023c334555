// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.demonstration.damagemap.DamageMap;
import cablewright.lessons.demonstration.damagemap.DamageMapSettings;
import cablewright.lessons.demonstration.damagemap.GradualDamageMap;
import cablewright.lessons.demonstration.damagemap.MapListener;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.HalfSine;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.Panel;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** Gradual damage: a map of what can be seen. */
final class DamageByDegrees implements Demonstration {

    private static final int CELLS = 64;
    private static final double MILDEST = 0.002;
    private static final double WORST = 0.5;

    /** The map last computed: looking at another place of it needs no other. */
    private final AtomicReference<DamageMap> last = new AtomicReference<>();

    @Override
    public String id() {
        return "damage";
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
        return 0;
    }

    @Override
    public List<Control> controls() {
        return List.of(
                Control.time("pulse", 2e-9, 500e-9, 2e-9),
                Control.logLength("length", 0.2, 20, 6),
                Control.length("farthest", 50, 600, 200),
                Control.count("averages", 1, 4096, 64),
                Control.share("place", 0.01, 0.99, 0.4),
                Control.logShare("fall", MILDEST, WORST, 0.1));
    }

    @Override
    public Values clicked(int panel, double x, double y, Values values) {
        if (panel != 0) {
            return values;
        }
        double fall = MILDEST * Math.pow(WORST / MILDEST, Math.max(0, Math.min(1, y)));
        return values.with("place", Math.max(0.01, Math.min(0.99, x))).with("fall", fall);
    }

    private static DamageMapSettings wanted(Values values) {
        double farthest = values.get("farthest");
        double length = values.get("length");
        Settings settings =
                new Settings(new HalfSine(values.get("pulse")), 0.85, 1.1 * farthest + 2 * length + 10, 0, (int)
                        values.get("averages"));
        return new DamageMapSettings(
                Catalogue.standard().type("drop-6-foam"),
                Instrument.usual(75),
                settings,
                Profile.RAISED_COSINE,
                length,
                MILDEST,
                WORST,
                farthest,
                CELLS,
                CELLS);
    }

    @Override
    public Optional<Figure> figure(Values values, Words words, ProgressListener progressListener) {
        DamageMapSettings wanted = wanted(values);
        CurveFigures paper = new CurveFigures(id(), words);
        DamageMap known = last.get();
        if (known != null && known.settings().equals(wanted)) {
            return Optional.of(drawn(known, values, paper));
        }
        MapListener listener = new MapListener() {
            @Override
            public void progress(int done, int of) {
                progressListener.progress((double) done / of);
            }

            @Override
            public void coarse(DamageMap map) {
                progressListener.preview(drawn(map, values, paper));
            }
        };
        Optional<DamageMap> map = GradualDamageMap.compute(wanted, listener, progressListener::isCancelled);
        map.ifPresent(last::set);
        return map.map(complete -> drawn(complete, values, paper));
    }

    private Figure drawn(DamageMap map, Values values, CurveFigures paper) {
        int row = row(values);
        int column = (int) (values.get("place") * CELLS);
        return new Figure(
                paper.say("title"),
                List.of(Figure.Row.of(1.5, map(map, values, paper)), Figure.Row.of(1, trace(map, row, column, paper))),
                caption(map, row, column, paper),
                paper.say(
                        "settings",
                        map.settings().type().title(),
                        paper.quantities().time(values.get("pulse")),
                        (int) values.get("averages")));
    }

    private static int row(Values values) {
        double share = Math.log(values.get("fall") / MILDEST) / Math.log(WORST / MILDEST);
        return (int) Math.max(0, Math.min(CELLS - 1, share * CELLS));
    }

    private static Panel map(DamageMap map, Values values, CurveFigures paper) {
        double farthest = map.settings().farthestMetres();
        return new Panel.Map(
                paper.say("map"),
                paper.distance(0, farthest),
                Axis.logarithmic(paper.say("map.y"), 100 * MILDEST, 100 * WORST),
                map,
                paper.length(values.get("place") * farthest),
                100 * values.get("fall"),
                List.of(paper.common("clear"), paper.common("marginal"), paper.common("hidden")));
    }

    private static Panel trace(DamageMap map, int row, int column, CurveFigures paper) {
        DamageMapSettings settings = map.settings();
        Measurement measurement = Measurement.at(settings.cableAt(row, column), settings.instrument());
        Trace with = measurement.withoutNoise(settings.settings());
        Trace without = measurement
                .of(measurement.tested().withoutEvent(DamageMapSettings.DAMAGE))
                .withoutNoise(settings.settings());
        double start = settings.metresAt(column);
        double margin = 3 * settings.settings().halfPulseMetres() + 2 * settings.damageMetres() + 2;
        double from = Math.max(0, start - margin);
        double to = start + settings.damageMetres() + 2 * margin;
        List<Panel.Line> lines = List.of(
                paper.trace(paper.say("with"), Curve.of(with), Tone.MAIN, false),
                paper.trace(paper.say("without"), Curve.of(without), Tone.OTHER, true));
        return new Panel.Plot(
                        paper.say("trace", paper.quantities().length(start)),
                        paper.distance(from, to),
                        paper.percent(
                                lines, Math.max(from, 3 * settings.settings().halfPulseMetres()), to),
                        lines)
                .withNoise(300 * map.noiseVolts(), paper.common("noise"))
                .with(List.of(
                        paper.mark(paper.say("begins"), start, Tone.THIRD),
                        paper.mark(paper.say("ends"), start + settings.damageMetres(), Tone.THIRD)));
    }

    private static String caption(DamageMap map, int row, int column, CurveFigures paper) {
        DamageMapSettings settings = map.settings();
        Visibility visibility = map.visibility(row, column);
        String reason = map.reason(row, column)
                .map(r -> ", " + paper.common("reason." + r.name().toLowerCase(Locale.ROOT)))
                .orElse("");
        int needed = 0;
        while (needed < CELLS && map.visibility(needed, column) != Visibility.CLEAR) {
            needed++;
        }
        String threshold = needed == CELLS
                ? paper.say("never", paper.quantities().length(settings.metresAt(column)))
                : paper.say(
                        "needed",
                        paper.quantities().length(settings.metresAt(column)),
                        CurveFigures.number(100 * settings.changeAt(needed), 1));
        return paper.say(
                        "numbers",
                        CurveFigures.number(100 * settings.changeAt(row), 1),
                        paper.quantities().shortLength(settings.damageMetres()),
                        paper.quantities().length(settings.metresAt(column)),
                        CurveFigures.number(100 * map.contrastVolts(row, column), 2),
                        CurveFigures.number(map.contrastVolts(row, column) / map.noiseVolts(), 1),
                        paper.common(visibility.name().toLowerCase(Locale.ROOT)) + reason)
                + " " + threshold;
    }
}
