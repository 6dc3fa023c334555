// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.LessonEdits;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.Order;
import cablewright.ui.desktop.bench.form.Refusals;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Edits of the lesson on the Bench. */
final class LessonEditorViewModel {

    private final DocumentViewModel document;
    private final Texts texts;
    private final Refusals refusals;

    LessonEditorViewModel(DocumentViewModel document, Texts texts) {
        this.document = document;
        this.texts = texts;
        this.refusals = new Refusals(texts);
    }

    DocumentViewModel document() {
        return document;
    }

    Texts texts() {
        return texts;
    }

    Lesson lesson() {
        return document.now().lesson();
    }

    Optional<String> step(String name, UnaryOperator<BenchDocument> edit) {
        return document.step(name, edit).map(refusals::tell);
    }

    Optional<String> type(String name, String field, UnaryOperator<BenchDocument> edit) {
        return document.move(name, "lesson/" + field, edit).map(refusals::tell);
    }

    /** Works on another exercise. */
    void select(int number) {
        if (number != document.now().index() && number < lesson().exercises().size()) {
            step(texts.say("lesson.step.select"), now -> now.selecting(number));
        }
    }

    /** Moves the exercise that is worked on. */
    void move(int by) {
        step(texts.say("lesson.step.move"), now -> now.movedBy(by));
    }

    /** Adds a sound line after the exercise that is worked on. */
    void add(BenchTemplate template) {
        step(
                texts.say("lesson.step.add"),
                now -> now.adding(template.document(texts.locale()).exercise()));
    }

    /** Adds a copy after the exercise that is worked on. */
    void duplicate() {
        step(texts.say("lesson.step.duplicate"), now -> now.adding(now.exercise()));
    }

    /** Takes the exercise away that is worked on; the last one stays. */
    void remove() {
        if (lesson().exercises().size() > 1) {
            step(texts.say("lesson.step.remove"), BenchDocument::withoutExercise);
        }
    }

    Optional<String> exerciseId(String id) {
        return type(
                texts.say("lesson.step.id"), "exercise-id", now -> now.with(ExerciseEdits.withId(now.exercise(), id)));
    }

    /** Changes one thing that is said of the lesson. */
    Optional<String> write(String field, UnaryOperator<LessonTexts> edit) {
        return type(texts.say("lesson.step.texts"), field, now -> edit.apply(LessonTexts.of(now.lesson()))
                .in(now));
    }

    /**
     * What is said of a lesson.
     *
     * @param id its name in files
     * @param title one line
     * @param introduction Markdown
     * @param worldNote one line
     * @param passMark share of the marks
     */
    record LessonTexts(String id, String title, String introduction, String worldNote, double passMark) {

        static LessonTexts of(Lesson lesson) {
            return new LessonTexts(
                    lesson.id(), lesson.title(), lesson.introduction(), lesson.worldNote(), lesson.passMarkFraction());
        }

        BenchDocument in(BenchDocument document) {
            return document.withTexts(id, title, introduction, worldNote, passMark);
        }
    }

    /** Adds a page before the exercise that is worked on. */
    void addPage() {
        LessonPage page = new LessonPage(
                "page-1",
                document.now().index(),
                texts.say("page.first.title"),
                texts.say("page.first.text"),
                List.of(),
                Optional.empty());
        step(texts.say("page.step.add"), now -> now.withPages(pages -> LessonEdits.with(now.lesson(), page)));
    }

    void movePage(int number, int by) {
        step(texts.say("page.step.move"), now -> now.withPages(pages -> LessonEdits.movedBy(now.lesson(), number, by)));
    }

    void removePage(int number) {
        step(texts.say("page.step.remove"), now -> now.withPages(pages -> Order.without(pages, number)));
    }

    private static UnaryOperator<BenchDocument> inPage(int number, UnaryOperator<LessonPage> edit) {
        return now -> now.withPages(pages -> Order.replaced(pages, number, edit.apply(pages.get(number))));
    }

    Optional<String> stepPage(String name, int number, UnaryOperator<LessonPage> edit) {
        return step(name, inPage(number, edit));
    }

    Optional<String> typePage(int number, String field, UnaryOperator<LessonPage> edit) {
        return type(texts.say("page.step.write"), "page/" + number + "/" + field, inPage(number, edit));
    }
}
