// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.KeyedAnswer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every file that the program brings along or writes keeps to the published schema. */
class BuiltInContentSchemaTest {

    private final Schemas schemas = new Schemas();
    private final DocumentWriter writer = new DocumentWriter();

    @Test
    void theBuiltInLessonsKeepToTheSchema() {
        for (Lesson lesson : BuiltInLessons.all()) {
            requireSound(new Document.OfLesson(lesson));
        }
    }

    @Test
    void theirExercisesCablesAndAnswersKeepToTheSchema() {
        for (Exercise exercise :
                BuiltInLessons.find("harbour-line").orElseThrow().exercises()) {
            requireSound(new Document.OfExercise(exercise));
            requireSound(new Document.OfCable(exercise.cable()));
        }
        Attempt answer = KeyedAnswer.of(
                BuiltInLessons.find("harbour-line").orElseThrow().exercises().get(5));
        requireSound(new Document.OfAttempts(new AttemptSheet("harbour-line", List.of(answer))));
    }

    private void requireSound(Document document) {
        String text = new String(writer.bytes(document), StandardCharsets.UTF_8);
        assertEquals(List.of(), schemas.faults(document.kind(), text));
    }
}
