// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.section;

import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Colour;
import cablewright.ui.drawing.pen.Outline;
import cablewright.ui.drawing.pen.Pen;
import java.util.Optional;

/**
 * Draws cross-sections to scale within a circle: core, dielectric, dent, water, offset. The pressed side is up, and so is the
 * side to which the core lies.
 */
public final class CrossSectionPainter {

    private static final double SHIELD_SHARE = 0.14;
    private static final double LEAST_WATER_OPACITY = 0.35;
    private static final double LEAST_RADIUS_OF_DROPS = 40;
    private static final int DROPS = 60;
    private static final double FINEST = 1.2;
    private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

    private final Pen pen;
    private final Palette palette;

    /**
     * Prepares to draw.
     *
     * @param pen what to draw with
     * @param palette the colours
     */
    public CrossSectionPainter(Pen pen, Palette palette) {
        this.pen = pen;
        this.palette = palette;
    }

    /**
     * Returns the colour of something wet.
     *
     * @param palette the colours
     * @param wetFraction share of the dielectric that is water
     * @return water, the less opaque the less there is
     */
    public static Colour water(Palette palette, double wetFraction) {
        double opacity = LEAST_WATER_OPACITY + (1 - LEAST_WATER_OPACITY) * Math.sqrt(Math.min(1, wetFraction));
        return palette.of(Ink.WATER).faded(opacity);
    }

    /**
     * Draws a cross-section.
     *
     * @param drawing what it looks like
     * @param x across, of its centre
     * @param y down, of its centre
     * @param radius half of its width
     */
    public void draw(SectionDrawing drawing, double x, double y, double radius) {
        if (drawing instanceof SectionDrawing.Coax coax) {
            drawCoax(coax, x, y, radius);
        } else if (drawing instanceof SectionDrawing.Pair pair) {
            drawPair(pair, x, y, radius);
        } else {
            pen.draw(Outline.ellipse(x, y, radius, radius), Math.max(1, radius / 12), 3, palette.of(Ink.SHIELD));
        }
    }

    private void drawCoax(SectionDrawing.Coax coax, double x, double y, double radius) {
        double wall = SHIELD_SHARE * radius;
        double inner = radius - wall;
        double perMetre = 2 * inner / coax.outerDiameterMetres();
        double pressed = Math.min(coax.pressedDepthMetres() * perMetre, 1.9 * inner);
        pen.fill(Outline.cutDisc(x, y, radius, pressed), palette.of(Ink.SHIELD));
        drawFilling(coax, x, y, inner, pressed);
        double core = Math.max(FINEST, coax.coreDiameterMetres() * perMetre / 2);
        pen.disc(x, y - coax.coreOffsetMetres() * perMetre, core, palette.of(Ink.COPPER));
    }

    private void drawFilling(SectionDrawing.Coax coax, double x, double y, double inner, double pressed) {
        Optional<WaterDistribution> water = coax.wetFraction() > 0 ? coax.waterPicture() : Optional.empty();
        double core = coax.coreDiameterMetres() / coax.outerDiameterMetres() * inner;
        double wetArea = coax.wetFraction() * (inner * inner - core * core);
        boolean underShield =
                water.filter(WaterDistribution.FILM_UNDER_SHIELD::equals).isPresent();
        pen.fill(Outline.cutDisc(x, y, inner, pressed), palette.of(underShield ? Ink.WATER : Ink.DIELECTRIC));
        if (underShield) {
            double dry = Math.min(Math.sqrt(inner * inner - wetArea), inner - FINEST);
            pen.fill(Outline.cutDisc(x, y, dry, Math.max(0, pressed - inner + dry)), palette.of(Ink.DIELECTRIC));
        } else if (water.filter(WaterDistribution.FILM_ON_CORE::equals).isPresent()) {
            double offset = coax.coreOffsetMetres() * 2 * inner / coax.outerDiameterMetres();
            double wet = Math.max(Math.sqrt(core * core + wetArea), core + FINEST);
            pen.disc(x, y - offset, wet, palette.of(Ink.WATER));
        } else if (water.isPresent() && inner >= LEAST_RADIUS_OF_DROPS && pressed == 0) {
            drawDrops(x, y, inner, coax.wetFraction());
        } else if (water.isPresent()) {
            pen.fill(Outline.cutDisc(x, y, inner, pressed), water(palette, coax.wetFraction()));
        }
    }

    /** Drops that cover the water's share of the area, laid out in a spiral so that they look strewn. */
    private void drawDrops(double x, double y, double inside, double share) {
        double size = inside * Math.sqrt(share / DROPS);
        for (int i = 0; i < DROPS; i++) {
            double away = (inside - size) * Math.sqrt((i + 0.5) / DROPS);
            double turn = i * GOLDEN_ANGLE;
            pen.disc(x + away * Math.cos(turn), y + away * Math.sin(turn), size, palette.of(Ink.WATER));
        }
    }

    private void drawPair(SectionDrawing.Pair pair, double x, double y, double radius) {
        double perMetre = 2 * radius / (pair.spacingMetres() + pair.insulationDiameterMetres());
        double insulation = pair.insulationDiameterMetres() * perMetre / 2;
        if (pair.wetFraction() > 0) {
            pen.fill(Outline.ellipse(x, y, radius, 1.3 * insulation), water(palette, pair.wetFraction()));
        }
        double wire = Math.max(FINEST, pair.wireDiameterMetres() * perMetre / 2);
        for (int side = -1; side <= 1; side += 2) {
            double wireX = x + side * pair.spacingMetres() * perMetre / 2;
            pen.disc(wireX, y, insulation, palette.of(Ink.SHIELD));
            pen.disc(wireX, y, insulation * 0.86, palette.of(Ink.DIELECTRIC));
            pen.disc(wireX, y, wire, palette.of(Ink.COPPER));
        }
    }
}
