// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.section.CrossSectionPainter;

/** Draws the cable from the side, stretch by stretch: shield, dielectric, core or the two wires; along it to scale. */
final class CableBodyPainter {

    private static final double WALL_SHARE = 0.13;
    private static final double FINEST = 1.6;
    private static final double LEAD_OPACITY = 0.45;

    /** Neighbours overlap by so much, so that no seam of background shows between them. */
    private static final double OVERLAP = 0.5;

    private final TrackSheet sheet;
    private final Body body;
    private double from;
    private double width;
    private double opacity;

    CableBodyPainter(TrackSheet sheet, Body body) {
        this.sheet = sheet;
        this.body = body;
    }

    void draw(CableDrawing drawing) {
        for (CableDrawing.Stretch stretch : drawing.stretches()) {
            from = sheet.held(stretch.shownFromMetres());
            width = sheet.held(stretch.shownToMetres()) - from;
            opacity = stretch.isLead() ? LEAD_OPACITY : 1;
            if (width > 0) {
                width += OVERLAP;
                drawStretch(stretch.section().drawing());
            }
        }
    }

    private void drawStretch(SectionDrawing drawing) {
        if (drawing instanceof SectionDrawing.Coax coax) {
            drawCoax(coax);
        } else if (drawing instanceof SectionDrawing.Pair pair) {
            drawPair(pair);
        } else {
            double line = 3 * sheet.scale();
            fill(body.top() + body.height() / 4, line, sheet.ink(Ink.SHIELD));
            fill(body.bottom() - body.height() / 4 - line, line, sheet.ink(Ink.SHIELD));
        }
    }

    private void fill(double y, double height, Colour colour) {
        sheet.pen().fill(from, y, width, Math.max(0, height), colour.faded(opacity));
    }

    private void drawCoax(SectionDrawing.Coax coax) {
        double wall = WALL_SHARE * body.height();
        double perMetre = (body.height() - 2 * wall) / coax.outerDiameterMetres();
        double top = body.top() + coax.pressedDepthMetres() * perMetre;
        double inside = body.bottom() - wall - (top + wall);
        fill(top, body.bottom() - top, sheet.ink(Ink.SHIELD));
        fill(top + wall, inside, sheet.ink(Ink.DIELECTRIC));
        if (coax.wetFraction() > 0) {
            fill(top + wall, inside, CrossSectionPainter.water(sheet.palette(), coax.wetFraction()));
        }
        double core = Math.max(FINEST * sheet.scale(), coax.coreDiameterMetres() * perMetre);
        double offset = coax.coreOffsetMetres() * perMetre;
        fill(body.middle() - offset - core / 2, core, sheet.ink(Ink.COPPER));
    }

    private void drawPair(SectionDrawing.Pair pair) {
        double perMetre = body.height() / (2.2 * (pair.spacingMetres() + pair.insulationDiameterMetres()));
        double half = Math.min(pair.spacingMetres() * perMetre, body.height() / 2 * 0.8);
        double insulation = Math.max(4 * sheet.scale(), pair.insulationDiameterMetres() * perMetre);
        double wire = Math.max(FINEST * sheet.scale(), pair.wireDiameterMetres() * perMetre);
        if (pair.wetFraction() > 0) {
            fill(body.top(), body.height(), CrossSectionPainter.water(sheet.palette(), pair.wetFraction()));
        }
        for (int side = -1; side <= 1; side += 2) {
            double y = body.middle() + side * half;
            fill(y - insulation / 2, insulation, sheet.ink(Ink.SHIELD));
            fill(y - wire / 2, wire, sheet.ink(Ink.COPPER));
        }
    }
}
