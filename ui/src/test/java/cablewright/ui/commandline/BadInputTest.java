// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Command;

/** Whatever is wrong is said in one plain sentence, with nothing half-written and no stack trace. */
class BadInputTest {

    @TempDir
    private Path folder;

    private Desk desk;
    private String sound;

    @BeforeEach
    void writeCable() throws IOException {
        desk = new Desk(folder);
        sound = Files.readString(desk.write("camera.json", Samples.camera()));
    }

    private void refused(Desk.Ran ran, int exit, String... said) throws IOException {
        assertEquals(exit, ran.exit(), ran.err());
        for (String part : said) {
            assertTrue(
                    ran.err().contains(part) || ran.out().contains(part),
                    "no \"" + part + "\" in: " + ran.err() + ran.out());
        }
        assertFalse(ran.err().contains("Exception"), ran.err());
        assertFalse(ran.err().contains("\tat "), ran.err());
        assertFalse(desk.names().contains("out.csv"), "something was written");
        assertTrue(desk.names().stream().noneMatch(name -> name.endsWith(".part")), "something was half-written");
    }

    /** What a name or a title holds is shown, and does nothing (ECMA-48, escape sequences). */
    @Test
    void namesOfFilesCanNotSteerTheTerminal() throws IOException {
        String name = "a\u001b[2J\u001b]0;owned\u0007\nb\u202ec.json";
        Desk.Ran missing = desk.run("trace", name);
        assertEquals(1, missing.exit());
        assertTrue(missing.err().contains("a\\u001b[2J\\u001b]0;owned\\u0007\\u000ab\\u202ec.json"), missing.err());
        Files.writeString(desk.file(name), sound);
        Desk.Ran checked = desk.run("check", name);
        assertEquals(0, checked.exit());
        assertTrue(
                (checked.err() + checked.out())
                        .chars()
                        .noneMatch(c -> c != '\n' && Character.isISOControl(c) || c == 0x202e),
                checked.err() + checked.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "trace", "explain", "records", "read", "mark"})
    void devicesAndPipesAreRefusedInsteadOfReadForever(String command) throws IOException, InterruptedException {
        Path pipe = desk.file("pipe.csv");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        for (String file : List.of("/dev/zero", pipe.toString())) {
            String[] line =
                    switch (command) {
                        case "mark" -> new String[] {command, "built-in", file};
                        case "read" -> new String[] {command, file, "--velocity", "0.8"};
                        default -> new String[] {command, file};
                    };
            refused(desk.run(line), 1, "is a device or a pipe");
        }
    }

    @Test
    void sheetThatNoCableMeetsIsRefusedWithWhatIsLeft() throws IOException {
        for (String ohms : List.of("5000", "600")) {
            Desk.Ran ran = trace(
                    """
                    {"format": "cablewright-cable", "version": 1,
                     "types": [{"id": "odd", "title": "Odd", "family": "coax-drop", "source": "invented",
                       "nominalImpedanceOhms": 75, "nominalVelocityFraction": 0.8, "publishedAttenuation": [],
                       "section": {"kind": "data-sheet", "layout": "coax", "impedanceOhms": %s, "velocityFraction": 0.8,
                         "attenuation": [{"frequencyHertz": 1e7, "decibelPerMetre": 0.02},
                                         {"frequencyHertz": 1e8, "decibelPerMetre": 0.07}]}}],
                     "cable": {"title": "odd", "runs": [{"type": "odd", "lengthMetres": 100}], "events": [],
                       "farEnd": {"kind": "open"}, "celsius": 20}}
                    """
                            .formatted(ohms));
            refused(ran, 1, "bad.json", "types[0].section", "attenuation fits no cable");
            assertFalse(ran.err().contains("NaN"), ran.err());
        }
    }

    @Test
    void helpThatCanNotBeWrittenIsAFault() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        int exit = new Program(desk.surroundings("", full, err), Desk.noDesktop()).run("--help");
        assertEquals(1, exit);
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("standard output can't be written"));
    }

    private Desk.Ran trace(String content) throws IOException {
        Files.writeString(desk.file("bad.json"), content);
        return desk.run("trace", "bad.json", "--out", "out.csv");
    }

    @Test
    void aNegativeLengthIsToldWithFilePlaceValueAndWhatIsAllowed() throws IOException {
        Desk.Ran ran = trace(sound.replace("\"lengthMetres\": 133", "\"lengthMetres\": -133"));
        refused(ran, 1, "bad.json", "cable.runs[0].lengthMetres", "-133", "above 0");
    }

    @Test
    void anUnknownKindIsToldWithThoseThereAre() throws IOException {
        Desk.Ran ran = trace(sound.replace("\"kind\": \"pinch\"", "\"kind\": \"pintch\""));
        refused(ran, 1, "bad.json", "cable.events[1]", "pintch", "pinch");
    }

    @Test
    void aTruncatedFileIsToldAsOne() throws IOException {
        refused(trace(sound.substring(0, sound.length() / 2)), 1, "bad.json", "ends in the middle");
    }

    @Test
    void anUnknownFieldIsTold() throws IOException {
        refused(trace(sound.replace("\"celsius\"", "\"kelvin\"")), 1, "bad.json", "kelvin");
    }

    @Test
    void aFileOfTwoGigabytesIsRefusedWithoutReadingIt() throws IOException {
        try (RandomAccessFile sparse =
                new RandomAccessFile(desk.file("huge.json").toFile(), "rw")) {
            sparse.setLength(2L << 30);
        }
        refused(desk.run("trace", "huge.json", "--out", "out.csv"), 1, "huge.json", "2147483648", "at most");
    }

    @Test
    void aCableOfTenMillionElementsIsRefused() throws IOException {
        String event = "{\"kind\":\"splice\",\"id\":\"s%d\",\"positionMetres\":1,\"excessInductanceHenries\":0,"
                + "\"excessCapacitanceFarads\":0,\"seriesResistanceOhms\":0}";
        int head = sound.indexOf("\"events\": [") + "\"events\": [".length();
        int tail = sound.indexOf("],\n    \"farEnd\"");
        try (var out = Files.newBufferedWriter(desk.file("many.json"))) {
            out.write(sound.substring(0, head));
            for (int i = 0; i < 10_000_000; i++) {
                out.write(i == 0 ? "" : ",");
                out.write(i % 100_000 == 0 ? event.formatted(i) : "0");
            }
            out.write(sound.substring(tail));
        }
        refused(desk.run("trace", "many.json", "--out", "out.csv"), 1, "many.json", "at most");
        Files.delete(desk.file("many.json"));
    }

    @Test
    void aConditionOfTooManyPiecesIsRefusedByTheSimulatorInASentence() throws IOException {
        String uneven = "{\"kind\": \"unevenness\"";
        assertFalse(sound.contains(uneven));
        Desk.Ran ran = desk.run("trace", "camera.json", "--pulse", "1ps", "--range", "100km", "--out", "out.csv");
        refused(ran, 1, "camera.json", "choose a shorter range");
    }

    @Test
    void aMissingFileAFolderAndAFileOfAnotherKindAreTold() throws IOException {
        refused(desk.run("trace", "nowhere.json", "--out", "out.csv"), 1, "nowhere.json", "does not exist");
        Files.createDirectory(desk.file("folder"));
        refused(desk.run("trace", "folder", "--out", "out.csv"), 1, "folder");
        Files.write(desk.file("noise.json"), new byte[] {1, 2, 3, (byte) 0xff});
        refused(desk.run("trace", "noise.json", "--out", "out.csv"), 1, "noise.json");
        Files.createFile(desk.file("empty.json"));
        refused(desk.run("trace", "empty.json", "--out", "out.csv"), 1, "empty.json", "is empty");
    }

    @ParameterizedTest
    @CsvSource({
        "--pulse, 2, has no unit",
        "--range, 150, has no unit",
        "--bandwidth, 1, has no unit",
        "--source, 75, has no unit",
        "--pulse, 2parsec, parsec",
        "--velocity, 85, faster than light",
        "--velocity, 0.01, allowed is 0.05 to 1",
        "--pulse, -2ns, allowed is 1ps to 10ms",
        "--range, -5m, allowed is 0.1m to 200km",
        "--points, 1, allowed is 2 to 1000000",
        "--points, many, many",
        "--averages, 0, allowed is 1 to 65536",
        "--gain, 100dB, allowed is 0dB to 80dB",
        "--end, middle, middle",
        "--shape, square, square",
        "--shape, raised-cosine, is for a step",
        "--edge, 1ns, is for --shape rectangular",
        "--format, gif, gif",
        "--colour, red, --colour"
    })
    void aWrongOptionIsUsageAndSaysWhatIsAllowed(String option, String value, String said) throws IOException {
        refused(desk.run("trace", "camera.json", option, value, "--out", "out.csv"), 2, said);
    }

    @Test
    void optionsThatExcludeEachOtherAreUsage() throws IOException {
        refused(
                desk.run("trace", "camera.json", "--pulse", "2ns", "--step", "1ns", "--out", "out.csv"),
                2,
                "exclude each other");
    }

    @Test
    void anUnknownCommandAndNoFileAreUsage() throws IOException {
        refused(desk.run("trase", "camera.json"), 2, "trase");
        refused(desk.run("trace"), 2, "CABLE");
        refused(desk.run("--quiet"), 2, "a command is missing");
    }

    @Test
    void aPlaceThatCantBeWrittenIsToldBeforeAnyWork() throws IOException {
        refused(desk.run("trace", "camera.json", "--out", "none/out.csv"), 1, "there is no folder");
        refused(desk.run("trace", "camera.json", "--out", folder.toString()), 1, "is a folder");
        refused(desk.run("trace", "camera.json", "--out", "camera.json"), 1, "is the file that is read");
        assertEquals(sound, Files.readString(desk.file("camera.json")));
    }

    @Test
    void whatWasThereBeforeIsReplacedWhole() throws IOException {
        Files.writeString(desk.file("trace.csv"), "old");
        assertEquals(
                0,
                desk.run("trace", "camera.json", "--points", "5", "--out", "trace.csv")
                        .exit());
        assertTrue(Files.readString(desk.file("trace.csv")).startsWith("time_s"));
        assertEquals(List.of("camera.json", "trace.csv"), desk.names());
    }

    /** A stream whose reader has gone, as in a pipe to 'head'. */
    private static OutputStream failing(String message) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(message);
            }
        };
    }

    @Test
    void aReaderThatStopsReadingIsNoFault() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new Program(desk.surroundings("", failing("Broken pipe"), err), Desk.noDesktop())
                .run("trace", "camera.json", "--quiet");
        assertEquals(0, exit);
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aFullDiskIsTold() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new Program(desk.surroundings("", failing("No space left on device"), err), Desk.noDesktop())
                .run("trace", "camera.json", "--quiet");
        assertEquals(1, exit);
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("No space left on device"));
    }

    /** A command with a fault in it. */
    @Command
    static final class Faulty implements Callable<Integer> {
        @Override
        public Integer call() {
            throw new IllegalStateException("a wheel came off");
        }
    }

    @Test
    void aFaultOfOursEndsWithSeventyAndLeavesAReportButNoStackTrace() throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new Program(desk.surroundings("", OutputStream.nullOutputStream(), err), Desk.noDesktop())
                .with("faulty", new Faulty())
                .run("faulty");
        String said = err.toString(StandardCharsets.UTF_8);
        assertEquals(70, exit);
        assertFalse(said.contains("\tat "), said);
        String report = desk.names().stream()
                .filter(name -> name.startsWith("cablewright-fault-"))
                .findFirst()
                .orElseThrow();
        assertTrue(said.contains(report), said);
        assertTrue(Files.readString(desk.file(report)).contains("a wheel came off"));
    }
}
