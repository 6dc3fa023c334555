// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.marking.Marker;
import cablewright.ui.commandline.Samples;
import cablewright.ui.drawing.text.TerminalStyle;
import cablewright.ui.words.LengthUnit;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PracticeTerminalTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2030-05-04T10:00:00Z"), ZoneOffset.UTC);

    private final List<Attempt> kept = new ArrayList<>();

    private PracticeTerminal practice(Exercise... exercises) {
        Lesson lesson = new Lesson("lesson", "A lesson", "Read lines.", "All invented.", 0.5, List.of(exercises));
        PracticeTerminal.Screen screen =
                new PracticeTerminal.Screen(new TerminalStyle(true, false), 100, 30, LengthUnit.METRES, Locale.ROOT);
        return new PracticeTerminal(lesson, "Ada", screen, CLOCK, (attempt, file) -> {
            kept.add(attempt);
            return file;
        });
    }

    private static final List<Choice> ANSWERS =
            List.of(new Choice("dip", "A dip", "Right."), new Choice("rise", "A rise", "No."));

    /** As it is printed: with plain spaces. */
    private static String plain(String text) {
        return new TerminalStyle(true, false).plain(text);
    }

    private static String said(PracticeTerminal practice, String line) {
        return plain(practice.answer(line));
    }

    private static Exercise asking() {
        return asking(new Prediction("What will it show?", ANSWERS, "dip", "A pinch dips."));
    }

    private static Exercise asking(Prediction prediction) {
        Exercise plain = Samples.exercise();
        return new Exercise(
                "asking",
                plain.title(),
                plain.brief(),
                plain.cautions(),
                plain.cable(),
                plain.record(),
                plain.instrument(),
                plain.start(),
                plain.permitted(),
                plain.toleranceMetres(),
                plain.hints(),
                plain.explanation(),
                Optional.of(prediction),
                plain.noiseSeed(),
                plain.endIsGiven());
    }

    @Test
    void aReasonBelongsToTheAnswerWhereTheQuestionAsksForOne() {
        Reasons reasons = new Reasons(
                List.of(new Choice("nearer", "The shield is nearer", "Right."), new Choice("loss", "Loss", "Hardly.")),
                "nearer");
        PracticeTerminal practice = practice(
                asking(new Prediction("What will it show?", ANSWERS, "dip", Optional.of(reasons), "A pinch dips.")));
        String opening = plain(practice.opening());
        assertTrue(opening.contains("a The shield is nearer"), opening);
        assertTrue(said(practice, "answer 1").contains("A reason belongs to the answer"));
        assertTrue(said(practice, "answer 1 c").contains("Reasons are a to b"));
        assertTrue(said(practice, "answer 1 b").contains("drawing"));
        practice.answer("commit");
        String result = said(practice, "commit");
        assertTrue(result.contains("Your answer: A dip") && result.contains("[5 / 10]"), result);
        assertTrue(result.contains("Your reason: Loss. Hardly. The right reason: The shield is nearer."), result);
    }

    @Test
    void answersAreReadWithAndWithoutTheirReason() {
        InstructionParser parser = new InstructionParser(LengthUnit.METRES);
        assertEquals(new Instruction.Answer("2", Optional.empty()), parser.parse("answer 2"));
        assertEquals(new Instruction.Answer("2", Optional.of("b")), parser.parse("answer 2b"));
        assertEquals(new Instruction.Answer("2", Optional.of("b")), parser.parse("answer 2 because b"));
        assertEquals(new Instruction.Answer("dip", Optional.empty()), parser.parse("answer dip"));
        assertEquals(new Instruction.Answer("dip", Optional.of("nearer")), parser.parse("answer dip nearer"));
    }

    @Test
    void openingShowsBriefCautionsTraceAndDrawing() {
        String text = plain(practice(Samples.exercise()).opening());
        assertTrue(text.contains("Picture tears since the storm."), text);
        assertTrue(text.contains("! Plant power may be on this cable"), text);
        assertTrue(text.contains("! Follow local codes"), text);
        assertTrue(text.contains("drawing"), text);
        assertTrue(text.contains("31.0 m splice S1, bollard 4"), text);
        assertFalse(text.contains("pinch"), "the answer is given away: " + text);
    }

    @Test
    void nothingOfTheCableIsToldBeforeCommit() {
        PracticeTerminal practice = practice(Samples.exercise());
        for (String line :
                List.of("trace", "settings", "list", "brief", "exercises", "at 84.2", "end far", "zoom 80-90")) {
            String said = said(practice, line);
            assertFalse(said.contains("84.2 m to") || said.contains("impedance at"), said);
            assertFalse(said.contains("   cable"), said);
        }
    }

    @Test
    void theReadingIsThatOfTheTrace() {
        String said = said(practice(Samples.exercise()), "at 84.2");
        // 84.2 m there and back at 85 %: 661 ns
        assertTrue(said.startsWith("84.20 m, 661 ns there and back: "), said);
        assertTrue(said.contains(" %, ") && said.contains(" dB, ") && said.contains("\u03a9"), said);
    }

    @Test
    void theMarksAreThoseOfTheSameMarking() {
        PracticeTerminal practice = practice(Samples.exercise());
        practice.answer("flag 31 splice belongs");
        practice.answer("flag 84.2 splice damage");
        practice.answer("hint yes");
        String result = said(practice, "commit");
        practice.answer("save x.json");
        double marks = new Marker().mark(Samples.exercise(), kept.get(0)).marks();
        assertEquals(1, kept.get(0).hintsTaken());
        assertTrue(marks > 10 && marks < 20, "marks are " + marks);
        assertTrue(result.contains(Math.round(marks) + " of 20 marks"), result);
    }

    @Test
    void aFlagStaysAtItsTimeWhenTheVelocityChanges() {
        PracticeTerminal practice = practice(Samples.exercise());
        practice.answer("flag 85 pinch damage");
        practice.answer("velocity 0.80");
        assertTrue(said(practice, "list").contains("A  80.0 m  pinch"), said(practice, "list"));
    }

    @Test
    void lettersAreFreedAndTakenAgain() {
        PracticeTerminal practice = practice(Samples.exercise());
        practice.answer("flag 10 splice");
        practice.answer("flag 20 splice");
        practice.answer("remove a");
        assertEquals("  A  30.0 m  splice  belongs\n", said(practice, "flag 30 splice"));
        assertTrue(said(practice, "remove z").contains("There is no flag Z"));
    }

    @Test
    void theQuestionComesBeforeTheTrace() {
        PracticeTerminal practice = practice(asking());
        String opening = practice.opening();
        assertTrue(opening.contains("What will it show?") && opening.contains("2 A rise"), opening);
        assertFalse(opening.contains("drawing"), opening);
        for (String line : List.of("trace", "at 84", "zoom out", "scale auto", "commit", "gain 30", "flag 84 pinch")) {
            assertTrue(said(practice, line).contains("question first"), line);
        }
        assertTrue(said(practice, "answer 3").contains("Answers are 1 to 2"));
        assertTrue(said(practice, "answer 2").contains("drawing"));
        assertTrue(said(practice, "answer 1").contains("already answered"));
        practice.answer("commit");
        String result = said(practice, "commit");
        assertTrue(result.contains("Your answer: A rise"), result);
    }

    @Test
    void committingNothingAsksOnceMore() {
        PracticeTerminal practice = practice(Samples.exercise());
        assertTrue(said(practice, "commit").contains("again"));
        assertFalse(practice.committed());
        practice.answer("commit");
        assertTrue(practice.committed());
        assertTrue(said(practice, "flag 31 splice").contains("handed in"));
        assertTrue(said(practice, "exercise 1").contains("Exercise 1 of 1"));
        assertFalse(practice.committed());
    }

    @Test
    void nextGoesThroughTheLessonAndQuitLeaves() {
        PracticeTerminal practice = practice(Samples.exercise(), asking());
        assertEquals("1/2> ", practice.prompt());
        assertTrue(said(practice, "next").contains("Exercise 2 of 2"));
        assertEquals("2/2> ", practice.prompt());
        assertTrue(said(practice, "next").contains("last exercise"));
        assertFalse(practice.finished());
        practice.answer("quit");
        assertTrue(practice.finished());
    }

    @ParameterizedTest
    @ValueSource(strings = {"width 3ns", "velocity 0.5", "range 77", "gain 7", "average 3", "step 9ns"})
    void whatIsNotPermittedIsRefusedWithWhatIs(String line) {
        String said = said(practice(Samples.exercise()), line);
        assertTrue(said.contains("That can't be set here.") && said.contains("may be set: "), said);
    }

    @Test
    void feetAndMetresAreOneSwitch() {
        PracticeTerminal practice = practice(Samples.exercise());
        practice.answer("flag 30.48 splice");
        assertTrue(said(practice, "feet").contains("436.4 ft"));
        assertTrue(said(practice, "list").contains("100.0 ft"));
        assertTrue(said(practice, "at 100").startsWith("100.00 ft"));
        assertTrue(said(practice, "metres").contains("133.0 m"));
    }
}
