// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exam.ExamSamples;
import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.Padding;
import cablewright.lessons.exam.seal.Receipt;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.simulator.cable.EventKind;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ClassMarkingTest {

    private static final Instant NINE = Instant.parse("2031-05-04T09:00:00Z");

    private static PaperFile paper;
    private static ClassMarking marking;
    private static ExaminersPart part;

    @BeforeAll
    static void open() throws Exception {
        paper = PaperFile.of("paper", ExamSamples.paper());
        marking = new ClassMarking(paper, ExamSamples.KEY, Optional.of(NINE.plusSeconds(7200)));
        part = paper.open(ExamSamples.KEY);
    }

    /** The flags of a perfect reader, in the paper's names. */
    private static List<Attempt> perfect(String name) {
        List<Attempt> attempts = new ArrayList<>();
        for (var key : part.keys()) {
            Exercise exercise = part.lesson().exercise(key.exerciseId()).orElseThrow();
            Attempt keyed = KeyedAnswer.of(exercise);
            attempts.add(attempt(key.itemId(), name, keyed.flags(), keyed));
        }
        return attempts;
    }

    private static Attempt attempt(String item, String name, List<Flag> flags, Attempt like) {
        return new Attempt(
                item,
                name,
                flags,
                like.settings(),
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.of(NINE),
                Optional.of(NINE.plusSeconds(60)));
    }

    private static ExamAnswers answers(String name, String sha256, String sitting, Instant at, List<Attempt> attempts) {
        return new ExamAnswers(sha256, name, sitting, NINE, at, Optional.of(at), 1800, 1, 0, attempts);
    }

    private static byte[] sealed(ExamAnswers answers, ExaminerKey key) {
        byte[] plain = new DocumentWriter().bytes(new Document.OfAnswers(answers));
        return AgeSeal.sealTo(key.publicKey(), Padding.filled(plain));
    }

    private static byte[] sealed(String name, List<Attempt> attempts) {
        return sealed(
                answers(name, paper.sha256(), "s-" + Math.abs(name.hashCode()), NINE.plusSeconds(3000), attempts),
                ExamSamples.KEY);
    }

    private static ClassResult mark(List<AnswerFile> files) {
        return marking.mark(files, (done, all) -> {}, () -> false);
    }

    @Test
    void perfectAnswersEarnAllAndBlankOnesNothing() {
        byte[] ada = sealed("Ada", perfect("Ada"));
        ClassResult result =
                mark(List.of(new AnswerFile("b.age", sealed("Bo", List.of())), new AnswerFile("a.age", ada)));

        assertEquals(
                List.of("Ada", "Bo"),
                result.people().stream().map(PersonResult::name).toList());
        PersonResult first = result.people().get(0);
        assertEquals(first.total().maximum(), first.total().marks());
        assertTrue(first.total().passed());
        assertEquals(Receipt.of(ada), first.receipt());
        assertEquals(0, result.people().get(1).total().marks());
        assertEquals(0.5, result.items().get(0).difficulty());
    }

    @Test
    void whatCannotBeMarkedIsNamedAndTheRestIsMarked() {
        byte[] good = sealed("Ada", perfect("Ada"));
        byte[] changed = good.clone();
        changed[40_000] ^= 1;
        String other = Receipt.sha256("another paper".getBytes(StandardCharsets.UTF_8));
        List<Attempt> unknown =
                List.of(attempt("q99", "Eve", List.of(), perfect("Eve").get(0)));
        Map<String, byte[]> files = new TreeMap<>(Map.of(
                "ada.age", good,
                "changed.age", changed,
                "cut.age", Arrays.copyOf(good, good.length - 500),
                "foreign.age", sealed(answers("Cy", paper.sha256(), "s", NINE, List.of()), ExaminerKey.make()),
                "paper.age", sealed(answers("Di", other, "s", NINE, List.of()), ExamSamples.KEY),
                "note.txt", "hello".getBytes(StandardCharsets.UTF_8),
                "late.age",
                        sealed(
                                answers("Fay", paper.sha256(), "s-f", NINE.plusSeconds(9000), List.of()),
                                ExamSamples.KEY),
                "unknown.age", sealed("Eve", unknown),
                "again.age",
                        sealed(
                                answers(
                                        "Ada",
                                        paper.sha256(),
                                        "s-" + "Ada".hashCode(),
                                        NINE.plusSeconds(3500),
                                        List.of()),
                                ExamSamples.KEY)));
        files.put("copy.age", good);
        List<AnswerFile> all = new ArrayList<>();
        files.forEach((name, bytes) -> all.add(new AnswerFile(name, bytes)));

        ClassResult result = mark(all);

        Map<String, SetAside.Reason> reasons = new TreeMap<>();
        result.setAside().forEach(one -> reasons.put(one.file(), one.reason()));
        assertEquals(
                new TreeMap<>(Map.of(
                        "again.age", SetAside.Reason.DOUBLED,
                        "changed.age", SetAside.Reason.CHANGED,
                        "copy.age", SetAside.Reason.DOUBLED,
                        "cut.age", SetAside.Reason.CUT,
                        "foreign.age", SetAside.Reason.OTHER_KEY,
                        "late.age", SetAside.Reason.LATE,
                        "note.txt", SetAside.Reason.NOT_SEALED,
                        "paper.age", SetAside.Reason.OTHER_PAPER,
                        "unknown.age", SetAside.Reason.NOT_SOUND)),
                reasons);
        assertEquals(
                List.of("ada.age"),
                result.people().stream().map(PersonResult::file).toList());
    }

    /** A class in which a share of people know each exercise: the correlation is that of the 2 x 2 table, worked by hand. */
    @Test
    void discriminationIsTheCorrelationWithTheRest() {
        List<AnswerFile> files = new ArrayList<>();
        // First item right, second right: 1 1, 1 1, 1 0, 0 0. Share of the rest is the other item's marks.
        boolean[][] right = {{true, true}, {true, true}, {true, false}, {false, false}};
        for (int i = 0; i < right.length; i++) {
            String name = "P" + i;
            List<Attempt> attempts = new ArrayList<>();
            for (Attempt keyed : perfect(name)) {
                String exercise = part.key(keyed.exerciseId()).orElseThrow().exerciseId();
                int item = part.lesson().exercises().get(0).id().equals(exercise) ? 0 : 1;
                attempts.add(attempt(keyed.exerciseId(), name, right[i][item] ? keyed.flags() : List.of(), keyed));
            }
            files.add(new AnswerFile(name, sealed(name, attempts)));
        }

        ClassResult result = mark(files);

        assertEquals(0.75, result.items().get(0).difficulty(), 1e-12);
        assertEquals(0.5, result.items().get(1).difficulty(), 1e-12);
        // phi = (ad - bc)/sqrt(...) of a = 2, b = 1, c = 0, d = 1: 2 / sqrt(3 * 1 * 2 * 2) = 0.57735.
        assertEquals(1 / Math.sqrt(3), result.items().get(0).discrimination().orElseThrow(), 1e-9);
        assertEquals(1 / Math.sqrt(3), result.items().get(1).discrimination().orElseThrow(), 1e-9);
    }

    private static List<Attempt> strays(String name, double... places) {
        List<Attempt> attempts = new ArrayList<>();
        for (Attempt keyed : perfect(name)) {
            List<Flag> flags = new ArrayList<>();
            for (int i = 0; i < places.length; i++) {
                flags.add(new Flag(
                        String.valueOf((char) ('A' + i)),
                        keyed.flags().get(0).end(),
                        places[i],
                        OptionalDouble.empty(),
                        EventKind.PINCH,
                        Verdict.DAMAGE,
                        keyed.settings().velocityFraction()));
            }
            attempts.add(attempt(keyed.exerciseId(), name, flags, keyed));
        }
        return attempts;
    }

    @Test
    void sharedRareMistakesArePointedOutAndSharedRightAnswersAreNot() {
        List<AnswerFile> files = new ArrayList<>();
        for (String name : List.of("Ada", "Bo", "Cy", "Di", "Eve", "Fay", "Gil", "Hal")) {
            files.add(new AnswerFile(name, sealed(name, perfect(name))));
        }
        files.add(new AnswerFile("x", sealed("Xan", strays("Xan", 3.31, 9.42, 17.77))));
        files.add(new AnswerFile("y", sealed("Yve", strays("Yve", 3.3, 9.45, 17.8))));
        files.add(new AnswerFile("z", sealed("Zoe", strays("Zoe", 5.5, 12.45, 19.8))));

        ClassResult result = mark(files);

        assertEquals(1, result.resemblances().size(), result.resemblances().toString());
        Resemblance pair = result.resemblances().get(0);
        assertEquals(
                List.of("Xan", "Yve"),
                List.of(pair.first(), pair.second()).stream().sorted().toList());
        assertEquals(6, pair.shared());
    }

    @Test
    void itCanBeCancelled() {
        List<AnswerFile> files = List.of(new AnswerFile("a", sealed("Ada", List.of())));
        assertThrows(CancellationException.class, () -> marking.mark(files, (done, all) -> {}, () -> true));
    }

    @Test
    void theTableHasARowForEachAndGuardsAgainstFormulas() throws Exception {
        ClassResult result = mark(List.of(
                new AnswerFile("a.age", sealed("=1+1", perfect("=1+1"))), new AnswerFile("note.txt", new byte[3])));
        String csv = new ClassTable(result).csv();
        JsonNode json = new ObjectMapper().readTree(new ClassTable(result).json());

        assertEquals(2, csv.split("\r\n").length);
        assertTrue(csv.split("\r\n")[1].startsWith("'=1+1,"), csv);
        assertEquals("not-sealed", json.get("set_aside").get(0).get("reason").textValue());
        assertEquals(2, json.get("people").get(0).get("exercises").size());
    }
}
