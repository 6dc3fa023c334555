// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.ui.desktop.choice.ChoiceLook;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/**
 * A choice on the screen.
 *
 * @param <T> what is chosen
 */
public final class ChoiceRow<T> extends HBox {

    private final ComboBox<T> box = new ComboBox<>();
    private boolean isShowing;

    public ChoiceRow(String key, String name, Function<T, String> words, Consumer<T> chosen) {
        this(key, name, ChoiceLook.of(words), chosen);
    }

    ChoiceRow(String key, String name, ChoiceLook<T> look, Consumer<T> chosen) {
        getStyleClass().add("choice");
        setAlignment(Pos.CENTER_LEFT);
        Label caption = new Label(name);
        caption.setLabelFor(box);
        caption.setWrapText(true);
        caption.setMinWidth(Region.USE_PREF_SIZE);
        HBox.setHgrow(box, Priority.ALWAYS);
        box.setId("choice-" + key);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setAccessibleText(name);
        look.on(box);
        box.valueProperty().addListener((o, before, now) -> {
            if (!isShowing && now != null) {
                chosen.accept(now);
            }
        });
        getChildren().addAll(caption, box);
    }

    public void show(List<T> choices, T chosen) {
        isShowing = true;
        if (!box.getItems().equals(choices)) {
            box.getItems().setAll(choices);
        }
        box.setValue(chosen);
        isShowing = false;
    }
}
