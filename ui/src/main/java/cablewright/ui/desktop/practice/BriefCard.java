// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Words;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
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
    private final BooleanProperty low = new SimpleBooleanProperty();
    private final BooleanProperty tight = new SimpleBooleanProperty();
    private final BooleanProperty folded = new SimpleBooleanProperty();
    private final BooleanProperty asks = new SimpleBooleanProperty();
    private final boolean hasStory;
    private final MarkdownText over;

    BriefCard(PracticeViewModel practice, ExerciseViewModel model, Texts texts, Words words) {
        this.practice = practice;
        this.texts = texts;
        getStyleClass().addAll("card", "brief-card");
        setId("brief");
        BriefParts parts = BriefParts.of(model.exercise().brief());
        MarkdownText story = new MarkdownText(parts.story(), model.axis().unitProperty());
        ScrollPane scroll = new ScrollPane(story);
        scroll.setFitToWidth(true);
        scroll.prefViewportHeightProperty().bind(story.heightProperty());
        scroll.getStyleClass().add("brief-scroll");
        scroll.setAccessibleText(texts.say("brief.name") + ": " + story.getAccessibleText());
        VBox.setVgrow(scroll, Priority.SOMETIMES);
        hasStory = !parts.story().isBlank();
        shownWhile(
                scroll,
                Bindings.createBooleanBinding(
                        () -> hasStory && shown.isSelected() && !tight.get(), shown.selectedProperty(), tight));
        over = new MarkdownText(parts.story(), model.axis().unitProperty());
        MarkdownText task = new MarkdownText(parts.task(), model.axis().unitProperty());
        task.setId("task");
        task.getStyleClass().add("task");
        task.setMinHeight(Region.USE_PREF_SIZE);
        shownWhile(task, folded.not());
        TextFlow cautions = cautions(model, words);
        shownWhile(cautions, low.not());
        Label inShort = cautionsInShort(model, words, cautions.getAccessibleText());
        shownWhile(inShort, low);
        getChildren().addAll(head(model), scroll, task, cautions, inShort);
    }

    private static void shownWhile(Node part, ObservableValue<Boolean> when) {
        part.visibleProperty().bind(when);
        part.managedProperty().bind(when);
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

    /** In a low window each caution is one or two words; its sentence is said by the tooltip and to a screen reader. */
    private Label cautionsInShort(ExerciseViewModel model, Words words, String inFull) {
        String names =
                model.exercise().cautions().stream().map(words::cautionInShort).collect(Collectors.joining(" · "));
        Label inShort = new Label(texts.say("brief.cautions.short", names));
        inShort.setId("cautions-short");
        inShort.getStyleClass().addAll("cautions", "cautions-short");
        inShort.setWrapText(true);
        inShort.setMinHeight(Region.USE_PREF_SIZE);
        inShort.setAccessibleText(inFull);
        Tooltip full = new Tooltip(
                model.exercise().cautions().stream().map(words::caution).collect(Collectors.joining("\n")));
        inShort.setTooltip(full);
        return inShort;
    }

    private HBox head(ExerciseViewModel model) {
        Label title = new Label(model.exercise().title());
        title.getStyleClass().add("card-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
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

    /**
     * Fits the card to the window.
     *
     * @param isLow whether cautions are said in one or two words each
     * @param isTight whether what happened is told over the trace
     * @param isDone whether the exercise was committed: where it is tight the task folds away as well
     * @param isAsking whether a question stands in the trace's place, over which nothing is laid
     */
    void fit(boolean isLow, boolean isTight, boolean isDone, boolean isAsking) {
        low.set(isLow);
        tight.set(isTight);
        folded.set(isTight && isDone && !shown.isSelected());
        asks.set(isAsking);
    }

    /**
     * Makes the card that tells what happened over the trace, where there is no room for it above.
     *
     * @return the card, shown and hidden by the same button
     */
    Node over() {
        ScrollPane scroll = new ScrollPane(over);
        scroll.setFitToWidth(true);
        scroll.prefViewportHeightProperty().bind(over.heightProperty());
        scroll.getStyleClass().add("brief-scroll");
        scroll.setAccessibleText(texts.say("brief.name") + ": " + over.getAccessibleText());
        VBox card = new VBox(scroll);
        card.setId("brief-over");
        card.getStyleClass().addAll("card", "brief-over");
        card.setMaxSize(Double.MAX_VALUE, Region.USE_PREF_SIZE);
        StackPane.setAlignment(card, Pos.TOP_CENTER);
        shownWhile(
                card,
                Bindings.createBooleanBinding(
                        () -> hasStory && shown.isSelected() && tight.get() && !asks.get(),
                        shown.selectedProperty(),
                        tight,
                        asks));
        return card;
    }

    /** Shows what happened, or only the task and the cautions. */
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
