// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Program;
import cablewright.ui.commandline.Samples;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PractiseCommandTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void writeExercise() throws IOException {
        desk = new Desk(folder);
        desk.write("exercise.json", Samples.exercise());
    }

    @Test
    void anExerciseIsReadFlaggedMarkedAndSavedInTheTerminal() throws IOException {
        Desk.Ran ran = desk.typed(
                "flag 31 splice belongs\nflag 84.2 pinch damage\ncommit\nsave attempt.json\nquit\n",
                "practise",
                "exercise.json",
                "--in-terminal",
                "--trainee",
                "Ada");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().contains("20 of 20 marks"), ran.out());
        assertTrue(ran.out().contains("The pinch presses the shield toward the core."), ran.out());
        assertTrue(ran.out().endsWith("Goodbye.\n"), ran.out());
        Desk.Ran marked = desk.run("mark", "exercise.json", "attempt.json");
        assertTrue(marked.out().startsWith("Ada, Quay camera 3: 20 of 20 marks"), marked.out());
    }

    @Test
    void anotherFileIsNotOverwrittenBySaving() throws IOException {
        Files.writeString(desk.file("mine.txt"), "mine");
        Desk.Ran ran = desk.typed(
                "commit\ncommit\nsave mine.txt\nsave none/a.json\n", "practise", "exercise.json", "--in-terminal");
        assertTrue(ran.out().contains("is there already"), ran.out());
        assertTrue(ran.out().contains("there is no folder"), ran.out());
        assertEquals("mine", Files.readString(desk.file("mine.txt")));
        assertEquals(List.of("exercise.json", "mine.txt"), desk.names());
    }

    @Test
    void theEndOfInputLeavesPolitelyAndKeepsNothing() throws IOException {
        Desk.Ran ran = desk.typed("flag 31 splice", "practise", "exercise.json", "--in-terminal");
        assertEquals(0, ran.exit());
        assertTrue(ran.out().contains("No more input. Goodbye"), ran.out());
        assertEquals(List.of("exercise.json"), desk.names());
    }

    @Test
    void withoutAWindowTheCommandPointsToTheTerminal() {
        Desk.Ran ran = desk.run("practise", "exercise.json");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("--in-terminal"), ran.err());
    }

    @Test
    void theDesktopIsOpenedAtTheLessonThatWasNamed() {
        AtomicReference<Optional<Path>> opened = new AtomicReference<>();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Program program = new Program(desk.surroundings("", new ByteArrayOutputStream(), err), opened::set);
        assertEquals(0, program.run("practise", "exercise.json"), err.toString(StandardCharsets.UTF_8));
        assertEquals(Optional.of(desk.file("exercise.json")), opened.get());
        assertEquals(1, program.run("practise", "nowhere.json"));
    }

    /** A file where the folder should be, since no permission keeps an administrator out. */
    @Test
    void marksAreShownWhereRecordsCanNotBeKept() throws IOException {
        Files.createDirectories(desk.file("data/cablewright"));
        Files.writeString(desk.file("data/cablewright/records"), "in the way");
        Desk.Ran ran = desk.typed("commit\ncommit\nquit\n", "practise", "--in-terminal", "--trainee", "Ada");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().matches("(?s).*0 of \\d+ marks.*"), ran.out());
        assertTrue(ran.err().contains("this attempt is marked but can't be kept"), ran.err());
    }

    @Test
    void withoutACommandADisplayOrATerminalTheFirstExercisePlaysItself() throws IOException {
        Desk.Ran ran = desk.started("");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.err().contains("there is no display"), ran.err());
        assertTrue(ran.out().contains("A sample answer:"), ran.out());
        assertTrue(ran.out().matches("(?s).*\\d+ of \\d+ marks.*The cable.*"), ran.out());
        List<String> pictures =
                desk.names().stream().filter(name -> name.endsWith(".png")).toList();
        assertEquals(1, pictures.size());
        assertTrue(ran.out().contains(pictures.get(0)), ran.out());
        assertTrue(ImageIO.read(desk.file(pictures.get(0)).toFile()).getWidth() > 0);
    }

    @Test
    void aSecondPlaythroughKeepsTheFirstPictureAndDrawsTheSame() throws IOException {
        Desk.Ran first = desk.started("");
        byte[] picture = Files.readAllBytes(desk.file(firstPicture()));
        Desk.Ran second = desk.started("");
        List<String> pictures =
                desk.names().stream().filter(name -> name.endsWith(".png")).toList();
        assertEquals(2, pictures.size());
        for (String name : pictures) {
            assertEquals(0, Arrays.compare(picture, Files.readAllBytes(desk.file(name))));
        }
        assertFalse(first.out().equals(second.out()), "the second names another picture");
    }

    private String firstPicture() throws IOException {
        return desk.names().stream()
                .filter(name -> name.endsWith(".png"))
                .findFirst()
                .orElseThrow();
    }
}
