// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.text.Texts;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The lines of a paper, one a row: which is open, and what is answered. */
final class LineList extends ScrollPane {

    private final SittingViewModel model;
    private final Texts texts;
    private final List<ToggleButton> rows = new ArrayList<>();
    private final List<Label> states = new ArrayList<>();

    LineList(SittingViewModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        VBox list = new VBox();
        list.getStyleClass().add("sitting-line-list");
        for (int i = 0; i < model.items().size(); i++) {
            list.getChildren().add(row(i));
        }
        setContent(list);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setAccessibleText(texts.say("sit.lines"));
        getStyleClass().addAll("flag-scroll", "sitting-line-scroll");
        prefViewportHeightProperty().bind(list.heightProperty());
        model.changesProperty().addListener((o, before, now) -> show());
        model.indexProperty().addListener((o, before, now) -> show());
        show();
    }

    private ToggleButton row(int number) {
        Label title = new Label(texts.say(
                "sit.row", number + 1, model.items().get(number).item().title()));
        title.setMinWidth(0);
        Label state = new Label();
        state.setMinWidth(Region.USE_PREF_SIZE);
        state.getStyleClass().add("quiet");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox content = new HBox(title, space, state);
        content.setAlignment(Pos.CENTER_LEFT);
        content.getStyleClass().add("exam-pair");
        ToggleButton row = new ToggleButton("", content);
        row.setId("sitting-line-" + (number + 1));
        row.setMaxWidth(Double.MAX_VALUE);
        row.getStyleClass().add("sitting-line");
        content.prefWidthProperty().bind(row.widthProperty().subtract(24));
        row.setOnAction(event -> {
            model.select(number);
            show();
        });
        rows.add(row);
        states.add(state);
        return row;
    }

    private void show() {
        for (int i = 0; i < rows.size(); i++) {
            SittingItemViewModel item = model.items().get(i);
            int flags = item.draft().flags().size();
            String state = flags > 0
                    ? texts.say("sit.flags", flags)
                    : texts.say(item.isAnswered() ? "sit.answered" : "sit.blank");
            String shown = item.incomplete() == 0
                    ? state
                    : item.isAnswered()
                            ? texts.say("sit.unfinished.too", state, item.incomplete())
                            : texts.say("sit.unfinished", item.incomplete());
            states.get(i).setText(shown);
            rows.get(i).setSelected(model.indexProperty().get() == i);
            rows.get(i)
                    .setAccessibleText(texts.say("sit.row", i + 1, item.item().title()) + ", " + shown);
        }
    }
}
