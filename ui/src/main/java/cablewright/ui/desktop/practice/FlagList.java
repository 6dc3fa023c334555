// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.practice.model.FlagDraft;
import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.words.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.BooleanExpression;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** The flags that are being set, one below the other, with undo, redo, and the button that sets another. */
public final class FlagList extends VBox {

    private final FlagsViewModel flags;
    private final AxisViewModel axis;
    private final Texts texts;
    private final Words words;
    private final List<EventKind> kinds;
    private final BooleanExpression open;
    private final VBox list = new VBox();
    private final Map<String, FlagRow> rows = new LinkedHashMap<>();
    private final Label empty = new Label();

    /**
     * Lists flags.
     *
     * @param flags the flags
     * @param axis the axis, which knows the cursor and the unit of lengths
     * @param kinds kinds that can be named
     * @param open whether flags can be set now
     * @param texts texts of the desktop
     * @param words names of kinds and quantities
     */
    public FlagList(
            FlagsViewModel flags,
            AxisViewModel axis,
            List<EventKind> kinds,
            BooleanExpression open,
            Texts texts,
            Words words) {
        this.flags = flags;
        this.axis = axis;
        this.kinds = kinds;
        this.open = open;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("flags");
        empty.setText(texts.say("flags.empty"));
        empty.setWrapText(true);
        empty.setMinHeight(Region.USE_PREF_SIZE);
        empty.getStyleClass().add("quiet");
        list.getStyleClass().add("flag-list");
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(texts.say("flags.title"));
        scroll.getStyleClass().add("flag-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head(), scroll, placeButton());
        flags.draftsProperty().addListener((o, before, now) -> update());
        flags.selectedProperty().addListener((o, before, now) -> update());
        axis.unitProperty().addListener((o, before, now) -> update());
        list.getChildren().setAll(empty);
        update();
    }

    private HBox head() {
        Label title = new Label(texts.say("flags.title"));
        title.getStyleClass().add("card-title");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button undo = iconButton("undo", Feather.CORNER_UP_LEFT, flags::undo);
        undo.disableProperty().bind(flags.undoableProperty().not());
        Button redo = iconButton("redo", Feather.CORNER_UP_RIGHT, flags::redo);
        redo.disableProperty().bind(flags.redoableProperty().not());
        HBox head = new HBox(title, space, undo, redo);
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private Button iconButton(String which, Feather icon, Runnable action) {
        Button button = new Button("", new FontIcon(icon));
        button.setId(which);
        button.getStyleClass().addAll("flat", "small-button");
        button.setAccessibleText(texts.say("flags." + which));
        button.setOnAction(event -> action.run());
        return button;
    }

    private Button placeButton() {
        Button place = new Button(texts.say("flags.place"));
        place.setId("place-flag");
        place.setAccessibleText(texts.say("flags.place"));
        place.setMaxWidth(Double.MAX_VALUE);
        place.setOnAction(event -> flags.place(axis.cursorMetresProperty().get()));
        place.disableProperty().bind(open.not());
        return place;
    }

    private void update() {
        List<FlagDraft> drafts = flags.draftsProperty().get();
        List<String> letters = drafts.stream().map(FlagDraft::letter).toList();
        if (!List.copyOf(rows.keySet()).equals(letters)) {
            Map<String, FlagRow> kept = new LinkedHashMap<>(rows);
            rows.clear();
            for (String letter : letters) {
                rows.put(letter, kept.computeIfAbsent(letter, it -> new FlagRow(flags, it, kinds, texts, words)));
            }
            list.getChildren().setAll(rows.values());
            if (rows.isEmpty()) {
                list.getChildren().setAll(empty);
            }
        }
        Words inUnit = words.with(axis.unitProperty().get());
        for (FlagDraft draft : drafts) {
            boolean selected = flags.selectedProperty()
                    .get()
                    .filter(draft.letter()::equals)
                    .isPresent();
            rows.get(draft.letter()).update(draft, selected, inUnit);
        }
    }

    /**
     * Opens the list of kinds of the selected flag; when it closes, keys act on the trace again.
     *
     * @param focusAfter where the focus goes then
     */
    public void openKinds(Node focusAfter) {
        flags.selectedProperty().get().map(rows::get).ifPresent(row -> {
            row.openKinds();
            row.kindBox().setOnHidden(event -> {
                row.kindBox().setOnHidden(null);
                focusAfter.requestFocus();
            });
        });
    }
}
