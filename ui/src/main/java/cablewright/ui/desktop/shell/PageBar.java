// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.text.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The names of the pages in the window's bar, and the page that is open. */
final class PageBar extends HBox {

    private final List<Page> pages;
    private final BorderPane frame;
    private final Map<Page, Page.Content> made = new HashMap<>();
    private final List<ToggleButton> buttons = new ArrayList<>();
    private Page open;

    PageBar(List<Page> pages, BorderPane frame, Texts texts) {
        this.pages = List.copyOf(pages);
        this.frame = frame;
        getStyleClass().add("pages");
        setMinWidth(Region.USE_PREF_SIZE);
        ToggleGroup group = new ToggleGroup();
        for (Page page : this.pages) {
            ToggleButton button = new ToggleButton(texts.say("window." + page.id()));
            button.setId("page-" + page.id());
            button.getStyleClass().add("page-tab");
            button.setAccessibleText(texts.say("window." + page.id() + ".name"));
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setToggleGroup(group);
            button.setOnAction(event -> show(page));
            buttons.add(button);
        }
        getChildren().addAll(buttons);
        show(this.pages.get(0));
    }

    /** Opens a page by its number, from 0; numbers beyond the last do nothing. */
    void show(int number) {
        if (number < pages.size()) {
            show(pages.get(number));
        }
    }

    private void show(Page page) {
        buttons.get(pages.indexOf(page)).setSelected(true);
        open = page;
        frame.setCenter(content().node());
        if (getScene() != null) {
            frame.applyCss();
            content().start();
        }
    }

    /** Opens a page by its name. */
    void show(String id) {
        pages.stream().filter(page -> page.id().equals(id)).findFirst().ifPresent(this::show);
    }

    Page.Content content() {
        return made.computeIfAbsent(open, page -> page.content().get());
    }
}
