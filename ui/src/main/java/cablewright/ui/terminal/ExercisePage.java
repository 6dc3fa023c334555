// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.course.WorkedStep;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.ReadingTask;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.EventKind;
import java.util.List;
import java.util.Locale;

/** Brief, cautions and question of an exercise, and the lists that help to answer it. */
final class ExercisePage {

    private static final int HELP_LINES = 9;

    private final RoundView view;

    ExercisePage(RoundView view) {
        this.view = view;
    }

    /** Title, introduction, aim, and that all is invented. */
    String lesson(Lesson lesson) {
        return view.style().bold(lesson.title()) + "\n" + view.prose().ofMarkdown(lesson.introduction())
                + lesson.plan().map(plan -> view.prose().ofMarkdown(plan.aim())).orElse("")
                + view.prose().wrapped(lesson.worldNote(), "") + "\n";
    }

    /** Pages in a row: question, text, captions of the pictures, which a terminal cannot show, and explanation. */
    String pages(List<LessonPage> pages) {
        StringBuilder out = new StringBuilder();
        for (LessonPage page : pages) {
            out.append(view.style().bold(page.title())).append('\n');
            page.prediction().ifPresent(asked -> {
                out.append(view.prose().ofMarkdown(asked.question()));
                asked.choices().forEach(choice -> out.append(view.prose().wrapped("- " + choice.text(), "  ")));
                out.append(view.texts().say("page.read")).append("\n\n");
            });
            out.append(view.prose().ofMarkdown(page.text()));
            page.pictures()
                    .forEach(it ->
                            out.append(view.prose().wrapped(view.texts().say("page.picture", it.caption()), "  ")));
            page.figures()
                    .forEach(it ->
                            out.append(view.prose().wrapped(view.texts().say("page.picture", it.caption()), "  ")));
            for (WorkedStep step : page.steps()) {
                out.append(view.style().bold(step.question())).append('\n');
                out.append(view.prose().ofMarkdown(step.answer()));
            }
            page.prediction().ifPresent(asked -> out.append(view.prose().ofMarkdown(asked.explanation())));
            out.append('\n');
        }
        return out.toString();
    }

    /** Title, brief and cautions. */
    String brief(ReadingTask exercise, String title) {
        StringBuilder out = new StringBuilder(view.style().bold(title) + "\n");
        out.append(view.prose().ofMarkdown(exercise.brief()));
        for (Caution caution : exercise.cautions()) {
            String said = view.prose().wrapped(view.words().caution(caution), "  ! ");
            out.append(view.style().bad(said.stripTrailing())).append('\n');
        }
        return out.append('\n').toString();
    }

    /** The question that comes before the trace, with its answers. */
    String question(Prediction question) {
        StringBuilder out = new StringBuilder(view.prose().ofMarkdown(question.question()));
        int number = 1;
        for (var choice : question.choices()) {
            out.append(view.prose().wrapped(number++ + "  " + choice.text(), "  "));
        }
        if (question.reasons().isEmpty()) {
            return out + view.texts().say("question.answer") + "\n";
        }
        out.append(view.texts().say("question.because")).append('\n');
        char letter = 'a';
        for (var reason : question.reasons().orElseThrow().choices()) {
            out.append(view.prose().wrapped(letter++ + "  " + reason.text(), "  "));
        }
        return out + view.texts().say("question.answerAndReason") + "\n";
    }

    /** The kinds of event by the words that are typed. */
    String kinds() {
        StringBuilder out = new StringBuilder();
        for (EventKind kind : EventKind.values()) {
            out.append(String.format(
                    Locale.ROOT, "  %-15s %s\n", kind.id(), view.words().kindToChoose(kind)));
        }
        return out + view.texts().say("kinds.hint") + "\n";
    }

    /** The titles of a lesson's exercises. */
    String titles(List<Exercise> exercises, int current) {
        StringBuilder out = new StringBuilder();
        int number = 1;
        for (Exercise exercise : exercises) {
            out.append(number == current ? "> " : "  ").append(number++).append("  ");
            out.append(exercise.title()).append('\n');
        }
        return out.toString();
    }

    /** What can be typed. */
    String help() {
        StringBuilder out = new StringBuilder();
        for (int line = 1; line <= HELP_LINES; line++) {
            out.append(view.texts().say("help." + line)).append('\n');
        }
        return out.toString();
    }
}
