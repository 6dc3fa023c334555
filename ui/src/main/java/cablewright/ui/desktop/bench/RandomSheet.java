// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.inspector.ChoiceRow;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.RandomViewModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;

/** A small sheet under the menu that asks for a cable by chance. */
final class RandomSheet {

    private final RandomViewModel model;
    private final Texts texts;
    private final Node under;
    private final Popup popup = new Popup();
    private final TextField seed = new TextField();
    private final VBox sheet;

    RandomSheet(BenchViewModel bench, Node under) {
        this.model = new RandomViewModel(bench, new SplittableRandom());
        this.texts = bench.texts();
        this.under = under;
        popup.setAutoHide(true);
        popup.setHideOnEscape(true);
        sheet = sheet();
        popup.getContent().add(sheet);
    }

    private VBox sheet() {
        Label title = new Label(texts.say("random.title"));
        title.getStyleClass().add("card-title");
        ChoiceRow<Optional<ExerciseFamily>> family =
                new ChoiceRow<>("random-family", texts.say("random.family"), this::word, model.familyProperty()::set);
        List<Optional<ExerciseFamily>> families = new ArrayList<>();
        families.add(Optional.empty());
        for (ExerciseFamily one : ExerciseFamily.values()) {
            families.add(Optional.of(one));
        }
        family.show(families, Optional.empty());
        Slider difficulty = new Slider(0, 1, model.difficultyProperty().get());
        difficulty.setId("random-difficulty");
        difficulty.setAccessibleText(texts.say("random.difficulty"));
        difficulty.setBlockIncrement(0.1);
        model.difficultyProperty().bind(difficulty.valueProperty());
        HBox.setHgrow(difficulty, Priority.ALWAYS);
        seed.setId("random-seed");
        seed.setAccessibleText(texts.say("random.seed"));
        seed.textProperty().bindBidirectional(model.seedProperty());
        seed.setOnAction(event -> make());
        Label fault = new Label();
        fault.getStyleClass().add("fault");
        fault.textProperty().bind(model.faultProperty());
        fault.setWrapText(true);
        CheckBox adds = new CheckBox(texts.say("random.adds"));
        adds.setId("random-adds");
        adds.selectedProperty().bindBidirectional(model.addsProperty());
        Button make = new Button();
        make.setId("random-make");
        make.setDefaultButton(true);
        make.textProperty()
                .bind(model.workingProperty().map(working -> texts.say(working ? "random.working" : "random.make")));
        make.disableProperty().bind(model.workingProperty());
        make.setOnAction(event -> make());
        VBox all = new VBox(
                title, family, row("random.difficulty", difficulty), row("random.seed", seed), fault, adds, make);
        all.getStyleClass().addAll("window", "card", "random-sheet");
        all.getStylesheets().add(BenchView.class.getResource("bench.css").toExternalForm());
        return all;
    }

    private HBox row(String key, Node control) {
        Label caption = new Label(texts.say(key));
        caption.setLabelFor(control);
        HBox row = new HBox(caption, control);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("choice");
        return row;
    }

    private String word(Optional<ExerciseFamily> family) {
        return family.map(one -> texts.say(
                        "family." + one.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .orElse(texts.say("random.any"));
    }

    private void make() {
        model.make(popup::hide);
    }

    /** Shows the sheet under the menu. */
    void open() {
        popup.getScene().getStylesheets().setAll(under.getScene().getStylesheets());
        Node window = under.getScene().getRoot().lookup(".window");
        for (String style : List.of("dark", "projector")) {
            if (window != null && window.getStyleClass().contains(style)) {
                sheet.getStyleClass().add(style);
            }
        }
        Bounds place = under.localToScreen(under.getBoundsInLocal());
        popup.show(under.getScene().getWindow(), place.getMinX(), place.getMaxY());
        seed.requestFocus();
    }
}
