// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten marks for each of the two events; a needless dig costs five (the rules of marking, common practice, no source). */
class MarkCommandTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void writeAttempts() throws IOException {
        desk = new Desk(folder);
        Exercise exercise = Samples.exercise();
        desk.write("exercise.json", exercise);
        Files.createDirectory(desk.file("answers"));
        write("answers/ada.json", KeyedAnswer.of(exercise));
        write(
                "answers/ben.json",
                new Attempt(
                        exercise.id(),
                        "Ben",
                        List.of(
                                flag("A", 84.2, EventKind.PINCH, Verdict.BELONGS),
                                flag("B", 60, EventKind.WATER, Verdict.DAMAGE)),
                        exercise.start().settings()));
    }

    private static Flag flag(String letter, double metres, EventKind kind, Verdict verdict) {
        return new Flag(letter, LineEnd.NEAR, metres, OptionalDouble.empty(), kind, verdict, 0.85);
    }

    private void write(String name, Attempt attempt) throws IOException {
        desk.write(name, new AttemptSheet("quay-3", List.of(attempt)));
    }

    @Test
    void aFolderIsMarkedInOrderOfNamesToCsv() {
        Desk.Ran ran = desk.run("mark", "exercise.json", "answers", "--format", "csv");
        assertEquals(0, ran.exit(), ran.err());
        List<String> lines = ran.out().lines().toList();
        assertEquals(3, lines.size());
        assertTrue(lines.get(1).endsWith("ada.json,Perfect reader,quay-3,20.0,20.0,0,0,0,0.0"), ran.out());
        assertTrue(lines.get(2).endsWith("ben.json,Ben,quay-3,2.0,20.0,1,1,0,0.0"), ran.out());
    }

    @Test
    void jsonHoldsTheFindingsWithTheirReasons() throws IOException {
        JsonNode all = new ObjectMapper()
                .readTree(desk.run("mark", "exercise.json", "answers/ben.json", "--format", "json")
                        .bytes());
        assertEquals(1, all.size());
        assertEquals(1, all.get(0).get("needless_digs").asInt());
        assertTrue(all.get(0).get("findings").size() >= 3);
        all.get(0)
                .get("findings")
                .forEach(finding -> assertFalse(finding.get("why").asText().isEmpty()));
    }

    @Test
    void textNamesThePersonAndEachFlag() {
        String text = desk.run("mark", "exercise.json", "answers/ben.json").out();
        assertTrue(text.startsWith("Ben, Quay camera 3: 2 of 20 marks"), text);
        assertTrue(text.contains("A  84.2 m pinch"), text);
    }

    @Test
    void aFileThatCantBeReadIsToldAndTheOthersAreMarked() throws IOException {
        Files.writeString(desk.file("answers/cut.json"), "{\"format\":");
        Desk.Ran ran = desk.run("mark", "exercise.json", "answers", "--format", "csv");
        assertEquals(1, ran.exit());
        assertEquals(3, ran.out().lines().count());
        assertTrue(ran.err().contains("cut.json"), ran.err());
    }

    @Test
    void anAttemptAtAnExerciseThatTheLessonLacksIsTold() throws IOException {
        write(
                "answers/dot.json",
                new Attempt(
                        "other", "Dot", List.of(), Samples.exercise().start().settings()));
        Desk.Ran ran = desk.run("mark", "exercise.json", "answers/dot.json");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("\"other\"") && ran.err().contains("quay-3"), ran.err());
    }

    @Test
    void anEmptyFolderIsTold() throws IOException {
        Files.createDirectory(desk.file("none"));
        Desk.Ran ran = desk.run("mark", "exercise.json", "none");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("no file that ends in .json"), ran.err());
    }

    @Test
    void marksCanGoToAFile() throws IOException {
        assertEquals(
                0,
                desk.run("mark", "exercise.json", "answers", "--format", "csv", "--out", "marks.csv")
                        .exit());
        assertTrue(Files.readString(desk.file("marks.csv")).contains("Perfect reader"));
    }

    @Test
    void answersToAnotherExerciseOfTheSameNameAreNamed() throws IOException {
        write("answers/ada.json", KeyedAnswer.of(Samples.exercise()).boundTo("0".repeat(64)));
        Desk.Ran ran = desk.run("mark", "exercise.json", "answers", "--format", "csv");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("ada.json: it answers another exercise than"), ran.err());
        assertTrue(ran.out().contains("Ben") && !ran.out().contains("ada.json"), ran.out());
    }
}
