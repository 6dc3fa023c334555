// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.FigureDrawing;
import cablewright.ui.drawing.figure.FigureLayout;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.screen.DrawingSurface;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.input.MouseEvent;

/** Shows a figure. Its letters are as large as the style sheet's. */
final class FigureView extends DrawingSurface {

    private static final double FIGURE_FONT = 0.88;
    private static final double LEAST_SIDE = 40;
    private static final double LEAST_FONTS_ACROSS = 58;

    /** Hears where a panel was clicked. */
    @FunctionalInterface
    interface Clicked {

        /**
         * Tells a place.
         *
         * @param panel number of the panel, from 0
         * @param x share of its horizontal axis
         * @param y share of its vertical axis
         */
        void at(int panel, double x, double y);
    }

    private Optional<Figure> figure = Optional.empty();

    FigureView(Clicked clicked) {
        getStyleClass().add("figure-view");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setOnMouseClicked(event -> tell(event, clicked));
        setOnMouseDragged(event -> tell(event, clicked));
    }

    void show(Figure shown) {
        figure = Optional.of(shown);
        setAccessibleText(shown.title() + ". " + shown.caption());
        requestRedraw();
    }

    Optional<Figure> shown() {
        return figure;
    }

    /** As large as the style sheet's, but never so large that words get into each other's way. */
    private double font() {
        return Math.min(FIGURE_FONT * fontSize(), getWidth() / LEAST_FONTS_ACROSS);
    }

    private Box sheet() {
        return new Box(0, 0, getWidth(), getHeight());
    }

    private void tell(MouseEvent event, Clicked clicked) {
        if (figure.isEmpty()) {
            return;
        }
        List<FigureLayout.Placed> panels = new FigureLayout(figure.get(), sheet(), font()).placed();
        for (int i = 0; i < panels.size(); i++) {
            Box plot = panels.get(i).plot();
            if (plot.contains(event.getX(), event.getY())) {
                double x = (event.getX() - plot.x()) / plot.width();
                double y = 1 - (event.getY() - plot.y()) / plot.height();
                clicked.at(i, x, y);
            }
        }
    }

    @Override
    protected void draw(Pen pen) {
        if (getWidth() > LEAST_SIDE && getHeight() > LEAST_SIDE) {
            figure.ifPresent(shown -> new FigureDrawing(pen, palette(), font()).draw(shown, sheet()));
        }
    }
}
