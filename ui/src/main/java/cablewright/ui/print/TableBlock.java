// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.Pen.Anchor;
import java.util.ArrayList;
import java.util.List;

/** A table with ruled rows: a head, then rows as tall as their longest cell needs. */
final class TableBlock {

    private static final double SIZE = 9;
    private static final double LINE = 12;
    private static final double PAD = 4;

    private final PageFlow flow;
    private final double[] shares;

    /** Makes a table whose columns take given shares of the width; the shares add up to 1. */
    TableBlock(PageFlow flow, double... shares) {
        this.flow = flow;
        this.shares = shares.clone();
    }

    void head(List<String> cells) {
        row(cells, 0, PageFlow.QUIET);
    }

    void row(List<String> cells) {
        row(cells, 0, PageFlow.INK);
    }

    /** A row to write into. */
    void blank(double height) {
        row(List.of(), height, PageFlow.INK);
    }

    private void row(List<String> cells, double least, Colour colour) {
        List<List<String>> wrapped = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(flow.wrapped(cells.get(i), SIZE, shares[i] * flow.width() - 2 * PAD));
            lines = Math.max(lines, wrapped.get(i).size());
        }
        double height = Math.max(least, lines * LINE + PAD);
        flow.block(height, (pen, top) -> draw(pen, top, height, wrapped, colour));
    }

    private void draw(Pen pen, double top, double height, List<List<String>> cells, Colour colour) {
        double x = flow.left();
        for (int i = 0; i < shares.length; i++) {
            pen.line(x, top, x, top + height, 0.5, 0, PageFlow.EDGE);
            for (int n = 0; i < cells.size() && n < cells.get(i).size(); n++) {
                pen.text(cells.get(i).get(n), x + PAD, top + (n + 1) * LINE - 1, Anchor.START, SIZE, colour);
            }
            x += shares[i] * flow.width();
        }
        pen.line(flow.right(), top, flow.right(), top + height, 0.5, 0, PageFlow.EDGE);
        pen.line(flow.left(), top, flow.right(), top, 0.5, 0, PageFlow.EDGE);
        pen.line(flow.left(), top + height, flow.right(), top + height, 0.5, 0, PageFlow.EDGE);
    }
}
