// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.lattice;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.strip.OneLine;
import cablewright.ui.desktop.wave.WaveControls;
import cablewright.ui.desktop.wave.WaveViewModel;
import cablewright.ui.drawing.lattice.Lattice;
import cablewright.ui.drawing.lattice.LatticeDrawing;
import cablewright.ui.drawing.lattice.LatticeLayout;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.screen.DrawingSurface;
import java.util.Optional;
import java.util.Set;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/**
 * The lattice diagram on the screen. The pointer, or the arrow keys up and down, choose an echo; its way stands out, and a
 * line under the diagram describes it.
 */
public final class LatticeView extends BorderPane {

    private static final double FONT = 0.86;
    private static final double LEAST_SIDE = 60;
    private static final double LEAST_FONTS_ACROSS = 58;
    private static final double FONTS_DOWN = 20;
    private static final double LEAST_FONTS_DOWN = 5;
    private static final double LEAST_FONTS_WITH_FOOT = 15;

    private final LatticeViewModel model;
    private final WaveViewModel wave;
    private final Texts texts;
    private final Diagram diagram;

    /**
     * Makes the view of a diagram.
     *
     * @param model the diagram
     * @param wave the wave, whose time is marked
     * @param texts texts of the desktop
     */
    public LatticeView(LatticeViewModel model, WaveViewModel wave, Texts texts) {
        this.model = model;
        this.wave = wave;
        this.diagram = new Diagram();
        this.texts = texts;
        getStyleClass().add("lattice");
        setId("lattice");
        setTop(head());
        setCenter(diagram);
        Label foot = foot();
        setBottom(foot);
        heightProperty().addListener((o, before, now) -> {
            boolean room =
                    now.doubleValue() > LEAST_FONTS_WITH_FOOT * foot.getFont().getSize();
            foot.setVisible(room);
            foot.setManaged(room);
        });
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        model.latticeProperty().addListener((o, before, now) -> refresh());
        model.chosenProperty().addListener((o, before, now) -> refresh());
        model.toldProperty().addListener((o, before, now) -> refresh());
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        refresh();
    }

    private HBox head() {
        Label caption = new OneLine();
        caption.getStyleClass().add("quiet");
        caption.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.latticeProperty()
                                .get()
                                .map(it -> it.caption())
                                .orElse(texts.say("lattice.working")),
                        model.latticeProperty()));
        caption.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(caption, Priority.ALWAYS);
        Button shut = new Button(texts.say("lattice.shut"));
        shut.setId("lattice-shut");
        shut.getStyleClass().addAll("flat", "play-wave");
        shut.setMinWidth(Region.USE_PREF_SIZE);
        shut.setAccessibleText(texts.say("lattice.shut"));
        shut.setOnAction(event -> model.shut());
        HBox head = new HBox(caption, new WaveControls(wave, texts), shut);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("lattice-head");
        return head;
    }

    private Label foot() {
        Label description = new Label();
        description.setId("lattice-description");
        description.setWrapText(true);
        description.getStyleClass().add("lattice-description");
        description
                .textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.toldProperty().get().isEmpty()
                                ? texts.say("lattice.hint")
                                : model.toldProperty().get(),
                        model.toldProperty()));
        return description;
    }

    private void refresh() {
        Optional<Lattice> lattice = model.latticeProperty().get();
        String name = lattice.map(it -> it.title() + ". " + it.caption()).orElse(texts.say("lattice.working"));
        setAccessibleText(name + " " + model.toldProperty().get());
        diagram.show();
    }

    private void pressed(KeyEvent event) {
        switch (event.getCode()) {
            case UP:
                model.step(-1);
                event.consume();
                break;
            case DOWN:
                model.step(1);
                event.consume();
                break;
            case ESCAPE:
                model.shut();
                event.consume();
                break;
            default:
                break;
        }
    }

    /** The drawing itself. Its letters are as large as the style sheet's. */
    private final class Diagram extends DrawingSurface {

        Diagram() {
            getStyleClass().add("lattice-diagram");
            setOnMouseMoved(this::point);
            redrawOverlayOn(wave.secondsProperty());
            setOnMouseClicked(event -> {
                LatticeView.this.requestFocus();
                point(event);
            });
        }

        void show() {
            requestRedraw();
        }

        private double font() {
            return Math.min(FONT * fontSize(), getWidth() / LEAST_FONTS_ACROSS);
        }

        private Box sheet() {
            return new Box(0, 0, getWidth(), getHeight());
        }

        private void point(MouseEvent event) {
            model.latticeProperty().get().ifPresent(lattice -> {
                Set<Integer> echoes = new LatticeLayout(lattice, sheet(), font()).echoesAt(event.getX(), event.getY());
                if (!echoes.isEmpty()) {
                    model.pointAt(echoes);
                }
            });
        }

        @Override
        protected double computePrefHeight(double width) {
            return FONTS_DOWN * fontSize();
        }

        @Override
        protected double computeMinHeight(double width) {
            return LEAST_FONTS_DOWN * fontSize();
        }

        /** The moment of the wave, as a line across all strips. */
        @Override
        protected void drawOverlay(Pen pen) {
            if (getWidth() >= LEAST_SIDE && getHeight() >= LEAST_SIDE) {
                model.latticeProperty().get().ifPresent(lattice -> wave.secondsProperty()
                        .get()
                        .ifPresent(seconds ->
                                new LatticeDrawing(pen, palette(), font(), lattice, sheet()).drawMoment(seconds)));
            }
        }

        @Override
        protected void draw(Pen pen) {
            if (getWidth() >= LEAST_SIDE && getHeight() >= LEAST_SIDE) {
                model.latticeProperty().get().ifPresent(lattice -> new LatticeDrawing(
                                pen, palette(), font(), lattice, sheet())
                        .draw(model.chosenProperty().get()));
            }
        }
    }
}
