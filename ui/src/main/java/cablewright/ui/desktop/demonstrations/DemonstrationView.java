// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.strip.ScrollToFocus;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.FigureSheet;
import cablewright.ui.words.LengthUnit;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** One demonstration: its question, and once it is answered its sliders and its figure. */
final class DemonstrationView extends VBox {

    private static final double LOW_LETTERS = 52;

    private final DemonstrationViewModel model;
    private final Texts screen;
    private final FigureView figure;
    private final Label caption = new Label();
    private final Label settings = new Label();
    private final Label notice = new Label();
    private final BorderPane lab = new BorderPane();

    DemonstrationView(DemonstrationViewModel model, Texts words, Texts screen, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.screen = screen;
        this.figure = new FigureView(model::click);
        getStyleClass().add("demonstration");
        lab.setCenter(figureCard());
        ScrollPane controls = ScrollToFocus.on(new ScrollPane(new ControlShelf(model, words, unit)));
        controls.setFitToWidth(true);
        controls.setFitToHeight(true);
        controls.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        controls.setFocusTraversable(false);
        controls.setAccessibleText(screen.say("controls.name"));
        controls.getStyleClass().add("flag-scroll");
        lab.setRight(controls);
        lab.getStyleClass().add("lab");
        VBox.setVgrow(lab, Priority.ALWAYS);
        QuestionCard question = new QuestionCard(model, words, screen);
        getChildren().addAll(question, lab);
        heightProperty()
                .addListener((o, before, now) -> question.setLow(
                        now.doubleValue() < LOW_LETTERS * caption.getFont().getSize()));
        model.answerProperty().addListener(changed -> showLab());
        model.figureProperty().addListener((o, before, now) -> now.ifPresent(this::show));
        model.problemProperty().addListener((o, before, now) -> notice.setText(now));
        showLab();
    }

    private void showLab() {
        boolean answered = model.answerProperty().get() != DemonstrationViewModel.NO_ANSWER;
        lab.setVisible(answered);
        lab.setManaged(answered);
    }

    private VBox figureCard() {
        VBox.setVgrow(figure, Priority.ALWAYS);
        for (Label label : new Label[] {caption, settings}) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        caption.setId("caption");
        caption.getStyleClass().add("caption");
        settings.getStyleClass().add("quiet");
        VBox card = new VBox(figure, caption, settings, actions());
        card.getStyleClass().addAll("card", "figure-card");
        return card;
    }

    private HBox actions() {
        Button save = new Button(screen.say("figure.save"));
        save.setId("save-figure");
        save.setMinWidth(Region.USE_PREF_SIZE);
        save.setAccessibleText(screen.say("figure.save.name"));
        save.setOnAction(event -> chooseAndSave());
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(model.progressProperty());
        bar.setAccessibleText(screen.say("figure.progress"));
        bar.visibleProperty().bind(model.runningProperty());
        Button stop = new Button(screen.say("figure.stop"));
        stop.setId("stop");
        stop.setMinWidth(Region.USE_PREF_SIZE);
        stop.setAccessibleText(screen.say("figure.stop.name"));
        stop.visibleProperty().bind(model.runningProperty());
        stop.setOnAction(event -> model.cancel());
        notice.getStyleClass().add("quiet");
        notice.setWrapText(true);
        notice.setId("notice");
        HBox.setHgrow(notice, Priority.ALWAYS);
        notice.setMaxWidth(Double.MAX_VALUE);
        HBox actions = new HBox(save, notice, bar, stop);
        actions.setAlignment(Pos.CENTER_LEFT);
        actions.getStyleClass().add("figure-actions");
        return actions;
    }

    private void show(Figure shown) {
        figure.show(shown);
        caption.setText(shown.caption());
        settings.setText(shown.settings());
    }

    private void chooseAndSave() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(screen.say("figure.save.name"));
        chooser.setInitialFileName(model.demonstration().id() + ".png");
        for (String ending : new String[] {"png", "svg", "pdf"}) {
            chooser.getExtensionFilters()
                    .add(new FileChooser.ExtensionFilter(screen.say("figure.kind." + ending), "*." + ending));
        }
        Optional.ofNullable(chooser.showSaveDialog(getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(this::save);
    }

    /** Writes the figure and its numbers, and says where they are. */
    void save(Path file) {
        if (figure.shown().isEmpty()) {
            return;
        }
        try {
            Path data = new FigureSheet(figure.shown().get()).save(file);
            notice.setText(screen.say("figure.saved", file.toAbsolutePath(), data.getFileName()));
        } catch (IOException e) {
            notice.setText(screen.say("figure.notSaved", file, String.valueOf(e.getMessage())));
        } catch (IllegalArgumentException e) {
            notice.setText(e.getMessage());
        }
    }
}
