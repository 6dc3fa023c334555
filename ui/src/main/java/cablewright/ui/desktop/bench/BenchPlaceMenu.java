// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.EventsViewModel;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.Region;

/** What can be done at a place of the cable, offered where it is clicked with the other button. */
final class BenchPlaceMenu {

    private final BenchViewModel model;
    private final Supplier<List<MenuItem>> insertables;
    private final BenchTabs tabs;
    private final ContextMenu menu = new ContextMenu();

    BenchPlaceMenu(BenchViewModel model, Supplier<List<MenuItem>> insertables, BenchTabs tabs) {
        this.model = model;
        this.insertables = insertables;
        this.tabs = tabs;
        menu.setId("place-menu");
    }

    /** Offers the menu on tracks. */
    void on(Region... tracks) {
        for (Region track : tracks) {
            track.setOnContextMenuRequested(event -> {
                fill();
                menu.show(track, event.getScreenX(), event.getScreenY());
                event.consume();
            });
        }
    }

    private void fill() {
        EventsViewModel events = model.events();
        boolean selected = !events.selected().isEmpty();
        Menu insert = new Menu(model.texts().say("place.insert"));
        insert.getItems().setAll(insertables.get());
        menu.getItems()
                .setAll(
                        insert,
                        item("place.paste", true, events::paste),
                        item("place.cutRun", true, events::cutRun),
                        new SeparatorMenuItem(),
                        item("place.numbers", selected, tabs::enterInspector),
                        item("place.move", selected, events::moveToCursor),
                        item("place.rename", selected, tabs::renameSelected),
                        item("place.copy", selected, events::copy),
                        item("place.duplicate", selected, events::duplicate),
                        item("place.remove", selected, events::remove));
    }

    private MenuItem item(String key, boolean isPossible, Runnable action) {
        MenuItem item = new MenuItem(model.texts().say(key));
        item.setId(key.replace('.', '-'));
        item.setDisable(!isPossible);
        item.setOnAction(event -> action.run());
        return item;
    }
}
