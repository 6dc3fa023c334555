// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.practice.LessonProgress;
import cablewright.lessons.text.Texts;
import cablewright.ui.words.Quantities;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A lesson on offer: its title, a bar for what is solved, and a word for where it stands. */
final class LessonRow extends Button {

    private static final double WIDTH_FOR_BAR_EMS = 36;

    LessonRow(HomeState.Entry entry, String after, Runnable open, Texts texts) {
        LessonProgress progress = entry.progress();
        setId("lesson-" + progress.lesson().id());
        getStyleClass().setAll("lesson-row");
        Label title = new Label(progress.lesson().title());
        title.setTextOverrun(OverrunStyle.ELLIPSIS);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Label state = new Label(state(progress, after, texts));
        state.getStyleClass().add("lesson-state");
        StackPane bar = bar(progress);
        // Where letters are large the name needs the room; the count beside it says the same as the bar.
        BooleanBinding isRoomForBar = Bindings.createBooleanBinding(
                () -> getWidth() >= WIDTH_FOR_BAR_EMS * title.getFont().getSize(),
                widthProperty(),
                title.fontProperty());
        bar.visibleProperty().bind(isRoomForBar);
        bar.managedProperty().bind(isRoomForBar);
        HBox line = new HBox(title, bar, state);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("lesson-row-line");
        line.prefWidthProperty().bind(widthProperty().subtract(34));
        setGraphic(line);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setMaxWidth(Double.MAX_VALUE);
        String waits = progress.waitsFor().isEmpty()
                ? ""
                : ", " + texts.say("home.after", String.join(", ", progress.waitsFor()));
        String said = texts.say(
                "home.count.name",
                progress.lesson().title(),
                progress.solved(),
                progress.lesson().exercises().size(),
                Quantities.number(100 * progress.share(), 0),
                waits);
        setAccessibleText(said);
        setTooltip(new Tooltip(said));
        setOnAction(event -> open.run());
    }

    private static String state(LessonProgress progress, String after, Texts texts) {
        if (progress.isPassed()) {
            return texts.say("home.passed");
        }
        if (!progress.isBegun() && !progress.waitsFor().isEmpty()) {
            return texts.say("home.after", after);
        }
        return texts.say(
                "home.count", progress.solved(), progress.lesson().exercises().size());
    }

    private static StackPane bar(LessonProgress progress) {
        Region whole = new Region();
        whole.getStyleClass().add("lesson-bar-whole");
        Region done = new Region();
        done.getStyleClass().add("lesson-bar-done");
        StackPane bar = new StackPane(whole, done);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("lesson-bar");
        double share =
                (double) progress.solved() / progress.lesson().exercises().size();
        done.maxWidthProperty().bind(bar.widthProperty().multiply(share));
        done.setVisible(share > 0);
        return bar;
    }
}
