// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.marking.LessonMarks;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Attempts as trainees hand them in, from a file, each with the marks that the rules give when worked out by hand. */
class GoldenAttemptsTest {

    private static final Lesson LESSON = BuiltInLessons.find("harbour-line").orElseThrow();
    private static final Marker MARKER = new Marker();

    private static byte[] bytes() {
        try (InputStream in = GoldenAttemptsTest.class.getResourceAsStream("harbour-line-attempts.json")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static AttemptSheet sheet() throws LessonFormatException {
        return ((Document.OfAttempts) new DocumentReader().parse("attempts", bytes())).sheet();
    }

    private static MarkSheet mark(Attempt attempt) {
        return MARKER.mark(LESSON.exercise(attempt.exerciseId()).orElseThrow(), attempt);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        // Both right within 1 %, one hint.
        "0, breakwater-camera, 19, 20, 0, 0, 0",
        // Only the end of the line, which is given.
        "1, breakwater-camera, 0, 20, 0, 0, 1",
        // The splice to be dug up: 4 + 3 - 5; the break right: 10.
        "2, breakwater-camera, 12, 20, 1, 0, 0",
        // A short called partial: 4 + 2 + 3, read late but as its pulse shows it; the splice is too good to be asked
        // for.
        "3, pilot-station-phone, 9, 10, 0, 0, 0",
        // All hardware right, the prediction wrong.
        "4, lamp-house-feeder, 30, 40, 0, 0, 0",
        // Three good joints to be dug up: 3 (4 - 5), never below zero.
        "5, antenna-mast, 0, 30, 3, 0, 0",
        // The right edges at a wrong velocity, which nobody gave: half of the places' marks, 2 (2 + 3 + 3).
        "6, ferry-gate, 16, 20, 0, 0, 0",
        // Only the nearer edge of the soaked length: 2 + 3 + 3.
        "7, slipway-cable, 18, 20, 0, 0, 0",
        "8, slipway-cable, 20, 20, 0, 0, 0",
        // One flag for two things that the pulse shows as one is right for the box, as that edge reads; the other is
        // missed.
        "9, greenhouse-sensor, 10, 20, 0, 0, 1",
        // The right prediction for the right reason, and a guess where nobody sees that the core is off centre: 10 - 3.
        "10, reel-on-the-dock, 7, 10, 0, 0, 0",
        "11, reel-on-the-dock, 10, 10, 0, 0, 0"
    })
    void marksAreThoseWorkedOutByHand(
            int index, String exercise, double marks, double maximum, int digs, int left, int missed)
            throws LessonFormatException {
        Attempt attempt = sheet().attempts().get(index);
        MarkSheet sheet = mark(attempt);

        assertEquals(exercise, attempt.exerciseId());
        assertEquals(marks, sheet.marks(), 1e-6, () -> sheet.findings().toString());
        assertEquals(maximum, sheet.maximum());
        assertEquals(digs, sheet.needlessDigs());
        assertEquals(left, sheet.damageLeft());
        assertEquals(missed, sheet.damageMissed());
    }

    @Test
    void ofSeveralAttemptsTheLastCountsAndWhatWasNotHandedInCountsWithNothing() throws LessonFormatException {
        List<MarkSheet> sheets =
                sheet().attempts().stream().map(GoldenAttemptsTest::mark).toList();
        LessonMarks all = LessonMarks.of(LESSON, sheets, MARKER);

        assertEquals(12 + 9 + 30 + 0 + 16 + 20 + 10 + 10, all.marks(), 1e-5);
        assertEquals(20 + 10 + 40 + 30 + 20 + 20 + 20 + 10, all.maximum());
        assertEquals(8, all.sheets().size());
        assertTrue(all.passed(), "60 of 100 are needed, and these are 62.9");
        LessonMarks one = LessonMarks.of(LESSON, sheets.subList(0, 1), MARKER);
        assertEquals(170, one.maximum());
        assertFalse(one.passed());
    }

    @Test
    void theFileOfAttemptsIsInCanonicalForm() throws LessonFormatException {
        assertArrayEquals(bytes(), new DocumentWriter().bytes(new Document.OfAttempts(sheet())));
    }
}
