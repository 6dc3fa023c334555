// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.proof.TextCheck.Kind;
import cablewright.lessons.proof.TextCheck.Remark;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TextCheckTest {

    private static final double MARKS = 40;

    private static Exercise finished() {
        return BuiltInLessons.first().exercises().get(0);
    }

    private static Set<Remark> found(Exercise exercise) {
        return TextCheck.of(exercise, MARKS).stream().collect(Collectors.toSet());
    }

    private static Set<Remark> added(Exercise exercise) {
        Set<Remark> added = found(exercise);
        added.removeAll(found(finished()));
        return added;
    }

    @Test
    void whatIsBlankOrUnfinishedIsNamedWithItsPlace() {
        assertEquals(
                Set.of(new Remark(Kind.BLANK, "brief")),
                added(ExerciseEdits.withBrief(finished(), "*All of it is invented.*")),
                "a note is no brief");
        assertEquals(
                Set.of(new Remark(Kind.UNFINISHED, "brief")),
                added(ExerciseEdits.withBrief(finished(), "The camera tears. TODO: since when?")));
        assertEquals(
                Set.of(new Remark(Kind.UNFINISHED, "explanation")),
                added(ExerciseEdits.withExplanation(finished(), "At 32 m [...] it dips.")));
        assertEquals(
                Set.of(), added(ExerciseEdits.withExplanation(finished(), "Why does it dip? Since water is there.")));
    }

    @Test
    void hintBehindOthersThatCostAllMarksIsOutOfReach() {
        Exercise dear = ExerciseEdits.withHints(
                finished(), List.of(new Hint("Look near the pole.", 40), new Hint("Look at 32 m.", 5)));
        assertTrue(
                found(dear).contains(new Remark(Kind.OUT_OF_REACH, "hint 2")),
                found(dear).toString());
        Exercise fair = ExerciseEdits.withHints(
                finished(), List.of(new Hint("Look near the pole.", 2), new Hint("Look at 32 m.", 5)));
        assertTrue(found(fair).stream().noneMatch(remark -> remark.kind() == Kind.OUT_OF_REACH));
    }

    @Test
    void whatCanHurtOnTheLineIsMissedAmongTheCautions() {
        Exercise sound = finished();
        for (Caution caution : Caution.values()) {
            if (caution != Caution.LOCAL_CODES) {
                sound = ExerciseEdits.withCaution(sound, caution, true);
            }
        }
        assertTrue(found(sound).stream().noneMatch(remark -> remark.kind() == Kind.CAUTION_MISSING));
        for (Exercise exercise : BuiltInLessons.first().exercises()) {
            Exercise bare = exercise;
            for (Caution caution : exercise.cautions()) {
                bare = caution == Caution.LOCAL_CODES ? bare : ExerciseEdits.withCaution(bare, caution, false);
            }
            Set<String> missing = found(bare).stream()
                    .filter(remark -> remark.kind() == Kind.CAUTION_MISSING)
                    .map(Remark::where)
                    .collect(Collectors.toSet());
            Set<String> expected =
                    switch (bare.cable().runs().get(0).type().family()) {
                        case COAX_PLANT -> Set.of("LIVE_PLANT_POWER");
                        case TELEPHONE_PAIR -> Set.of("RINGING_VOLTAGE");
                        case BUILDING_WIRE -> Set.of("MAINS");
                        default -> Set.of();
                    };
            assertTrue(missing.containsAll(expected), exercise.id() + " misses " + missing);
        }
    }
}
