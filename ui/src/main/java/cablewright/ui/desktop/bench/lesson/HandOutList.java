// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.text.Texts;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The list of what is to be put right before a lesson is handed out, made when it is asked for. */
final class HandOutList extends VBox {

    private final HandOutViewModel model;
    private final Texts texts;
    private final VBox list = new VBox();

    HandOutList(HandOutViewModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        getStyleClass().add("section-fields");
        list.setId("handout-list");
        list.getStyleClass().add("item-rows");
        Button look = new Button(texts.say("handout.look"));
        look.setId("handout-look");
        look.setAccessibleText(texts.say("handout.look.name"));
        look.disableProperty().bind(model.workingProperty());
        look.setOnAction(event -> model.look());
        getChildren().addAll(look, list);
        model.foundProperty().addListener(changed -> show());
        model.workingProperty().addListener(changed -> show());
        show();
    }

    private void show() {
        Optional<List<String>> found = model.foundProperty().get();
        list.getChildren().clear();
        if (model.workingProperty().get()) {
            add(texts.say("handout.working"), "quiet");
        } else if (found.isEmpty()) {
            add(texts.say("handout.notYet"), "quiet");
        } else if (found.get().isEmpty()) {
            add(texts.say("handout.nothing"), "outcome-right");
        } else {
            found.get().forEach(sentence -> add(texts.say("handout.item", sentence), "problem"));
        }
    }

    private void add(String sentence, String styleClass) {
        Label label = new Label(sentence);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(styleClass);
        list.getChildren().add(label);
    }
}
