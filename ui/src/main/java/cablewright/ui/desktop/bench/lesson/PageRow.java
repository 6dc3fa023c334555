// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.LessonEdits;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.MarkdownField;
import cablewright.ui.desktop.bench.form.QuestionEditor;
import cablewright.ui.desktop.bench.form.RowButtons;
import cablewright.ui.desktop.bench.form.TypedField;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One page of the lesson: its place, title, text, pictures, and what it asks first. */
final class PageRow extends VBox {

    private final LessonEditorViewModel model;
    private final int number;
    private final Texts texts;
    private final PagePictures pictures;
    private final Label place = new Label();
    private final ChangeListener<BenchDocument> follow = (o, before, now) -> show(now);

    PageRow(LessonEditorViewModel model, int number) {
        this.model = model;
        this.number = number;
        this.texts = model.texts();
        this.pictures = new PagePictures(model, number);
        getStyleClass().add("item-row");
        place.setId("page-place-" + (number + 1));
        place.setWrapText(true);
        place.setMaxWidth(Double.MAX_VALUE);
        place.getStyleClass().add("finding-title");
        HBox.setHgrow(place, Priority.ALWAYS);
        HBox head = new HBox(
                place,
                new RowButtons(
                        "page",
                        "page.row",
                        number + 1,
                        texts,
                        by -> model.movePage(number, by),
                        () -> model.removePage(number)));
        head.setAlignment(Pos.TOP_LEFT);
        getChildren()
                .addAll(
                        head,
                        new TypedField(
                                "page-title-" + (number + 1),
                                texts.say("page.title", number + 1),
                                field("title", LessonPage::title, LessonEdits::withTitle)),
                        new MarkdownField(
                                "page-text-" + (number + 1),
                                texts.say("page.text", number + 1),
                                field("text", LessonPage::text, LessonEdits::withText),
                                texts),
                        pictures,
                        question());
        show(model.document().now());
        model.document().documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    /** Takes a picture from a file. */
    void addPicture(Path file) {
        pictures.add(file);
    }

    static Optional<LessonPage> page(BenchDocument now, int number) {
        List<LessonPage> pages = now.lesson().pages();
        return number < pages.size() ? Optional.of(pages.get(number)) : Optional.empty();
    }

    private void show(BenchDocument now) {
        page(now, number).ifPresent(page -> {
            int before = page.exercisesBefore();
            place.setText(
                    before < now.lesson().exercises().size()
                            ? texts.say(
                                    "page.place.before",
                                    before + 1,
                                    now.lesson().exercises().get(before).title())
                            : texts.say("page.place.end"));
        });
    }

    /** Changes one text of a page. */
    private interface With {
        LessonPage change(LessonPage before, String text);
    }

    private FieldViewModel field(String name, Function<LessonPage, String> shown, With with) {
        return new FieldViewModel(
                model.document(),
                now -> page(now, number).map(shown).orElse(""),
                typed -> model.typePage(number, name, it -> with.change(it, typed)));
    }

    private QuestionEditor question() {
        return new QuestionEditor(
                "page-question-" + (number + 1),
                model.document(),
                texts,
                now -> page(now, number).flatMap(LessonPage::prediction),
                new QuestionEditor.Take() {
                    @Override
                    public Optional<String> step(String name, UnaryOperator<Optional<Prediction>> edit) {
                        return model.stepPage(
                                name, number, it -> LessonEdits.withPrediction(it, edit.apply(it.prediction())));
                    }

                    @Override
                    public Optional<String> type(String name, String field, UnaryOperator<Optional<Prediction>> edit) {
                        return model.typePage(
                                number, field, it -> LessonEdits.withPrediction(it, edit.apply(it.prediction())));
                    }
                });
    }
}
