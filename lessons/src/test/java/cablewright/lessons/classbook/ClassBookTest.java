// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.Contrast;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassBookTest {

    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");

    @TempDir
    Path folder;

    private static AttemptRecord record(String trainee, EventKind truth, EventKind flagged, double marks) {
        Outcome outcome = new Outcome(
                truth,
                Verdict.DAMAGE,
                Optional.ofNullable(flagged),
                flagged == null ? Optional.empty() : Optional.of(Verdict.DAMAGE),
                flagged == null ? OptionalDouble.empty() : OptionalDouble.of(-0.4),
                marks);
        return new AttemptRecord(
                trainee,
                "harbour",
                "quay-3",
                NOW,
                OptionalDouble.of(95.5),
                marks,
                10,
                1,
                0,
                0,
                0,
                List.of(outcome),
                List.of(),
                Optional.empty());
    }

    @Test
    void recordOfAPerfectAttemptHasAnOutcomeForEveryEventAsked() {
        Exercise exercise = new ExerciseGenerator()
                .generate(new GenerationRequest(4, List.of(ExerciseFamily.COAX_DROP), List.of(EventKind.PINCH), 0.2));
        Attempt perfect = KeyedAnswer.of(exercise);
        AttemptRecord made = AttemptRecord.of(new Marker().mark(exercise, perfect), "practice", NOW);
        assertEquals(perfect.flags().size(), made.outcomes().size());
        assertEquals(made.maximum(), made.marks(), 1e-9);
        assertTrue(made.outcomes().stream().allMatch(o -> o.flaggedKind().equals(Optional.of(o.kind()))));
    }

    @Test
    void missedAndStrayFlagsAreKept() {
        Exercise exercise = new ExerciseGenerator()
                .generate(new GenerationRequest(
                        4, List.of(ExerciseFamily.REEL_ACCEPTANCE), List.of(EventKind.PINCH), 0.2));
        double nowhere = exercise.cable().lengthMetres() * 0.05;
        Flag flag = new Flag(
                "A",
                LineEnd.NEAR,
                nowhere,
                OptionalDouble.empty(),
                EventKind.SHORT,
                Verdict.DAMAGE,
                exercise.start().settings().velocityFraction());
        Attempt wrong = new Attempt(
                exercise.id(), "Trainee", List.of(flag), exercise.start().settings());
        AttemptRecord made = AttemptRecord.of(new Marker().mark(exercise, wrong), "practice", NOW);
        assertTrue(made.outcomes().stream().allMatch(o -> o.flaggedKind().isEmpty()));
        assertEquals(List.of(EventKind.SHORT), made.strayKinds());
        assertEquals(1, made.needlessDigs());
    }

    @Test
    void logGivesBackWhatWasAppended() throws IOException {
        TraineeLog log = new TraineeLog(folder.resolve("new").resolve("ada.jsonl"));
        List<AttemptRecord> all = List.of(
                record("Ada", EventKind.PINCH, EventKind.PINCH, 10),
                record("Ada", EventKind.WATER, null, 0),
                record("Ada \"the\" reader, 2", EventKind.TAP, EventKind.SPLICE, 4));
        for (AttemptRecord one : all) {
            log.append(one);
        }
        assertEquals(all, log.read().records());
        assertEquals(List.of(), log.read().faults());
    }

    /** A record of a made exercise keeps its request; a line from before there was that field holds it in the name. */
    @Test
    void requestOfAMadeExerciseIsKeptAndReadFromEarlierLines() throws IOException {
        GenerationRequest request = new GenerationRequest(
                Long.MIN_VALUE, List.of(ExerciseFamily.COAX_DROP), List.of(EventKind.PINCH), 0.3, Contrast.NONE);
        Path file = folder.resolve("ada.jsonl");
        AttemptRecord made = record("Ada", EventKind.PINCH, EventKind.PINCH, 10).madeOf(request);
        new TraineeLog(file).append(made);
        String line = Files.readString(file);
        Files.writeString(
                file,
                line.replaceFirst(",\"made\":\\{.*\\}", "}")
                        .replace("\"version\":2", "\"version\":1")
                        .replace("quay-3", "made-7-u-2-0"),
                StandardOpenOption.APPEND);
        List<AttemptRecord> records = new TraineeLog(file).read().records();
        assertEquals(made, records.get(0));
        assertEquals(
                Optional.of(new GenerationRequest(7, List.of(ExerciseFamily.COAX_DROP), List.of(), 0.3)),
                records.get(1).made());
    }

    @Test
    void tornLastLineLosesNothingBeforeOrAfterIt() throws IOException {
        Path file = folder.resolve("ada.jsonl");
        TraineeLog log = new TraineeLog(file);
        log.append(record("Ada", EventKind.PINCH, EventKind.PINCH, 10));
        byte[] whole = Files.readAllBytes(file);
        Files.write(
                file, "{\"version\":1,\"trainee\":\"Ad".getBytes(StandardCharsets.UTF_8), StandardOpenOption.APPEND);
        assertEquals(1, log.read().records().size());
        assertEquals(1, log.read().faults().size());
        assertTrue(
                log.read().faults().get(0).contains("line 2"),
                log.read().faults().get(0));
        log.append(record("Ada", EventKind.WATER, EventKind.WATER, 8));
        assertEquals(2, log.read().records().size());
        assertEquals(
                new String(whole, StandardCharsets.UTF_8),
                Files.readString(file).substring(0, whole.length));
    }

    /** What a log of the first version holds stays readable: its lines have no checksum. */
    @Test
    void logOfTheFirstVersionStillReads() throws IOException {
        Path file = folder.resolve("old.jsonl");
        Files.writeString(
                file,
                """
                {"version":1,"trainee":"Ada","lessonId":"harbour","exerciseId":"quay-3","committedAt":"2031-03-01T08:00:00Z",\
                "secondsTaken":95.5,"marks":4.0,"maximum":10.0,"hintsTaken":1,"needlessDigs":0,"damageLeft":0,\
                "damageMissed":0,"outcomes":[{"kind":"tap","truth":"damage","flaggedKind":"splice",\
                "flaggedVerdict":"damage","placeErrorMetres":-0.4,"marks":4.0}],"strayKinds":[]}
                """);
        TraineeLog log = new TraineeLog(file);
        assertEquals(List.of(), log.read().faults());
        assertEquals(
                List.of(record("Ada", EventKind.TAP, EventKind.SPLICE, 4)),
                log.read().records());
        log.append(record("Ada", EventKind.PINCH, EventKind.PINCH, 10));
        assertEquals(2, log.read().records().size());
    }

    /**
     * CRC-32C of the digits 1 to 9 is e3069283 (catalogue of parametrised CRC algorithms, CRC-32/ISCSI, from memory); here any
     * one byte that changes must show.
     */
    @Test
    void everyChangedByteOfALineIsNoticed() throws IOException {
        Path file = folder.resolve("ada.jsonl");
        TraineeLog log = new TraineeLog(file);
        log.append(record("Ada", EventKind.PINCH, EventKind.WATER, 4));
        byte[] sound = Files.readAllBytes(file);
        for (int i = 0; i < sound.length - 1; i++) {
            byte[] changed = sound.clone();
            changed[i] ^= 1;
            Files.write(file, changed);
            assertEquals(List.of(), log.read().records(), "byte " + i);
            assertFalse(log.read().faults().isEmpty(), "byte " + i);
        }
    }

    /** A name cut in the middle of a character of UTF-8, as a crash may leave it. */
    @Test
    void lineThatIsNoTextHidesNoOtherLine() throws IOException {
        Path file = folder.resolve("zo.jsonl");
        TraineeLog log = new TraineeLog(file);
        log.append(record("Zoë", EventKind.PINCH, EventKind.PINCH, 10));
        Files.write(
                file,
                "{\"version\":1,\"trainee\":\"Zo\u00c3".getBytes(StandardCharsets.ISO_8859_1),
                StandardOpenOption.APPEND);
        log.append(record("Zoë", EventKind.TAP, EventKind.TAP, 9));
        Files.writeString(file, "x".repeat(300_000) + "\n", StandardOpenOption.APPEND);
        log.append(record("Zoë", EventKind.WATER, EventKind.WATER, 8));

        TraineeLog.Contents contents = log.read();

        assertEquals(
                List.of(10.0, 9.0, 8.0),
                contents.records().stream().map(AttemptRecord::marks).toList());
        assertEquals(
                List.of(
                        "zo.jsonl, line 2: it is not text in UTF-8. The line is left where it is and not counted.",
                        "zo.jsonl, line 4: it is longer than 200000 bytes. The line is left where it is and not"
                                + " counted."),
                contents.faults());
    }

    @Test
    void folderOfTheSameNameAsALogIsNamedAndHidesNoOtherLog() throws IOException {
        new TraineeLog(folder.resolve("ada.jsonl")).append(record("Ada", EventKind.PINCH, EventKind.PINCH, 10));
        Files.createDirectory(folder.resolve("ben.jsonl"));
        ClassRecords.Contents contents = new ClassRecords(folder).read();
        assertEquals(1, contents.records().size());
        assertEquals(1, contents.faults().size());
        assertTrue(
                contents.faults().get(0).contains("it is a folder"),
                contents.faults().get(0));
    }

    @Test
    void nameThatCouldNotBeReadBackIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> record("\u001b[2J", EventKind.PINCH, null, 0));
        assertThrows(IllegalArgumentException.class, () -> record("x".repeat(201), EventKind.PINCH, null, 0));
    }

    /** RFC 3986, section 2: what is not unreserved is percent-encoded; the bytes are those of UTF-8. */
    @Test
    void idsOfStatementsAreSoundAddressesWhateverTheNames() throws IOException {
        AttemptRecord odd = new AttemptRecord(
                "Ada",
                "a b/é",
                "50%?#",
                NOW,
                OptionalDouble.empty(),
                1,
                1,
                0,
                0,
                0,
                0,
                List.of(),
                List.of(),
                Optional.empty());
        JsonNode statement = new ObjectMapper()
                .readTree(new XapiStatements().of(List.of(odd)))
                .get(0);
        assertEquals(
                "https://cablewright.invalid/exercises/50%25%3F%23",
                statement.get("object").get("id").asText());
        assertTrue(statement.toString().contains("https://cablewright.invalid/lessons/a%20b%2F%C3%A9"));
    }

    @Test
    void lineOfANewerVersionIsLeftAloneAndTold() throws IOException {
        Path file = folder.resolve("ada.jsonl");
        Files.writeString(file, "{\"version\":9}\n");
        assertTrue(new TraineeLog(file).read().faults().get(0).contains("version is 9"));
    }

    /** RFC 4180: quotes around cells with commas or quotes, quotes doubled, lines ended by CR LF. */
    @Test
    void csvQuotesAsTheRfcSaysAndNeverStartsAFormula() {
        String csv = RecordsCsv.of(List.of(
                record("Ada, \"A\"", EventKind.PINCH, EventKind.WATER, 4), record("=1+1", EventKind.PINCH, null, 0)));
        String[] lines = csv.split("\r\n");
        assertEquals(3, lines.length);
        assertTrue(
                lines[1].startsWith("\"Ada, \"\"A\"\"\",harbour,quay-3,2031-03-01T08:00:00Z,95.5,4.0,10.0,1"),
                lines[1]);
        assertTrue(lines[1].endsWith("pinch,damage,water,damage,-0.4,4.0"), lines[1]);
        assertTrue(lines[2].startsWith("'=1+1,"), lines[2]);
        assertEquals(lines[0].split(",", -1).length, lines[2].split(",", -1).length);
    }

    /**
     * Rules of IEEE 9274.1.1 (xAPI), statement data model: actor with exactly one inverse functional identifier, verb and
     * activity ids are IRIs, scaled score from −1 to 1, raw between min and max, duration in ISO 8601, timestamp in RFC 3339,
     * id a UUID, extension keys IRIs. Numbers of clauses from memory: 4.2.2 to 4.2.7.
     */
    @Test
    void statementsKeepToTheRulesOfXapi() throws IOException {
        String text = new XapiStatements()
                .of(List.of(
                        record("Ada", EventKind.PINCH, EventKind.PINCH, 8), record("Ben", EventKind.PINCH, null, 0)));
        JsonNode statements = new ObjectMapper().readTree(text);
        assertEquals(2, statements.size());
        for (JsonNode statement : statements) {
            assertEquals(
                    statement.get("id").asText(),
                    UUID.fromString(statement.get("id").asText()).toString());
            JsonNode actor = statement.get("actor");
            assertFalse(actor.has("mbox") || actor.has("mbox_sha1sum") || actor.has("openid"));
            assertTrue(isIri(actor.get("account").get("homePage").asText()));
            assertFalse(actor.get("account").get("name").asText().isEmpty());
            assertTrue(isIri(statement.get("verb").get("id").asText()));
            assertTrue(isIri(statement.get("object").get("id").asText()));
            assertTrue(
                    isIri(statement.get("object").get("definition").get("type").asText()));
            JsonNode score = statement.get("result").get("score");
            assertTrue(Math.abs(score.get("scaled").asDouble()) <= 1);
            assertTrue(score.get("raw").asDouble() >= score.get("min").asDouble());
            assertTrue(score.get("raw").asDouble() <= score.get("max").asDouble());
            assertEquals("PT1M35.5S", statement.get("result").get("duration").asText());
            assertEquals(NOW, Instant.parse(statement.get("timestamp").asText()));
            statement.get("result").get("extensions").fieldNames().forEachRemaining(key -> assertTrue(isIri(key)));
            assertFalse(statement.has("version"), "the store sets it");
        }
        assertEquals(
                text,
                new XapiStatements()
                        .of(List.of(
                                record("Ada", EventKind.PINCH, EventKind.PINCH, 8),
                                record("Ben", EventKind.PINCH, null, 0))));
    }

    private static boolean isIri(String text) {
        return URI.create(text).isAbsolute();
    }

    @Test
    void summaryCountsWhatWasTakenForWhat() {
        ClassSummary summary = ClassSummary.of(List.of(
                record("Ada", EventKind.PINCH, EventKind.PINCH, 10),
                record("Ada", EventKind.PINCH, EventKind.PARTIAL_SHORT, 5),
                record("Ben", EventKind.PINCH, null, 0)));
        assertEquals(3, summary.attempts());
        assertEquals(0.5, summary.meanFraction(), 1e-12);
        assertEquals(1, summary.takenFor().get(EventKind.PINCH).get(EventKind.PARTIAL_SHORT));
        assertEquals(1, summary.takenFor().get(EventKind.PINCH).get(EventKind.PINCH));
        assertEquals(1, summary.missed().get(EventKind.PINCH));
        assertEquals(0.5, summary.byKind().get(EventKind.PINCH).meanSuccess(), 1e-12);
        assertEquals(2, summary.placeErrorsMetres().size());
    }
}
