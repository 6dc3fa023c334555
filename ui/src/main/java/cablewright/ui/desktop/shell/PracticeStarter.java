// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.practice.AdaptivePractice;
import cablewright.lessons.practice.PracticeLesson;
import cablewright.lessons.practice.PracticeSession;
import cablewright.lessons.practice.PracticeSession.Mode;
import cablewright.lessons.practice.RoundPlan;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
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
                    case REVIEW, ROUND -> PracticeSession.review(practice, clock);
                };
        return session.next().map(first -> new Sitting(lesson(wish, first), session));
    }

    /** Ten exercises in ten minutes, seven of them from what is weak; mistakes that are due come first. */
    Optional<Sitting> today(String trainee) {
        return round(WeakKind.ranked(own(trainee)).stream().map(WeakKind::kind).toList(), trainee, Optional.of(ROUND));
    }

    /** Ten exercises without a clock, seven of them about one kind. */
    Optional<Sitting> round(EventKind kind, String trainee) {
        return round(List.of(kind), trainee, Optional.empty());
    }

    private List<AttemptRecord> own(String trainee) {
        return records.read().records().stream()
                .filter(record -> record.trainee().equals(trainee))
                .toList();
    }

    private Optional<Sitting> round(List<EventKind> weak, String trainee, Optional<Duration> limit) {
        List<ExerciseFamily> all = List.of(ExerciseFamily.values());
        AdaptivePractice practice =
                AdaptivePractice.of(all, BuiltInLessons.all(), records.read().records(), trainee);
        long seed = clock.millis();
        RoundPlan plan = RoundPlan.of(weak, practice.kinds(), RoundPlan.USUAL_EXERCISES, seed);
        PracticeSession session = PracticeSession.round(practice, clock, plan, limit);
        return session.next().map(first -> new Sitting(lesson(new PractiseMenu.Wish(Mode.ROUND, all), first), session));
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
                    case ROUND -> texts.say("practise.round");
                };
        return PracticeLesson.of(title, texts.say("practise.introduction"), texts.say("practise.world"), first);
    }
}
