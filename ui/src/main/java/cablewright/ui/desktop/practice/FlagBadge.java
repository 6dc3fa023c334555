// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Verdict;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** A flag's letter on the cloth that it has on the trace: pointed where it belongs, swallow-tailed where it is damage. */
final class FlagBadge extends Label {

    FlagBadge(String letter) {
        super(letter);
        getStyleClass().add("badge");
        setMinWidth(Region.USE_PREF_SIZE);
    }

    void show(Optional<Verdict> verdict) {
        getStyleClass().removeAll("badge-belongs", "badge-damage");
        verdict.ifPresent(said -> getStyleClass().add(said == Verdict.BELONGS ? "badge-belongs" : "badge-damage"));
    }
}
