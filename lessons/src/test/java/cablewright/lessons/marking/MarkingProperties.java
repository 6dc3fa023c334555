// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Splice;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class MarkingProperties {

    private static final Exercise EXERCISE = SampleExercises.with(
            new Splice("s30", 30, 5e-9, 0, 0.01),
            new CorrodedJoint("c33", 33, 10, OptionalDouble.empty()),
            new GradualDamage("g60", 60, 8, 0.85, Profile.FLAT),
            new Splice("tiny", 80, 1e-12, 0, 0));
    private static final Exercise ONE_JOINT =
            SampleExercises.with(new CorrodedJoint("c80", 80, 10, OptionalDouble.empty()));
    private static final Marker MARKER = new Marker();

    @Property(tries = 500)
    void marksAreNeverBelowNothingNorAboveAll(@ForAll long seed) {
        MarkSheet sheet = MARKER.mark(EXERCISE, anyAttempt(seed));

        assertTrue(sheet.marks() >= 0 && sheet.marks() <= sheet.maximum(), () -> "marks " + sheet.marks());
        assertEquals(30, sheet.maximum());
    }

    @Property(tries = 300)
    void theOrderOfFlagsChangesNothing(@ForAll long seed) {
        Attempt attempt = anyAttempt(seed);
        List<Flag> shuffled = new ArrayList<>(attempt.flags());
        Collections.shuffle(shuffled, new Random(seed));
        Attempt other = new Attempt("test", "Someone", shuffled, attempt.settings());

        MarkSheet sheet = MARKER.mark(EXERCISE, attempt);
        MarkSheet otherSheet = MARKER.mark(EXERCISE, other);
        assertEquals(sheet.findings(), otherSheet.findings());
        assertEquals(sheet.marks(), otherSheet.marks());
    }

    @Property(tries = 300)
    void everyFlagIsAccountedForOnce(@ForAll long seed) {
        Attempt attempt = anyAttempt(seed);
        List<String> told = new ArrayList<>();
        MARKER.mark(EXERCISE, attempt).findings().forEach(finding -> told.addAll(letters(finding)));
        Collections.sort(told);

        List<String> set =
                new ArrayList<>(attempt.flags().stream().map(Flag::letter).toList());
        Collections.sort(set);
        assertEquals(set, told);
    }

    private static List<String> letters(Finding finding) {
        if (finding instanceof Finding.Matched matched) {
            return completed(matched);
        }
        if (finding instanceof Finding.Repeated repeated) {
            return List.of(repeated.flag().letter());
        }
        if (finding instanceof Finding.NothingThere nothing) {
            return List.of(nothing.flag().letter());
        }
        if (finding instanceof Finding.GhostTakenForEvent ghost) {
            return List.of(ghost.flag().letter());
        }
        if (finding instanceof Finding.Beside beside) {
            return List.of(beside.flag().letter());
        }
        return finding instanceof Finding.EndFlagged end ? List.of(end.flag().letter()) : List.of();
    }

    /** A flag at the other edge of a stretch has no finding of its own. */
    private static List<String> completed(Finding.Matched matched) {
        List<String> letters = new ArrayList<>(List.of(matched.flag().letter()));
        boolean twoFlags =
                matched.places().size() == 2 && matched.flag().endMetres().isEmpty();
        if (twoFlags) {
            double far = matched.places().get(1).flaggedMetres();
            matched.alsoFlags().stream()
                    .filter(flag -> flag.endMetres().isEmpty() && flag.startMetres() == far)
                    .findFirst()
                    .ifPresent(flag -> letters.add(flag.letter()));
        }
        return letters;
    }

    @Property(tries = 300)
    void aMoreAccuratePlaceNeverEarnsLess(
            @ForAll long seed,
            @ForAll @DoubleRange(min = -4, max = 4) double error,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        EventKind[] kinds = EventKind.values();
        Random random = new Random(seed);
        EventKind kind = kinds[random.nextInt(kinds.length)];
        Verdict verdict = random.nextBoolean() ? Verdict.BELONGS : Verdict.DAMAGE;

        double far = MARKER.mark(ONE_JOINT, one(80 + error, kind, verdict)).marks();
        double near =
                MARKER.mark(ONE_JOINT, one(80 + share * error, kind, verdict)).marks();
        assertTrue(near >= far - 1e-9, () -> near + " is less than " + far);
    }

    private static Attempt one(double metres, EventKind kind, Verdict verdict) {
        Flag flag = new Flag("A", LineEnd.NEAR, metres, OptionalDouble.empty(), kind, verdict, 0.85);
        return new Attempt("test", "Someone", List.of(flag), EXERCISE.start().settings());
    }

    private static Attempt anyAttempt(long seed) {
        Random random = new Random(seed);
        double[] places = {30, 33, 60, 68, 80, 100, 50};
        EventKind[] kinds = {EventKind.SPLICE, EventKind.CORRODED_JOINT, EventKind.GRADUAL_DAMAGE, EventKind.WATER};
        List<Flag> flags = new ArrayList<>();
        for (int i = random.nextInt(7); i > 0; i--) {
            double metres = places[random.nextInt(places.length)] + random.nextGaussian();
            boolean far = random.nextInt(4) == 0;
            double shown = Math.max(0, far ? 100 - metres : metres);
            flags.add(new Flag(
                    String.valueOf((char) ('A' + i)),
                    far ? LineEnd.FAR : LineEnd.NEAR,
                    shown,
                    random.nextInt(3) == 0
                            ? OptionalDouble.of(shown + 8 * random.nextDouble())
                            : OptionalDouble.empty(),
                    kinds[random.nextInt(kinds.length)],
                    random.nextBoolean() ? Verdict.BELONGS : Verdict.DAMAGE,
                    0.85));
        }
        return new Attempt("test", "Someone", flags, EXERCISE.start().settings());
    }
}
