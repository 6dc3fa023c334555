// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.PersonResult;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.feedback.Feedback;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.CablePainter;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.words.FindingText;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** One person's exam on paper: for each line trace, flags, cable, marks and the reasons; and a certificate. */
public final class PersonReport {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final double NAME_SIZE = 24;

    static final String BUNDLE = "cablewright.ui.print.exam";

    private final ClassResult result;
    private final PersonResult person;
    private final PaperSize paper;
    private final Words words;
    private final Texts texts;
    private final Texts tracks;

    /**
     * Makes paper of one person's exam.
     *
     * @param result the class
     * @param person the person
     * @param paper the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public PersonReport(ClassResult result, PersonResult person, PaperSize paper, Words words) {
        this.result = result;
        this.person = person;
        this.paper = paper;
        this.words = words;
        this.texts = words.texts().sibling(BUNDLE);
        this.tracks = words.texts().sibling("cablewright.ui.print.print");
    }

    private String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    /**
     * Makes the report.
     *
     * @return its pages
     */
    public Printout report() {
        PageFlow flow = new PageFlow(paper);
        flow.text(total(), PageFlow.INK);
        flow.text(
                say(
                        "sat",
                        person.answers().handedInAt().map(MINUTE::format).orElse(""),
                        minutes(person.answers().secondsUsed()),
                        person.receipt()),
                PageFlow.QUIET);
        if (person.answers().clockJumpSeconds() > 60 || person.answers().runs() > 1) {
            flow.text(
                    say(
                            "runs",
                            person.answers().runs(),
                            String.valueOf(Math.round(person.answers().clockJumpSeconds()))),
                    PageFlow.QUIET);
        }
        for (MarkSheet sheet : person.sheets()) {
            exercise(flow, result.lesson().exercise(sheet.exerciseId()).orElseThrow(), sheet);
        }
        String title = say("report.title", result.title(), person.name());
        return new Printout(title, paper, flow.pages(title, say("foot"), this::page));
    }

    private static String minutes(double seconds) {
        long whole = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    private String page(int page, int of) {
        return tracks.say("page", page, of);
    }

    private String total() {
        return say(
                person.total().passed() ? "total.passed" : "total.failed",
                FindingWords.marks(person.total().marks()),
                FindingWords.marks(person.total().maximum()),
                String.valueOf(Math.round(100 * person.fraction())),
                String.valueOf(Math.round(100 * result.lesson().passMarkFraction())));
    }

    private void exercise(PageFlow flow, Exercise exercise, MarkSheet sheet) {
        Settings settings = sheet.attempt().settings();
        LineEnd end = sheet.attempt().flags().isEmpty()
                ? exercise.start().end()
                : sheet.attempt().flags().get(0).end();
        flow.heading(say(
                "result", exercise.title(), FindingWords.marks(sheet.marks()), FindingWords.marks(sheet.maximum())));
        Trace trace = Measurement.at(end, exercise.cable(), exercise.instrument(), new PropagationCache())
                .trace(settings, exercise.noiseSeed());
        PrintedTracks plate = new PrintedTracks(flow, words, settings.rangeMetres());
        plate.trace(trace, marks(sheet.attempt().flags(), end), TraceCaption.of(trace, end, tracks, words));
        plate.record(exercise.record(), end, tracks.say("record.caption"));
        cable(plate, exercise, end, settings);
        flow.gap(4);
        var reasons = Feedback.of(exercise, sheet, end, () -> false);
        for (FindingText finding : new FindingWords(words, exercise, reasons).tell(sheet)) {
            String marks = finding.marks().isEmpty() ? "" : " [" + finding.marks() + "]";
            String letter = finding.letter().map(it -> it + "  ").orElse("");
            flow.subheading(letter + finding.title() + marks);
            if (!finding.why().isEmpty()) {
                flow.text(finding.why(), PageFlow.QUIET);
            }
        }
        flow.subheading(say("explanation"));
        flow.text(PlainText.of(exercise.explanation()), PageFlow.INK);
    }

    private static List<FlagMarker> marks(List<Flag> flags, LineEnd end) {
        return flags.stream()
                .filter(flag -> flag.end() == end)
                .map(flag -> new FlagMarker(
                        flag.letter(),
                        flag.startMetres(),
                        flag.endMetres(),
                        flag.verdict() == Verdict.DAMAGE ? FlagMarker.Look.DAMAGE : FlagMarker.Look.BELONGS,
                        false))
                .toList();
    }

    private void cable(PrintedTracks plate, Exercise exercise, LineEnd end, Settings settings) {
        CableDrawing drawing = CableDrawing.of(
                exercise.cable(),
                end,
                settings.velocityFraction(),
                settings.stimulus().topHertz());
        plate.cable(drawing, CablePainter.Labels.of(event -> words.kind(event.kind())), tracks.say("cable.caption"));
    }

    /**
     * Makes a certificate that states what was shown, and nothing beyond it.
     *
     * @return one page
     */
    public Printout certificate() {
        PageFlow flow = new PageFlow(paper);
        flow.gap(60);
        flow.large(say("certificate.name", person.name()), NAME_SIZE);
        flow.gap(12);
        flow.large(say("certificate.what", result.title(), person.sheets().size()), 12);
        flow.large(total(), 12);
        flow.gap(8);
        int digs = person.sheets().stream().mapToInt(MarkSheet::needlessDigs).sum();
        int left = person.sheets().stream().mapToInt(MarkSheet::damageLeft).sum();
        int missed = person.sheets().stream().mapToInt(MarkSheet::damageMissed).sum();
        flow.text(say("certificate.counts", digs, left, missed), PageFlow.INK);
        for (MarkSheet sheet : person.sheets()) {
            Exercise exercise = result.lesson().exercise(sheet.exerciseId()).orElseThrow();
            flow.text(
                    "• " + exercise.title() + ": " + Quantities.number(100 * sheet.fraction(), 0) + "\u00a0%",
                    PageFlow.INK);
        }
        flow.gap(8);
        flow.text(say("certificate.limits"), PageFlow.QUIET);
        flow.text(
                say(
                        "certificate.receipt",
                        person.answers().handedInAt().map(MINUTE::format).orElse(""),
                        person.receipt()),
                PageFlow.QUIET);
        flow.gap(40);
        flow.text(say("certificate.sign"), PageFlow.QUIET);
        String title = say("certificate.title");
        return new Printout(title, paper, flow.pages(title, say("foot"), this::page));
    }
}
