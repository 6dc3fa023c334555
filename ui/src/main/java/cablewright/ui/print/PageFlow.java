// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.GlyphFont;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Sets blocks one below the other and goes on to another page where one finds no room. */
final class PageFlow {

    static final double MARGIN = 42;
    static final Colour INK = Palette.LIGHT.of(Ink.TEXT);
    static final Colour QUIET = Palette.LIGHT.of(Ink.FAINT);
    static final Colour EDGE = Palette.LIGHT.of(Ink.AXIS);
    static final Colour CAUTION = Palette.LIGHT.of(Ink.MARGINAL);
    static final double TEXT_SIZE = 10;

    private static final double HEAD = 30;
    private static final double FOOT = 22;
    private static final double LEADING = 1.38;

    private final PaperSize paper;
    private final GlyphFont font = new GlyphFont();
    private final List<List<Consumer<Pen>>> pages = new ArrayList<>();
    private double y;

    PageFlow(PaperSize paper) {
        this.paper = paper;
        nextPage();
    }

    private void nextPage() {
        pages.add(new ArrayList<>());
        y = MARGIN + HEAD;
    }

    double left() {
        return MARGIN;
    }

    double right() {
        return paper.width() - MARGIN;
    }

    double width() {
        return right() - left();
    }

    private double bottom() {
        return paper.height() - MARGIN - FOOT;
    }

    private void add(Consumer<Pen> drawing) {
        pages.get(pages.size() - 1).add(drawing);
    }

    /** What draws itself below a height of the page. */
    interface Block {
        void draw(Pen pen, double top);
    }

    /** Sets a block; it is never parted. */
    void block(double height, Block block) {
        room(height);
        double top = y;
        add(pen -> block.draw(pen, top));
        y += height;
    }

    private void room(double height) {
        if (y + height > bottom() && y > MARGIN + HEAD) {
            nextPage();
        }
    }

    void gap(double height) {
        y = Math.min(bottom(), y + height);
    }

    /** How much room is left on the page. */
    double left(double atLeast) {
        return Math.max(atLeast, bottom() - y);
    }

    void heading(String text) {
        room(3 * TEXT_SIZE * LEADING + 12);
        gap(8);
        line(text, left(), 11.5, INK);
        gap(2);
    }

    /** A heading within a part: it stays with two lines of what follows. */
    void subheading(String text) {
        room(3 * TEXT_SIZE * LEADING);
        gap(5);
        large(text, 10.5);
    }

    /** Sets text in letters of any size, broken into lines that fit. */
    void large(String text, double size) {
        font.wrapped(text, size, width()).forEach(line -> line(line, left(), size, INK));
    }

    private void line(String text, double x, double size, Colour colour) {
        block(size * LEADING, (pen, top) -> pen.text(text, x, top + size, Anchor.START, size, colour));
    }

    /** Sets text of several paragraphs, broken into lines that fit. */
    void text(String text, Colour colour) {
        for (String paragraph : text.split("\n")) {
            if (paragraph.isBlank()) {
                gap(0.4 * TEXT_SIZE);
            } else {
                String indent = paragraph.startsWith("• ") ? "• " : "";
                double inset = font.width(indent, TEXT_SIZE);
                boolean first = true;
                for (String line : font.wrapped(paragraph.substring(indent.length()), TEXT_SIZE, width() - inset)) {
                    if (first && !indent.isEmpty()) {
                        double x = left();
                        double here = y;
                        room(TEXT_SIZE * LEADING);
                        double top = y < here ? y : here;
                        add(pen -> pen.text("•", x, top + TEXT_SIZE, Anchor.START, TEXT_SIZE, colour));
                    }
                    line(line, left() + inset, TEXT_SIZE, colour);
                    first = false;
                }
            }
        }
    }

    /** Sets cells side by side in columns of one width, in letters of any size. */
    void columns(List<String> cells, double size, double columnWidth) {
        block(size * LEADING, (pen, top) -> {
            for (int i = 0; i < cells.size(); i++) {
                pen.text(cells.get(i), left() + i * columnWidth, top + size, Anchor.START, size, INK);
            }
        });
    }

    List<String> wrapped(String text, double size, double width) {
        return font.wrapped(text, size, width);
    }

    /** The pages, each with its head and foot. */
    List<Consumer<Pen>> pages(String title, String foot, PageNumber number) {
        List<Consumer<Pen>> all = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Consumer<Pen>> drawings = List.copyOf(pages.get(i));
            String place = number.of(i + 1, pages.size());
            all.add(pen -> {
                pen.fill(0, 0, paper.width(), paper.height(), Palette.LIGHT.of(Ink.PAPER));
                pen.text(title, left(), MARGIN + 12, Anchor.START, 14, INK);
                pen.line(left(), MARGIN + 20, right(), MARGIN + 20, 0.7, 0, EDGE);
                pen.text(foot, left(), paper.height() - MARGIN, Anchor.START, 8, QUIET);
                pen.text(place, right(), paper.height() - MARGIN, Anchor.END, 8, QUIET);
                drawings.forEach(drawing -> drawing.accept(pen));
            });
        }
        return all;
    }

    /** Says which page of how many one is. */
    interface PageNumber {
        String of(int page, int pages);
    }
}
