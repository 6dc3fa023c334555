// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.Outcome;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AdaptivePracticeTest {

    private static final List<ExerciseFamily> DROP = List.of(ExerciseFamily.COAX_DROP);
    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");

    private static AttemptRecord answer(Exercise exercise, EventKind taken, double marks, Instant when) {
        EventKind truth = exercise.cable().events().stream()
                .map(event -> event.kind())
                .filter(kind -> kind.nature() == Nature.DAMAGE)
                .findFirst()
                .orElseThrow();
        Outcome outcome = new Outcome(
                truth,
                Verdict.DAMAGE,
                Optional.of(taken == null ? truth : taken),
                Optional.of(Verdict.DAMAGE),
                OptionalDouble.of(0.1),
                marks);
        return new AttemptRecord(
                "Ada",
                "practice",
                exercise.id(),
                when,
                OptionalDouble.empty(),
                marks,
                10,
                0,
                0,
                0,
                0,
                List.of(outcome),
                List.of(),
                Optional.empty());
    }

    private static double difficulty(AdaptivePractice practice, Exercise exercise) {
        return practice.requestOf(exercise.id()).orElseThrow().difficulty();
    }

    @Test
    void rightAnswersMakeItHarderAndWrongOnesEasier() {
        AdaptivePractice able = new AdaptivePractice(DROP, List.of(), List.of(), 1);
        AdaptivePractice lost = new AdaptivePractice(DROP, List.of(), List.of(), 1);
        double hard = 0;
        double easy = 0;
        for (int i = 0; i < 30; i++) {
            Exercise a = able.next();
            Exercise b = lost.next();
            able.learn(answer(a, null, 10, NOW));
            lost.learn(answer(b, null, 0, NOW));
            if (i >= 20) {
                hard += difficulty(able, a);
                easy += difficulty(lost, b);
            }
        }
        assertTrue(hard > 5, "mean difficulty " + hard / 10);
        assertTrue(easy < 2.5, "mean difficulty " + easy / 10);
    }

    @Test
    void confusionIsFollowedByBothKindsInTurn() {
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 5);
        Exercise first = practice.next();
        while (first.cable().events().stream().noneMatch(event -> event.kind() == EventKind.PINCH)) {
            practice.learn(answer(first, null, 10, NOW));
            first = practice.next();
        }
        practice.learn(answer(first, EventKind.PARTIAL_SHORT, 5, NOW));
        Exercise second = practice.next();
        Exercise third = practice.next();
        assertEquals(EventKind.PINCH, asked(practice, second));
        assertEquals(EventKind.PARTIAL_SHORT, asked(practice, third));
    }

    private static EventKind asked(AdaptivePractice practice, Exercise exercise) {
        return practice.requestOf(exercise.id()).orElseThrow().damage().get(0);
    }

    @Test
    void restartFromTheRecordsKnowsTheSame() {
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 9);
        List<AttemptRecord> records = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Exercise exercise = practice.next();
            AttemptRecord record = answer(exercise, null, i % 3 == 0 ? 3 : 9, NOW)
                    .madeOf(practice.requestOf(exercise.id()).orElseThrow());
            practice.learn(record);
            records.add(record);
        }
        AdaptivePractice restarted = new AdaptivePractice(DROP, List.of(), records, 9);
        assertEquals(practice.trainee(), restarted.trainee());
    }

    @Test
    void mistakeIsDueTheNextDayAndIsTheSameExercise() {
        AdaptivePractice practice = new AdaptivePractice(DROP, List.of(), List.of(), 3);
        Exercise exercise = practice.next();
        practice.learn(answer(exercise, null, 2, NOW));
        assertEquals(List.of(), practice.due(NOW));
        Instant tomorrow = NOW.plusSeconds(86_400);
        assertEquals(List.of(exercise.id()), practice.due(tomorrow));
        assertEquals(Optional.of(exercise), practice.again(exercise.id()));
        practice.learn(answer(exercise, null, 10, tomorrow));
        assertEquals(List.of(), practice.due(tomorrow.plusSeconds(86_400)));
    }

    @Test
    void wholeRoundFromExerciseToMarksToWhatIsKnown() {
        AdaptivePractice practice = new AdaptivePractice(List.of(ExerciseFamily.values()), List.of(), List.of(), 21);
        Marker marker = new Marker();
        for (int i = 0; i < 6; i++) {
            Exercise exercise = practice.next();
            practice.learn(AttemptRecord.of(marker.mark(exercise, KeyedAnswer.of(exercise)), "practice", NOW));
        }
        assertTrue(practice.trainee().abilities().size() >= 6);
        assertTrue(practice.trainee().abilities().values().stream().allMatch(rating -> rating.logits() > 0));
    }
}
