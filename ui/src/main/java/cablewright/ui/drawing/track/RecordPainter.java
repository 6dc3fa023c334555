// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.axis.LabelRows;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Outline;
import cablewright.ui.drawing.pen.Pen.Anchor;
import java.util.Optional;

/** Draws what the record says, at the distances that it claims. Its things are hollow: they are claims. */
public final class RecordPainter {

    /** Height of a record with two rows of labels, at usual size. */
    public static final double HEIGHT = 62;

    /** Least height, in which one row of words is left. */
    public static final double LEAST_HEIGHT = 34;

    private static final double HEIGHT_OF_TWO_ROWS = 58;
    private static final double MOST_LABEL = 170;

    private final TrackSheet sheet;
    private final double s;
    private final double y;

    /**
     * Prepares to draw.
     *
     * @param sheet where
     */
    public RecordPainter(TrackSheet sheet) {
        this.sheet = sheet;
        this.s = sheet.scale();
        this.y = sheet.top() + Math.min(20 * s, Math.max(9 * s, sheet.area().height() / 2 - 8 * s));
    }

    /**
     * Draws a record.
     *
     * @param claims what it claims
     * @param selectedId name of the selected item, if any
     * @param caption what stands beside it
     */
    public void draw(RecordClaims claims, Optional<String> selectedId, String caption) {
        sheet.drawDistanceGrid(sheet.top(), sheet.bottom());
        drawLine(claims);
        int rows = sheet.area().height() < HEIGHT_OF_TWO_ROWS * s ? 1 : 2;
        LabelRows labels = new LabelRows(sheet.left() - 20 * s, sheet.area().right() - 8 * s, 10 * s, rows);
        for (RecordClaims.Claim claim : claims.claims()) {
            double x = sheet.pixel(claim.metres());
            if (sheet.isShown(x)) {
                drawClaim(x, claim, selectedId.filter(claim.id()::equals).isPresent(), labels);
            }
        }
        sheet.write(caption, sheet.left() - 9 * s, y, Anchor.END, Ink.FAINT);
    }

    /**
     * Writes what the drawing itself warns of, over its line at the right.
     *
     * @param note what
     */
    public void drawNote(String note) {
        String cut = sheet.pen().cut(note, sheet.small(), sheet.view().widthPixels() / 2);
        sheet.write(cut, sheet.right() - 2 * s, sheet.top() + 7 * s, Anchor.END, Ink.FAINT);
    }

    private void drawLine(RecordClaims claims) {
        double from = sheet.held(0);
        double to = sheet.held(claims.lengthMetres().orElse(sheet.view().toMetres()));
        if (to > from) {
            sheet.pen().line(from, y, to, y, 1.5 * s, 5 * s, sheet.ink(Ink.SHIELD));
            if (sheet.view().fromMetres() <= 0) {
                drawHollow(sheet.pixel(0), true);
            }
        }
    }

    private void drawClaim(double x, RecordClaims.Claim claim, boolean selected, LabelRows labels) {
        if (selected) {
            double r = 10 * s;
            Outline frame = Outline.roundBox(new Box(x - r, y - r, 2 * r, 2 * r), 4.5 * s);
            sheet.pen().draw(frame, 1.8 * s, 0, sheet.ink(Ink.TRACE));
        }
        drawHollow(x, claim.isEnd());
        String text = sheet.pen().cut(claim.text(), sheet.small(), MOST_LABEL * s);
        labels.next(x, sheet.smallWidth(text))
                .ifPresent(place ->
                        sheet.write(text, place.leftPixels(), y + (15 + 15 * place.row()) * s, Anchor.START, Ink.TEXT));
    }

    private void drawHollow(double x, boolean square) {
        double r = 5.5 * s;
        Outline outline = square
                ? Outline.polygon(x - 0.8 * r, y - r, x + 0.8 * r, y - r, x + 0.8 * r, y + r, x - 0.8 * r, y + r)
                : Outline.ellipse(x, y, r, r);
        sheet.pen().draw(outline, sheet.ink(Ink.PAPER), 1.8 * s, sheet.ink(Ink.SHIELD));
    }
}
