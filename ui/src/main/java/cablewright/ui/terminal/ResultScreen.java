// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.drawing.text.TerminalStyle;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.FindingText;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.NoticeWords;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.List;

/** The result after commit: marks, each flag's result with its reason, and the cable. */
final class ResultScreen {

    private final Exercise exercise;
    private final Words words;
    private final Texts texts;
    private final TerminalStyle style;
    private final Prose prose;

    ResultScreen(Exercise exercise, RoundView view) {
        this.exercise = exercise;
        this.words = view.words();
        this.texts = view.texts();
        this.style = view.style();
        this.prose = view.prose();
    }

    /** Marks, with the reason for each. */
    String marks(MarkSheet sheet, List<FindingReasons> reasons) {
        StringBuilder out = new StringBuilder();
        out.append(style.bold(texts.say("result.marks", FindingWords.marks(sheet.marks()), sheet.maximum())));
        out.append(count("result.digs", sheet.needlessDigs()));
        out.append(count("result.left", sheet.damageLeft()));
        out.append(count("result.missed", sheet.damageMissed()));
        if (sheet.hintCostMarks() > 0) {
            out.append(texts.say("result.hints", FindingWords.marks(sheet.hintCostMarks())));
        }
        out.append("\n");
        new FindingWords(words, exercise, reasons).tell(sheet).forEach(finding -> out.append(finding(finding)));
        return out.toString();
    }

    private String count(String key, int number) {
        return number == 0 ? "" : texts.say(key, number);
    }

    private String finding(FindingText finding) {
        String head = sign(finding) + " "
                + finding.letter().map(letter -> letter + "  ").orElse("")
                + finding.title()
                + (finding.marks().isEmpty() ? "" : "  [" + finding.marks() + "]");
        return prose.wrapped(head, "  ") + (finding.why().isEmpty() ? "" : prose.wrapped(finding.why(), "      "));
    }

    /** A sign and a colour, each enough by itself. */
    private String sign(FindingText finding) {
        return switch (finding.outcome()) {
            case RIGHT -> style.good(style.unicode() ? "✓" : "+");
            case PARTLY -> style.bad("~");
            case WRONG -> style.bad(style.unicode() ? "✗" : "x");
            case TOLD -> style.unicode() ? "·" : ".";
        };
    }

    /**
     * The cable, and why the trace looks as it does.
     *
     * @param end the end tested
     * @param drawing the cable laid out at the velocity that is set
     * @param topHertz top of the band in use [Hz]
     */
    String cable(LineEnd end, CableDrawing drawing, double topHertz) {
        StringBuilder out = new StringBuilder(style.bold(texts.say("result.cable")) + "\n");
        exercise.cable()
                .runs()
                .forEach(run -> out.append(prose.wrapped(
                        texts.say(
                                "result.run",
                                words.quantities().length(run.lengthMetres()),
                                run.type().title(),
                                words.quantities().ohms(run.type().section().impedanceOhms()),
                                Quantities.number(run.type().section().velocityFraction(), 3)),
                        "  ")));
        char sign = 'a';
        EventWords details = new EventWords(words);
        for (CableDrawing.Mark mark : drawing.marks()) {
            out.append(prose.wrapped(sign + "  " + event(mark, details), "  "));
            sign = sign == 'z' ? 'z' : (char) (sign + 1);
        }
        drawing.cuts().stream()
                .filter(cut -> cut.event().isPresent())
                .forEach(cut -> out.append(prose.wrapped(
                        texts.say(
                                "result.cut",
                                words.kind(cut.event().get().kind()),
                                words.quantities().ohms(cut.section().impedanceOhms()),
                                words.quantities().ohms(drawing.usualOhms())),
                        "  ")));
        out.append("  ")
                .append(texts.say(
                        end == LineEnd.FAR ? "result.end.far" : "result.end",
                        words.farEnd(drawing.farEnd()),
                        words.quantities().length(exercise.cable().lengthMetres())))
                .append("\n\n");
        out.append(prose.ofMarkdown(exercise.explanation()));
        new NoticeWords(words)
                .of(exercise.cable(), topHertz)
                .forEach(notice -> out.append(prose.wrapped(texts.say("result.notice", notice), "  ")));
        return out.toString();
    }

    private String event(CableDrawing.Mark mark, EventWords details) {
        double start = mark.event().startMetres();
        double stop = mark.event().endMetres();
        String from = words.quantities().length(start);
        String place = stop - start >= 0.1
                ? texts.say("result.place", from, words.quantities().length(stop))
                : from;
        return texts.say("result.event", place, words.kind(mark.event().kind()), details.detail(mark.event()));
    }
}
