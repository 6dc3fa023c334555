// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Hint;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.FlagDraft;
import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.practice.model.KindChoices;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
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

/** The right column before commit: the flags, hints, and the button that hands them in. */
final class FlagsPane extends VBox {

    private final ExerciseViewModel model;
    private final FlagsViewModel flags;
    private final Texts texts;
    private final Words words;
    private final List<EventKind> kinds;
    private final VBox list = new VBox();
    private final Map<String, FlagRow> rows = new LinkedHashMap<>();
    private final Label empty = new Label();

    FlagsPane(ExerciseViewModel model, Texts texts, Words words) {
        this.model = model;
        this.flags = model.flags();
        this.texts = texts;
        this.words = words;
        this.kinds = KindChoices.of(model.exercise());
        getStyleClass().addAll("card", "flags");
        setId("flags");
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
        getChildren().addAll(head(), scroll, placeButton(), hints(), advice(), commitButton());
        flags.draftsProperty().addListener((o, before, now) -> update());
        flags.selectedProperty().addListener((o, before, now) -> update());
        model.axis().unitProperty().addListener((o, before, now) -> update());
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
        place.setOnAction(event -> flags.place(model.axis().hairMetresProperty().get()));
        place.disableProperty().bind(model.phaseProperty().isNotEqualTo(Phase.READING));
        return place;
    }

    private Node hints() {
        VBox box = new VBox();
        box.getStyleClass().add("hints");
        List<Hint> all = model.exercise().hints();
        if (all.isEmpty()) {
            box.setVisible(false);
            box.setManaged(false);
            return box;
        }
        Button next = new Button();
        next.setId("hint");
        next.getStyleClass().add("flat");
        next.setMaxWidth(Double.MAX_VALUE);
        next.setOnAction(event -> model.takeHint());
        Runnable show = () -> showHints(box, all, next);
        model.hintsTakenProperty().addListener((o, before, now) -> show.run());
        model.phaseProperty().addListener((o, before, now) -> show.run());
        show.run();
        return box;
    }

    private void showHints(VBox box, List<Hint> all, Button next) {
        List<Node> shown = new ArrayList<>();
        int taken = model.hintsTakenProperty().get();
        for (int i = 0; i < taken; i++) {
            MarkdownText hint = new MarkdownText(all.get(i).text(), model.axis().unitProperty());
            hint.getStyleClass().add("hint");
            shown.add(hint);
        }
        if (taken < all.size()) {
            String text = texts.say(
                    "flags.hint", taken + 1, all.size(), all.get(taken).costMarks());
            next.setText(text);
            next.setAccessibleText(text);
            next.setDisable(model.phaseProperty().get() != Phase.READING);
            shown.add(next);
        }
        box.getChildren().setAll(shown);
    }

    private Label advice() {
        Label advice = new Label();
        advice.setId("advice");
        advice.setWrapText(true);
        advice.setMinHeight(Region.USE_PREF_SIZE);
        advice.getStyleClass().add("problem");
        advice.textProperty().bind(model.adviceProperty());
        advice.visibleProperty().bind(model.adviceProperty().isNotEmpty());
        advice.managedProperty().bind(advice.visibleProperty());
        return advice;
    }

    private Button commitButton() {
        Button commit = new Button();
        commit.setId("commit");
        commit.getStyleClass().addAll("accent", "main-button");
        commit.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> texts.say(
                                model.phaseProperty().get() == Phase.MARKING ? "flags.marking" : "flags.commit"),
                        model.phaseProperty()));
        commit.accessibleTextProperty().bind(commit.textProperty());
        commit.setMaxWidth(Double.MAX_VALUE);
        commit.setOnAction(event -> model.commit());
        commit.disableProperty().bind(model.phaseProperty().isNotEqualTo(Phase.READING));
        return commit;
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
        Words inUnit = words.with(model.axis().unitProperty().get());
        for (FlagDraft draft : drafts) {
            boolean selected = flags.selectedProperty()
                    .get()
                    .filter(draft.letter()::equals)
                    .isPresent();
            rows.get(draft.letter()).update(draft, selected, inUnit);
        }
    }

    /** Opens the list of kinds of the selected flag; when it closes, keys act on the trace again. */
    void openKinds(Node focusAfter) {
        flags.selectedProperty().get().map(rows::get).ifPresent(row -> {
            row.openKinds();
            row.kindBox().setOnHidden(event -> {
                row.kindBox().setOnHidden(null);
                focusAfter.requestFocus();
            });
        });
    }
}
