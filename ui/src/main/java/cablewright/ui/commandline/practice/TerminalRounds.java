// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.practice.AdaptivePractice;
import cablewright.lessons.practice.PracticeLesson;
import cablewright.lessons.practice.PracticeSession;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.ExerciseFamilies;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Sittings of practice in the terminal. */
final class TerminalRounds {

    private static final int MOST_MINUTES = 600;

    private final Environment surroundings;
    private final TerminalDesk desk;
    private final String trainee;
    private final List<ExerciseFamily> families;
    private final Optional<Integer> minutes;
    private final boolean review;
    private final TerminalRecords records;

    TerminalRounds(
            Environment surroundings,
            TerminalDesk desk,
            String trainee,
            List<String> families,
            Optional<Integer> minutes,
            boolean review,
            TerminalRecords records) {
        this.surroundings = surroundings;
        this.desk = desk;
        this.trainee = trainee;
        this.families = ExerciseFamilies.of(families);
        this.minutes = minutes;
        this.review = review;
        this.records = records;
    }

    void practise() {
        PracticeSession session = session(AdaptivePractice.of(families, BuiltInLessons.all(), records.read(), trainee));
        Optional<Exercise> first = session.next();
        if (first.isEmpty()) {
            surroundings.print(surroundings.say("practise.nothingDue") + "\n");
            return;
        }
        String note = surroundings.say("practise.note", records.note());
        Lesson lesson = PracticeLesson.of(
                surroundings.say("practise.title"), note, surroundings.say("practise.invented"), first.get());
        desk.practise(lesson, Optional.of(session), sheet -> keep(session, sheet));
    }

    private PracticeSession session(AdaptivePractice practice) {
        Clock clock = Clock.systemUTC();
        if (review) {
            return PracticeSession.review(practice, clock);
        }
        if (minutes.isEmpty()) {
            return PracticeSession.untimed(practice, clock);
        }
        int limit = minutes.get();
        if (limit < 1 || limit > MOST_MINUTES) {
            throw InputProblem.of("option.range", "--minutes", limit, 1, MOST_MINUTES);
        }
        return PracticeSession.timed(practice, clock, Duration.ofMinutes(limit));
    }

    private void keep(PracticeSession session, MarkSheet sheet) {
        AttemptRecord record = session.record(sheet, Clock.systemUTC().instant());
        session.learn(record);
        records.append(record);
    }
}
