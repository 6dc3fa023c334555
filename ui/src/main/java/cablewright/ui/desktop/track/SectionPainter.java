// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.simulator.crosssection.WaterDistribution;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/** Draws a cut across a cable, to scale within its circle: core, dielectric, dent, water, offset. */
final class SectionPainter {

    private static final double SHIELD_SHARE = 0.14;
    private static final double LEAST_WATER_ALPHA = 0.35;

    private final Track track;

    SectionPainter(Track track) {
        this.track = track;
    }

    void draw(GraphicsContext g, CrossSection section, double x, double y, double radius) {
        SectionDrawing drawing = section.drawing();
        if (drawing instanceof SectionDrawing.Coax coax) {
            drawCoax(g, coax, x, y, radius);
        } else if (drawing instanceof SectionDrawing.Pair pair) {
            drawPair(g, pair, x, y, radius);
        } else {
            drawUnknown(g, x, y, radius);
        }
    }

    static double waterAlpha(double wetFraction) {
        return LEAST_WATER_ALPHA + (1 - LEAST_WATER_ALPHA) * Math.sqrt(Math.min(1, wetFraction));
    }

    /** The pressed side is up, and so is the side to which the core lies. */
    private void drawCoax(GraphicsContext g, SectionDrawing.Coax coax, double x, double y, double radius) {
        double wall = SHIELD_SHARE * radius;
        double inner = radius - wall;
        double perMetre = 2 * inner / coax.outerDiameterMetres();
        double pressed = Math.min(coax.pressedDepthMetres() * perMetre, 1.9 * inner);
        g.save();
        clipBelow(g, x, y, radius, pressed);
        fillCircle(g, track.ink(Ink.SHIELD), x, y, radius);
        g.restore();
        g.save();
        clipBelow(g, x, y, radius, pressed > 0 ? pressed + wall : 0);
        fillCircle(g, track.ink(Ink.DIELECTRIC), x, y, inner);
        drawWater(g, coax, x, y, inner, perMetre);
        g.restore();
        double core = Math.max(1.2, coax.coreDiameterMetres() * perMetre / 2);
        fillCircle(g, track.ink(Ink.COPPER), x, y - coax.coreOffsetMetres() * perMetre, core);
    }

    /** Keeps what lies below a chord: a flat pressed into the top of the circle. */
    private static void clipBelow(GraphicsContext g, double x, double y, double radius, double depth) {
        g.beginPath();
        g.rect(x - radius - 1, y - radius + depth - (depth > 0 ? 0 : 1), 2 * radius + 2, 2 * radius + 2);
        g.clip();
    }

    private void drawWater(
            GraphicsContext g, SectionDrawing.Coax coax, double x, double y, double inner, double perMetre) {
        Optional<WaterDistribution> picture = coax.waterPicture();
        if (picture.isEmpty() || coax.wetFraction() <= 0) {
            return;
        }
        Color water = track.ink(Ink.WATER);
        double core = coax.coreDiameterMetres() * perMetre / 2;
        double wetArea = coax.wetFraction() * (inner * inner - core * core);
        if (picture.get() == WaterDistribution.FILM_UNDER_SHIELD) {
            double dry = Math.sqrt(inner * inner - wetArea);
            fillCircle(g, water, x, y, inner);
            fillCircle(g, track.ink(Ink.DIELECTRIC), x, y, Math.min(dry, inner - 1.5));
        } else if (picture.get() == WaterDistribution.FILM_ON_CORE) {
            double wet = Math.sqrt(core * core + wetArea);
            fillCircle(g, water, x, y - coax.coreOffsetMetres() * perMetre, Math.max(wet, core + 1.5));
        } else {
            fillCircle(g, water.deriveColor(0, 1, 1, waterAlpha(coax.wetFraction())), x, y, inner);
        }
    }

    private void drawPair(GraphicsContext g, SectionDrawing.Pair pair, double x, double y, double radius) {
        double perMetre = 2 * radius / (pair.spacingMetres() + pair.insulationDiameterMetres());
        double half = pair.spacingMetres() * perMetre / 2;
        if (pair.wetFraction() > 0) {
            g.setFill(track.ink(Ink.WATER).deriveColor(0, 1, 1, waterAlpha(pair.wetFraction())));
            double tall = pair.insulationDiameterMetres() * perMetre * 1.3;
            g.fillOval(x - radius, y - tall / 2, 2 * radius, tall);
        }
        for (int side = -1; side <= 1; side += 2) {
            double insulation = pair.insulationDiameterMetres() * perMetre / 2;
            fillCircle(g, track.ink(Ink.SHIELD), x + side * half, y, insulation);
            fillCircle(g, track.ink(Ink.DIELECTRIC), x + side * half, y, insulation * 0.86);
            fillCircle(
                    g,
                    track.ink(Ink.COPPER),
                    x + side * half,
                    y,
                    Math.max(1.2, pair.wireDiameterMetres() * perMetre / 2));
        }
    }

    private void drawUnknown(GraphicsContext g, double x, double y, double radius) {
        g.setStroke(track.ink(Ink.SHIELD));
        g.setLineWidth(1.5 * track.scale());
        g.setLineDashes(3, 3);
        g.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
        g.setLineDashes();
    }

    private static void fillCircle(GraphicsContext g, Color colour, double x, double y, double radius) {
        g.setFill(colour);
        g.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
