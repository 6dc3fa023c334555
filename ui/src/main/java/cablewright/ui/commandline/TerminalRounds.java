package cablewright.ui.commandline;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.practice.AdaptivePractice;
import cablewright.lessons.practice.PracticeSession;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Sittings of practice in the terminal. */
final class TerminalRounds {

    private static final String LESSON_ID = "practice";
    private static final int MOST_MINUTES = 600;

    private final Surroundings surroundings;
    private final TerminalDesk desk;
    private final String trainee;
    private final List<ExerciseFamily> families;
    private final Optional<Integer> minutes;
    private final boolean review;
    private final Optional<TraineeLog> log;

    TerminalRounds(
            Surroundings surroundings,
            TerminalDesk desk,
            String trainee,
            List<String> families,
            Optional<Integer> minutes,
            boolean review,
            Optional<Path> log) {
        this.surroundings = surroundings;
        this.desk = desk;
        this.trainee = trainee;
        this.families = GenerateCommand.families(families);
        this.minutes = minutes;
        this.review = review;
        this.log = log.map(file -> new TraineeLog(surroundings.folder().resolve(file)));
    }

    void practise() {
        PracticeSession session = session(AdaptivePractice.of(families, records(), trainee));
        Optional<Exercise> first = session.next();
        if (first.isEmpty()) {
            surroundings.print(
                    "Nothing is due for review. What was not answered well comes back after 1, 2, 4, 8 and 16 "
                            + "days.\n");
            return;
        }
        String note = log.isPresent()
                ? "Exercises that follow what you can do; each attempt goes into your log."
                : "Exercises that follow what you can do. Nothing is kept: name your log with --log to go on from here.";
        Lesson lesson = new Lesson(
                LESSON_ID, "Practice", note, "Saltmarsh Point and all in it are invented.", 0.7, List.of(first.get()));
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
            throw new InputProblem("--minutes is " + limit + "; allowed is 1 to " + MOST_MINUTES);
        }
        return PracticeSession.timed(practice, clock, Duration.ofMinutes(limit));
    }

    private List<AttemptRecord> records() {
        if (log.isEmpty()) {
            return List.of();
        }
        try {
            TraineeLog.Contents contents = log.get().read();
            contents.faults()
                    .forEach(fault ->
                            surroundings.err().println(surroundings.style().plain("cablewright: " + fault)));
            return contents.records();
        } catch (IOException e) {
            throw new InputProblem("the log can't be read: " + e.getMessage());
        }
    }

    private void keep(PracticeSession session, MarkSheet sheet) {
        AttemptRecord record =
                AttemptRecord.of(sheet, LESSON_ID, Clock.systemUTC().instant());
        session.learn(record);
        try {
            if (log.isPresent()) {
                log.get().append(record);
            }
        } catch (IOException e) {
            throw new InputProblem("the attempt can't be added to the log: " + e.getMessage());
        }
    }
}
