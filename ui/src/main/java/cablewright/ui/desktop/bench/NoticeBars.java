// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.model.BenchNotice;
import java.util.HashMap;
import java.util.Map;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** What the Bench says above the work, one bar for each notice. */
final class NoticeBars extends VBox {

    private final ObservableList<BenchNotice> notices;
    private final Texts texts;
    private final Map<BenchNotice, Node> bars = new HashMap<>();

    NoticeBars(ObservableList<BenchNotice> notices, Texts texts) {
        this.notices = notices;
        this.texts = texts;
        setId("bench-notices");
        getStyleClass().add("bench-notices");
        notices.addListener((ListChangeListener<BenchNotice>) change -> show());
        show();
    }

    private void show() {
        bars.keySet().removeIf(notice -> !notices.contains(notice));
        boolean isNew = notices.stream().anyMatch(notice -> !bars.containsKey(notice));
        getChildren()
                .setAll(notices.stream()
                        .map(notice -> bars.computeIfAbsent(notice, this::bar))
                        .toList());
        setVisible(!notices.isEmpty());
        setManaged(!notices.isEmpty());
        if (isNew && notices.get(0).deeds().stream().anyMatch(deed -> deed.id().equals("save-close"))) {
            Platform.runLater(() -> lookup("#deed-save-close").requestFocus());
        }
    }

    private Node bar(BenchNotice notice) {
        Label text = new Label(notice.text());
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox row = new HBox(text);
        row.getStyleClass().add("notice-row");
        row.setAlignment(Pos.CENTER_LEFT);
        for (BenchNotice.Deed deed : notice.deeds()) {
            Button button = new Button(deed.words());
            button.setId("deed-" + deed.id());
            button.setAccessibleText(deed.words() + ". " + notice.text());
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.getStyleClass().add("small-button");
            button.setOnAction(event -> {
                notices.remove(notice);
                deed.action().run();
            });
            row.getChildren().add(button);
        }
        Button close = new Button("", new FontIcon(Feather.X));
        close.getStyleClass().addAll("flat", "small-button");
        close.setAccessibleText(texts.say("notice.close"));
        close.setOnAction(event -> {
            notices.remove(notice);
            notice.closed().run();
        });
        row.getChildren().add(close);
        row.getStyleClass().add("notice-bar");
        return row;
    }
}
