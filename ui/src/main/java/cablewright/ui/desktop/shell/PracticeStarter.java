// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.practice.AdaptivePractice;
import cablewright.lessons.practice.PracticeLesson;
import cablewright.lessons.practice.PracticeSession;
import cablewright.lessons.text.Texts;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Starts sittings of practice from what a trainee's records tell. Used from a thread that works. */
final class PracticeStarter {

    private static final Duration ROUND = Duration.ofMinutes(10);

    private final ClassRecords records;
    private final Texts texts;
    private final Clock clock;

    PracticeStarter(ClassRecords records, Texts texts, Clock clock) {
        this.records = records;
        this.texts = texts;
        this.clock = clock;
    }

    /**
     * A sitting that has begun.
     *
     * @param lesson a lesson with its first exercise
     * @param session the sitting
     */
    record Sitting(Lesson lesson, PracticeSession session) {}

    /** Starts a sitting; mistakes in built-in lessons and in the one that is open count too. Empty where a review finds nothing due. */
    Optional<Sitting> start(PractiseMenu.Wish wish, String trainee, Optional<Lesson> opened) {
        AdaptivePractice practice = AdaptivePractice.of(
                wish.families(), lessons(opened), records.read().records(), trainee);
        PracticeSession session =
                switch (wish.mode()) {
                    case UNTIMED -> PracticeSession.untimed(practice, clock);
                    case TIMED -> PracticeSession.timed(practice, clock, ROUND);
                    case REVIEW -> PracticeSession.review(practice, clock);
                };
        return session.next().map(first -> new Sitting(lesson(wish, first), session));
    }

    private static List<Lesson> lessons(Optional<Lesson> opened) {
        return Stream.concat(BuiltInLessons.all().stream(), opened.stream()).toList();
    }

    private Lesson lesson(PractiseMenu.Wish wish, Exercise first) {
        String families = wish.families().size() == ExerciseFamily.values().length
                ? texts.say("practise.everything")
                : PractiseMenu.name(wish.families().get(0), texts);
        String title =
                switch (wish.mode()) {
                    case UNTIMED -> texts.say("practise.title", families);
                    case TIMED -> texts.say("practise.title.timed", families);
                    case REVIEW -> texts.say("practise.review");
                };
        return PracticeLesson.of(title, texts.say("practise.introduction"), texts.say("practise.world"), first);
    }
}
