// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.Outcome;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.environment.ExitCode;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordsCommandTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void writeLogs() throws IOException {
        desk = new Desk(folder);
        new TraineeLog(desk.file("class/ada.jsonl")).append(record("Ada", EventKind.PINCH, 10, 0));
        new TraineeLog(desk.file("class/ben.jsonl")).append(record("Ben", EventKind.SPLICE, 4, 1));
    }

    private static AttemptRecord record(String trainee, EventKind taken, double marks, int digs) {
        Outcome outcome = new Outcome(
                EventKind.PINCH,
                Verdict.DAMAGE,
                Optional.of(taken),
                Optional.of(Verdict.DAMAGE),
                OptionalDouble.of(0.2),
                marks);
        return new AttemptRecord(
                trainee,
                "harbour-line",
                "quay-camera-3",
                Instant.parse("2031-03-01T08:00:00Z"),
                OptionalDouble.of(90),
                marks,
                10,
                0,
                digs,
                0,
                0,
                List.of(outcome),
                List.of(),
                Optional.empty());
    }

    @Test
    void aLessonThatWasSetShowsWhoHasDoneHowMuchOfIt() throws IOException {
        Exercise exercise =
                BuiltInLessons.find("water").orElseThrow().exercises().get(0);
        AttemptRecord first = record("Ada", EventKind.PINCH, 4, 1);
        for (double marks : new double[] {4, 8}) {
            AttemptRecord one = new AttemptRecord(
                    "Ada",
                    "water",
                    exercise.id(),
                    first.committedAt().plusSeconds((long) marks),
                    OptionalDouble.empty(),
                    marks,
                    10,
                    0,
                    0,
                    0,
                    0,
                    List.of(),
                    List.of(),
                    Optional.empty());
            new TraineeLog(desk.file("class/water.jsonl")).append(one);
        }
        Files.writeString(desk.file("class.csv"), "name,group\n\"Boole, George\",B\nAda,A\n");
        Desk.Ran ran =
                desk.run("records", "class", "--lesson", "built-in:water", "--class", "class.csv", "--format", "csv");
        assertEquals(ExitCode.DONE, ran.exit(), ran.err());
        List<String> lines = ran.out().lines().toList();
        assertEquals("\"Boole, George\",0,6,,0,", lines.get(1));
        assertTrue(lines.get(2).startsWith("Ada,1,6,80,0,2031-03-01T08:00:08Z"), lines.get(2));
        assertEquals(3, lines.size());
    }

    @Test
    void aClassListWithoutHeadIsRefusedInWords() throws IOException {
        Files.writeString(desk.file("class.csv"), "Ada\nBen\n");
        Desk.Ran ran = desk.run("records", "class", "--lesson", "built-in:water", "--class", "class.csv");
        assertEquals(ExitCode.INPUT_WRONG, ran.exit());
        assertTrue(ran.err().contains("line 1 is no head"), ran.err());
    }

    @Test
    void csvHasALineForEachEventOfEachAttempt() {
        Desk.Ran ran = desk.run("records", "class", "--format", "csv");
        assertEquals(ExitCode.DONE, ran.exit(), ran.err());
        List<String> lines = ran.out().lines().toList();
        assertEquals(3, lines.size());
        assertTrue(lines.get(1).startsWith("Ada,"), lines.get(1));
        assertTrue(lines.get(2).contains(",pinch,damage,splice,damage,0.2,4.0"), lines.get(2));
    }

    @Test
    void statementsAreWrittenToTheFileThatWasNamed() throws IOException {
        Desk.Ran ran = desk.run("records", "class", "--format", "xapi", "--out", "statements.json");
        assertEquals(ExitCode.DONE, ran.exit(), ran.err());
        JsonNode statements =
                new ObjectMapper().readTree(desk.file("statements.json").toFile());
        assertEquals(2, statements.size());
        assertEquals(0.4, statements.get(1).at("/result/score/scaled").asDouble(), 1e-12);
    }

    @Test
    void progressAndConfusionsAreToldInWords() {
        Desk.Ran ran = desk.run("records", "class/ada.jsonl", "class/ben.jsonl");
        assertEquals(ExitCode.DONE, ran.exit(), ran.err());
        assertTrue(ran.out().contains("2 attempts, 70 % of the marks, 1 needless dig,"), ran.out());
        assertTrue(ran.out().contains("pinch taken for splice: 1"), ran.out());
    }

    @Test
    void tornLineIsToldAndTheRestIsCounted() throws IOException {
        Files.writeString(desk.file("class/ben.jsonl"), "{\"trainee\":", StandardOpenOption.APPEND);
        Desk.Ran ran = desk.run("records", "class", "--format", "csv");
        assertEquals(ExitCode.INPUT_WRONG, ran.exit());
        assertEquals(3, ran.out().lines().count());
        assertTrue(ran.err().contains("ben.jsonl, line 2"), ran.err());
    }
}
