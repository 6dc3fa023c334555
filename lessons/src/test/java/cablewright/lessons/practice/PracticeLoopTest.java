// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.Contrast;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.EventKind;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Simulated trainees through the whole loop: an exercise is made, flagged, marked, recorded and learnt from. */
class PracticeLoopTest {

    private static final List<ExerciseFamily> DROP = List.of(ExerciseFamily.COAX_DROP);
    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");

    /** Flags each event that is asked for with the chance that the model gives, or leaves it out. */
    private static Attempt answer(Exercise exercise, double asked, double ability, SplittableRandom random) {
        double difficulty = 4 * (asked - 0.5);
        List<Flag> flags = new ArrayList<>();
        for (Flag flag : KeyedAnswer.of(AnswerKey.of(exercise)).flags()) {
            if (random.nextDouble() < Elo.chance(ability, difficulty)) {
                flags.add(flag);
            }
        }
        return new Attempt(exercise.id(), "Simulated", flags, exercise.start().settings());
    }

    private static final class Hand extends Clock {
        private Instant now = NOW;

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    private static double known(AdaptivePractice practice) {
        return practice.trainee().abilities().values().stream()
                .mapToDouble(Rating::logits)
                .average()
                .orElse(0);
    }

    /** 40 exercises, about 100 answers over 9 kinds: the mean ability is within 0.8 logits for each of three trainees. */
    @Test
    void abilitiesAreRecoveredThroughGeneratedExercisesAndTheirMarks() {
        for (double ability : new double[] {-1, 0, 1}) {
            AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 400);
            SplittableRandom random = new SplittableRandom(Math.round(10 * ability));
            Marker marker = new Marker();
            for (int i = 0; i < 40; i++) {
                Exercise exercise = practice.next();
                double asked = practice.requestOf(exercise.id()).orElseThrow().difficulty();
                practice.learn(AttemptRecord.of(
                        marker.mark(exercise, answer(exercise, asked, ability, random)), "practice", NOW));
            }
            assertEquals(ability, known(practice), 0.8);
        }
    }

    @Test
    void roundAgainstTheClockEndsWhenTheTimeIsUp() {
        Hand clock = new Hand();
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 3);
        PracticeSession session = PracticeSession.timed(practice, clock, Duration.ofMinutes(10));
        assertTrue(session.next().isPresent());
        clock.now = NOW.plusSeconds(599);
        assertFalse(session.isOver());
        assertEquals(Duration.ofSeconds(1), session.left().orElseThrow());
        clock.now = NOW.plusSeconds(601);
        assertTrue(session.isOver());
        assertTrue(session.next().isEmpty());
        assertEquals(Duration.ZERO, session.left().orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> PracticeSession.timed(practice, clock, Duration.ZERO));
    }

    @Test
    void reviewBringsBackWhatIsDueAndNothingElse() {
        Hand clock = new Hand();
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 3);
        PracticeSession untimed = PracticeSession.untimed(practice, clock);
        Exercise missed = untimed.next().orElseThrow();
        Exercise done = untimed.next().orElseThrow();
        Marker marker = new Marker();
        Attempt nothing =
                new Attempt(missed.id(), "Ada", List.of(), missed.start().settings());
        untimed.learn(AttemptRecord.of(marker.mark(missed, nothing), "practice", NOW));
        untimed.learn(AttemptRecord.of(marker.mark(done, KeyedAnswer.of(done)), "practice", NOW));
        assertEquals(2, untimed.answered());
        assertTrue(PracticeSession.review(practice, clock).isOver());
        clock.now = NOW.plus(Duration.ofDays(1));
        PracticeSession review = PracticeSession.review(practice, clock);
        assertEquals(missed, review.next().orElseThrow());
        assertTrue(review.next().isEmpty());
    }

    @Test
    void mistakesInALessonComeBackInAReviewAndAreForgottenThereOnceRight() {
        Lesson lesson = BuiltInLessons.find("harbour-line").orElseThrow();
        Exercise missed = lesson.exercises().get(0);
        Hand clock = new Hand();
        Marker marker = new Marker();
        Attempt nothing =
                new Attempt(missed.id(), "Ada", List.of(), missed.start().settings());
        AttemptRecord mistake = AttemptRecord.of(marker.mark(missed, nothing), lesson.id(), NOW);
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(lesson), List.of(mistake), 3);
        clock.now = NOW.plus(Duration.ofDays(1));
        PracticeSession review = PracticeSession.review(practice, clock);
        assertEquals(missed, review.next().orElseThrow());
        review.learn(AttemptRecord.of(marker.mark(missed, KeyedAnswer.of(missed)), "practice", clock.now));
        assertTrue(practice.due(clock.now.plus(Duration.ofDays(1))).isEmpty(), "the second box waits two days");
        assertEquals(1, practice.due(clock.now.plus(Duration.ofDays(2))).size());
    }

    /** The same answers tell more of a trainee where the exercise is harder: its difficulty comes from its features. */
    @Test
    void exercisesOfALessonCountForHowHardTheyAre() {
        Lesson lesson = BuiltInLessons.find("harbour-line").orElseThrow();
        Map<String, Double> abilities = new TreeMap<>();
        for (Exercise exercise : lesson.exercises()) {
            AttemptRecord right =
                    AttemptRecord.of(new Marker().mark(exercise, KeyedAnswer.of(exercise)), lesson.id(), NOW);
            if (right.outcomes().isEmpty()) {
                continue;
            }
            EventKind kind = right.outcomes().get(0).kind();
            AdaptivePractice knows = new AdaptivePractice(DROP, List.of(lesson), List.of(right), 3);
            AdaptivePractice guesses = new AdaptivePractice(DROP, List.of(), List.of(right), 3);
            double harder = DifficultyFeatures.of(AnswerKey.of(exercise)).difficulty() - 0.5;
            double more = knows.trainee().ability(kind).logits()
                    - guesses.trainee().ability(kind).logits();
            assertTrue(more * harder >= 0, exercise.id() + ": " + harder + ", " + more);
            abilities.put(exercise.id(), more);
        }
        assertTrue(abilities.values().stream().anyMatch(more -> Math.abs(more) > 0.01), abilities.toString());
    }

    @Test
    void flagWhereNothingIsBringsALineWithAGhost() {
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 3);
        practice.learn(new AttemptRecord(
                "Ada",
                "practice",
                "x",
                NOW,
                OptionalDouble.empty(),
                0,
                10,
                0,
                1,
                0,
                0,
                List.of(),
                List.of(EventKind.PINCH),
                Optional.empty()));
        Exercise next = practice.next();
        assertEquals(
                Contrast.GHOST_AND_EVENT,
                practice.requestOf(next.id()).orElseThrow().contrast());
    }

    /**
     * Rank correlation (Spearman) over 60 exercises between what was asked of the generator and what the features say: 0.33 is
     * what chance reaches once in a hundred.
     */
    @Test
    void featuresTellHardExercisesFromPlainOnes() {
        ExerciseGenerator generator = new ExerciseGenerator();
        List<Double> asked = new ArrayList<>();
        List<Double> told = new ArrayList<>();
        for (int seed = 0; seed < 60; seed++) {
            double difficulty = (seed % 11) / 10.0;
            Exercise exercise = generator.generate(GenerationRequest.anything(900 + seed, difficulty));
            asked.add(difficulty);
            told.add(DifficultyFeatures.of(AnswerKey.of(exercise)).difficulty());
        }
        assertTrue(spearman(asked, told) > 0.33, "rank correlation " + spearman(asked, told));
    }

    private static double spearman(List<Double> a, List<Double> b) {
        double[] x = ranks(a);
        double[] y = ranks(b);
        return new org.apache.commons.math3.stat.correlation.PearsonsCorrelation().correlation(x, y);
    }

    private static double[] ranks(List<Double> values) {
        double[] ranks = new double[values.size()];
        for (int i = 0; i < ranks.length; i++) {
            for (double other : values) {
                ranks[i] += other < values.get(i) ? 1 : other == values.get(i) ? 0.5 : 0;
            }
        }
        return ranks;
    }
}
