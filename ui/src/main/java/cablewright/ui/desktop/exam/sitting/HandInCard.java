// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Form;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** Asks once before the answers are handed in, and says what is blank. */
final class HandInCard extends VBox {

    HandInCard(SittingViewModel model, Runnable goOn, IntConsumer openLine, Texts texts) {
        getStyleClass().add("exam-page");
        setAlignment(Pos.TOP_CENTER);
        Form form = new Form("handIn", texts);
        form.getStyleClass().add("exam-sheet");
        form.words("what");
        VBox open = new VBox();
        open.getStyleClass().add("exam-list");
        for (int i = 0; i < model.items().size(); i++) {
            SittingItemViewModel item = model.items().get(i);
            int number = i;
            if (!item.isAnswered() || item.incomplete() > 0) {
                String key = item.incomplete() > 0 ? "handIn.unfinished" : "handIn.blank";
                Hyperlink link = new Hyperlink(texts.say(key, i + 1, item.item().title(), item.incomplete()));
                link.setId("hand-in-line-" + (i + 1));
                link.setWrapText(true);
                link.setOnAction(event -> openLine.accept(number));
                open.getChildren().add(link);
            }
        }
        if (!open.getChildren().isEmpty()) {
            ScrollPane scroll = new ScrollPane(open);
            scroll.setFitToWidth(true);
            scroll.setAccessibleText(texts.say("handIn.open"));
            scroll.getStyleClass().add("flag-scroll");
            form.add(scroll);
        }
        if (model.blank() == 0 && model.incomplete() == 0) {
            form.words("whole");
        }
        Button sure = form.button("sure", "hand-in-sure", model::handIn);
        sure.getStyleClass().addAll("accent", "main-button");
        sure.disableProperty().bind(model.handingInProperty());
        Button back = form.button("back", "hand-in-back", goOn);
        form.buttons(sure, back).message("hand-in-message", model.saidProperty());
        getChildren().add(form);
    }
}
