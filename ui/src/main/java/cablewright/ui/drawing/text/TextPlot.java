// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.text;

import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.drawing.track.TracePlot;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.Quantities;
import java.util.Arrays;
import java.util.Locale;

/**
 * Draws a plot with characters. Each column of dots shows all the heights that the curve passes there, so that no narrow
 * pulse is lost; with Unicode a character holds two by four dots (the Braille Patterns block), otherwise one by two.
 */
public final class TextPlot {

    static final int LABEL = 9;

    private static final int LEAST_WIDTH = 30;
    private static final int LEAST_HEIGHT = 6;
    private static final int BRAILLE = 0x2800;
    /** Bit of each dot in a braille character, by row and column (Unicode Standard, chapter Braille Patterns). */
    private static final int[][] DOTS = {{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}};

    private final int columns;
    private final int rows;
    private final TerminalStyle style;

    /**
     * Makes a plotter.
     *
     * @param width characters across, with the labels; at least 30 are used
     * @param height lines, with the labels; at least 6 are used
     * @param style what the terminal can show
     */
    public TextPlot(int width, int height, TerminalStyle style) {
        this.columns = columns(width);
        this.rows = Math.max(LEAST_HEIGHT, height) - 3;
        this.style = style;
    }

    /** How many characters of a width hold the curve itself. */
    static int columns(int width) {
        return Math.max(LEAST_WIDTH, width) - LABEL - 1;
    }

    /**
     * Draws.
     *
     * @param plot what to draw
     * @return lines, each with its end
     */
    public String draw(TracePlot plot) {
        Dots dots = new Dots(plot);
        String[] labels = heightLabels(plot.window());
        StringBuilder out = new StringBuilder();
        out.append(flagLine(plot));
        for (int row = 0; row < rows; row++) {
            out.append(String.format("%" + LABEL + "s", labels[row])).append(style.bar());
            out.append(style.trace(dots.line(row))).append('\n');
        }
        return out.append(axis(plot)).toString();
    }

    private String flagLine(TracePlot plot) {
        StringBuilder line = new StringBuilder(" ".repeat(LABEL + 1 + columns));
        for (FlagMarker flag : plot.flags()) {
            mark(line, plot, flag.startMetres(), flag.letter());
            flag.endMetres()
                    .ifPresent(end -> mark(line, plot, end, flag.letter().toLowerCase(Locale.ROOT)));
        }
        return line.toString().stripTrailing() + "\n";
    }

    private void mark(StringBuilder line, TracePlot plot, double metres, String letter) {
        int column = column(plot.unit().fromMetres(metres), plot.window(), columns);
        if (column >= 0 && column < columns) {
            int at = LABEL + 1 + column;
            line.replace(at, Math.min(line.length(), at + letter.length()), letter);
        }
    }

    private String[] heightLabels(Window window) {
        String[] labels = new String[rows];
        Arrays.fill(labels, "");
        Ticks ticks = Ticks.between(window.bottom(), window.top(), Math.max(2, rows / 2));
        for (double place : ticks.values()) {
            double share = (place - window.bottom()) / (window.top() - window.bottom());
            int row = (int) Math.min(rows - 1, Math.floor((1 - share) * rows));
            labels[row] = style.plain(Quantities.number(place, ticks.digits())) + " % ";
        }
        return labels;
    }

    private String axis(TracePlot plot) {
        Window window = plot.window();
        Ticks ticks = Ticks.between(window.left(), window.right(), Math.max(2, columns / 14));
        StringBuilder line = new StringBuilder(" ".repeat(LABEL)).append(style.corner());
        StringBuilder labels = new StringBuilder(" ".repeat(LABEL + 1 + columns));
        line.append(style.dash().repeat(columns));
        labels.replace(
                0, LABEL, String.format("%" + (LABEL - 1) + "s ", plot.unit().symbol()));
        int free = LABEL - 1;
        for (double place : ticks.values()) {
            int at = LABEL + 1 + Math.max(0, Math.min(columns - 1, column(place, window, columns)));
            String label = style.plain(Quantities.number(place, ticks.digits()));
            int start = Math.min(labels.length() - label.length(), at - label.length() / 2);
            line.replace(at, at + 1, style.tick());
            if (start >= free) {
                labels.replace(start, start + label.length(), label);
                free = start + label.length() + 2;
            }
        }
        return line + "\n" + labels.toString().stripTrailing() + "\n";
    }

    private static int column(double x, Window window, int count) {
        return (int) Math.floor((x - window.left()) / (window.right() - window.left()) * count);
    }

    /** The dots of a curve, and their characters. */
    private final class Dots {
        private final int across = style.unicode() ? 2 : 1;
        private final int down = style.unicode() ? 4 : 2;
        private final boolean[][] set = new boolean[rows * down][columns * across];
        private final int zeroRow;

        Dots(TracePlot plot) {
            Window window = plot.window();
            int[] low = new int[columns * across];
            int[] high = new int[columns * across];
            Arrays.fill(low, Integer.MAX_VALUE);
            Arrays.fill(high, Integer.MIN_VALUE);
            for (int i = 0; i + 1 < plot.count(); i++) {
                mark(plot, i, low, high);
            }
            for (int c = 0; c < low.length; c++) {
                for (int r = Math.max(0, low[c]); r <= Math.min(set.length - 1, high[c]); r++) {
                    set[r][c] = true;
                }
            }
            zeroRow = window.bottom() <= 0 && window.top() >= 0 ? dotRow(0, window) : -1;
        }

        /** Spreads the straight line between two points over the columns that it crosses. */
        private void mark(TracePlot plot, int i, int[] low, int[] high) {
            Window window = plot.window();
            int from = Math.max(0, column(plot.x(i), window, low.length));
            int to = Math.min(low.length - 1, column(plot.x(i + 1), window, low.length));
            for (int c = from; c <= to; c++) {
                double left = window.left() + c * (window.right() - window.left()) / low.length;
                double right = window.left() + (c + 1) * (window.right() - window.left()) / low.length;
                int a = dotRow(between(plot, i, Math.max(left, plot.x(i))), window);
                int b = dotRow(between(plot, i, Math.min(right, plot.x(i + 1))), window);
                low[c] = Math.min(low[c], Math.min(a, b));
                high[c] = Math.max(high[c], Math.max(a, b));
            }
        }

        private double between(TracePlot plot, int i, double x) {
            double share = (x - plot.x(i)) / (plot.x(i + 1) - plot.x(i));
            double inside = Math.max(0, Math.min(1, share));
            return plot.percent(i) + inside * (plot.percent(i + 1) - plot.percent(i));
        }

        private int dotRow(double percent, Window window) {
            double share = (percent - window.bottom()) / (window.top() - window.bottom());
            return (int) Math.max(0, Math.min(set.length - 1, Math.floor((1 - share) * set.length)));
        }

        String line(int row) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                line.append(character(row, column));
            }
            return line.toString().stripTrailing();
        }

        private char character(int row, int column) {
            if (!style.unicode()) {
                boolean upper = set[2 * row][column];
                boolean lower = set[2 * row + 1][column];
                char empty = zeroRow / 2 == row && zeroRow >= 0 && column % 2 == 0 ? '-' : ' ';
                return upper ? lower ? '|' : '\'' : lower ? '.' : empty;
            }
            int bits = 0;
            for (int r = 0; r < 4; r++) {
                for (int c = 0; c < 2; c++) {
                    bits |= set[4 * row + r][2 * column + c] ? DOTS[r][c] : 0;
                }
            }
            if (bits == 0) {
                return zeroRow / 4 == row && zeroRow >= 0 && column % 2 == 0 ? '·' : ' ';
            }
            return (char) (BRAILLE + bits);
        }
    }
}
