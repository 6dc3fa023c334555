// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.lessons.text.Texts;
import cablewright.ui.demonstrations.Control;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What can be set, one below the other. */
final class ControlShelf extends VBox {

    private static final double STEP = 0.02;

    private final DemonstrationViewModel model;
    private final Texts words;
    private final ObservableValue<LengthUnit> unit;

    ControlShelf(DemonstrationViewModel model, Texts words, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.words = words;
        this.unit = unit;
        getStyleClass().addAll("card", "control-shelf");
        model.demonstration().controls().forEach(control -> getChildren().add(made(control)));
    }

    private Node made(Control control) {
        switch (control.form()) {
            case CHOICE:
                return choice(control);
            case SWITCH:
                return onOff(control);
            default:
                return slider(control);
        }
    }

    private String name(Control control) {
        return words.say(model.demonstration().id() + ".control." + control.id());
    }

    private double value(Control control) {
        return model.valuesProperty().get().get(control.id());
    }

    private String written(Control control) {
        return control.written(value(control), new Quantities(unit.getValue()));
    }

    private Node slider(Control control) {
        Label name = new Label(name(control));
        name.setWrapText(true);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        Label value = new Label(written(control));
        value.getStyleClass().add("control-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        Slider slider = new Slider(0, 1, control.shareOf(value(control)));
        slider.setId("set-" + control.id());
        slider.setBlockIncrement(STEP);
        slider.setMajorTickUnit(0.25);
        name.setLabelFor(slider);
        slider.valueProperty().addListener((o, before, now) -> {
            if (Math.abs(control.shareOf(value(control)) - now.doubleValue()) > 1e-6) {
                model.set(control.id(), control.valueAt(now.doubleValue()));
            }
        });
        Runnable tell = () -> {
            value.setText(written(control));
            slider.setAccessibleText(name(control) + ", " + written(control));
        };
        tell.run();
        model.valuesProperty().addListener((o, before, now) -> {
            if (!slider.isValueChanging() && control.valueAt(slider.getValue()) != value(control)) {
                slider.setValue(control.shareOf(value(control)));
            }
            tell.run();
        });
        unit.addListener(changed -> tell.run());
        return new VBox(new HBox(name, value), slider);
    }

    private Node choice(Control control) {
        Label name = new Label(name(control));
        ComboBox<String> box = new ComboBox<>();
        box.setId("set-" + control.id());
        box.setMaxWidth(Double.MAX_VALUE);
        List<String> options = new ArrayList<>();
        for (int i = 0; i <= control.most(); i++) {
            options.add(words.say(model.demonstration().id() + ".control." + control.id() + "." + i));
        }
        box.getItems().setAll(options);
        box.getSelectionModel().select((int) value(control));
        box.setAccessibleText(name(control));
        name.setLabelFor(box);
        box.getSelectionModel()
                .selectedIndexProperty()
                .addListener((o, before, now) -> model.set(control.id(), now.intValue()));
        model.valuesProperty()
                .addListener((o, before, now) -> box.getSelectionModel().select((int) value(control)));
        return new VBox(name, box);
    }

    private Node onOff(Control control) {
        CheckBox box = new CheckBox(name(control));
        box.setWrapText(true);
        box.setId("set-" + control.id());
        box.setAccessibleText(name(control));
        box.setSelected(value(control) > 0.5);
        box.selectedProperty().addListener((o, before, now) -> model.set(control.id(), now ? 1 : 0));
        model.valuesProperty().addListener((o, before, now) -> box.setSelected(value(control) > 0.5));
        return box;
    }
}
