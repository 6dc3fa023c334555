// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.making;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Nothing in a paper gives the cable back: its bytes are searched, and the simple ways back are tried. */
class PaperSecrecyTest {

    private static final PaperMaker.Terms TERMS = new PaperMaker.Terms("Harbour exam", "Ten marks each.", 90, 0.6);

    private final ExaminerKey key = ExaminerKey.make();
    private final Lesson lesson = BuiltInLessons.find("harbour-line").orElseThrow();

    private SealedPaper paper(Lesson of) {
        return new PaperMaker().make(of, TERMS, key.publicKey());
    }

    private static Lesson lessonOf(List<Exercise> exercises) {
        return new Lesson("exam", "Exam", "An exam.", "Saltmarsh Point is invented.", 0.5, exercises);
    }

    /** All text of a file: as it is, and what its Base64 holds. */
    private static String searched(SealedPaper paper) {
        String text = new String(PaperFile.bytes(paper), StandardCharsets.UTF_8);
        StringBuilder all = new StringBuilder(text);
        Matcher base64 = Pattern.compile("\"([A-Za-z0-9+/]{64,}=*)\"").matcher(text);
        while (base64.find()) {
            all.append(new String(Base64.getDecoder().decode(base64.group(1)), StandardCharsets.ISO_8859_1));
        }
        return all.toString();
    }

    private static Set<String> secrets(Exercise exercise) {
        Set<String> secrets = new HashSet<>();
        Cable cable = exercise.cable();
        secrets.add("\"" + exercise.id() + "\"");
        secrets.add("\"" + cable.title() + "\"");
        secrets.add(exercise.explanation().lines().findFirst().orElseThrow());
        secrets.add(
                String.valueOf(exercise.noiseSeed()).length() > 4 ? String.valueOf(exercise.noiseSeed()) : "noSeed");
        exercise.hints().stream()
                .map(Hint::text)
                .map(text -> text.lines().findFirst().orElseThrow())
                .forEach(secrets::add);
        exercise.prediction().ifPresent(asked -> {
            secrets.add(asked.explanation().lines().findFirst().orElseThrow());
            secrets.add("correctChoiceId");
            asked.choices().stream().map(Choice::reason).forEach(secrets::add);
        });
        cable.runs().forEach(run -> secrets.add("\"" + run.type().id() + "\""));
        for (Event event : cable.events()) {
            secrets.add("\"" + event.id() + "\"");
            boolean drawn = exercise.record().items().stream()
                    .map(RecordedItem::positionMetres)
                    .anyMatch(place -> place == event.startMetres());
            if (!drawn && event.startMetres() > 0 && event.startMetres() != Math.rint(event.startMetres())) {
                secrets.add(": " + event.startMetres());
            }
        }
        return secrets;
    }

    @Test
    void noSecretStandsInTheBytes() {
        String text = searched(paper(lesson));
        int looked = 0;
        for (Exercise exercise : lesson.exercises()) {
            for (String secret : secrets(exercise)) {
                assertFalse(text.contains(secret), exercise.id() + ": " + secret);
                looked++;
            }
        }
        assertTrue(looked > 60, "looked for " + looked);
        assertFalse(text.contains("\"cable\""));
        assertFalse(text.contains("costMarks"));
        // The search does find such things where they stand.
        String open = new String(
                new cablewright.lessons.format.DocumentWriter()
                        .bytes(new cablewright.lessons.format.Document.OfLesson(lesson)),
                StandardCharsets.UTF_8);
        assertTrue(open.contains(
                "\"" + lesson.exercises().get(0).cable().events().get(0).id() + "\""));
        assertTrue(text.contains(
                lesson.exercises().get(0).brief().lines().findFirst().orElseThrow()));
    }

    @Test
    void theOrderSaysNothing() {
        Lesson three = lessonOf(lesson.exercises().subList(0, 3));
        PaperMaker drawing = new PaperMaker(new Random(11));
        Set<String> orders = new HashSet<>();
        for (int i = 0; i < 40; i++) {
            SealedPaper paper = drawing.make(three, TERMS, key.publicKey());
            orders.add(String.join(
                    "|", paper.items().stream().map(PaperItem::title).toList()));
        }
        assertEquals(6, orders.size(), orders.toString());
    }

    @Test
    void choicesAreShuffledAndRenamed() {
        Exercise asking = lesson.exercises().stream()
                .filter(exercise -> exercise.prediction().isPresent())
                .findFirst()
                .orElseThrow();
        Prediction asked = asking.prediction().orElseThrow();
        PaperMaker drawing = new PaperMaker(new Random(11));
        Set<Integer> places = new HashSet<>();
        for (int i = 0; i < 40; i++) {
            var question = drawing.make(lessonOf(List.of(asking)), TERMS, key.publicKey())
                    .items()
                    .get(0)
                    .question()
                    .orElseThrow();
            String right = asked.choice(asked.correctChoiceId()).orElseThrow().text();
            places.add(question.choices().stream()
                    .map(choice -> choice.text())
                    .toList()
                    .indexOf(right));
            assertEquals("choice-1", question.choices().get(0).id());
        }
        assertEquals(asked.choices().size(), places.size());
    }

    /** Same words around it, one event or all of them, a short explanation or a long one: the same length of file. */
    @Test
    void theLengthSaysNothing() {
        Exercise full = lesson.exercises().get(0);
        Exercise bare = withCable(full, withoutEvents(full.cable()), "Short.");
        assertTrue(full.cable().events().size() > 1);

        int withAll = PaperFile.bytes(paper(lessonOf(List.of(full)))).length;
        int withNone = PaperFile.bytes(paper(lessonOf(List.of(bare)))).length;
        // The seed of the noise is drawn: up to 20 characters of it.
        assertTrue(Math.abs(withAll - withNone) <= 20, withAll + " and " + withNone);
    }

    private static Cable withoutEvents(Cable cable) {
        return new Cable(cable.title(), cable.runs(), List.of(), cable.farEnd(), cable.celsius(), cable.testLead());
    }

    private static Exercise withCable(Exercise it, Cable cable, String explanation) {
        return new Exercise(
                it.id(),
                it.title(),
                it.brief(),
                it.cautions(),
                cable,
                it.record(),
                it.instrument(),
                it.start(),
                it.permitted(),
                it.toleranceMetres(),
                List.of(),
                explanation,
                it.prediction(),
                it.noiseSeed(),
                it.endIsGiven());
    }

    @Test
    void noiseIsDrawnAnew() {
        Set<Long> seeds = new HashSet<>();
        lesson.exercises().forEach(exercise -> seeds.add(exercise.noiseSeed()));
        int before = seeds.size();
        List<SealedPaper> papers = List.of(paper(lesson), paper(lesson));
        papers.forEach(paper -> paper.items().forEach(item -> seeds.add(item.noiseSeed())));
        assertEquals(before + 2 * lesson.exercises().size(), seeds.size());
    }

    @Test
    void recordItemsHaveNamesOfThePaper() {
        for (PaperItem item : paper(lesson).items()) {
            List<String> wanted = new ArrayList<>();
            for (int i = 1; i <= item.record().items().size(); i++) {
                wanted.add("item-" + i);
            }
            assertEquals(
                    wanted, item.record().items().stream().map(RecordedItem::id).toList());
        }
    }

    @Test
    void onlyTheExaminerOpensTheRest() throws Exception {
        PaperFile file = PaperFile.of("paper", PaperFile.bytes(paper(lesson)));

        ExaminersPart part = file.open(key);

        assertEquals(lesson.exercises(), part.lesson().exercises());
        assertThrows(SealException.class, () -> file.open(ExaminerKey.make()));
        for (PaperItem item : file.paper().items()) {
            Exercise meant = part.lesson()
                    .exercise(part.key(item.id()).orElseThrow().exerciseId())
                    .orElseThrow();
            assertEquals(meant.brief(), item.brief());
        }
    }

    @Test
    void aPaperIsReadAsItWasWritten() throws Exception {
        byte[] bytes = PaperFile.bytes(paper(lesson));
        byte[] again = PaperFile.bytes(PaperFile.of("paper", bytes).paper());
        assertEquals(new String(bytes, StandardCharsets.UTF_8), new String(again, StandardCharsets.UTF_8));
        assertNotEquals(
                PaperFile.of("x", bytes).sha256(),
                PaperFile.of("x", PaperFile.bytes(paper(lesson))).sha256());
    }
}
