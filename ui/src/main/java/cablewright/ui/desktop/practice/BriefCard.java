// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Words;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** What is known before reading: who called, what they saw, what can hurt; and the row of exercises. */
final class BriefCard extends VBox {

    private final PracticeViewModel practice;
    private final Texts texts;
    private final ToggleButton shown = new ToggleButton();

    BriefCard(PracticeViewModel practice, ExerciseViewModel model, Texts texts, Words words) {
        this.practice = practice;
        this.texts = texts;
        getStyleClass().addAll("card", "brief-card");
        setId("brief");
        MarkdownText brief =
                new MarkdownText(model.exercise().brief(), model.axis().unitProperty());
        ScrollPane scroll = new ScrollPane(brief);
        scroll.setFitToWidth(true);
        // As high as the text is at this width; the style sheet sets how much of the window it may take.
        scroll.prefViewportHeightProperty().bind(brief.heightProperty());
        scroll.getStyleClass().add("brief-scroll");
        scroll.setAccessibleText(texts.say("brief.name") + ": " + brief.getAccessibleText());
        TextFlow cautions = cautions(model, words);
        for (Region part : List.of(scroll, cautions)) {
            part.visibleProperty().bind(shown.selectedProperty());
            part.managedProperty().bind(shown.selectedProperty());
        }
        getChildren().addAll(head(model), scroll, cautions);
        setMinHeight(Region.USE_PREF_SIZE);
    }

    /** All cautions in one running text: none may be hidden behind a scroll bar. */
    private TextFlow cautions(ExerciseViewModel model, Words words) {
        TextFlow flow = new TextFlow();
        flow.getStyleClass().add("cautions");
        flow.setMinHeight(Region.USE_PREF_SIZE);
        Text sign = new Text("⚠");
        sign.getStyleClass().addAll("caution", "caution-sign");
        flow.getChildren().add(sign);
        StringBuilder all = new StringBuilder();
        for (Caution caution : model.exercise().cautions()) {
            all.append("  ").append(words.caution(caution));
        }
        Text text = new Text(all.toString());
        text.getStyleClass().add("caution");
        flow.getChildren().add(text);
        flow.setAccessibleText(texts.say("brief.cautions") + ":" + all);
        return flow;
    }

    private HBox head(ExerciseViewModel model) {
        Label title = new Label(model.exercise().title());
        title.getStyleClass().add("card-title");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox head = new HBox(
                title,
                space,
                new TimeLeft(practice),
                shownButton(),
                step("previous", Feather.CHEVRON_LEFT, practice::previous),
                chooser(),
                step("next", Feather.CHEVRON_RIGHT, practice::next));
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("brief-head");
        return head;
    }

    private ToggleButton shownButton() {
        shown.setText(texts.say("brief.toggle"));
        shown.setId("brief-toggle");
        shown.setSelected(true);
        shown.getStyleClass().addAll("flat", "small-button", "brief-toggle");
        shown.setAccessibleText(texts.say("brief.toggle.name"));
        return shown;
    }

    /** Shows the brief with its cautions, or only the title. */
    void setOpen(boolean open) {
        shown.setSelected(open);
    }

    private Button step(String which, Feather icon, Runnable action) {
        Button button = new Button("", new FontIcon(icon));
        button.setId("exercise-" + which);
        button.getStyleClass().addAll("flat", "small-button");
        button.setAccessibleText(texts.say("exercise." + which));
        button.setOnAction(event -> action.run());
        boolean enabled = which.equals("next")
                ? practice.hasNext()
                : practice.indexProperty().get() > 0;
        button.setDisable(!enabled);
        return button;
    }

    private MenuButton chooser() {
        int number = practice.indexProperty().get() + 1;
        MenuButton chooser = new MenuButton(
                texts.say("exercise.number", number, practice.exercises().size()));
        chooser.setId("exercise-chooser");
        chooser.getStyleClass().addAll("flat", "small-button");
        chooser.setAccessibleText(
                texts.say("exercise.choose", number, practice.exercises().size()));
        chooser.setOnShowing(event -> fill(chooser));
        fill(chooser);
        return chooser;
    }

    private void fill(MenuButton chooser) {
        chooser.getItems().clear();
        for (int i = 0; i < practice.exercises().size(); i++) {
            int chosen = i;
            addPages(chooser, i);
            ExerciseViewModel exercise = practice.exercises().get(i);
            String text = exercise.sheetProperty()
                    .get()
                    .map(sheet -> texts.say(
                            "exercise.done",
                            chosen + 1,
                            exercise.exercise().title(),
                            FindingWords.marks(sheet.marks()),
                            FindingWords.marks(sheet.maximum())))
                    .orElse(texts.say(
                            "exercise.open", chosen + 1, exercise.exercise().title()));
            MenuItem item = new MenuItem(text);
            item.setOnAction(event -> practice.select(chosen));
            chooser.getItems().add(item);
        }
        addPages(chooser, practice.exercises().size());
    }

    private void addPages(MenuButton chooser, int before) {
        for (LessonPage page : practice.lesson().pagesBefore(before)) {
            MenuItem item = new MenuItem(texts.say("exercise.page", page.title()));
            item.setOnAction(event -> practice.showAgain(page));
            chooser.getItems().add(item);
        }
    }
}
