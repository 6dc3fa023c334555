// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.proof.ExerciseProof;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every exercise of the course is fit to set. Its answer key is worked out once for all that is asked here. */
@Execution(ExecutionMode.SAME_THREAD)
class BuiltInProofTest {

    private static final Marker MARKER = new Marker();

    static Stream<Exercise> exercises() {
        return BuiltInLessons.all().stream().map(Lesson::exercises).flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void itIsFitToSet(Exercise exercise) {
        ExerciseProof proof = ExerciseProof.of(exercise, MARKER);

        assertEquals(List.of(), proof.problems(), exercise.id());
        assertEquals(proof.maximumMarks(), proof.marks(), 1e-9);
        assertTrue(proof.maximumMarks() >= 10);
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void handingInNothingEarnsNothing(Exercise exercise) {
        Attempt nothing =
                new Attempt(exercise.id(), "Nobody", List.of(), exercise.start().settings());
        assertEquals(0, MARKER.mark(exercise, nothing).marks());
    }

    /** Read on the noise-free trace with none of the marking: half-way up the edge, at the settings that show it best. */
    @ParameterizedTest
    @MethodSource("exercises")
    void whatIsAskedForIsClearAndReadableAtItsBestSettings(Exercise exercise) {
        for (LineEvent event : MARKER.demand(exercise).demanded()) {
            if (event.eventId().isEmpty()) {
                continue;
            }
            List<PlaceVisibility> places = Views.sight(
                            exercise,
                            event.eventId().get(),
                            event.best().settings(),
                            event.best().end())
                    .places();
            assertTrue(places.stream().anyMatch(place -> place.visibility() == Visibility.CLEAR), event::toString);
        }
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void theCautionsFitTheWork(Exercise exercise) {
        String brief = exercise.brief();
        String all = brief + exercise.explanation();
        List<Caution> cautions = exercise.cautions();
        assertEquals(Caution.LOCAL_CODES, cautions.get(cautions.size() - 1));
        if (all.contains("to dig") || all.contains("to open")) {
            assertTrue(
                    cautions.contains(Caution.DIGGING)
                            || all.toLowerCase(Locale.ROOT).contains("nothing to dig"),
                    exercise.id());
        }
        if (brief.contains("telephone pair")) {
            assertTrue(cautions.contains(Caution.RINGING_VOLTAGE), exercise.id());
        }
        if (brief.contains("Plant power")) {
            assertTrue(cautions.contains(Caution.LIVE_PLANT_POWER), exercise.id());
        }
        if (brief.contains("breaker")) {
            assertTrue(cautions.contains(Caution.MAINS), exercise.id());
        }
    }
}
