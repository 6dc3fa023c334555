// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.ItemKey;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.marking.LessonMarks;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Marks the sealed answers of a class to one paper. */
public final class ClassMarking {

    private final PaperFile paper;
    private final ExaminerKey key;
    private final ExaminersPart part;
    private final Optional<Instant> due;
    private final Marker marker = new Marker();

    /** Hears how far the marking has come. */
    @FunctionalInterface
    public interface Progress {

        /**
         * One more file is done.
         *
         * @param done how many are done
         * @param all how many there are
         */
        void done(int done, int all);
    }

    /**
     * Opens a paper for marking.
     *
     * @param paper the paper as it was given out
     * @param key the examiner's key
     * @param due when it had to be handed in, by the trainees' clocks; absent where any time will do
     * @throws SealException if the paper is not sealed to that key, or was changed
     * @throws LessonFormatException if its sealed part is not sound
     */
    public ClassMarking(PaperFile paper, ExaminerKey key, Optional<Instant> due)
            throws SealException, LessonFormatException {
        this.paper = paper;
        this.key = key;
        this.part = paper.open(key);
        this.due = due;
    }

    /**
     * Marks files of answers.
     *
     * @param files the files, in any order
     * @param progress hears of each
     * @param cancelled asked between files; once true the work ends
     * @return the marked class
     * @throws CancellationException if it was cancelled
     */
    public ClassResult mark(List<AnswerFile> files, Progress progress, BooleanSupplier cancelled) {
        AnswerOpener opener = new AnswerOpener(paper, key, due);
        for (AnswerFile file : files) {
            stopIf(cancelled);
            opener.open(file);
        }
        List<OpenedAnswers> opened = opener.opened();
        List<PersonResult> people = new ArrayList<>();
        for (OpenedAnswers one : opened) {
            stopIf(cancelled);
            people.add(person(one));
            progress.done(people.size(), opened.size());
        }
        Lesson lesson = part.lesson();
        List<AttemptRecord> records = new ArrayList<>();
        for (PersonResult person : people) {
            Instant handedIn = person.answers().handedInAt().orElseThrow();
            person.sheets().forEach(sheet -> records.add(AttemptRecord.of(sheet, lesson, handedIn)));
        }
        return new ClassResult(
                paper.paper().title(),
                lesson,
                people,
                opener.setAside(),
                ItemAnalysis.of(lesson, people),
                Resemblance.among(people),
                records);
    }

    private static void stopIf(BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("marking was cancelled");
        }
    }

    private PersonResult person(OpenedAnswers one) {
        List<MarkSheet> sheets = new ArrayList<>();
        for (Exercise exercise : part.lesson().exercises()) {
            sheets.add(marker.mark(exercise, attempt(exercise, one)));
        }
        LessonMarks total = LessonMarks.of(part.lesson(), sheets, marker);
        return new PersonResult(one.file(), one.receipt(), one.answers(), sheets, total);
    }

    /** The attempt in the exercise's own names; what was never opened is left blank. */
    private Attempt attempt(Exercise exercise, OpenedAnswers one) {
        ItemKey itemKey = part.keys().stream()
                .filter(it -> it.exerciseId().equals(exercise.id()))
                .findFirst()
                .orElseThrow();
        return one.answers()
                .attempt(itemKey.itemId())
                .map(given -> new Attempt(
                        exercise.id(),
                        given.trainee(),
                        given.flags(),
                        given.settings(),
                        0,
                        meant(itemKey.itemId(), given.predictedChoiceId(), itemKey.choices(), true),
                        meant(itemKey.itemId(), given.predictedReasonId(), itemKey.reasons(), false),
                        given.startedAt(),
                        one.answers().handedInAt()))
                .orElseGet(() -> new Attempt(
                        exercise.id(),
                        one.answers().trainee(),
                        List.of(),
                        exercise.start().settings()));
    }

    private Optional<String> meant(String itemId, Optional<String> chosen, List<String> own, boolean isChoice) {
        return chosen.flatMap(id -> paper.paper().item(itemId))
                .flatMap(item -> item.question())
                .map(asked -> isChoice ? asked.choices() : asked.reasons())
                .map(all -> all.stream().map(choice -> choice.id()).toList().indexOf(chosen.get()))
                .filter(index -> index >= 0)
                .map(own::get);
    }
}
