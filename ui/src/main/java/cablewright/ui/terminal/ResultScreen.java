// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.marking.MarkSheet;
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

/** What is told after commit: marks, each flag's result with its reason, and the cable. */
final class ResultScreen {

    private final Exercise exercise;
    private final Words words;
    private final TerminalStyle style;
    private final Prose prose;

    ResultScreen(Exercise exercise, Words words, TerminalStyle style, int columns) {
        this.exercise = exercise;
        this.words = words;
        this.style = style;
        this.prose = new Prose(columns);
    }

    /** Marks, and what they were won and lost by, with the reasons. */
    String marks(MarkSheet sheet, List<FindingReasons> reasons) {
        StringBuilder out = new StringBuilder();
        String total = FindingWords.marks(sheet.marks()) + " of " + FindingWords.marks(sheet.maximum()) + " marks";
        out.append(style.bold(total));
        out.append(count(sheet.needlessDigs(), "needless dig", "needless digs"));
        out.append(count(sheet.damageLeft(), "damage called 'belongs'", "damages called 'belongs'"));
        out.append(count(sheet.damageMissed(), "damage missed", "damages missed"));
        if (sheet.hintCostMarks() > 0) {
            out.append(", hints cost ").append(FindingWords.marks(sheet.hintCostMarks()));
        }
        out.append("\n");
        boolean step = sheet.attempt().settings().stimulus().isStep();
        new FindingWords(words, exercise, reasons, step).tell(sheet).forEach(told -> out.append(finding(told)));
        return out.toString();
    }

    private static String count(int number, String one, String many) {
        return number == 0 ? "" : ", " + number + " " + (number == 1 ? one : many);
    }

    private String finding(FindingText told) {
        String head = sign(told) + " "
                + told.letter().map(letter -> letter + "  ").orElse("")
                + told.title()
                + (told.marks().isEmpty() ? "" : "  [" + told.marks() + "]");
        return prose.wrapped(head, "  ") + (told.why().isEmpty() ? "" : prose.wrapped(told.why(), "      "));
    }

    /** A sign and a colour, each enough by itself. */
    private String sign(FindingText told) {
        return switch (told.outcome()) {
            case RIGHT -> style.good(style.unicode() ? "✓" : "+");
            case PARTLY -> style.bad("~");
            case WRONG -> style.bad(style.unicode() ? "✗" : "x");
            case TOLD -> style.unicode() ? "·" : ".";
        };
    }

    /**
     * What is really there, and why the trace looks as it does.
     *
     * @param end the end tested
     * @param drawing the cable laid out at the velocity that is set
     * @param topHertz top of the band in use [Hz]
     */
    String cable(LineEnd end, CableDrawing drawing, double topHertz) {
        StringBuilder out = new StringBuilder(style.bold("The cable") + "\n");
        exercise.cable()
                .runs()
                .forEach(run -> out.append(prose.wrapped(
                        words.quantities().length(run.lengthMetres()) + " of "
                                + run.type().title() + ", "
                                + words.quantities().ohms(run.type().section().impedanceOhms()) + ", velocity "
                                + Quantities.number(run.type().section().velocityFraction(), 3),
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
                        "impedance at the " + words.kind(cut.event().get().kind()) + ": "
                                + words.quantities().ohms(cut.section().impedanceOhms()) + " instead of "
                                + words.quantities().ohms(drawing.usualOhms()),
                        "  ")));
        out.append("  ").append(words.farEnd(drawing.farEnd()));
        out.append(" at ").append(words.quantities().length(exercise.cable().lengthMetres()));
        out.append(end == LineEnd.FAR ? ", told from the far end\n\n" : "\n\n");
        out.append(prose.ofMarkdown(exercise.explanation()));
        new NoticeWords(words.quantities())
                .of(exercise.cable(), topHertz)
                .forEach(notice -> out.append(prose.wrapped("The model is stretched " + notice + ".", "  ")));
        return out.toString();
    }

    private String event(CableDrawing.Mark mark, EventWords details) {
        double start = mark.event().startMetres();
        double stop = mark.event().endMetres();
        String place = words.quantities().length(start)
                + (stop - start >= 0.1 ? " to " + words.quantities().length(stop) : "");
        return place + "  " + words.kind(mark.event().kind()) + ": " + details.detail(mark.event());
    }
}
