// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.lattice;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.wave.WaveControls;
import cablewright.ui.desktop.wave.WaveViewModel;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Puts the lattice diagram in the place of the tracks under a trace while it is open. */
public final class LatticeSwitch {

    private final LatticeViewModel model;
    private final WaveViewModel wave;
    private final Texts texts;

    /**
     * Prepares for a diagram.
     *
     * @param model the diagram
     * @param wave the wave along the cable, which the diagram marks as well
     * @param texts texts of the desktop
     */
    public LatticeSwitch(LatticeViewModel model, WaveViewModel wave, Texts texts) {
        this.model = model;
        this.wave = wave;
        this.texts = texts;
    }

    /**
     * Makes the buttons that lie over the cable: the one that opens the diagram, and those of the wave.
     *
     * @return the buttons, at the right upper corner
     */
    public HBox buttons() {
        Button open = new Button(texts.say("lattice.open"), new FontIcon(Feather.SHARE_2));
        open.setId("lattice-open");
        open.getStyleClass().addAll("flat", "play-wave");
        open.setAccessibleText(texts.say("lattice.open.name"));
        open.setTooltip(new Tooltip(texts.say("lattice.open.name")));
        open.setOnAction(event -> model.toggle());
        HBox buttons = new HBox(open, new WaveControls(wave, texts));
        buttons.setAlignment(Pos.TOP_RIGHT);
        buttons.setPickOnBounds(false);
        buttons.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        StackPane.setAlignment(buttons, Pos.TOP_RIGHT);
        return buttons;
    }

    /**
     * Swaps the tracks under the first one whenever the diagram opens or shuts; the focus goes with it.
     *
     * @param tracks the tracks, that of the trace first
     * @param trace what has the focus while the diagram is shut
     */
    public void in(VBox tracks, Node trace) {
        LatticeView lattice = new LatticeView(model, wave, texts);
        StackPane card = new StackPane(lattice);
        card.getStyleClass().addAll("card", "track-card");
        VBox.setVgrow(card, Priority.ALWAYS);
        List<Node> first = List.copyOf(tracks.getChildren().subList(0, 1));
        List<Node> others =
                List.copyOf(tracks.getChildren().subList(1, tracks.getChildren().size()));
        model.openProperty().addListener((o, before, now) -> {
            tracks.getChildren().setAll(first);
            tracks.getChildren().addAll(now ? List.of(card) : others);
            (now ? lattice : trace).requestFocus();
        });
    }
}
