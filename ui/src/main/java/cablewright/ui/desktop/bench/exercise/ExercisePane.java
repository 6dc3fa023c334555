// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorPane;
import cablewright.ui.desktop.bench.form.Section;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;

/** The editor of the exercise on the Bench. */
public final class ExercisePane extends EditorPane {

    private final Texts texts;

    /**
     * Makes the editor.
     *
     * @param document the document on the Bench
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param tryIt opens the exercise as a trainee sees it
     * @param texts the sentences of the editors
     */
    public ExercisePane(
            DocumentViewModel document,
            ObservableValue<LengthUnit> unit,
            Threads threads,
            Runnable tryIt,
            Texts texts) {
        super("exercise-editor", texts.say("exercise.name"));
        this.texts = texts;
        ExerciseEditorViewModel model = new ExerciseEditorViewModel(document, texts);
        Words words = Words.in(unit.getValue(), texts.locale());
        AskedViewModel asked = new AskedViewModel(model, threads);
        Section key = section("asked", false, new AskedSection(model, asked, unit));
        key.expandedProperty().addListener((o, before, now) -> asked.watch(now));
        add(
                tools(tryIt),
                section("brief", true, new BriefSection(model, words)),
                section("permitted", false, new PermittedSection(model, unit, words)),
                section("start", false, new StartSection(model, unit)),
                section("rulings", false, new RulingsSection(model, unit)),
                section("hints", false, new HintsSection(model)),
                section("question", false, new QuestionSection(model)),
                section("explanation", false, new ExplanationSection(model, new DraftViewModel(model, threads))),
                key);
    }

    private FlowPane tools(Runnable tryIt) {
        Button trial = new Button(texts.say("trial.open"));
        trial.setId("trial-open");
        trial.setAccessibleText(texts.say("trial.open.name"));
        trial.setOnAction(event -> tryIt.run());
        FlowPane tools = new FlowPane(trial);
        tools.getStyleClass().add("editor-tools");
        return tools;
    }

    private Section section(String name, boolean open, Node content) {
        return new Section("section-" + name, texts.say("section." + name), open, content);
    }
}
