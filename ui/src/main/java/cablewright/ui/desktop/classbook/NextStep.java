// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.Words;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Says which kind was missed most of late, and starts ten exercises of it. */
final class NextStep extends HBox {

    private final Words words;
    private final Texts texts;
    private final Label what = new Label();
    private final Button start = new Button();

    NextStep(ReadOnlyObjectProperty<Optional<WeakKind>> next, Words words, Consumer<EventKind> round, Texts texts) {
        this.words = words;
        this.texts = texts;
        getStyleClass().add("pair");
        setAlignment(Pos.CENTER_LEFT);
        what.setId("next-kind");
        what.setWrapText(true);
        what.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(what, Priority.ALWAYS);
        start.setId("next-round");
        start.setText(texts.say("classbook.next.start"));
        start.setMinWidth(Region.USE_PREF_SIZE);
        start.setOnAction(event -> next.get().map(WeakKind::kind).ifPresent(round));
        getChildren().addAll(what, start);
        next.addListener((o, before, now) -> show(now));
        show(next.get());
    }

    private void show(Optional<WeakKind> next) {
        what.setText(next.map(
                        weak -> texts.say("classbook.next.what", words.kind(weak.kind()), weak.missed(), weak.recent()))
                .orElseGet(() -> texts.say("classbook.next.none")));
        start.setDisable(next.isEmpty());
        start.setAccessibleText(next.map(weak -> texts.say("classbook.next.start.name", words.aKind(weak.kind())))
                .orElseGet(start::getText));
    }
}
