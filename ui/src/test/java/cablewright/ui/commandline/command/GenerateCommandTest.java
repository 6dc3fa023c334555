// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.environment.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GenerateCommandTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void openDesk() {
        desk = new Desk(folder);
    }

    @Test
    void filesHoldTheExercisesOfTheSeedAndAreTheSameAgain() throws Exception {
        String[] asked = {
            "generate",
            "--seed",
            "7",
            "--count",
            "3",
            "--difficulty",
            "0.4",
            "--family",
            "coax-drop",
            "--kinds",
            "pinch"
        };
        Desk.Ran first = desk.run(with(asked, "--out", "a"));
        Desk.Ran second = desk.run(with(asked, "--out", "b"));
        assertEquals(ExitCode.DONE, first.exit(), first.err());
        assertEquals(ExitCode.DONE, second.exit(), second.err());
        List<String> names = first.out().lines().toList();
        assertEquals(3, names.size());
        for (int i = 0; i < 3; i++) {
            Path file = Path.of(names.get(i));
            Exercise read = ((Document.OfExercise) new DocumentReader().read(file)).exercise();
            GenerationRequest request =
                    new GenerationRequest(7 + i, List.of(ExerciseFamily.COAX_DROP), List.of(EventKind.PINCH), 0.4);
            assertEquals(new ExerciseGenerator().generate(request), read);
            assertArrayEquals(
                    Files.readAllBytes(file), Files.readAllBytes(desk.file("b").resolve(file.getFileName())));
        }
    }

    private static String[] with(String[] asked, String... more) {
        String[] all = java.util.Arrays.copyOf(asked, asked.length + more.length);
        System.arraycopy(more, 0, all, asked.length, more.length);
        return all;
    }

    @Test
    void filesThatAreThereAreLeftAsTheyAre() throws IOException {
        assertEquals(ExitCode.DONE, desk.run("generate", "--out", "a").exit());
        Desk.Ran again = desk.run("generate", "--count", "2", "--out", "a");
        assertEquals(ExitCode.INPUT_WRONG, again.exit());
        assertTrue(again.err().contains("there already"), again.err());
        try (var files = Files.list(desk.file("a"))) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void whatIsWrongIsSaidWithWhatIsAllowed() {
        Desk.Ran family = desk.run("generate", "--family", "submarine", "--out", "a");
        assertEquals(ExitCode.INPUT_WRONG, family.exit());
        assertTrue(family.err().contains("coax-plant"), family.err());
        Desk.Ran kind = desk.run("generate", "--family", "data-cabling", "--kinds", "water", "--out", "a");
        assertEquals(ExitCode.INPUT_WRONG, kind.exit());
        assertTrue(kind.err().contains("spread-pair"), kind.err());
        Desk.Ran difficulty = desk.run("generate", "--difficulty", "2", "--out", "a");
        assertEquals(ExitCode.INPUT_WRONG, difficulty.exit());
        Desk.Ran count = desk.run("generate", "--count", "0", "--out", "a");
        assertEquals(ExitCode.INPUT_WRONG, count.exit());
        assertEquals(ExitCode.USAGE, desk.run("generate").exit());
    }
}
