// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.util.Duration;

/** Says over the window, for a moment, that something was done which leaves no other sign. */
final class PassingSign extends Label {

    private static final Duration MOMENT = Duration.seconds(2.5);

    private final PauseTransition moment = new PauseTransition(MOMENT);

    PassingSign() {
        setId("sign");
        getStyleClass().add("passing-sign");
        setMouseTransparent(true);
        setVisible(false);
        setWrapText(true);
        moment.setOnFinished(event -> setVisible(false));
    }

    void show(String sentence) {
        setText(sentence);
        setVisible(true);
        toFront();
        moment.playFromStart();
    }
}
