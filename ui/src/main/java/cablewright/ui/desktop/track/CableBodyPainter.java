// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.ui.drawing.track.CableDrawing;
import javafx.scene.canvas.GraphicsContext;

/** Draws the cable from the side, stretch by stretch: shield, dielectric, core or the two wires; along it to scale. */
final class CableBodyPainter {

    private static final double WALL_SHARE = 0.13;

    private final Track track;

    CableBodyPainter(Track track) {
        this.track = track;
    }

    void draw(GraphicsContext g, CableDrawing drawing, Body body) {
        double left = track.gutter();
        double right = track.getWidth() - track.rightMargin();
        for (CableDrawing.Stretch stretch : drawing.stretches()) {
            double from = Math.max(left, track.view().pixel(stretch.shownFromMetres()));
            double to = Math.min(right, track.view().pixel(stretch.shownToMetres()));
            if (to > from) {
                drawStretch(g, stretch, from, to, body);
            }
        }
    }

    private void drawStretch(GraphicsContext g, CableDrawing.Stretch stretch, double from, double to, Body body) {
        g.setGlobalAlpha(stretch.isLead() ? 0.45 : 1);
        SectionDrawing drawing = stretch.section().drawing();
        // Neighbours overlap by half a pixel, so that no seam of background shows between them.
        double width = to - from + 0.5;
        if (drawing instanceof SectionDrawing.Coax coax) {
            drawCoax(g, coax, from, width, body);
        } else if (drawing instanceof SectionDrawing.Pair pair) {
            drawPair(g, pair, from, width, body);
        } else {
            drawUnknown(g, from, width, body);
        }
        g.setGlobalAlpha(1);
    }

    private void drawCoax(GraphicsContext g, SectionDrawing.Coax coax, double from, double width, Body body) {
        double wall = WALL_SHARE * body.height();
        double inner = body.height() - 2 * wall;
        double perMetre = inner / coax.outerDiameterMetres();
        double pressed = coax.pressedDepthMetres() * perMetre;
        double top = body.top() + pressed;
        g.setFill(track.ink(Ink.SHIELD));
        g.fillRect(from, top, width, body.bottom() - top);
        g.setFill(track.ink(Ink.DIELECTRIC));
        g.fillRect(from, top + wall, width, Math.max(0, body.bottom() - wall - top - wall));
        if (coax.wetFraction() > 0) {
            g.setFill(track.ink(Ink.WATER).deriveColor(0, 1, 1, SectionPainter.waterAlpha(coax.wetFraction())));
            g.fillRect(from, top + wall, width, Math.max(0, body.bottom() - wall - top - wall));
        }
        double core = Math.max(1.6 * track.scale(), coax.coreDiameterMetres() * perMetre);
        g.setFill(track.ink(Ink.COPPER));
        g.fillRect(from, body.middle() - coax.coreOffsetMetres() * perMetre - core / 2, width, core);
    }

    private void drawPair(GraphicsContext g, SectionDrawing.Pair pair, double from, double width, Body body) {
        double perMetre = body.height() / (2.2 * (pair.spacingMetres() + pair.insulationDiameterMetres()));
        double half = Math.min(pair.spacingMetres() * perMetre, body.height() / 2 * 0.8);
        double insulation = Math.max(4 * track.scale(), pair.insulationDiameterMetres() * perMetre);
        if (pair.wetFraction() > 0) {
            g.setFill(track.ink(Ink.WATER).deriveColor(0, 1, 1, SectionPainter.waterAlpha(pair.wetFraction())));
            g.fillRect(from, body.top(), width, body.height());
        }
        for (int side = -1; side <= 1; side += 2) {
            double y = body.middle() + side * half;
            g.setFill(track.ink(Ink.SHIELD));
            g.fillRect(from, y - insulation / 2, width, insulation);
            g.setFill(track.ink(Ink.COPPER));
            double wire = Math.max(1.6 * track.scale(), pair.wireDiameterMetres() * perMetre);
            g.fillRect(from, y - wire / 2, width, wire);
        }
    }

    private void drawUnknown(GraphicsContext g, double from, double width, Body body) {
        g.setFill(track.ink(Ink.SHIELD));
        double line = 3 * track.scale();
        g.fillRect(from, body.top() + body.height() / 4, width, line);
        g.fillRect(from, body.bottom() - body.height() / 4 - line, width, line);
    }
}
