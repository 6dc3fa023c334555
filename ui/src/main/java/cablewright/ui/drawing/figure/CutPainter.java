// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import java.util.Optional;

/** Draws cuts through cables to scale, each with a line of words under it. */
final class CutPainter {

    private static final int CORNERS = 96;
    private static final double LETTER_FONTS = 0.5;
    private static final double SHIELD_SHARE = 0.05;

    private final Pen pen;
    private final Palette palette;
    private final double font;

    CutPainter(Pen pen, Palette palette, double font) {
        this.pen = pen;
        this.palette = palette;
        this.font = font;
    }

    void draw(Panel.Cut panel, Box box) {
        int count = panel.changed().isPresent() ? 2 : 1;
        double width = box.width() / count;
        double radius = Math.min(width, box.height() - 3.4 * font) / 2 * 0.92;
        for (int i = 0; i < count; i++) {
            double x = box.x() + (i + 0.5) * width;
            double y = box.y() + (box.height() - 3.4 * font) / 2;
            draw(i == 0 ? panel.sound() : panel.changed().get(), x, y, radius);
            if (i < panel.notes().size()) {
                // Words that are too wide to stand side by side stand on two lines.
                boolean lower = i > 0 && panel.notes().get(i).length() * LETTER_FONTS * font > width;
                double baseline = y + radius + (lower ? 2.9 : 1.6) * font;
                pen.text(panel.notes().get(i), x, baseline, Pen.Anchor.MIDDLE, font, palette.soft());
            }
        }
    }

    private void draw(SectionDrawing drawing, double x, double y, double radius) {
        if (drawing instanceof SectionDrawing.Coax coax) {
            drawCoax(coax, x, y, radius);
        } else if (drawing instanceof SectionDrawing.Pair pair) {
            drawPair(pair, x, y, radius);
        }
    }

    private void drawCoax(SectionDrawing.Coax coax, double x, double y, double radius) {
        double scale = radius * (1 - SHIELD_SHARE) / (coax.outerDiameterMetres() / 2);
        double inside = coax.outerDiameterMetres() / 2 * scale;
        double core = coax.coreDiameterMetres() / 2 * scale;
        double coreX = x + coax.coreOffsetMetres() * scale;
        disc(x, y, radius, palette.metal());
        drawFilling(coax, x, y, inside);
        if (picture(coax, WaterDistribution.FILM_ON_CORE)) {
            double area = coax.wetFraction() * (inside * inside - core * core);
            disc(coreX, y, Math.sqrt(core * core + area), palette.water());
        }
        disc(coreX, y, core, palette.copper());
    }

    private void drawFilling(SectionDrawing.Coax coax, double x, double y, double inside) {
        boolean film = picture(coax, WaterDistribution.FILM_UNDER_SHIELD);
        if (film) {
            disc(x, y, inside, palette.water());
            double core = coax.coreDiameterMetres() / coax.outerDiameterMetres() * inside;
            double left = inside * inside - coax.wetFraction() * (inside * inside - core * core);
            disc(x, y, Math.sqrt(left), palette.plastic());
            return;
        }
        disc(x, y, inside, palette.plastic());
        boolean mixed = coax.wetFraction() > 0 && !picture(coax, WaterDistribution.FILM_ON_CORE);
        if (mixed) {
            drops(x, y, inside, coax.wetFraction());
        }
    }

    /** Drops that cover the water's share of the area, laid out in a spiral so that they look strewn. */
    private void drops(double x, double y, double inside, double share) {
        int count = 60;
        double size = inside * Math.sqrt(share / count);
        for (int i = 0; i < count; i++) {
            double away = (inside - size) * Math.sqrt((i + 0.5) / count);
            double turn = i * Math.PI * (3 - Math.sqrt(5));
            disc(x + away * Math.cos(turn), y + away * Math.sin(turn), size, palette.water());
        }
    }

    private static boolean picture(SectionDrawing.Coax coax, WaterDistribution wanted) {
        return coax.wetFraction() > 0 && coax.waterPicture().equals(Optional.of(wanted));
    }

    private void drawPair(SectionDrawing.Pair pair, double x, double y, double radius) {
        double whole = pair.spacingMetres() + pair.insulationDiameterMetres();
        double scale = 2 * radius / whole;
        for (int side = -1; side <= 1; side += 2) {
            double wireX = x + side * pair.spacingMetres() / 2 * scale;
            disc(wireX, y, pair.insulationDiameterMetres() / 2 * scale, palette.plastic());
            disc(wireX, y, pair.wireDiameterMetres() / 2 * scale, palette.copper());
        }
    }

    private void disc(double x, double y, double radius, int colour) {
        double[] xs = new double[CORNERS];
        double[] ys = new double[CORNERS];
        for (int i = 0; i < CORNERS; i++) {
            double turn = 2 * Math.PI * i / CORNERS;
            xs[i] = x + radius * Math.cos(turn);
            ys[i] = y + radius * Math.sin(turn);
        }
        pen.shape(xs, ys, colour);
    }
}
