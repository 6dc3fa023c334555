// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.text.Texts;
import cablewright.ui.words.Words;
import java.util.HashMap;
import java.util.Map;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** A sitting on the screen: a bar with the clock, the line that is open, and, when asked for, handing in. */
public final class SittingView extends BorderPane {

    private static final PseudoClass SHORT = PseudoClass.getPseudoClass("short");
    private static final double SECONDS_BETWEEN_SAVES = 5;

    private final SittingViewModel model;
    private final Texts texts;
    private final Texts desktop;
    private final Words words;
    private final Runnable leave;
    private final Map<SittingItemViewModel, SittingItemView> views = new HashMap<>();
    private final Timeline seconds;
    private final Timeline saves;
    private boolean confirming;

    /**
     * Shows a sitting.
     *
     * @param model the sitting
     * @param leave leaves it, kept as it is
     * @param texts sentences of these pages
     * @param desktop texts of the desktop
     * @param words words for kinds and quantities
     */
    public SittingView(SittingViewModel model, Runnable leave, Texts texts, Texts desktop, Words words) {
        this.model = model;
        this.leave = leave;
        this.texts = texts;
        this.desktop = desktop;
        this.words = words;
        getStyleClass().add("sitting");
        setId("sitting");
        seconds = repeated(Duration.seconds(1), model::look);
        saves = repeated(Duration.seconds(SECONDS_BETWEEN_SAVES), model::tick);
        setTop(bar());
        model.indexProperty().addListener((o, before, now) -> show());
        model.handedInProperty().addListener((o, before, now) -> show());
        show();
    }

    private static Timeline repeated(Duration each, Runnable what) {
        Timeline line = new Timeline(new KeyFrame(each, event -> what.run()));
        line.setCycleCount(Animation.INDEFINITE);
        line.play();
        return line;
    }

    private HBox bar() {
        Label title = new Label(texts.say("sit.of", model.paper().title(), model.trainee()));
        title.getStyleClass().add("card-title");
        title.setMinWidth(0);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Label clock = new Label();
        clock.setId("sitting-clock");
        clock.getStyleClass().add("sitting-clock");
        clock.setMinWidth(Region.USE_PREF_SIZE);
        clock.textProperty().bind(model.clockProperty());
        model.shortProperty().addListener((o, before, now) -> clock.pseudoClassStateChanged(SHORT, now));
        clock.pseudoClassStateChanged(SHORT, model.shortProperty().get());
        Button later = button("sit.leave", "sitting-leave", leave);
        Button handIn = button("sit.handIn", "sitting-hand-in", this::confirm);
        handIn.getStyleClass().add("accent");
        handIn.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.handingInProperty().get()
                                || model.handedInProperty().get().isPresent(),
                        model.handingInProperty(),
                        model.handedInProperty()));
        HBox bar = new HBox(title, space, clock, later, handIn);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("sitting-bar");
        return bar;
    }

    private Button button(String key, String id, Runnable action) {
        Button button = new Button(texts.say(key));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(texts.say(key + ".name"));
        button.setOnAction(event -> action.run());
        return button;
    }

    private void confirm() {
        confirming = true;
        show();
    }

    private void goOn() {
        confirming = false;
        show();
        start();
    }

    private void show() {
        if (model.handedInProperty().get().isPresent()) {
            seconds.stop();
            saves.stop();
            setCenter(new ReceiptCard(model.handedInProperty().get().get(), leave, texts));
        } else if (confirming) {
            setCenter(new HandInCard(model, this::goOn, this::openLine, texts));
        } else {
            setCenter(views.computeIfAbsent(
                    model.current(), item -> new SittingItemView(model, item, texts, desktop, words)));
        }
    }

    private void openLine(int number) {
        model.select(number);
        goOn();
    }

    /** Stops the clock of this screen, and the saving with it. */
    public void stop() {
        seconds.stop();
        saves.stop();
        model.close();
    }

    public SittingViewModel model() {
        return model;
    }

    /** Puts the focus where work begins. */
    public void start() {
        if (getCenter() instanceof SittingItemView view) {
            view.start();
        }
    }

    /**
     * Returns what a picture of the work shows.
     *
     * @return the tracks, or what stands in their place
     */
    public Node picture() {
        return getCenter();
    }
}
