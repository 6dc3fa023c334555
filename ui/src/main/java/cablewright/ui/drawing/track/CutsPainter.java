// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.lessons.text.Texts;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Pen.Anchor;
import cablewright.ui.drawing.section.CrossSectionPainter;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws cuts across the cable in a row beneath it, each joined to its place by a thin line, with its numbers beside it. */
final class CutsPainter {

    private static final double RADIUS = 17;
    private static final double TEXT_GAP = 8;
    private static final double APART = 14;
    private static final double LINE = 13;

    private final TrackSheet sheet;
    private final CableDrawing drawing;
    private final Body body;
    private final Words words;
    private final Texts texts;
    private final double s;

    CutsPainter(TrackSheet sheet, CableDrawing drawing, Body body, Words words) {
        this.sheet = sheet;
        this.drawing = drawing;
        this.body = body;
        this.words = words;
        this.texts = words.texts().sibling(TrackSheet.BUNDLE);
        this.s = sheet.scale();
    }

    private record Placed(CableDrawing.Cut cut, double anchor, double left, double width, List<String> lines) {

        Placed movedTo(double there) {
            return new Placed(cut, anchor, there, width, lines);
        }
    }

    void draw(double y) {
        place().forEach(placed -> draw(placed, y));
    }

    /** Pushes the cuts apart from left to right, then back from the right edge; those without room are left out. */
    private List<Placed> place() {
        double next = sheet.left() - 20 * s;
        List<Placed> placed = new ArrayList<>();
        for (CableDrawing.Cut cut : drawing.cuts()) {
            OptionalDouble anchor = anchor(cut);
            if (anchor.isPresent()) {
                List<String> lines = lines(cut);
                double text =
                        lines.stream().mapToDouble(sheet::smallWidth).max().orElse(0);
                double width = (2 * RADIUS + TEXT_GAP) * s + text;
                double left = Math.max(next, anchor.getAsDouble() - RADIUS * s);
                placed.add(new Placed(cut, anchor.getAsDouble(), left, width, lines));
                next = left + width + APART * s;
            }
        }
        double limit = sheet.area().right() - 6 * s;
        for (int i = placed.size() - 1; i >= 0; i--) {
            double left = Math.min(placed.get(i).left(), limit - placed.get(i).width());
            placed.set(i, placed.get(i).movedTo(left));
            limit = left - APART * s;
        }
        placed.removeIf(one -> one.left() < sheet.area().x() + 4 * s);
        return placed;
    }

    /** Where the leader line meets the cable; a cut out of view is not shown. */
    private OptionalDouble anchor(CableDrawing.Cut cut) {
        double x = sheet.pixel(cut.shownMetres());
        Optional<CableDrawing.Mark> mark = cut.event().flatMap(event -> drawing.marks().stream()
                .filter(it -> it.event().id().equals(event.id()))
                .findFirst());
        double from = mark.map(it -> sheet.pixel(it.shownFromMetres())).orElse(x);
        double to = mark.map(it -> sheet.pixel(it.shownToMetres())).orElse(x);
        boolean shown = to >= sheet.left() && from <= sheet.right();
        return shown ? OptionalDouble.of(sheet.held(cut.shownMetres())) : OptionalDouble.empty();
    }

    private List<String> lines(CableDrawing.Cut cut) {
        String ohms = sheet.quantities().ohms(cut.section().impedanceOhms());
        String numbers =
                texts.say("cut.numbers", ohms, Quantities.number(cut.section().velocityFraction(), 2));
        String detail = cut.event().map(new EventWords(words)::detail).orElse(texts.say("cut.asMade"));
        List<String> lines = new ArrayList<>(List.of(detail.split(": ", 2)));
        lines.add(numbers);
        return lines;
    }

    private void draw(Placed placed, double y) {
        double x = placed.left() + RADIUS * s;
        sheet.line(placed.anchor(), body.bottom() + 2 * s, x, y - RADIUS * s, 1, Ink.AXIS);
        CrossSectionPainter painter = new CrossSectionPainter(sheet.pen(), sheet.palette());
        painter.draw(placed.cut().section().drawing(), x, y, RADIUS * s);
        int last = placed.lines().size() - 1;
        for (int i = 0; i <= last; i++) {
            double middle = y + (i - last / 2.0) * LINE * s;
            String line = placed.lines().get(i);
            sheet.write(line, x + (RADIUS + TEXT_GAP) * s, middle, Anchor.START, i == last ? Ink.FAINT : Ink.TEXT);
        }
    }
}
