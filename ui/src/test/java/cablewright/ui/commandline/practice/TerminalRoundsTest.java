// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.practice.AdaptivePractice;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.environment.ExitCode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TerminalRoundsTest {

    private static final String[] ROUNDS = {
        "practise", "--rounds", "--family", "coax-drop", "--trainee", "Ada", "--log", "ada.jsonl"
    };

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void openDesk() {
        desk = new Desk(folder);
    }

    private List<AttemptRecord> records() throws IOException {
        return new TraineeLog(desk.file("ada.jsonl")).read().records();
    }

    /** What a perfect reader types. */
    private static String typed(Exercise exercise) {
        StringBuilder lines = new StringBuilder();
        for (Flag flag : KeyedAnswer.of(exercise).flags()) {
            String place = String.format(Locale.ROOT, "%.3f", flag.startMetres());
            String stretch = flag.endMetres().isPresent()
                    ? String.format(Locale.ROOT, "-%.3f", flag.endMetres().getAsDouble())
                    : "";
            lines.append("flag ").append(place).append(stretch).append(' ');
            lines.append(flag.kind().id()).append(' ');
            lines.append(flag.verdict().name().toLowerCase(Locale.ROOT)).append('\n');
        }
        return lines + "commit\n";
    }

    @Test
    void roundIsAnsweredLearntFromAndKept() throws IOException {
        Exercise first = AdaptivePractice.of(List.of(ExerciseFamily.COAX_DROP), List.of(), List.of(), "Ada")
                .next();
        Desk.Ran ran = desk.typed(typed(first) + "next\nquit\n", ROUNDS);
        assertEquals(ExitCode.DONE, ran.exit(), ran.err());
        assertEquals(1, records().size());
        assertEquals(first.id(), records().get(0).exerciseId());
        assertEquals(1, records().get(0).fraction(), 1e-9, ran.out());
        assertTrue(ran.out().contains("the trace goes"), "reasons are told: " + ran.out());
        assertTrue(ran.out().contains("Exercise 2: "), ran.out());
    }

    @Test
    void nextSittingGoesOnFromTheLog() throws IOException {
        desk.typed("commit\ncommit\nquit\n", ROUNDS);
        desk.typed("commit\ncommit\nquit\n", ROUNDS);
        List<AttemptRecord> records = records();
        assertEquals(2, records.size());
        assertFalse(records.get(0).exerciseId().equals(records.get(1).exerciseId()));
        GenerationRequest second = records.get(1).made().orElseThrow();
        assertEquals(List.of(ExerciseFamily.COAX_DROP), second.families());
    }

    @Test
    void timeThatIsLeftIsTold() {
        Desk.Ran ran = desk.typed("commit\ncommit\nquit\n", "practise", "--rounds", "--minutes", "10");
        assertTrue(ran.out().contains("Time left: "), ran.out());
        Desk.Ran never = desk.typed("quit\n", "practise", "--rounds", "--minutes", "0");
        assertEquals(ExitCode.INPUT_WRONG, never.exit());
    }

    @Test
    void reviewOfAnEmptyLogSaysThatNothingIsDue() {
        Desk.Ran ran = desk.typed("", "practise", "--rounds", "--review", "--log", "ada.jsonl");
        assertEquals(ExitCode.DONE, ran.exit(), ran.err());
        assertTrue(ran.out().startsWith("Nothing is due"), ran.out());
    }

    @Test
    void whoGivesANameIsKeptInTheRecordsThatTheDesktopShows() {
        ClassRecords shared = ClassRecords.ofThisUser(
                desk.surroundings("", System.out, System.out).environment());
        Desk.Ran rounds = desk.typed("commit\ncommit\nquit\n", "practise", "--rounds", "--trainee", "Ada");
        assertTrue(rounds.out().contains("into your records"), rounds.out());
        desk.typed("commit\ncommit\nquit\n", "practise", "--in-terminal", "--trainee", "Ada");
        assertEquals(
                List.of("practice", BuiltInLessons.first().id()),
                shared.read().records().stream().map(AttemptRecord::lessonId).toList());
        desk.typed("commit\ncommit\nquit\n", "practise", "--rounds");
        assertEquals(2, shared.read().records().size(), "without a name nothing is kept");
    }

    @Test
    void optionsOfRoundsAreRefusedWithoutThem() {
        Desk.Ran ran = desk.run("practise", "--minutes", "5", "--in-terminal");
        assertEquals(ExitCode.INPUT_WRONG, ran.exit());
        assertTrue(ran.err().contains("--rounds"), ran.err());
    }
}
