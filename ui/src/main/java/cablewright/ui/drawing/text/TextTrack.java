// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.text;

import cablewright.ui.drawing.track.TracePlot.Window;
import java.util.List;

/** A strip of characters below a plot that shares its distance axis: a vertical line means the same place in both. */
public final class TextTrack {

    private final int columns;
    private final TerminalStyle style;

    /**
     * Something on the strip.
     *
     * @param from where it begins, in the unit of the plot's horizontal axis
     * @param to where it ends; the same for a thing at one place
     * @param sign the character that stands for it
     */
    public record Mark(double from, double to, char sign) {}

    /**
     * Makes a strip for plots of the same width.
     *
     * @param width characters across, as given to the plot
     * @param style what the terminal can show
     */
    public TextTrack(int width, TerminalStyle style) {
        this.columns = TextPlot.columns(width);
        this.style = style;
    }

    /**
     * Draws.
     *
     * @param label what the strip shows, a short word
     * @param window the plot's window
     * @param start where the line begins, in the unit of the plot's horizontal axis
     * @param end where it ends
     * @param marks what is on it; the later hides the earlier
     * @return one line with its end
     */
    public String draw(String label, Window window, double start, double end, List<Mark> marks) {
        StringBuilder line = new StringBuilder(" ".repeat(columns));
        fill(line, window, start, end, style.unicode() ? '═' : '=');
        for (Mark mark : marks) {
            fill(line, window, mark.from(), mark.to(), mark.sign());
        }
        String cut = label.length() > TextPlot.LABEL - 1 ? label.substring(0, TextPlot.LABEL - 1) : label;
        return String.format("%" + (TextPlot.LABEL - 1) + "s ", cut) + style.bar()
                + line.toString().stripTrailing() + "\n";
    }

    private void fill(StringBuilder line, Window window, double from, double to, char sign) {
        int first = column(from, window);
        int last = column(to, window);
        for (int i = Math.max(0, first); i <= Math.min(columns - 1, last); i++) {
            line.setCharAt(i, sign);
        }
    }

    private int column(double x, Window window) {
        double share = (x - window.left()) / (window.right() - window.left());
        return (int) Math.floor(Math.max(-1, Math.min(2, share)) * columns);
    }
}
