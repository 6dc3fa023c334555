// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands about lessons: prove and print. */
class CourseCommandsTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void makeDesk() {
        desk = new Desk(folder);
    }

    @Test
    void proveSaysWhatAPerfectReaderEarnsAndWhereEachEventShowsBest() {
        Desk.Ran ran = desk.run("prove", "built-in:pulses", "--exercise", "tide-gauge");
        assertEquals(0, ran.exit(), ran.out());
        assertTrue(ran.out().contains("tide-gauge: a perfect reader earns 10 of 10 marks."), ran.out());
        assertTrue(ran.out().contains("the open at 62.4") && ran.out().contains("damage"), ran.out());
    }

    @Test
    void proveNamesANumberThatIsWrong() throws IOException {
        Lesson lesson = BuiltInLessons.find("pulses").orElseThrow();
        String sound = new String(new DocumentWriter().bytes(new Document.OfLesson(lesson)), StandardCharsets.UTF_8);
        String wrong = sound.replace("{490 ns | back 62.4}", "{480 ns | back 62.4}");
        assertTrue(!wrong.equals(sound));
        Files.writeString(folder.resolve("wrong.json"), wrong);
        Desk.Ran ran = desk.run("prove", "wrong.json", "--exercise", "tide-gauge");
        assertEquals(1, ran.exit());
        assertTrue(ran.out().contains("tide-gauge: states 480 ns (back 62.4); it is 490."), ran.out());
    }

    @Test
    void whatIsNotThereIsSaidInWords() {
        Desk.Ran lesson = desk.run("prove", "built-in:nothing");
        assertEquals(1, lesson.exit());
        assertTrue(lesson.err().contains("sign-and-size"), lesson.err());
        Desk.Ran exercise = desk.run("prove", "built-in:pulses", "--exercise", "nothing");
        assertEquals(1, exercise.exit());
        assertTrue(exercise.err().contains("tide-gauge"), exercise.err());
    }

    @Test
    void printWritesACardAsPdf() throws IOException {
        Desk.Ran ran = desk.run("print", "built-in:water", "--sheets", "card", "--out", "card.pdf");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(
                "%PDF",
                Files.readString(folder.resolve("card.pdf"), StandardCharsets.ISO_8859_1)
                        .substring(0, 4));
    }
}
