// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A lattice diagram in characters: \ on the way out and / on the way home, : and ; where the wave turned more than once
 * before, | where it may turn, and beside each arrival what the trace shows.
 */
public final class LatticeText {

    private static final int ARRIVAL = 24;
    private static final int LEAST_ACROSS = 20;
    private static final int LEAST_STRIP = 4;

    private final Lattice lattice;
    private final int across;
    private final int down;
    private final List<Integer> left = new ArrayList<>();
    private final List<Integer> width = new ArrayList<>();

    /**
     * Prepares to draw.
     *
     * @param lattice the diagram
     * @param columns how wide it may be
     * @param lines how high it is, without what stands under it
     */
    public LatticeText(Lattice lattice, int columns, int lines) {
        this.lattice = lattice;
        this.across = Math.max(LEAST_ACROSS, columns - ARRIVAL);
        this.down = Math.max(4, lines);
        double all = lattice.strips().stream()
                .mapToDouble(Lattice.Strip::lengthMetres)
                .sum();
        int room = across - lattice.strips().size();
        int x = 0;
        for (Lattice.Strip strip : lattice.strips()) {
            int wide = (int) Math.max(LEAST_STRIP, Math.floor(room * strip.lengthMetres() / all));
            left.add(x);
            width.add(wide);
            x += wide + 2;
        }
    }

    /**
     * Draws.
     *
     * @return lines of characters, then the ways of the echoes
     */
    public String draw() {
        int last = left.size() - 1;
        char[][] cells = new char[down + 1][left.get(last) + width.get(last) + 1];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        for (Lattice.Place place : lattice.places()) {
            for (char[] row : cells) {
                row[x(place.strip(), place.metres())] = '|';
            }
        }
        for (char[] row : cells) {
            row[0] = '|';
        }
        lattice.rays().forEach(ray -> draw(ray, cells));
        StringBuilder out = new StringBuilder();
        for (int row = 0; row < cells.length; row++) {
            out.append(arrival(row))
                    .append(new String(cells[row]).stripTrailing())
                    .append('\n');
        }
        return out.append(strips()).append(echoes()).toString();
    }

    private int x(int strip, double metres) {
        Lattice.Strip it = lattice.strips().get(strip);
        double share = it.lengthMetres() == 0 ? 0 : (metres - it.fromMetres()) / it.lengthMetres();
        return left.get(strip) + (int) Math.round(share * width.get(strip));
    }

    private int row(double seconds) {
        return (int) Math.round(seconds / lattice.lastSeconds() * down);
    }

    private void draw(Lattice.Ray ray, char[][] cells) {
        int fromX = x(ray.strip(), ray.fromMetres());
        int toX = x(ray.strip(), ray.toMetres());
        int fromRow = row(ray.fromSeconds());
        int toRow = Math.min(down, row(ray.toSeconds()));
        int steps = Math.max(Math.abs(toX - fromX), toRow - fromRow);
        boolean home = ray.toMetres() < ray.fromMetres();
        char sign = home ? ray.isGhost() ? ';' : '/' : ray.isGhost() ? ':' : '\\';
        for (int i = 0; i <= steps; i++) {
            int x = fromX + (steps == 0 ? 0 : Math.round((float) i * (toX - fromX) / steps));
            int row = fromRow + (steps == 0 ? 0 : Math.round((float) i * (toRow - fromRow) / steps));
            if (row <= down && (cells[row][x] == ' ' || i > 0 && i < steps)) {
                cells[row][x] = sign;
            }
        }
    }

    /** What the trace shows of the highest echo that comes home in a line of the diagram. */
    private String arrival(int row) {
        Lattice.Echo best = null;
        for (Lattice.Echo echo : lattice.echoes()) {
            boolean here = row(echo.path().arrivalSeconds()) == row;
            if (here
                    && (best == null
                            || Math.abs(echo.path().peakVolts())
                                    > Math.abs(best.path().peakVolts()))) {
                best = echo;
            }
        }
        String text = best == null ? "" : best.shown() + " " + best.height() + " <";
        return " ".repeat(Math.max(0, ARRIVAL - 1 - text.length())) + text + " ";
    }

    private String strips() {
        char[] ends = new char[ARRIVAL + across + 40];
        Arrays.fill(ends, ' ');
        int free = 0;
        for (int i = 0; i < lattice.strips().size(); i++) {
            Lattice.Strip strip = lattice.strips().get(i);
            String from = number(strip.fromMetres());
            String text = strip.isBranch() && strip.fromMetres() == 0 ? strip.name() : from;
            int at = Math.max(free, ARRIVAL + left.get(i));
            if (at + text.length() < ends.length) {
                text.getChars(0, text.length(), ends, at);
                free = at + text.length() + 1;
            }
        }
        return new String(ends).stripTrailing() + "  (" + lattice.unit().symbol() + ")\n";
    }

    private String number(double metres) {
        return Quantities.number(metres * lattice.unit().perMetre(), 0);
    }

    private String echoes() {
        StringBuilder out = new StringBuilder();
        for (Lattice.Echo echo : lattice.echoes()) {
            out.append("  ")
                    .append(echo.shown())
                    .append(", ")
                    .append(echo.height())
                    .append(": ")
                    .append(echo.way())
                    .append('\n');
        }
        return out.toString();
    }
}
