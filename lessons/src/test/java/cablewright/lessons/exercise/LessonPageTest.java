// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LessonPageTest {

    private static final byte[] PNG = png(7, 5);

    /** The head of a PNG file: signature, then the chunk IHDR with width and height (W3C PNG, third edition, section 11.2.1). */
    private static byte[] png(int width, int height) {
        return ByteBuffer.allocate(26)
                .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R'})
                .putInt(width)
                .putInt(height)
                .array();
    }

    /** The head of a JPEG file: an application segment, then a frame (ITU-T T.81, annex B). */
    private static byte[] jpeg(int width, int height) {
        return ByteBuffer.allocate(30)
                .put(new byte[] {
                    (byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, 0, 4, 1, 2, (byte) 0xff, (byte) 0xc2, 0, 11, 8
                })
                .putShort((short) height)
                .putShort((short) width)
                .array();
    }

    @Test
    void pictureThatWouldFillTheMemoryIsRefusedByItsHead() {
        for (byte[] file : List.of(png(22_000, 22_000), png(-1, 1), png(10_001, 1), jpeg(65_535, 65_535))) {
            IllegalArgumentException refused =
                    assertThrows(IllegalArgumentException.class, () -> Picture.of("Large", file));
            assertTrue(refused.getMessage().contains("pixels; a picture has at most"), refused.getMessage());
        }
        for (byte[] file : List.of(png(3264, 2448), jpeg(3264, 2448))) {
            assertArrayEquals(file, Picture.of("As of a telephone", file).bytes());
        }
        for (byte[] file : List.of(png(0, 5), Arrays.copyOf(png(7, 5), 20), Arrays.copyOf(jpeg(7, 5), 12))) {
            assertThrows(IllegalArgumentException.class, () -> Picture.of("Broken", file));
        }
    }

    private static LessonPage page(String id, int before) {
        return new LessonPage(id, before, "Title", "Text", List.of(), Optional.empty());
    }

    private static Lesson lesson(List<LessonPage> pages) {
        return new Lesson("l", "Title", "Text", "Invented.", 0.5, List.of(SampleExercises.with()), pages);
    }

    @Test
    void pagesStandBeforeExercisesAndAtTheEnd() {
        Lesson lesson = lesson(List.of(page("a", 0), page("b", 0), page("c", 1)));
        assertEquals(2, lesson.pagesBefore(0).size());
        assertEquals("c", lesson.pagesBefore(1).get(0).id());
    }

    @Test
    void pagesThatCanNotBeAreRefused() {
        String exercise = SampleExercises.with().id();
        for (List<LessonPage> impossible : List.of(
                List.of(page("a", 2)),
                List.of(page("a", 1), page("b", 0)),
                List.of(page("a", 0), page("a", 1)),
                List.of(page(exercise, 0)))) {
            assertThrows(IllegalArgumentException.class, () -> lesson(impossible), impossible.toString());
        }
    }

    @Test
    void pictureKeepsItsFileAndRefusesOtherKinds() {
        assertArrayEquals(PNG, Picture.of("A splice", PNG).bytes());
        IllegalArgumentException other =
                assertThrows(IllegalArgumentException.class, () -> Picture.of("A tune", new byte[] {1, 2, 3}));
        assertTrue(other.getMessage().contains("PNG or JPEG"), other.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new Picture("No code", "%%%"));
        byte[] large = new byte[Picture.MOST_BYTES + 1];
        System.arraycopy(PNG, 0, large, 0, PNG.length);
        assertThrows(IllegalArgumentException.class, () -> Picture.of("Too large", large));
    }

    /** Files that were written before lessons had pages hold no such field, and are read and written as they are. */
    @Test
    void lessonFilesFromBeforeThereWerePagesAreReadAsTheyAre() throws LessonFormatException {
        byte[] bytes = new DocumentWriter().bytes(new Document.OfLesson(lesson(List.of())));
        assertFalse(new String(bytes, StandardCharsets.UTF_8).contains("\"pages\""));
        Lesson read = ((Document.OfLesson) new DocumentReader().parse("old", bytes)).lesson();
        assertEquals(List.of(), read.pages());
        assertArrayEquals(bytes, new DocumentWriter().bytes(new Document.OfLesson(read)));
    }
}
