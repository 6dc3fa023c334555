// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Outline;
import cablewright.ui.drawing.pen.Pen;
import java.util.List;

/** Draws flags on staffs: what each says shows by its colour, its cloth's shape and its staff. */
public final class FlagPainter {

    private final TrackSheet sheet;
    private final Box plot;
    private final double s;

    /**
     * Prepares to draw.
     *
     * @param sheet where
     */
    public FlagPainter(TrackSheet sheet) {
        this.sheet = sheet;
        this.s = sheet.scale();
        this.plot = TracePainter.plotOf(sheet.area(), s);
    }

    /**
     * Draws flags.
     *
     * @param markers the flags, the later over the earlier
     * @return where they stand
     */
    public FlagLayout draw(List<FlagMarker> markers) {
        FlagLayout layout = new FlagLayout(markers, sheet.view(), plot.y(), s);
        for (FlagMarker marker : markers) {
            marker.endMetres().ifPresent(end -> drawStretch(marker, end));
        }
        List<FlagLayout.Placed> shown =
                layout.placed().stream().filter(one -> sheet.isShown(one.x())).toList();
        shown.forEach(this::drawStaff);
        shown.forEach(this::drawCloth);
        return layout;
    }

    private static Ink ink(FlagMarker marker) {
        return switch (marker.look()) {
            case BELONGS -> Ink.BELONGS;
            case DAMAGE -> Ink.DAMAGE;
            case UNSAID -> Ink.FAINT;
        };
    }

    private static double dash(FlagMarker marker) {
        return switch (marker.look()) {
            case BELONGS -> 5;
            case DAMAGE -> 0;
            case UNSAID -> 2;
        };
    }

    private void drawStretch(FlagMarker marker, double end) {
        double from = sheet.held(Math.min(marker.startMetres(), end));
        double to = sheet.held(Math.max(marker.startMetres(), end));
        if (to > from) {
            sheet.pen()
                    .fill(
                            from,
                            plot.y(),
                            to - from,
                            plot.height(),
                            sheet.ink(ink(marker)).faded(0.12));
        }
    }

    private void drawStaff(FlagLayout.Placed one) {
        FlagMarker marker = one.staff().marker();
        double x = sheet.pen().sharp(one.x());
        double thickness = (marker.selected() ? 2.4 : 1.3) * s;
        sheet.pen().line(x, one.y(), x, plot.bottom(), thickness, dash(marker) * s, sheet.ink(ink(marker)));
    }

    private void drawCloth(FlagLayout.Placed one) {
        FlagMarker marker = one.staff().marker();
        double x = sheet.pen().sharp(one.x());
        double y = one.y();
        double w = FlagLayout.WIDTH * s;
        double h = FlagLayout.HEIGHT * s;
        double point = 6 * s;
        Outline cloth =
                switch (marker.look()) {
                    case BELONGS ->
                        Outline.polygon(x, y, x + w - point, y, x + w, y + h / 2, x + w - point, y + h, x, y + h);
                    case DAMAGE ->
                        Outline.polygon(
                                x,
                                y,
                                x + w + point / 2,
                                y,
                                x + w - point / 2,
                                y + h / 2,
                                x + w + point / 2,
                                y + h,
                                x,
                                y + h);
                    case UNSAID -> Outline.polygon(x, y, x + w - point / 2, y, x + w - point / 2, y + h, x, y + h);
                };
        sheet.pen().fill(cloth, sheet.ink(ink(marker)));
        if (marker.selected()) {
            sheet.pen().draw(cloth, 1.6 * s, 0, sheet.ink(Ink.TEXT));
        }
        sheet.write(one.staff().label(), x + (w - point) / 2 + s, y + h / 2, Pen.Anchor.MIDDLE, Ink.PAPER);
    }
}
