// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.Outcome;
import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.EventKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What the program says to do next follows from the records alone, whatever they hold. */
class WhatToDoNextProperties {

    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");
    private static final List<EventKind> KNOWN = Arrays.stream(ExerciseFamily.values())
            .flatMap(family -> family.damage().stream())
            .distinct()
            .toList();

    private static AttemptRecord record(String lesson, String exercise, double fraction, List<Outcome> outcomes) {
        return new AttemptRecord(
                "Ada",
                lesson,
                exercise,
                NOW,
                OptionalDouble.empty(),
                10 * fraction,
                10,
                0,
                0,
                0,
                0,
                outcomes,
                List.of(),
                Optional.empty());
    }

    private static Outcome outcome(EventKind kind, double marks) {
        return new Outcome(kind, Verdict.DAMAGE, Optional.empty(), Optional.empty(), OptionalDouble.empty(), marks);
    }

    @Property(tries = 500)
    void sevenOfTenComeFromWhatIsWeak(
            @ForAll @Size(max = 12) List<EventKind> weak,
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 40) int n) {
        RoundPlan plan = RoundPlan.of(weak, KNOWN, n, seed);
        assertEquals(n, plan.kinds().size());
        assertTrue(KNOWN.containsAll(plan.kinds()));
        assertEquals(plan, RoundPlan.of(weak, KNOWN, n, seed));
        List<EventKind> trained =
                weak.stream().filter(KNOWN::contains).distinct().limit(3).toList();
        long fromWeak = plan.kinds().stream().filter(trained::contains).count();
        if (trained.isEmpty()) {
            assertEquals(0, fromWeak);
        } else {
            assertEquals(Math.max(1, Math.round(0.7 * n)), fromWeak);
            assertEquals(trained.get(0), plan.kinds().get(0), "the weakest comes first");
        }
    }

    @Property(tries = 500)
    void weakKindsCountTheLastSixAnswersAndTheWorstStandsFirst(
            @ForAll @Size(max = 60) List<@IntRange(min = 0, max = 10) Integer> marks, @ForAll long seed) {
        Random random = new Random(seed);
        List<AttemptRecord> records = new ArrayList<>();
        for (int each : marks) {
            EventKind kind = KNOWN.get(random.nextInt(4));
            records.add(record("practice", "made", each / 10.0, List.of(outcome(kind, each))));
        }
        List<WeakKind> ranked = WeakKind.ranked(records);
        double before = 1;
        for (WeakKind weak : ranked) {
            List<Double> all = records.stream()
                    .flatMap(record -> record.outcomes().stream())
                    .filter(outcome -> outcome.kind() == weak.kind())
                    .map(Outcome::marks)
                    .toList();
            List<Double> last = all.subList(Math.max(0, all.size() - 6), all.size());
            assertEquals(last.size(), weak.recent());
            assertEquals(last.stream().filter(each -> each < 7).count(), weak.missed());
            double chance = (weak.missed() + 1.0) / (weak.recent() + 2);
            assertTrue(chance <= before + 1e-12);
            before = chance;
        }
        assertEquals(ranked.size(), new HashSet<>(ranked).size());
    }

    @Property(tries = 300)
    void progressCountsOnlyWhatReachedThePassMark(
            @ForAll @Size(max = 30) List<@IntRange(min = 0, max = 10) Integer> tenths, @ForAll long seed) {
        Lesson lesson = BuiltInLessons.first();
        List<Exercise> exercises = lesson.exercises();
        Random random = new Random(seed);
        double[] best = new double[exercises.size()];
        Arrays.fill(best, -1);
        List<AttemptRecord> records = new ArrayList<>();
        for (int tenth : tenths) {
            int which = random.nextInt(exercises.size());
            best[which] = Math.max(best[which], tenth / 10.0);
            records.add(record(lesson.id(), exercises.get(which).id(), tenth / 10.0, List.of()));
            records.add(record("another", exercises.get(which).id(), 1, List.of()));
        }
        LessonProgress progress = LessonProgress.of(List.of(lesson), records).get(0);
        long solved = Arrays.stream(best)
                .filter(each -> each >= lesson.passMarkFraction())
                .count();
        assertEquals(solved, progress.solved());
        double share =
                Arrays.stream(best).map(each -> Math.max(0, each)).average().orElseThrow();
        assertEquals(share, progress.share(), 1e-12);
        boolean allTried = Arrays.stream(best).allMatch(each -> each >= 0);
        assertEquals(allTried && share >= lesson.passMarkFraction(), progress.isPassed());
        assertEquals(solved == exercises.size(), progress.next().isEmpty());
    }

    @Property(tries = 200)
    void twinIsOfTheFirstMissedKindOnACableOfTheSameFamily(
            @ForAll EventKind kind, @ForAll @IntRange(min = 0, max = 10) int marks, @ForAll @IntRange(max = 7) int n) {
        Exercise exercise = BuiltInLessons.first()
                .exercises()
                .get(n % BuiltInLessons.first().exercises().size());
        Optional<GenerationRequest> twin =
                Twin.of(exercise, Optional.empty(), record("l", "e", marks / 10.0, List.of(outcome(kind, marks))), 7);
        assertEquals(marks < 7 && KNOWN.contains(kind), twin.isPresent());
        twin.ifPresent(request -> {
            assertEquals(List.of(kind), request.damage());
            String type = exercise.cable().runs().get(0).type().id();
            boolean familyCanHaveIt = Arrays.stream(ExerciseFamily.values())
                    .anyMatch(family ->
                            family.types().contains(type) && family.damage().contains(kind));
            if (familyCanHaveIt) {
                assertTrue(request.families().stream()
                        .allMatch(family -> family.types().contains(type)));
            }
            assertFalse(request.families().isEmpty());
        });
    }
}
