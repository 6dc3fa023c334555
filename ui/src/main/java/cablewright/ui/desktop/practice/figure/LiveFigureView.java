// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.figure;

import cablewright.lessons.course.FigureSlider;
import cablewright.lessons.text.Texts;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A live figure on a page: the trace over its cable, what it shows in words, and its slider. */
public final class LiveFigureView extends VBox {

    private static final double STEPS = 40;

    private final LiveFigureViewModel model;
    private final Texts texts;
    private final ObservableValue<LengthUnit> unit;
    private final FigureSurface surface;
    private final Label value = new Label();

    /**
     * Shows a figure.
     *
     * @param model the figure
     * @param texts texts of the desktop
     * @param words words of everything
     * @param unit the unit of lengths
     */
    public LiveFigureView(LiveFigureViewModel model, Texts texts, Words words, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.texts = texts;
        this.unit = unit;
        this.surface = new FigureSurface(model, words, unit);
        getStyleClass().add("lesson-figure");
        setId("figure-" + model.figure().id());
        surface.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        Label caption = quiet(model.figure().caption());
        Label problem = quiet("");
        problem.textProperty().bind(model.problemProperty());
        problem.managedProperty().bind(model.problemProperty().isNotEmpty());
        getChildren().addAll(surface, caption, problem);
        model.figure().slider().ifPresent(slider -> getChildren().add(row(slider)));
        model.shownProperty().addListener((o, before, now) -> describe());
        unit.addListener((o, before, now) -> describe());
        describe();
    }

    private static Label quiet(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add("quiet");
        return label;
    }

    private HBox row(FigureSlider bound) {
        Slider slider = new Slider(0, 1, model.shareProperty().get());
        slider.setId("figure-slider-" + model.figure().id());
        slider.setBlockIncrement(1 / STEPS);
        slider.valueProperty().bindBidirectional(model.shareProperty());
        slider.setAccessibleText(bound.label());
        HBox.setHgrow(slider, Priority.ALWAYS);
        Label name = new Label(bound.label());
        value.setMinWidth(Region.USE_PREF_SIZE);
        HBox row = new HBox(10, name, slider, value);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void describe() {
        Quantities quantities = new Quantities(unit.getValue());
        String stands = model.figure().slider().isPresent() ? model.valueText(quantities) : "";
        value.setText(stands);
        String shown = model.shownProperty()
                .get()
                .map(it -> highest(it.trace(), quantities))
                .orElse("");
        surface.setAccessibleText(texts.say("figure.spoken", model.figure().caption(), stands, shown)
                .strip());
    }

    private String highest(Trace trace, Quantities quantities) {
        double covered = trace.settings()
                .metresThereAndBack(2 * trace.settings().stimulus().settledSeconds());
        int most = trace.indexNear(covered);
        for (int i = most; i < trace.count(); i++) {
            most = Math.abs(trace.volts(i)) > Math.abs(trace.volts(most)) ? i : most;
        }
        return texts.say(
                "figure.highest", quantities.percent(trace.volts(most)), quantities.length(trace.metres(most)));
    }
}
