// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.track.TraceTrack;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** What can be done with flags at the cursor, offered where the trace is clicked with the other button. */
final class FlagMenu {

    private final ExerciseViewModel model;
    private final Texts texts;

    private FlagMenu(ExerciseViewModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
    }

    static void on(TraceTrack trace, ExerciseViewModel model, Texts texts) {
        FlagMenu made = new FlagMenu(model, texts);
        ContextMenu menu = new ContextMenu();
        menu.setId("flag-menu");
        trace.setOnContextMenuRequested(event -> {
            made.fill(menu);
            menu.show(trace, event.getScreenX(), event.getScreenY());
            event.consume();
        });
    }

    private void fill(ContextMenu menu) {
        FlagsViewModel flags = model.flags();
        boolean reading = model.phaseProperty().get() == Phase.READING;
        boolean selected = flags.selectedProperty().get().isPresent();
        double cursor = model.axis().cursorMetresProperty().get();
        menu.getItems()
                .setAll(
                        item("menu.flag.place", reading, () -> flags.place(cursor)),
                        item("menu.flag.move", reading && selected, () -> flags.moveSelected(cursor)),
                        item("menu.flag.stretch", reading && selected, () -> flags.stretchSelected(cursor)),
                        item("menu.flag.unstretch", reading && selected, flags::unstretchSelected),
                        item("menu.flag.remove", reading && selected, flags::removeSelected),
                        new SeparatorMenuItem(),
                        item("menu.aids.second", true, model.traceTrack().aids()::toggleSecond),
                        item("menu.aids.keep", true, model.traceTrack().aids()::toggleKept),
                        item("menu.axis.in", true, () -> model.axis().zoomIn(cursor)),
                        item("menu.axis.all", true, model.axis()::showAll));
    }

    private MenuItem item(String key, boolean isPossible, Runnable action) {
        MenuItem item = new MenuItem(texts.say(key));
        item.setId(key.replace('.', '-'));
        item.setDisable(!isPossible);
        item.setOnAction(event -> action.run());
        return item;
    }
}
