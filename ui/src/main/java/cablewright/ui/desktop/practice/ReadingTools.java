// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.strip.FoldingStrip;
import cablewright.ui.desktop.track.ReadingAids;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** What helps to read a trace: second cursor, kept trace, and the other end laid over; each a switch that shows its state. */
public final class ReadingTools {

    private final ReadingAids aids;
    private final Optional<Runnable> otherEnd;
    private final Texts texts;

    /**
     * Prepares the switches.
     *
     * @param aids what helps
     * @param otherEnd lays the other end over, or takes it away; empty where there is one end only
     * @param texts texts of the desktop
     */
    public ReadingTools(ReadingAids aids, Optional<Runnable> otherEnd, Texts texts) {
        this.aids = aids;
        this.otherEnd = otherEnd;
        this.texts = texts;
    }

    /** Adds the switches to a row. */
    void addTo(FoldingStrip row) {
        add(
                row,
                "second",
                "second-cursor",
                aids.secondMetresProperty().map(OptionalDouble::isPresent),
                aids::toggleSecond);
        add(row, "keep", "keep-trace", aids.otherProperty().map(it -> isOther(it, false)), aids::toggleKept);
        otherEnd.ifPresent(run ->
                add(row, "overlayEnd", "overlay-end", aids.otherProperty().map(it -> isOther(it, true)), run));
    }

    private static boolean isOther(Optional<ReadingAids.Other> other, boolean mirrored) {
        return other.filter(it -> it.mirrored() == mirrored).isPresent();
    }

    private void add(FoldingStrip row, String key, String id, ObservableValue<Boolean> on, Runnable action) {
        String name = texts.say("aids." + key + ".name");
        ToggleButton button = new ToggleButton(texts.say("aids." + key));
        button.setId(id);
        button.getStyleClass().addAll("small-button", "switch");
        button.setAccessibleText(name);
        button.setTooltip(new Tooltip(name));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setSelected(on.getValue());
        on.addListener((o, before, now) -> button.setSelected(now));
        button.setOnAction(event -> {
            action.run();
            button.setSelected(on.getValue());
        });
        row.add(button, () -> {
            CheckMenuItem item = new CheckMenuItem(name);
            item.setSelected(on.getValue());
            item.setOnAction(event -> action.run());
            return List.of(item);
        });
        // A listener of a mapped value holds only as long as somebody holds the value.
        button.getProperties().put("state", on);
    }
}
