// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.line.CableType;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.strip.FoldingStrip;
import cablewright.ui.desktop.track.EventIcon;
import cablewright.ui.desktop.track.SampleEvents;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.StackPane;

/**
 * What can be put on the cable, hardware and damage, each with its letter. Chosen with the pointer, a thing waits for a
 * click on the cable; chosen by key, it goes to the cursor at once.
 */
final class InsertPalette extends StackPane {

    private static final PseudoClass ARMED = PseudoClass.getPseudoClass("armed");

    private final BenchViewModel model;
    private final Texts texts;
    private final List<Chip> chips = new ArrayList<>();
    private final FoldingStrip column;
    private List<Insertable> offered = List.of();

    /** One thing to choose. */
    private record Chip(Insertable what, Button button) {}

    InsertPalette(BenchViewModel model) {
        this.model = model;
        this.texts = model.texts();
        setId("palette");
        getStyleClass().addAll("card", "palette");
        setMinHeight(0);
        setPrefHeight(0);
        column = new FoldingStrip(Orientation.VERTICAL, Pos.TOP_CENTER, texts.say("palette.list"));
        column.more().setId("insert-list");
        getChildren().add(column);
        model.document().documentProperty().addListener(changed -> offer());
        model.events().armedProperty().addListener(changed -> showArmed());
        offer();
    }

    /** Offers what the cable's first run can carry. */
    private void offer() {
        CableType type = model.document().now().cable().runs().get(0).type();
        List<Insertable> now = Insertable.on(type);
        if (now.equals(offered)) {
            return;
        }
        offered = now;
        lay();
    }

    private void lay() {
        chips.clear();
        column.clear();
        for (Nature nature : List.of(Nature.HARDWARE, Nature.DAMAGE)) {
            for (Insertable one : offered) {
                if (one.kind().nature() == nature) {
                    column.add(chip(one), () -> List.of(item(one)));
                }
            }
        }
        showArmed();
    }

    private Button chip(Insertable what) {
        String letter = model.names().letter(what);
        String name = texts.say("palette.chip", model.names().name(what), letter);
        Button chip = new Button(letter, new EventIcon(SampleEvents.of(what)));
        chip.setId("insert-" + what.word());
        chip.getStyleClass().add("chip");
        chip.setAccessibleText(name);
        chip.setTooltip(new Tooltip(name));
        // A press of the pointer arms, since the cursor follows the pointer away; keys put it at the cursor.
        chip.setOnMouseClicked(event -> arm(what));
        chip.setOnDragDetected(event -> {
            model.events().armedProperty().set(Optional.of(what));
            chip.startFullDrag();
        });
        chip.setOnAction(event -> {
            if (!chip.isHover()) {
                model.events().insert(what);
            }
        });
        chips.add(new Chip(what, chip));
        return chip;
    }

    private void arm(Insertable what) {
        boolean again = model.events().armedProperty().get().equals(Optional.of(what));
        model.events().armedProperty().set(again ? Optional.empty() : Optional.of(what));
    }

    private void showArmed() {
        for (Chip chip : chips) {
            chip.button()
                    .pseudoClassStateChanged(
                            ARMED, model.events().armedProperty().get().equals(Optional.of(chip.what())));
        }
    }

    /** The same things as a menu, for a place that was clicked. */
    ContextMenu menu() {
        ContextMenu menu = new ContextMenu();
        menu.setId("insert-menu");
        Nature before = Nature.HARDWARE;
        for (Insertable one : offered) {
            if (one.kind().nature() != before) {
                menu.getItems().add(new SeparatorMenuItem());
                before = one.kind().nature();
            }
            menu.getItems().add(item(one));
        }
        return menu;
    }

    /** What can be put at the cursor, one item each. */
    List<MenuItem> menuItems() {
        return menu().getItems();
    }

    private MenuItem item(Insertable one) {
        MenuItem item = new MenuItem(
                texts.say("palette.item", model.names().name(one), model.names().letter(one)),
                new EventIcon(SampleEvents.of(one)));
        item.setOnAction(event -> model.events().insert(one));
        return item;
    }
}
