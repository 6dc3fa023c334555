// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A question with its answers, and perhaps with reasons to choose from, that may be there or not. */
public final class QuestionEditor extends VBox {

    private final String id;
    private final DocumentViewModel document;
    private final Texts texts;
    private final Function<BenchDocument, Optional<Prediction>> get;
    private final Take take;
    private final Button toggle = new Button();
    private final Button reasonsToggle = new Button();
    private final Label none = new Label();
    private final VBox fields = new VBox();
    private final ChoiceRows reasons;
    private final ChangeListener<BenchDocument> follow = (o, before, now) -> show(now);

    /** Puts a changed question into the document. */
    public interface Take {

        /**
         * Does a step by itself.
         *
         * @param name what is done
         * @param edit makes the next question of this one; empty for none
         * @return what is wrong, if it can't be done
         */
        Optional<String> step(String name, UnaryOperator<Optional<Prediction>> edit);

        /**
         * Does a part of what is typed in one visit to a field.
         *
         * @param name what is done
         * @param field which field
         * @param edit makes the next question of this one
         * @return what is wrong, if it can't be done
         */
        Optional<String> type(String name, String field, UnaryOperator<Optional<Prediction>> edit);
    }

    /**
     * Makes the editor.
     *
     * @param id beginning of the names of its nodes
     * @param document the document
     * @param texts the sentences of the editors
     * @param get the question of a document
     * @param take puts a changed one into it
     */
    public QuestionEditor(
            String id,
            DocumentViewModel document,
            Texts texts,
            Function<BenchDocument, Optional<Prediction>> get,
            Take take) {
        this.id = id;
        this.document = document;
        this.texts = texts;
        this.get = get;
        this.take = take;
        getStyleClass().add("section-fields");
        fields.getStyleClass().add("section-fields");
        none.setText(texts.say("question.none"));
        none.setWrapText(true);
        none.setMinHeight(Region.USE_PREF_SIZE);
        none.getStyleClass().add("quiet");
        toggle.setId(id + "-toggle");
        toggle.setOnAction(event -> toggle());
        reasonsToggle.setId(id + "-reasons-toggle");
        reasonsToggle.setOnAction(event -> toggleReasons());
        reasons = new ChoiceRows(
                id + "-reason",
                "question.reason",
                document,
                texts,
                now -> get.apply(now)
                        .flatMap(Prediction::reasons)
                        .map(it -> new ChoiceRows.Key(it.choices(), it.correctChoiceId())),
                keys(QuestionEditor::withReasons));
        ChoiceRows answers = new ChoiceRows(
                id + "-choice",
                "question.choice",
                document,
                texts,
                now -> get.apply(now).map(QuestionEditor::answers),
                keys(QuestionEditor::withAnswers));
        fields.getChildren()
                .addAll(
                        markdown(
                                "text",
                                Prediction::question,
                                (it, text) -> new Prediction(
                                        text, it.choices(), it.correctChoiceId(), it.reasons(), it.explanation())),
                        answers,
                        reasons,
                        reasonsToggle,
                        markdown(
                                "explanation",
                                Prediction::explanation,
                                (it, text) -> new Prediction(
                                        it.question(), it.choices(), it.correctChoiceId(), it.reasons(), text)));
        getChildren().addAll(none, fields, toggle);
        show(document.now());
        document.documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    private static ChoiceRows.Key answers(Prediction asked) {
        return new ChoiceRows.Key(asked.choices(), asked.correctChoiceId());
    }

    private static Prediction withAnswers(Prediction asked, UnaryOperator<ChoiceRows.Key> edit) {
        ChoiceRows.Key key = edit.apply(answers(asked));
        return new Prediction(asked.question(), key.choices(), key.right(), asked.reasons(), asked.explanation());
    }

    private static Prediction withReasons(Prediction asked, UnaryOperator<ChoiceRows.Key> edit) {
        return with(asked, asked.reasons().map(it -> {
            ChoiceRows.Key key = edit.apply(new ChoiceRows.Key(it.choices(), it.correctChoiceId()));
            return new Reasons(key.choices(), key.right());
        }));
    }

    private static Prediction with(Prediction asked, Optional<Reasons> reasons) {
        return new Prediction(asked.question(), asked.choices(), asked.correctChoiceId(), reasons, asked.explanation());
    }

    /** Changes the choices of a question. */
    private interface WithKey {
        Prediction change(Prediction before, UnaryOperator<ChoiceRows.Key> edit);
    }

    private ChoiceRows.Take keys(WithKey with) {
        return new ChoiceRows.Take() {
            @Override
            public Optional<String> step(String name, UnaryOperator<ChoiceRows.Key> edit) {
                return take.step(name, asked -> asked.map(it -> with.change(it, edit)));
            }

            @Override
            public Optional<String> type(String field, UnaryOperator<ChoiceRows.Key> edit) {
                return QuestionEditor.this.type(field, it -> with.change(it, edit));
            }
        };
    }

    private void show(BenchDocument now) {
        Optional<Prediction> asked = get.apply(now);
        show(fields, asked.isPresent());
        show(none, asked.isEmpty());
        say(toggle, asked.isPresent() ? "question.remove" : "question.add");
        boolean hasReasons = asked.flatMap(Prediction::reasons).isPresent();
        show(reasons, hasReasons);
        say(reasonsToggle, hasReasons ? "question.reasons.remove" : "question.reasons.add");
    }

    private void say(Button button, String key) {
        button.setText(texts.say(key));
        button.setAccessibleText(texts.say(key));
    }

    private static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private void toggle() {
        boolean there = get.apply(document.now()).isPresent();
        take.step(
                texts.say(there ? "question.step.remove" : "question.step.add"),
                asked -> asked.isPresent() ? Optional.empty() : Optional.of(first()));
    }

    private void toggleReasons() {
        take.step(
                texts.say("question.step.reasons"),
                asked -> asked.map(it -> with(
                        it,
                        it.reasons().isPresent() ? Optional.empty() : Optional.of(new Reasons(firstChoices(), "a")))));
    }

    private Prediction first() {
        return new Prediction(
                texts.say("question.first"), firstChoices(), "a", texts.say("question.first.explanation"));
    }

    private List<Choice> firstChoices() {
        return List.of(
                new Choice("a", texts.say("question.first.right"), texts.say("question.first.reason")),
                new Choice("b", texts.say("question.first.wrong"), texts.say("question.first.reason")));
    }

    private Optional<String> type(String field, UnaryOperator<Prediction> edit) {
        return take.type(texts.say("question.step.write"), field, asked -> asked.map(edit));
    }

    /** Changes one text of a question. */
    private interface With {
        Prediction change(Prediction before, String text);
    }

    private MarkdownField markdown(String name, Function<Prediction, String> shown, With with) {
        return new MarkdownField(
                id + "-" + name,
                texts.say("question." + name),
                new FieldViewModel(
                        document,
                        now -> get.apply(now).map(shown).orElse(""),
                        typed -> type(name, it -> with.change(it, typed))),
                texts);
    }
}
