// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentReaderTest {

    private static final String SOUND =
            """
            {
              "format": "cablewright-cable",
              "version": 1,
              "cable": {
                "title": "quay camera",
                "runs": [{"type": "drop-6-foam", "lengthMetres": 133}],
                "events": [
                  {"kind": "splice", "id": "s1", "positionMetres": 31, "excessInductanceHenries": 2e-9,
                   "excessCapacitanceFarads": 0, "seriesResistanceOhms": 0.02},
                  {"kind": "pinch", "id": "p1", "startMetres": 84, "lengthMetres": 0.2, "depthFraction": 0.4,
                   "profile": "raised-cosine"}
                ],
                "farEnd": {"kind": "terminated", "load": {"joined": "series", "resistanceOhms": 75}},
                "celsius": 20
              }
            }
            """;

    @TempDir
    Path folder;

    private final DocumentReader reader = new DocumentReader();
    private final Schemas schemas = new Schemas();

    @Test
    void aSoundFileIsReadAndTheSchemaTakesItToo() throws LessonFormatException, IOException {
        Cable cable = reader.readCable(file(SOUND));

        assertEquals(133, cable.lengthMetres());
        assertEquals(2, cable.events().size());
        assertEquals(List.of(), schemas.faults(FileKind.CABLE, SOUND));
    }

    @Test
    void aByteOrderMarkIsPassedOver() throws LessonFormatException {
        assertEquals(FileKind.CABLE, parse("\uFEFF" + SOUND).kind());
    }

    @Test
    void aNegativeLengthIsRefusedWithPlaceValueAndWhatIsAllowed() {
        requireBothRefuse(
                SOUND.replace("133", "-133"),
                "cable.runs[0].lengthMetres is -133; allowed is above 0, at most 100000.");
    }

    @Test
    void anUnknownKindIsRefusedWithTheKindsThereAre() {
        String sentence = requireBothRefuse(
                SOUND.replace("\"pinch\"", "\"squeeze\""),
                "cable.events[1].kind is \"squeeze\"; it must be one of splice");
        assertTrue(sentence.contains("pinch"));
    }

    @Test
    void anUnknownFieldIsRefusedWithTheFieldsThereAre() {
        requireBothRefuse(
                SOUND.replace("\"celsius\"", "\"fahrenheit\": 68, \"celsius\""),
                "cable.fahrenheit is not a field that is known here; remove it, or use one of title, runs, events");
    }

    @Test
    void aMissingFieldIsNamed() {
        requireBothRefuse(
                SOUND.replace("\"depthFraction\": 0.4,", ""),
                "cable.events[1].depthFraction is missing; it must be given.");
        requireBothRefuse(SOUND.replace("\"kind\": \"splice\",", ""), "cable.events[0].kind is missing");
    }

    @Test
    void aWrongTypeOfValueIsRefused() {
        requireBothRefuse(
                SOUND.replace("133", "\"133 m\""), "cable.runs[0].lengthMetres is \"133 m\"; it must be a number");
        requireBothRefuse(
                SOUND.replace("\"quay camera\"", "5"), "cable.title is 5; it must be text in quotation marks.");
        requireBothRefuse(SOUND.replace("\"celsius\": 20", "\"celsius\": null"), "cable.celsius is null; give a value");
        requireBothRefuse(
                SOUND.replace("\"raised-cosine\"", "\"RAISED_COSINE\""), "it must be one of flat, raised-cosine");
    }

    @Test
    void anUnknownCableTypeIsRefusedWithTheNearestOnes() {
        String sentence = refusal(SOUND.replace("drop-6-foam", "drop-6-fome"));
        assertTrue(sentence.contains("cable.runs[0].type is \"drop-6-fome\""), sentence);
        assertTrue(sentence.contains("drop-6-foam"), sentence);
    }

    @Test
    void allProblemsAreToldAtOnce() {
        String spoilt = SOUND.replace("133", "-133").replace("\"depthFraction\": 0.4", "\"depthFraction\": 2");
        LessonFormatException refused = assertThrows(LessonFormatException.class, () -> parse(spoilt));

        assertEquals(2, refused.problems().size());
        assertEquals("cable.events[1].depthFraction", refused.problems().get(1).path());
        assertTrue(refused.getMessage().endsWith("(and 1 more)"), refused.getMessage());
    }

    @Test
    void aFullOpenWithAResistanceIsToldToBePartial() {
        String open = "{\"kind\": \"open\", \"id\": \"o\", \"positionMetres\": 50, \"seriesResistanceOhms\": 5}";
        requireBothRefuse(withEvent(open), "cable.events[0].kind is \"open\"; a full one has no resistance");
        String partial = "{\"kind\": \"partial-short\", \"id\": \"o\", \"positionMetres\": 50}";
        requireBothRefuse(
                withEvent(partial), "cable.events[0].kind is \"partial-short\"; a partial one needs its resistance");
    }

    @Test
    void whatCanNotBeDoneToATypeIsRefused() {
        String spread = "{\"kind\": \"spread-pair\", \"id\": \"o\", \"startMetres\": 50, \"lengthMetres\": 1,"
                + " \"spacingFactor\": 2, \"profile\": \"flat\"}";
        String sentence = refusal(withEvent(spread));
        assertTrue(sentence.contains("cable.events[0] can't be done to type \"drop-6-foam\""), sentence);
        String warm =
                refusal(SOUND.replace("drop-6-foam", "lossless-75").replace("\"celsius\": 20", "\"celsius\": 25"));
        assertTrue(warm.contains("celsius is 25"), warm);
    }

    @Test
    void notANumberAndInfinityAreRefused() {
        assertTrue(refusal(SOUND.replace("133", "NaN")).contains("NaN and infinity are no numbers of JSON"));
        assertTrue(refusal(SOUND.replace("133", "-Infinity")).contains("line 6"));
        assertTrue(refusal(SOUND.replace("133", "1e999")).contains("cable.runs[0].lengthMetres"));
    }

    @Test
    void aFieldThatIsThereTwiceIsRefused() {
        assertTrue(refusal(SOUND.replace("\"celsius\": 20", "\"celsius\": 20, \"celsius\": 21"))
                .contains("celsius"));
    }

    @Test
    void aTruncatedFileIsToldToBeCutOff() {
        for (int cut : new int[] {1, 40, 200, SOUND.length() - 5}) {
            assertTrue(refusal(SOUND.substring(0, cut)).contains("ends in the middle"), SOUND.substring(0, cut));
        }
    }

    @Test
    void aFileThatGoesOnAfterItsEndIsRefused() {
        assertTrue(refusal(SOUND + "{}").contains("not sound JSON"));
    }

    @Test
    void aNewerVersionIsRefusedInASentence() {
        assertEquals(
                "test: this file has version 2 and was written by a newer program; this program reads up to version 1:"
                        + " update it.",
                refusal(SOUND.replace("\"version\": 1", "\"version\": 2")));
        assertTrue(refusal(SOUND.replace("\"version\": 1", "\"version\": 99999999999999999999"))
                .contains("newer"));
        assertTrue(
                refusal(SOUND.replace("\"version\": 1", "\"version\": \"1\"")).contains("whole number"));
        assertTrue(refusal(SOUND.replace("\"version\": 1,", "")).contains("no field \"version\""));
    }

    @Test
    void anotherKindOfFileIsRefused() throws IOException {
        assertTrue(refusal("[1, 2]").contains("holds a list of 2"));
        assertTrue(refusal("{\"a\": 1}").contains("no field \"format\""));
        assertTrue(refusal("{\"format\": \"other\"}").contains("cablewright-lesson"));
        assertTrue(refusal("PK\u0003\u0004").contains("not sound JSON"));
        Path file = file(SOUND);
        LessonFormatException wrong = assertThrows(LessonFormatException.class, () -> reader.readLesson(file));
        assertTrue(wrong.getMessage().contains("a file with the format cablewright-lesson is wanted here"));
    }

    @Test
    void whatIsNoTextInUtf8IsRefused() {
        byte[] bytes = SOUND.replace("quay", "qüay").getBytes(StandardCharsets.ISO_8859_1);
        LessonFormatException refused = assertThrows(LessonFormatException.class, () -> reader.parse("test", bytes));
        assertTrue(refused.getMessage().contains("UTF-8"));
        byte[] wide = SOUND.getBytes(StandardCharsets.UTF_16);
        assertThrows(LessonFormatException.class, () -> reader.parse("test", wide));
    }

    @Test
    void anEmptyFileAFolderAndAMissingFileAreToldApart() throws IOException {
        assertTrue(refusal("").contains("is empty"));
        assertTrue(refusalOf(folder).contains("is a folder"));
        assertTrue(refusalOf(folder.resolve("no-such-file.json")).contains("does not exist"));
    }

    @Test
    void aHugeFileIsRefusedUnread() throws IOException {
        Path huge = folder.resolve("huge.json");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(2L << 30);
        }
        assertTrue(refusalOf(huge).contains("has 2147483648 bytes; at most 8388608 are allowed"));
    }

    @Test
    void aCableOfTenMillionElementsIsRefusedBySize() throws IOException {
        Path large = folder.resolve("large.json");
        String event = "{\"kind\": \"open\", \"id\": \"o\", \"positionMetres\": 50},\n";
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.write(
                    SOUND.substring(0, SOUND.indexOf("{\"kind\": \"splice\"")).getBytes(StandardCharsets.UTF_8));
            file.setLength(file.length() + 10_000_000L * event.length());
        }
        assertTrue(refusalOf(large).contains("bytes; at most 8388608 are allowed"));
    }

    @Test
    void aCableOfMoreEventsThanAllowedIsRefusedInWords() {
        StringBuilder events = new StringBuilder();
        for (int i = 0; i < 15_000; i++) {
            events.append(i == 0 ? "" : ",\n")
                    .append("{\"kind\": \"open\", \"id\": \"o")
                    .append(i)
                    .append("\", \"positionMetres\": 50}");
        }
        assertTrue(refusal(withEvent(events.toString()))
                .contains("cable.events has 15000 entries; allowed is 0 to 10000"));
        assertTrue(refusal(withEvent("1" + ",1".repeat(3_000_000))).contains("is not like any file of ours"));
    }

    @Test
    void deepNestingIsRefused() {
        String deep = "[".repeat(5_000) + "]".repeat(5_000);
        assertTrue(refusal(SOUND.replace("\"quay camera\"", deep)).contains("nesting may go 64 deep"));
    }

    @Test
    void longTextsAreShortenedAndControlCharactersKeptFromTheTerminal() {
        String sentence = refusal(SOUND.replace("drop-6-foam", "\\u001b[31m" + "x".repeat(5_000)));
        assertFalse(sentence.contains("\u001b"));
        assertTrue(sentence.length() < 500, sentence);
        assertTrue(refusal(SOUND.replace("quay camera", "x".repeat(30_000))).contains("is not like any file of ours"));
    }

    @Test
    void twoEventsOfOneNameAreRefused() {
        assertTrue(refusal(SOUND.replace("\"p1\"", "\"s1\"")).contains("id \"s1\" is used by two events"));
    }

    @Test
    void aTypeThatTheFileBringsAlongGoesBeforeTheCatalogue() throws LessonFormatException {
        String type =
                """
                "types": [{"id": "drop-6-foam", "title": "Ours", "family": "reference", "source": "invented",
                  "section": {"kind": "constants", "resistanceOhmsPerMetre": 0, "inductanceHenriesPerMetre": 2.5e-7,
                    "skinOhmsPerMetrePerRootRadian": 0, "conductanceSiemensPerMetre": 0,
                    "capacitanceFaradsPerMetre": 1e-10},
                  "nominalImpedanceOhms": 50, "nominalVelocityFraction": 0.667}],
                """;
        String pinched = SOUND.replace("\"cable\": {", type + "\"cable\": {");
        assertTrue(refusal(pinched).contains("can't be done to type \"drop-6-foam\""));
        String plain = withEvent("").replace("\"cable\": {", type + "\"cable\": {");
        Cable cable = ((Document.OfCable) parse(plain)).cable();

        assertEquals(50, cable.runs().get(0).type().section().impedanceOhms(), 1e-9);
        assertEquals(List.of(), schemas.faults(FileKind.CABLE, plain));
    }

    private static String withEvent(String events) {
        int from = SOUND.indexOf("{\"kind\": \"splice\"");
        int to = SOUND.indexOf("]", from);
        return SOUND.substring(0, from) + events + "\n    " + SOUND.substring(to);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("file.json"), text);
    }

    private Document parse(String text) throws LessonFormatException {
        return reader.parse("test", text.getBytes(StandardCharsets.UTF_8));
    }

    private String refusal(String text) {
        String message =
                assertThrows(LessonFormatException.class, () -> parse(text)).getMessage();
        assertTrue(message.startsWith("test: "), message);
        return message;
    }

    private String refusalOf(Path path) {
        return assertThrows(LessonFormatException.class, () -> reader.read(path))
                .getMessage();
    }

    private String requireBothRefuse(String text, String part) {
        String sentence = refusal(text);
        assertTrue(sentence.contains(part), sentence);
        assertFalse(schemas.faults(FileKind.CABLE, text).isEmpty(), sentence);
        return sentence;
    }
}
