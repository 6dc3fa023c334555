// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.wave;

import cablewright.lessons.text.Texts;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Play, pause, step, scrub and half speed, in one row. */
public final class WaveControls extends HBox {

    private final WaveViewModel model;
    private final Texts texts;

    /**
     * Lays the row out.
     *
     * @param model the wave
     * @param texts texts of the desktop
     */
    public WaveControls(WaveViewModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        getStyleClass().add("wave-controls");
        setAlignment(Pos.CENTER_LEFT);
        setPickOnBounds(false);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Slider scrub = scrub();
        getChildren()
                .addAll(
                        play(),
                        step("back", Feather.CHEVRON_LEFT, -1),
                        scrub,
                        step("on", Feather.CHEVRON_RIGHT, 1),
                        halfSpeed());
    }

    private Button play() {
        FontIcon icon = new FontIcon(Feather.PLAY);
        Button play = new Button("", icon);
        play.setId("play-wave");
        play.getStyleClass().addAll("flat", "play-wave");
        play.setMinWidth(Region.USE_PREF_SIZE);
        play.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> texts.say(
                                model.preparingProperty().get()
                                        ? "wave.preparing"
                                        : model.playingProperty().get() ? "wave.pause" : "wave.play"),
                        model.preparingProperty(),
                        model.playingProperty()));
        play.accessibleTextProperty().bind(play.textProperty());
        play.setTooltip(new Tooltip(texts.say("wave.tip")));
        play.disableProperty().bind(model.preparingProperty());
        model.playingProperty().addListener((o, before, now) -> icon.setIconCode(now ? Feather.PAUSE : Feather.PLAY));
        play.setOnAction(event -> model.toggle());
        return play;
    }

    private Button step(String which, Feather icon, int frames) {
        Button step = new Button("", new FontIcon(icon));
        step.setId("wave-" + which);
        step.getStyleClass().addAll("flat", "small-button", "play-wave");
        step.setAccessibleText(texts.say("wave." + which));
        step.setTooltip(new Tooltip(texts.say("wave." + which)));
        step.setOnAction(event -> model.step(frames));
        return step;
    }

    private Slider scrub() {
        Slider scrub = new Slider(0, 1, 0);
        scrub.setId("wave-scrub");
        scrub.setAccessibleText(texts.say("wave.scrub"));
        scrub.setTooltip(new Tooltip(texts.say("wave.scrub")));
        scrub.maxProperty().bind(Bindings.max(1, model.framesProperty().subtract(1)));
        scrub.setBlockIncrement(1);
        boolean[] follows = {false};
        model.frameProperty().addListener((o, before, now) -> {
            follows[0] = true;
            scrub.setValue(Math.max(0, now.intValue()));
            follows[0] = false;
        });
        scrub.valueProperty().addListener((o, before, now) -> {
            if (!follows[0]) {
                model.scrubTo(now.intValue());
            }
        });
        return scrub;
    }

    private ToggleButton halfSpeed() {
        ToggleButton half = new ToggleButton(texts.say("wave.half"));
        half.setId("wave-half");
        half.getStyleClass().addAll("flat", "small-button", "switch");
        half.setAccessibleText(texts.say("wave.half.name"));
        half.setTooltip(new Tooltip(texts.say("wave.half.name")));
        half.selectedProperty().bindBidirectional(model.halfSpeedProperty());
        return half;
    }
}
