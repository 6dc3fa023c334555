// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.inspector.InspectorPane;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.tabs.EditorTabs;
import cablewright.ui.words.LengthUnit;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** The right column of the Bench: one tab for each side of the document. Another is one more line in {@link #BenchTabs}. */
final class BenchTabs extends TabPane {

    private final Texts texts;
    private final InspectorPane inspector;

    BenchTabs(BenchViewModel model, ObjectProperty<LengthUnit> unit, Runnable tryIt) {
        this.texts = model.texts();
        setId("bench-tabs");
        getStyleClass().add("bench-tabs");
        setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
        setAccessibleText(texts.say("tabs.name"));
        inspector = new InspectorPane(model);
        add("cable", inspector);
        getTabs().addAll(EditorTabs.of(model.document(), unit, model.threads(), tryIt, texts.locale()));
    }

    /** Adds a tab; its words are {@code tab.<id>} in the Bench's bundle. */
    private void add(String id, Node content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("flag-scroll");
        scroll.setAccessibleText(texts.say("tab." + id));
        scroll.setFocusTraversable(false);
        Tab tab = new Tab(texts.say("tab." + id), scroll);
        tab.setId("tab-" + id);
        getTabs().add(tab);
    }

    /** Puts the focus on the first thing of the inspector. */
    void enterInspector() {
        show("cable");
        inspector.enter();
    }

    /** Puts the focus on the name of what is selected. */
    void renameSelected() {
        show("cable");
        inspector.enterName();
    }

    /** Whether the cable's own tab is shown, in which nothing is written. */
    boolean isInspecting() {
        return getSelectionModel().getSelectedItem().getId().equals("tab-cable");
    }

    /** Shows a tab. */
    void show(String id) {
        getTabs().stream()
                .filter(tab -> tab.getId().equals("tab-" + id))
                .findFirst()
                .ifPresent(tab -> getSelectionModel().select(tab));
    }
}
