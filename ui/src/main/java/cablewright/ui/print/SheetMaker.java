// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.CablePainter;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.VisibilityWords;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Makes the paper of an exercise: a worksheet with the trace, the record and a blank table to answer in, and an answer sheet
 * that also has the cable, every event with its reason, and the explanation. Both show the trace that the exercise opens
 * with. Making one takes as long as marking does; do it beside the screen.
 */
public final class SheetMaker {

    static final String BUNDLE = "cablewright.ui.print.print";
    private static final int LEAST_BLANK_ROWS = 7;
    private static final int MOST_BLANK_ROWS = 12;
    private static final double BLANK_ROW = 20;
    private static final double ROOM = 0.9;
    private static final double FOOT_OF_TABLE = 46;

    private final Exercise exercise;
    private final PaperSize paper;
    private final Words words;
    private final Texts texts;

    /**
     * Makes paper of an exercise.
     *
     * @param exercise the exercise
     * @param paper the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public SheetMaker(Exercise exercise, PaperSize paper, Words words) {
        this.exercise = exercise;
        this.paper = paper;
        this.words = words;
        this.texts = words.texts().sibling(BUNDLE);
    }

    private String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    private Settings settings() {
        return exercise.start().settings();
    }

    private Cable tested() {
        return exercise.cable().seenFrom(exercise.start().end());
    }

    /**
     * The trace on paper. Nobody can turn the gain of paper, so it is taken at the most of the permitted gain at which nothing
     * beyond the outgoing pulse is cut off.
     */
    private Trace trace() {
        Measurement measurement = Measurement.at(tested(), exercise.instrument());
        double highest = highestBeyondPulse(measurement.withoutNoise(settings().withGainDecibels(0)));
        double gain = exercise.permitted().gainsDecibels().stream()
                .filter(one -> ROOM * exercise.instrument().clipVolts(one) >= highest)
                .reduce((first, second) -> second)
                .orElse(settings().gainDecibels());
        return measurement.trace(settings().withGainDecibels(gain), exercise.noiseSeed());
    }

    private double highestBeyondPulse(Trace trace) {
        double over = 3 * settings().stimulus().settledSeconds();
        double highest = 0;
        for (int i = 0; i < trace.count(); i++) {
            if (trace.metres(i) > settings().metresThereAndBack(over)) {
                highest = Math.max(highest, Math.abs(trace.volts(i)));
            }
        }
        return highest;
    }

    private String caption(Trace trace) {
        return TraceCaption.of(trace, exercise.start().end(), texts, words);
    }

    /**
     * Makes the worksheet. It shows nothing that the trainee is to find.
     *
     * @return its pages
     */
    public Printout worksheet() {
        PageFlow flow = new PageFlow(paper);
        brief(flow);
        flow.gap(6);
        PrintedTracks tracks = new PrintedTracks(flow, words, settings().rangeMetres());
        Trace trace = trace();
        tracks.trace(trace, List.of(), caption(trace));
        tracks.record(exercise.record(), exercise.start().end(), say("record.caption"));
        flow.text(say("record.note", exercise.record().note()), PageFlow.QUIET);
        exercise.prediction().ifPresent(asked -> {
            flow.heading(say("prediction"));
            flow.text(PlainText.of(words.quantities().inText(asked.question())), PageFlow.INK);
            asked.choices().forEach(choice -> flow.text("□  " + choice.text(), PageFlow.INK));
            asked.reasons().ifPresent(reasons -> {
                flow.text(say("prediction.because"), PageFlow.QUIET);
                reasons.choices().forEach(choice -> flow.text("□  " + choice.text(), PageFlow.INK));
            });
        });
        flow.heading(say("answer"));
        TableBlock table = new TableBlock(flow, 0.07, 0.17, 0.15, 0.34, 0.27);
        table.head(List.of(
                say("answer.flag"), say("answer.from"), say("answer.to"), say("answer.kind"), say("answer.verdict")));
        long rows = Math.round(Math.floor((flow.left(0) - FOOT_OF_TABLE) / BLANK_ROW));
        for (int i = 0; i < Math.max(LEAST_BLANK_ROWS, Math.min(MOST_BLANK_ROWS, rows)); i++) {
            table.blank(BLANK_ROW);
        }
        flow.gap(14);
        flow.block(14, (pen, top) -> {
            double middle = flow.left() + 0.62 * flow.width();
            pen.text(say("answer.name"), flow.left(), top + 10, Anchor.START, 9, PageFlow.QUIET);
            pen.line(flow.left() + 40, top + 11, middle - 12, top + 11, 0.6, 0, PageFlow.EDGE);
            pen.text(say("answer.date"), middle, top + 10, Anchor.START, 9, PageFlow.QUIET);
            pen.line(middle + 34, top + 11, flow.right(), top + 11, 0.6, 0, PageFlow.EDGE);
        });
        String title = exercise.title();
        return new Printout(
                title, paper, flow.pages(title, say("foot.worksheet"), (page, of) -> say("page", page, of)));
    }

    private void brief(PageFlow flow) {
        flow.text(PlainText.of(words.quantities().inText(exercise.brief())), PageFlow.INK);
        flow.gap(4);
        String cautions = exercise.cautions().stream()
                .map((Caution one) -> words.caution(one))
                .collect(Collectors.joining(" "));
        flow.text(say("cautions", cautions), PageFlow.CAUTION);
    }

    /**
     * Makes the answer sheet.
     *
     * @return its pages
     */
    public Printout answerSheet() {
        AnswerKey demand = AnswerKey.of(exercise);
        PageFlow flow = new PageFlow(paper);
        PrintedTracks tracks = new PrintedTracks(flow, words, settings().rangeMetres());
        CableDrawing drawing = CableDrawing.of(
                exercise.cable(),
                exercise.start().end(),
                settings().velocityFraction(),
                settings().stimulus().topHertz());
        List<LineEvent> events = demand.events();
        Trace trace = trace();
        tracks.trace(trace, marks(drawing, events), caption(trace));
        tracks.record(exercise.record(), exercise.start().end(), say("record.caption"));
        tracks.cable(drawing, CablePainter.Labels.of(event -> number(events, event.id())), say("cable.caption"));
        flow.heading(say("events"));
        table(flow, events);
        exercise.prediction().ifPresent(asked -> {
            flow.heading(say("prediction"));
            flow.text(PlainText.of(words.quantities().inText(asked.question())), PageFlow.INK);
            asked.choice(asked.correctChoiceId())
                    .ifPresent(right -> flow.text(say("prediction.right", right.text()), PageFlow.INK));
            asked.reasons()
                    .flatMap(reasons -> reasons.choice(reasons.correctChoiceId()))
                    .ifPresent(reason -> flow.text(say("prediction.reason", reason.text()), PageFlow.INK));
            flow.text(PlainText.of(words.quantities().inText(asked.explanation())), PageFlow.INK);
        });
        flow.heading(say("explanation"));
        flow.text(PlainText.of(words.quantities().inText(exercise.explanation())), PageFlow.INK);
        String title = say("answer.title", exercise.title());
        return new Printout(title, paper, flow.pages(title, say("foot.answer"), (page, of) -> say("page", page, of)));
    }

    private static String number(List<LineEvent> events, String id) {
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i).is(id)) {
                return String.valueOf(i + 1);
            }
        }
        return "";
    }

    private static boolean isDamage(List<LineEvent> events, String id) {
        return events.stream().anyMatch(event -> event.is(id) && event.truth() == Verdict.DAMAGE);
    }

    private static List<FlagMarker> marks(CableDrawing drawing, List<LineEvent> events) {
        return drawing.marks().stream()
                .map(mark -> new FlagMarker(
                        number(events, mark.event().id()),
                        mark.shownFromMetres(),
                        OptionalDouble.empty(),
                        isDamage(events, mark.event().id()) ? FlagMarker.Look.DAMAGE : FlagMarker.Look.BELONGS,
                        false))
                .toList();
    }

    private void table(PageFlow flow, List<LineEvent> events) {
        TableBlock table = new TableBlock(flow, 0.05, 0.16, 0.32, 0.12, 0.35);
        table.head(List.of(
                say("event.number"),
                say("event.place"),
                say("event.what"),
                say("answer.verdict.short"),
                say("event.shows")));
        VisibilityWords sights = new VisibilityWords(words, exercise.cable());
        for (int i = 0; i < events.size(); i++) {
            LineEvent event = events.get(i);
            table.row(List.of(
                    String.valueOf(i + 1),
                    place(event),
                    what(event),
                    words.verdict(event.truth()),
                    shows(event, sights)));
        }
    }

    private String place(LineEvent event) {
        return event.trueEndMetres() > event.trueStartMetres() + 0.5
                ? words.quantities().stretch(event.trueStartMetres(), event.trueEndMetres())
                : words.quantities().length(event.trueStartMetres());
    }

    private String what(LineEvent event) {
        Optional<Event> found = event.on(exercise.cable());
        String kind = words.kind(event.kind());
        return found.map(it -> say("event.detail", kind, new EventWords(words).detail(it)))
                .orElse(kind);
    }

    private String shows(LineEvent event, VisibilityWords sights) {
        String height = words.quantities().percent(event.best().expectedVolts());
        if (event.standing() == Requirement.DEMANDED) {
            return say(
                    "shows.demanded",
                    height,
                    sights.looks(event.best().expectedVolts()),
                    words.stimulus(event.best().settings().stimulus()));
        }
        String why = sights.whyNotClear(event).orElse("");
        return say(event.standing() == Requirement.MARGINAL ? "shows.marginal" : "shows.hidden", why);
    }
}
