// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.Ticks;
import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.Styleable;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;

/**
 * A strip drawn over the shared distance axis. Its colours and its font come from the style sheet; all lengths grow with
 * the font, so that a projector scale needs no second set of sizes. Redraws happen once a pulse, however many things
 * changed.
 */
abstract class Track extends Region {

    static final double BASE_FONT = 13;

    private static final StyleablePropertyFactory<Track> FACTORY =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());
    private static final Map<Ink, CssMetaData<Track, Color>> INK_META = inkMeta();
    private static final CssMetaData<Track, Font> FONT_META =
            FACTORY.createFontCssMetaData("-fx-font", track -> track.font, Font.font(BASE_FONT), true);
    private static final List<CssMetaData<? extends Styleable, ?>> META = allMeta();

    private final Map<Ink, SimpleStyleableObjectProperty<Color>> inks = new EnumMap<>(Ink.class);
    private final SimpleStyleableObjectProperty<Font> font =
            new SimpleStyleableObjectProperty<>(FONT_META, this, "font", Font.font(BASE_FONT));
    private final Canvas base = new Canvas();
    private final Canvas overlay = new Canvas();
    private final AxisViewModel axis;
    private final InvalidationListener redraw = changed -> requestRedraw();
    private final InvalidationListener redrawOverlay = changed -> requestOverlay();
    private boolean baseIsOld = true;
    private boolean overlayIsOld = true;

    Track(AxisViewModel axis) {
        this.axis = axis;
        getStyleClass().add("line-track");
        for (Ink ink : Ink.values()) {
            inks.put(ink, new SimpleStyleableObjectProperty<>(INK_META.get(ink), this, ink.property(), ink.fallback()));
            inks.get(ink).addListener(redraw);
        }
        font.addListener(redraw);
        font.addListener(changed -> requestLayout());
        getChildren().addAll(base, overlay);
        base.setManaged(false);
        overlay.setManaged(false);
        overlay.setMouseTransparent(true);
        redrawOn(axis.viewProperty(), axis.unitProperty(), widthProperty(), heightProperty());
        redrawOverlayOn(axis.hairMetresProperty());
    }

    private static Map<Ink, CssMetaData<Track, Color>> inkMeta() {
        Map<Ink, CssMetaData<Track, Color>> meta = new EnumMap<>(Ink.class);
        for (Ink ink : Ink.values()) {
            meta.put(
                    ink,
                    FACTORY.createColorCssMetaData(
                            ink.property(), track -> track.inks.get(ink), ink.fallback(), false));
        }
        return meta;
    }

    private static List<CssMetaData<? extends Styleable, ?>> allMeta() {
        List<CssMetaData<? extends Styleable, ?>> all = new ArrayList<>(Region.getClassCssMetaData());
        all.addAll(INK_META.values());
        all.add(FONT_META);
        return List.copyOf(all);
    }

    @Override
    public final List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return META;
    }

    final void redrawOn(Observable... sources) {
        for (Observable source : sources) {
            source.addListener(redraw);
        }
    }

    final void redrawOverlayOn(Observable... sources) {
        for (Observable source : sources) {
            source.addListener(redrawOverlay);
        }
    }

    final void requestRedraw() {
        baseIsOld = true;
        requestOverlay();
    }

    final void requestOverlay() {
        overlayIsOld = true;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        fit(base);
        fit(overlay);
        if (getWidth() < 10 || getHeight() < 10) {
            return;
        }
        if (baseIsOld) {
            baseIsOld = false;
            draw(cleared(base));
        }
        if (overlayIsOld) {
            overlayIsOld = false;
            drawOverlay(cleared(overlay));
        }
    }

    private void fit(Canvas canvas) {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
        }
    }

    private GraphicsContext cleared(Canvas canvas) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        g.setFont(font.get());
        return g;
    }

    /** Draws what changes seldom. */
    abstract void draw(GraphicsContext g);

    /** Draws what follows the pointer. */
    abstract void drawOverlay(GraphicsContext g);

    final AxisViewModel axis() {
        return axis;
    }

    final Color ink(Ink ink) {
        return inks.get(ink).get();
    }

    final Font font() {
        return font.get();
    }

    final Font boldFont() {
        return Font.font(
                font.get().getFamily(),
                javafx.scene.text.FontWeight.BOLD,
                font.get().getSize());
    }

    final Font smallFont() {
        return Font.font(font.get().getFamily(), 0.88 * font.get().getSize());
    }

    /** Returns the scale at which everything is drawn. */
    final double scale() {
        return font.get().getSize() / BASE_FONT;
    }

    /** Room for the labels of the vertical axis, the same in all tracks. */
    final double gutter() {
        return 62 * scale();
    }

    final double rightMargin() {
        return 16 * scale();
    }

    final DistanceView view() {
        return axis.viewProperty().get().on(gutter(), Math.max(1, getWidth() - gutter() - rightMargin()));
    }

    final Quantities quantities() {
        return new Quantities(axis.unitProperty().get());
    }

    /** Round numbers of the shown unit along the axis; the values are metres. */
    final Ticks distanceTicks() {
        double most = view().widthPixels() / (76 * scale());
        Ticks shown = Ticks.between(
                axis.unitProperty().get().fromMetres(view().fromMetres()),
                axis.unitProperty().get().fromMetres(view().toMetres()),
                (int) Math.max(2, most));
        List<Double> metres =
                shown.values().stream().map(axis.unitProperty().get()::toMetres).toList();
        return new Ticks(axis.unitProperty().get().toMetres(shown.step()), shown.digits(), metres);
    }

    final void drawDistanceGrid(GraphicsContext g, double top, double bottom) {
        g.setStroke(ink(Ink.GRID));
        g.setLineWidth(1);
        for (double metres : distanceTicks().values()) {
            double x = sharp(view().pixel(metres));
            g.strokeLine(x, top, x, bottom);
        }
    }

    final void drawHair(GraphicsContext g, double top, double bottom) {
        double x = view().pixel(axis.hairMetresProperty().get());
        if (x < gutter() - 1 || x > getWidth() - rightMargin() + 1) {
            return;
        }
        g.setStroke(ink(Ink.HAIR));
        g.setLineWidth(Math.max(1, scale()));
        g.setGlobalAlpha(0.75);
        g.strokeLine(sharp(x), top, sharp(x), bottom);
        g.setGlobalAlpha(1);
    }

    static double sharp(double pixel) {
        return Math.floor(pixel) + 0.5;
    }
}
