// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.desktop.practice.model.PracticeViewModel;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** What is left of the time of a round; nothing where there is no limit. It runs only while it can be seen. */
final class TimeLeft extends Label {

    private final PracticeViewModel practice;

    TimeLeft(PracticeViewModel practice) {
        this.practice = practice;
        setId("time-left");
        getStyleClass().add("time-left");
        setMinWidth(Region.USE_PREF_SIZE);
        Timeline clock = new Timeline(new KeyFrame(Duration.seconds(1), event -> show()));
        clock.setCycleCount(Animation.INDEFINITE);
        show();
        boolean hasLimit = !getText().isEmpty();
        setVisible(hasLimit);
        setManaged(hasLimit);
        sceneProperty().addListener((o, before, now) -> {
            if (hasLimit && now != null) {
                clock.play();
            } else {
                clock.stop();
            }
        });
    }

    private void show() {
        setText(practice.leftWords());
        practice.lookAtTheClock();
    }
}
