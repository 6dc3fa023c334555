// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.form;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Shows what a page says after an action. It takes no room while there is nothing to say. */
public final class SaidLabel extends Label {

    /**
     * Shows what is said.
     *
     * @param id id of the label
     * @param said what is said
     */
    public SaidLabel(String id, ObservableValue<Said> said) {
        setId(id);
        setWrapText(true);
        setMinHeight(Region.USE_PREF_SIZE);
        said.addListener((o, before, now) -> show(now));
        show(said.getValue());
    }

    private void show(Said said) {
        setText(said.sentence());
        getStyleClass().removeAll("problem", "exam-news");
        getStyleClass().add(said.isFault() ? "problem" : "exam-news");
        setVisible(!said.sentence().isEmpty());
        setManaged(isVisible());
    }
}
