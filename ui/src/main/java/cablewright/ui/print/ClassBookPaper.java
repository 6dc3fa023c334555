// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.ClassSummary.KindProgress;
import cablewright.lessons.classbook.ClassSummary.PlaceError;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The class book on paper: figures, progress by kind, what was taken for what, and how far off places were. */
public final class ClassBookPaper {

    private static final String BUNDLE = "cablewright.ui.print.print";
    private static final double ROW = 15;
    private static final double SIZE = 9;
    private static final double NAMES = 118;
    private static final double NUMBERS = 160;
    private static final int MOST_ACROSS = 7;
    private static final double FIRST_COLUMN = 0.23;
    private static final Colour DONE = Palette.LIGHT.of(Ink.TRACE);
    private static final Colour WHOLE = Palette.LIGHT.of(Ink.HIDDEN_AREA);

    private final ClassSummary summary;
    private final String whose;
    private final PaperSize paper;
    private final Words words;
    private final Texts texts;

    /**
     * Makes paper of a class book.
     *
     * @param summary what the attempts show together
     * @param whose whose attempts they are, such as a name
     * @param paper the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public ClassBookPaper(ClassSummary summary, String whose, PaperSize paper, Words words) {
        this.summary = summary;
        this.whose = whose;
        this.paper = paper;
        this.words = words;
        this.texts = words.texts().sibling(BUNDLE);
    }

    private String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    private static String percent(double share) {
        return Quantities.number(100 * share, 0) + "\u00a0%";
    }

    /**
     * Makes the pages.
     *
     * @return pages
     */
    public Printout pages() {
        PageFlow flow = new PageFlow(paper);
        flow.text(
                say(
                        "book.figures",
                        summary.attempts(),
                        percent(summary.meanFraction()),
                        summary.needlessDigs(),
                        summary.damageMissed(),
                        summary.damageLeft()),
                PageFlow.INK);
        if (summary.byKind().isEmpty()) {
            flow.text(say("book.empty"), PageFlow.QUIET);
        } else {
            progress(flow);
            confusions(flow);
            errors(flow);
        }
        String title = say("book.title", whose);
        return new Printout(title, paper, flow.pages(title, say("book.foot"), (page, of) -> say("page", page, of)));
    }

    private List<EventKind> kinds() {
        return Arrays.stream(EventKind.values())
                .filter(summary.byKind()::containsKey)
                .toList();
    }

    private void progress(PageFlow flow) {
        flow.heading(say("book.progress"));
        flow.text(say("book.progress.read"), PageFlow.QUIET);
        for (EventKind kind : kinds()) {
            KindProgress progress = summary.byKind().get(kind);
            flow.block(ROW, (pen, top) -> bar(flow, pen, top, kind, progress));
        }
    }

    private void bar(PageFlow flow, Pen pen, double top, EventKind kind, KindProgress progress) {
        double left = flow.left() + NAMES;
        double width = flow.width() - NAMES - NUMBERS;
        pen.text(words.kind(kind), flow.left(), top + SIZE, Anchor.START, SIZE, PageFlow.INK);
        pen.fill(left, top + 3, width, 7, WHOLE);
        pen.fill(left, top + 3, width * progress.meanSuccess(), 7, DONE);
        double recent = left + width * progress.recentSuccess();
        pen.line(recent, top + 0.5, recent, top + 12.5, 1.4, 0, PageFlow.INK);
        String told = say(
                "book.progress.row",
                percent(progress.meanSuccess()),
                percent(progress.recentSuccess()),
                progress.asked());
        pen.text(told, flow.right(), top + SIZE, Anchor.END, SIZE, PageFlow.QUIET);
    }

    /** As many tables, one below the other, as the kinds that were flagged need. */
    private void confusions(PageFlow flow) {
        flow.heading(say("book.confusions"));
        flow.text(say("book.confusions.read"), PageFlow.QUIET);
        Set<EventKind> flagged = EnumSet.noneOf(EventKind.class);
        summary.takenFor().values().forEach(taken -> flagged.addAll(taken.keySet()));
        List<EventKind> across = new ArrayList<>(flagged);
        for (int from = 0; from == 0 || from < across.size(); from += MOST_ACROSS) {
            List<EventKind> part = across.subList(from, Math.min(across.size(), from + MOST_ACROSS));
            grid(flow, part, from + MOST_ACROSS >= across.size());
            flow.gap(6);
        }
    }

    private void grid(PageFlow flow, List<EventKind> across, boolean last) {
        int columns = across.size() + (last ? 1 : 0);
        double[] shares = new double[columns + 1];
        Arrays.fill(shares, (1 - FIRST_COLUMN) / columns);
        shares[0] = FIRST_COLUMN;
        TableBlock table = new TableBlock(flow, shares);
        List<String> head = new ArrayList<>(List.of(""));
        across.forEach(kind -> head.add(words.kind(kind)));
        if (last) {
            head.add(say("book.missed"));
        }
        table.head(head);
        for (EventKind truth : kinds()) {
            Map<EventKind, Integer> taken = summary.takenFor().getOrDefault(truth, Map.of());
            List<String> row = new ArrayList<>(List.of(words.kind(truth)));
            across.forEach(kind -> row.add(times(taken.getOrDefault(kind, 0), kind == truth)));
            if (last) {
                row.add(times(summary.missed().getOrDefault(truth, 0), false));
            }
            table.row(row);
        }
    }

    private static String times(int times, boolean right) {
        if (times == 0) {
            return "·";
        }
        return right ? "[" + times + "]" : String.valueOf(times);
    }

    private void errors(PageFlow flow) {
        flow.heading(say("book.errors"));
        TableBlock table = new TableBlock(flow, 0.34, 0.16, 0.25, 0.25);
        table.head(List.of(
                say("book.errors.kind"), say("book.errors.places"), say("book.errors.mean"), say("book.errors.most")));
        for (EventKind kind : kinds()) {
            double[] off = summary.placeErrorsMetres().stream()
                    .filter(error -> error.kind() == kind)
                    .mapToDouble(PlaceError::errorMetres)
                    .map(Math::abs)
                    .toArray();
            if (off.length > 0) {
                table.row(List.of(
                        words.kind(kind),
                        String.valueOf(off.length),
                        words.quantities().length(Arrays.stream(off).average().orElse(0), 2),
                        words.quantities().length(Arrays.stream(off).max().orElse(0), 2)));
            }
        }
    }
}
