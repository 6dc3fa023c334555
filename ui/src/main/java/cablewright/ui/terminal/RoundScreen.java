// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.ReadingTask;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.reading.Reflection;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.text.TerminalStyle;
import cablewright.ui.drawing.text.TextPlot;
import cablewright.ui.drawing.text.TextTrack;
import cablewright.ui.drawing.text.TextTrack.Mark;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.drawing.track.TracePlot;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The three tracks of an exercise in characters: what the port shows, what the drawings say, what is really there. */
final class RoundScreen {

    private static final double AIR = 0.08;
    private static final double LEAST_ROOM_PERCENT = 0.02;
    private static final double BLIND_LENGTHS = 1.5;
    private static final double MOST_COEFFICIENT = 1;

    private final Round round;
    private final Words words;
    private final Texts texts;
    private final TerminalStyle style;
    private final int columns;
    private final int lines;

    RoundScreen(Round round, RoundView view, int columns, int lines) {
        this.round = round;
        this.words = view.words();
        this.texts = view.texts();
        this.style = view.style();
        this.columns = columns;
        this.lines = lines;
    }

    private LengthUnit unit() {
        return words.quantities().unit();
    }

    private double shown(double metres) {
        return unit().fromMetres(metres);
    }

    /** The whole of the range, and the heights of all that comes back; the outgoing wave runs out of the picture. */
    Window wholeWindow() {
        Extent extent = Extent.ofRange(round.settings().rangeMetres());
        return fitted(shown(extent.fromMetres()), shown(extent.toMetres()));
    }

    /** A part of the range, in the unit that is shown, and the heights of what comes back there. */
    Window fitted(double left, double right) {
        Stimulus stimulus = round.settings().stimulus();
        double settled = round.settings().metresThereAndBack(stimulus.settledSeconds() - stimulus.halfHeightSeconds());
        double from = Math.max(left, Math.min(shown(BLIND_LENGTHS * settled), (left + right) / 2));
        Trace trace = round.trace();
        double least = 0;
        double most = 0;
        for (int i = 0; i < trace.count(); i++) {
            double x = shown(trace.metres(i));
            if (x >= from && x <= right) {
                least = Math.min(least, 100 * trace.volts(i));
                most = Math.max(most, 100 * trace.volts(i));
            }
        }
        double room = Math.max(AIR * (most - least), LEAST_ROOM_PERCENT);
        return new Window(left, right, least - room, most + room);
    }

    /** The trace as a plot, in percent of the outgoing wave. */
    TracePlot plot(Window window) {
        Trace trace = round.trace();
        double[] x = new double[trace.count()];
        double[] percent = new double[trace.count()];
        for (int i = 0; i < x.length; i++) {
            x[i] = shown(trace.metres(i));
            percent[i] = 100 * trace.volts(i);
        }
        return new TracePlot(round.task().title(), settingsLine(), unit(), x, percent, window, flags());
    }

    private List<FlagMarker> flags() {
        return round.flags().stream()
                .filter(flag -> flag.end() == round.end())
                .map(flag -> new FlagMarker(
                        flag.letter(),
                        flag.startMetres(),
                        flag.endMetres(),
                        flag.verdict() == Verdict.DAMAGE ? FlagMarker.Look.DAMAGE : FlagMarker.Look.BELONGS,
                        false))
                .toList();
    }

    /** The settings in one line. */
    String settingsLine() {
        Settings settings = round.settings();
        return texts.say(
                "settings.line",
                words.end(round.end()),
                words.stimulus(settings.stimulus()),
                Quantities.number(settings.velocityFraction(), 3),
                words.quantities().shortLength(settings.rangeMetres()),
                Quantities.significant(settings.gainDecibels()),
                settings.averages());
    }

    /** Trace and record track; after commit the cable track too. */
    String tracks(Window window) {
        int height = Math.max(8, Math.min(24, lines - 8));
        StringBuilder out = new StringBuilder(settingsLine()).append('\n');
        out.append(new TextPlot(columns, height, style).draw(plot(window)));
        out.append(recordTrack(window));
        if (round.sheet().isPresent()) {
            out.append(cableTrack(window));
        }
        return out.toString();
    }

    private String recordTrack(Window window) {
        ReadingTask exercise = round.task();
        double length = exercise.record().lengthMetres().orElse(round.settings().rangeMetres());
        List<Mark> marks = new ArrayList<>();
        int number = 1;
        for (RecordedItem item : exercise.record().items()) {
            double place = shown(fromTestedEnd(item.positionMetres(), length));
            marks.add(new Mark(place, place, number < 10 ? (char) ('0' + number) : 'o'));
            number++;
        }
        String strip = new TextTrack(columns, style).draw(texts.say("track.record"), window, 0, shown(length), marks);
        return strip + recordLegend(length);
    }

    private double fromTestedEnd(double metres, double length) {
        return round.end() == LineEnd.NEAR ? metres : Math.max(0, length - metres);
    }

    private String recordLegend(double length) {
        ReadingTask exercise = round.task();
        List<String> said = new ArrayList<>();
        int number = 1;
        for (RecordedItem item : exercise.record().items()) {
            said.add(number++ + " " + words.quantities().length(fromTestedEnd(item.positionMetres(), length)) + " "
                    + item.label());
        }
        exercise.record()
                .lengthMetres()
                .ifPresent(metres ->
                        said.add(texts.say("record.length", words.quantities().length(metres))));
        said.add(exercise.record().farEnd().label());
        return new Prose(columns, words.quantities()).wrapped(String.join("; ", said), "          ");
    }

    private CableDrawing drawing() {
        double top = round.settings().stimulus().topHertz();
        return CableDrawing.of(
                round.exercise().cable(), round.end(), round.settings().velocityFraction(), top);
    }

    private String cableTrack(Window window) {
        CableDrawing drawing = drawing();
        List<Mark> marks = new ArrayList<>();
        char sign = 'a';
        for (CableDrawing.Mark mark : drawing.marks()) {
            marks.add(new Mark(shown(mark.shownFromMetres()), shown(mark.shownToMetres()), sign));
            sign = sign == 'z' ? 'z' : (char) (sign + 1);
        }
        return new TextTrack(columns, style)
                .draw(texts.say("track.cable"), window, 0, shown(drawing.endShownMetres()), marks);
    }

    /** What the trace shows at a distance: place, time, height, level, apparent impedance. */
    String reading(double metres) {
        Settings settings = round.settings();
        double share = round.trace().voltsAt(metres);
        double coefficient = Math.max(-MOST_COEFFICIENT, Math.min(MOST_COEFFICIENT, share));
        double ohms = new Reflection(coefficient)
                .impedanceOhms(round.task().instrument().sourceOhms());
        Quantities quantities = words.quantities();
        return texts.say(
                        "reading",
                        quantities.length(metres, 2),
                        quantities.time(settings.secondsThereAndBack(metres)),
                        quantities.percent(share),
                        quantities.decibels(share),
                        quantities.ohms(ohms))
                + "\n";
    }

    /** The flags, a line each. */
    String flagList() {
        if (round.flags().isEmpty()) {
            return texts.say("flags.none") + "\n";
        }
        return round.flags().stream().map(flag -> "  " + flagged(flag) + "\n").collect(Collectors.joining());
    }

    /** One flag in words. */
    String flagged(Flag flag) {
        Quantities quantities = words.quantities();
        String start = quantities.length(flag.startMetres());
        String place = flag.endMetres().isPresent()
                ? texts.say(
                        "flag.stretch",
                        start,
                        quantities.length(flag.endMetres().getAsDouble()))
                : start;
        String from = flag.end() == round.end() ? "" : texts.say("flag.from", words.end(flag.end()));
        return flag.letter() + "  " + place + "  " + words.kind(flag.kind()) + "  " + words.verdict(flag.verdict())
                + from;
    }
}
