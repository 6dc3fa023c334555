// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.PictureFormat;
import java.util.Set;

/** A lattice diagram to print or to take away, with its title and what it says. */
public final class LatticeSheet {

    private static final double WIDTH = 760;
    private static final double HEIGHT = 560;
    private static final double MARGIN = 14;
    private static final double FONT = 10;
    private static final double TITLE_FONT = 14;

    private final Lattice lattice;

    /**
     * Lays out a sheet.
     *
     * @param lattice the diagram
     */
    public LatticeSheet(Lattice lattice) {
        this.lattice = lattice;
    }

    /**
     * Draws the sheet.
     *
     * @param format kind of picture
     * @return the picture file
     */
    public byte[] bytes(PictureFormat format) {
        return format.draw(WIDTH, HEIGHT, lattice.title(), this::draw);
    }

    private void draw(Pen pen) {
        Palette palette = Palette.LIGHT;
        pen.fill(0, 0, WIDTH, HEIGHT, palette.of(Ink.PAPER));
        pen.text(lattice.title(), MARGIN, MARGIN + TITLE_FONT, Pen.Anchor.START, TITLE_FONT, palette.of(Ink.TEXT));
        pen.text(lattice.caption(), MARGIN, MARGIN + 2.4 * TITLE_FONT, Pen.Anchor.START, FONT, palette.of(Ink.FAINT));
        double top = MARGIN + 3 * TITLE_FONT;
        Box sheet = new Box(MARGIN, top, WIDTH - 2 * MARGIN, HEIGHT - top - MARGIN);
        new LatticeDrawing(pen, palette, FONT, lattice, sheet).draw(Set.of());
    }
}
