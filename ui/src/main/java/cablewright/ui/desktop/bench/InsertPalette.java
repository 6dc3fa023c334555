// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.line.CableType;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What can be put on the cable, hardware and damage, each with its letter. Chosen with the pointer, a thing waits for a
 * click on the cable; chosen by key, it goes to the cursor at once.
 */
final class InsertPalette extends VBox {

    private static final PseudoClass ARMED = PseudoClass.getPseudoClass("armed");

    private final BenchViewModel model;
    private final Texts texts;
    private final List<Chip> chips = new ArrayList<>();
    private List<Insertable> offered = List.of();
    private boolean isLow;

    /** One thing to choose. */
    private record Chip(Insertable what, Button button) {}

    InsertPalette(BenchViewModel model) {
        this.model = model;
        this.texts = model.texts();
        setId("palette");
        getStyleClass().addAll("card", "palette");
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

    /** In a low window the trace needs the room more: there the things are one button with a list. */
    void setLow(boolean low) {
        if (low != isLow) {
            isLow = low;
            lay();
        }
    }

    private void lay() {
        chips.clear();
        if (isLow) {
            MenuButton list = new MenuButton(texts.say("palette.list"));
            list.setId("insert-list");
            list.getStyleClass().add("flat");
            list.setAccessibleText(texts.say("palette.list"));
            list.getItems().setAll(menu().getItems());
            getChildren().setAll(list);
        } else {
            getChildren().setAll(row(Nature.HARDWARE), row(Nature.DAMAGE));
        }
        showArmed();
    }

    private HBox row(Nature nature) {
        Label name = new Label(texts.say(nature == Nature.HARDWARE ? "palette.hardware" : "palette.damage"));
        name.getStyleClass().add("palette-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("palette-row");
        HBox.setHgrow(flow, Priority.ALWAYS);
        for (Insertable one : offered) {
            if (one.kind().nature() == nature) {
                flow.getChildren().add(chip(one));
            }
        }
        HBox row = new HBox(name, flow);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }

    private Button chip(Insertable what) {
        Label key = new Label(model.names().letter(what));
        key.getStyleClass().add("key");
        Button chip = new Button(model.names().name(what), key);
        chip.setContentDisplay(ContentDisplay.RIGHT);
        chip.setId("insert-" + what.word());
        chip.getStyleClass().add("chip");
        chip.setAccessibleText(texts.say(
                "palette.chip", model.names().name(what), model.names().letter(what)));
        // A press of the pointer arms, since the cursor follows the pointer away; keys put it at the cursor.
        chip.setOnMouseClicked(event -> arm(what));
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
            MenuItem item = new MenuItem(texts.say(
                    "palette.item", model.names().name(one), model.names().letter(one)));
            item.setOnAction(event -> model.events().insert(one));
            menu.getItems().add(item);
        }
        return menu;
    }
}
