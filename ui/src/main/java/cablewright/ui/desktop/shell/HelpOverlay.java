// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.text.Texts;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** All keys on one sheet over the window. */
final class HelpOverlay extends StackPane {

    private static final List<String> GROUPS = List.of("cursor", "flags", "bench", "settings", "window");
    private static final double WRAP_EMS = 74;

    private final Button close;

    HelpOverlay(Texts texts, Runnable closed) {
        getStyleClass().add("help-veil");
        setId("help");
        setAccessibleText(texts.say("help.title"));
        Label title = new Label(texts.say("help.title"));
        title.getStyleClass().add("card-title");
        FlowPane groups = new FlowPane();
        groups.prefWrapLengthProperty().bind(title.fontProperty().map(font -> WRAP_EMS * font.getSize()));
        groups.getStyleClass().add("help-groups");
        GROUPS.forEach(group -> groups.getChildren().add(group(texts, group)));
        close = new Button(texts.say("help.close"));
        close.setAccessibleText(texts.say("help.close"));
        close.getStyleClass().add("accent");
        close.setOnAction(event -> closed.run());
        ScrollPane scroll = new ScrollPane(groups);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("help.title"));
        scroll.getStyleClass().add("flag-scroll");
        VBox sheet = new VBox(title, scroll, close);
        sheet.getStyleClass().addAll("card", "help-sheet");
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        getChildren().add(sheet);
        setAlignment(Pos.CENTER);
        setOnMouseClicked(event -> {
            if (event.getTarget() == this) {
                closed.run();
            }
        });
    }

    private static GridPane group(Texts texts, String group) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("help-grid");
        Label head = new Label(texts.say("help." + group));
        head.getStyleClass().add("finding-title");
        grid.add(head, 0, 0, 2, 1);
        String[] lines = texts.say("help." + group + ".keys").split("\\|");
        for (int i = 0; i < lines.length; i++) {
            String[] parts = lines[i].split("=", 2);
            Label keys = new Label(parts[0].strip());
            keys.getStyleClass().add("key");
            keys.setMinWidth(Region.USE_PREF_SIZE);
            Label what = new Label(parts[1].strip());
            what.setMinWidth(Region.USE_PREF_SIZE);
            grid.add(keys, 0, 1 + i);
            grid.add(what, 1, 1 + i);
        }
        return grid;
    }

    void start() {
        close.requestFocus();
    }
}
