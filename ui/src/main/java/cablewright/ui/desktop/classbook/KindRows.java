// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** Progress by kind of event: a bar for all answers, a tick on it for the last five, and the numbers beside it. */
final class KindRows extends GridPane {

    private final Texts texts;
    private final Words words;

    KindRows(Texts texts, Words words) {
        this.texts = texts;
        this.words = words;
        setId("progress-by-kind");
        getStyleClass().add("kind-rows");
        ColumnConstraints bars = new ColumnConstraints();
        bars.setHgrow(Priority.ALWAYS);
        ColumnConstraints numbers = new ColumnConstraints();
        numbers.setHalignment(HPos.RIGHT);
        numbers.setMinWidth(Region.USE_PREF_SIZE);
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(Region.USE_PREF_SIZE);
        getColumnConstraints().addAll(names, bars, numbers);
    }

    void show(ClassSummary summary) {
        getChildren().clear();
        int row = 0;
        for (EventKind kind : EventKind.values()) {
            ClassSummary.KindProgress progress = summary.byKind().get(kind);
            if (progress != null) {
                add(kind, progress, row++);
            }
        }
        if (row == 0) {
            Label none = new Label(texts.say("classbook.nothingYet"));
            none.getStyleClass().add("quiet");
            none.setWrapText(true);
            add(none, 0, 0, 3, 1);
        }
    }

    private void add(EventKind kind, ClassSummary.KindProgress progress, int row) {
        Label name = new Label(words.kind(kind));
        String said = texts.say(
                "classbook.progress",
                percent(progress.meanSuccess()),
                percent(progress.recentSuccess()),
                progress.asked());
        Label numbers = new Label(said);
        numbers.getStyleClass().add("quiet");
        numbers.setMinWidth(Region.USE_PREF_SIZE);
        name.setMinWidth(Region.USE_PREF_SIZE);
        StackPane bar = bar(progress);
        bar.setAccessibleText(words.kind(kind) + ": " + said);
        addRow(row, name, bar, numbers);
    }

    private static String percent(double share) {
        return Quantities.number(100 * share, 0);
    }

    private static StackPane bar(ClassSummary.KindProgress progress) {
        Region whole = part("bar-whole");
        Region done = part("bar-done");
        Region recent = part("bar-recent");
        StackPane bar = new StackPane(whole, done, recent);
        bar.getStyleClass().add("kind-bar");
        bar.setAlignment(Pos.CENTER_LEFT);
        whole.maxWidthProperty().bind(bar.widthProperty());
        done.maxWidthProperty().bind(bar.widthProperty().multiply(progress.meanSuccess()));
        recent.setMaxWidth(3);
        recent.setMinWidth(3);
        recent.translateXProperty().bind(bar.widthProperty().subtract(3).multiply(progress.recentSuccess()));
        return bar;
    }

    private static Region part(String style) {
        Region part = new Region();
        part.getStyleClass().add(style);
        return part;
    }
}
