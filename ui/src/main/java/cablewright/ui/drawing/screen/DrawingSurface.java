// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.screen;

import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Pen;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableBooleanProperty;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.Styleable;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;

/**
 * Something drawn with a pen on the screen. The style sheet gives the letters ({@code -fx-font}) and says whether it is dark
 * ({@code -drawing-dark}). What changes seldom and what follows the pointer lie on a canvas each; each is drawn anew only when
 * something that it shows has changed, and once a pulse however much did.
 */
public abstract class DrawingSurface extends Region {

    private static final double LEAST_SIDE = 10;
    private static final StyleablePropertyFactory<DrawingSurface> FACTORY =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());
    private static final CssMetaData<DrawingSurface, Font> FONT_META =
            FACTORY.createFontCssMetaData("-fx-font", surface -> surface.font, Font.getDefault(), true);
    private static final CssMetaData<DrawingSurface, Boolean> DARK_META =
            FACTORY.createBooleanCssMetaData("-drawing-dark", surface -> surface.dark, false, true);
    private static final List<CssMetaData<? extends Styleable, ?>> META = allMeta();

    private final SimpleStyleableObjectProperty<Font> font =
            new SimpleStyleableObjectProperty<>(FONT_META, this, "font", Font.getDefault());
    private final SimpleStyleableBooleanProperty dark =
            new SimpleStyleableBooleanProperty(DARK_META, this, "dark", false);
    private final Canvas base = new Canvas();
    private final Canvas overlay = new Canvas();
    private final InvalidationListener redraw = changed -> requestRedraw();
    private final InvalidationListener redrawOverlay = changed -> requestOverlay();
    private boolean baseIsOld = true;
    private boolean overlayIsOld = true;

    /** Makes a surface on which nothing is drawn yet. */
    protected DrawingSurface() {
        getStyleClass().add("drawing-surface");
        base.setManaged(false);
        overlay.setManaged(false);
        overlay.setMouseTransparent(true);
        getChildren().addAll(base, overlay);
        redrawOn(font, dark, widthProperty(), heightProperty());
    }

    private static List<CssMetaData<? extends Styleable, ?>> allMeta() {
        List<CssMetaData<? extends Styleable, ?>> all = new ArrayList<>(Region.getClassCssMetaData());
        all.add(FONT_META);
        all.add(DARK_META);
        return List.copyOf(all);
    }

    @Override
    public final List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return META;
    }

    /**
     * Draws all anew whenever one of several things changes.
     *
     * @param sources what is shown
     */
    protected final void redrawOn(Observable... sources) {
        for (Observable source : sources) {
            source.addListener(redraw);
        }
    }

    /**
     * Draws what follows the pointer anew whenever one of several things changes.
     *
     * @param sources what is shown
     */
    protected final void redrawOverlayOn(Observable... sources) {
        for (Observable source : sources) {
            source.addListener(redrawOverlay);
        }
    }

    /** Draws all anew at the next pulse. */
    protected final void requestRedraw() {
        baseIsOld = true;
        requestOverlay();
    }

    /** Draws what follows the pointer anew at the next pulse. */
    protected final void requestOverlay() {
        overlayIsOld = true;
        requestLayout();
    }

    /**
     * Returns the size of the letters of the style sheet.
     *
     * @return size [pixels]
     */
    protected final double fontSize() {
        return font.get().getSize();
    }

    /**
     * Returns the colours.
     *
     * @return the palette of the theme
     */
    protected final Palette palette() {
        return dark.get() ? Palette.DARK : Palette.LIGHT;
    }

    @Override
    protected void layoutChildren() {
        fit(base);
        fit(overlay);
        if (getWidth() < LEAST_SIDE || getHeight() < LEAST_SIDE) {
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

    private Pen cleared(Canvas canvas) {
        GraphicsContext graphics = canvas.getGraphicsContext2D();
        graphics.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        return new CanvasPen(graphics, font.get().getFamily());
    }

    /**
     * Draws what changes seldom.
     *
     * @param pen draws on the whole surface
     */
    protected abstract void draw(Pen pen);

    /**
     * Draws what follows the pointer; nothing unless overridden.
     *
     * @param pen draws over the rest
     */
    protected void drawOverlay(Pen pen) {}
}
