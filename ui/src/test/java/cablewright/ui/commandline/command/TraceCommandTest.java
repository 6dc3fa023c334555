// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.SAXException;

class TraceCommandTest {

    private static final double LIGHT = 299_792_458.0;

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void writeCables() throws IOException {
        desk = new Desk(folder);
        desk.write("reference.json", Samples.reference(150));
        desk.write("camera.json", Samples.camera());
    }

    private static List<double[]> rows(String csv) {
        return csv.lines()
                .skip(1)
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    /** Half-sine as --help states it: sin(πt/D) with D = 3w/2. */
    private static double halfSine(double width, double t) {
        return t <= 0 || t >= 1.5 * width ? 0 : Math.sin(Math.PI * t / (1.5 * width));
    }

    /** Raised-cosine step as --help states it: T = 1.693956 r (1/0.590334, from arccos 0.8). */
    private static double step(double rise, double t) {
        double whole = rise * Math.PI / (Math.acos(-0.8) - Math.acos(0.8));
        return t <= 0 ? 0 : t >= whole ? 1 : (1 - Math.cos(Math.PI * t / whole)) / 2;
    }

    /**
     * The lattice (bounce) diagram of a lossless 75 ohm line of 100 m between two resistors: what comes back is
     * r f(t) + (1 − r²) g Σ (−r g)^k f(t − (k+1)T), a closed form by first principles.
     */
    private static double lattice(DoubleUnaryOperator sent, double source, double load, double t) {
        double r = (75 - source) / (75 + source);
        double g = (load - 75) / (load + 75);
        double back = r * sent.applyAsDouble(t);
        double size = (1 - r * r) * g;
        for (int k = 1; k < 50; k++) {
            back += size * sent.applyAsDouble(t - k * 2 * 100 / (0.85 * LIGHT));
            size *= -r * g;
        }
        return back;
    }

    @ParameterizedTest
    @CsvSource({"50ohm, 50", "75ohm, 75", "300ohm, 300"})
    void exactTraceOfAPulseIsThatOfTheLattice(String option, double source) {
        Desk.Ran ran = desk.run(
                "trace", "reference.json", "--pulse", "5ns", "--range", "430m", "--points", "1789", "--source", option);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(
                "time_s,distance_m,port_v,reflected_v",
                ran.out().lines().findFirst().orElseThrow());
        List<double[]> rows = rows(ran.out());
        assertEquals(1789, rows.size());
        for (double[] row : rows) {
            double back = lattice(t -> halfSine(5e-9, t), source, 150, row[0]);
            assertEquals(back, row[3], 1e-7, "at " + row[0]);
            assertEquals(back + halfSine(5e-9, row[0]), row[2], 1e-7, "at " + row[0]);
        }
    }

    @Test
    void exactTraceOfAStepIsThatOfTheLattice() {
        Desk.Ran ran = desk.run(
                "trace", "reference.json", "--step", "2ns", "--range", "350m", "--points", "2003", "--source", "20ohm");
        assertEquals(0, ran.exit(), ran.err());
        for (double[] row : rows(ran.out())) {
            assertEquals(lattice(t -> step(2e-9, t), 20, 150, row[0]), row[3], 1e-7, "at " + row[0]);
        }
    }

    @Test
    void timesAreEvenFromZeroAndTheLastDistanceIsTheRange() {
        Desk.Ran ran = desk.run("trace", "reference.json", "--pulse", "4ns", "--range", "500ft", "--points", "101");
        List<double[]> rows = rows(ran.out());
        double[] last = rows.get(100);
        assertEquals(0, rows.get(0)[0]);
        assertEquals(152.4, last[1], 1e-9);
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(i * last[0] / 100, rows.get(i)[0], 1e-12 * last[0]);
            // the outgoing half-sine of width w is at half height at w/4
            assertEquals((rows.get(i)[0] - 1e-9) * 0.85 * LIGHT / 2, rows.get(i)[1], 1e-9);
        }
    }

    @Test
    void numbersHaveAllDigitsOfTheirDoubles() {
        String csv = desk.run("trace", "camera.json", "--points", "50").out();
        csv.lines().skip(1).forEach(line -> {
            for (String cell : line.split(",")) {
                assertEquals(cell, Double.toString(Double.parseDouble(cell)));
            }
        });
    }

    @Test
    void fromTheFarEndThePinchIsAsFarAsTheCableIsLongLessItsPlace() {
        Desk.Ran ran = desk.run(
                "trace", "camera.json", "--end", "far", "--pulse", "2ns", "--range", "100m", "--points", "8001");
        double dip = rows(ran.out()).stream()
                .filter(row -> row[1] > 20 && row[1] < 90)
                .min((a, b) -> Double.compare(a[3], b[3]))
                .orElseThrow()[1];
        assertEquals(133 - 84.26, dip, 0.3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "json", "text", "png", "svg", "pdf"})
    void sameInputAndSeedGiveTheSameBytes(String format) {
        String[] command = {
            "trace", "camera.json", "--pulse", "5ns", "--averages", "16", "--seed", "5", "--format", format
        };
        assertArrayEquals(desk.run(command).bytes(), desk.run(command).bytes());
    }

    @Test
    void anotherSeedGivesOtherNoise() {
        String one = desk.run("trace", "camera.json", "--noise", "4mV", "--seed", "1")
                .out();
        String two = desk.run("trace", "camera.json", "--noise", "4mV", "--seed", "2")
                .out();
        assertNotEquals(one, two);
        assertEquals("time_s,distance_m,trace_v", one.lines().findFirst().orElseThrow());
    }

    @Test
    void noiseOfAReceiverIsAsLargeAsAskedAndAveragingLowersItByTheRoot() {
        double single = noise("1");
        assertEquals(0.01, single, 0.001);
        assertEquals(0.01 / 8, noise("64"), 0.001 / 8);
    }

    /** Root mean square of the trace where a matched line sends nothing back. */
    private double noise(String averages) {
        desk.run("check", "reference.json");
        Desk.Ran ran = desk.run(
                "trace", "camera.json", "--pulse", "2ns", "--noise", "10mV", "--averages", averages, "--range", "150m");
        List<double[]> quiet = rows(ran.out()).stream()
                .filter(row -> row[1] > 90 && row[1] < 130)
                .toList();
        double mean = quiet.stream().mapToDouble(row -> row[2]).average().orElseThrow();
        return Math.sqrt(quiet.stream()
                .mapToDouble(row -> (row[2] - mean) * (row[2] - mean))
                .average()
                .orElseThrow());
    }

    @Test
    void jsonTellsHowTheTraceWasTakenAndTheSameNumbersAsCsv() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(desk.run("trace", "camera.json", "--points", "60", "--format", "json")
                        .bytes());
        List<double[]> rows =
                rows(desk.run("trace", "camera.json", "--points", "60").out());
        assertEquals("Quay camera 3", json.get("cable").asText());
        assertEquals(75, json.get("source_ohm").asDouble());
        assertEquals(0.85, json.get("velocity_fraction").asDouble());
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(rows.get(i)[3], json.get("reflected_v").get(i).asDouble());
        }
    }

    @Test
    void picturesAreWholeFilesOfTheirKind() throws IOException, SAXException, ParserConfigurationException {
        for (String name : List.of("t.png", "t.svg", "t.pdf")) {
            Desk.Ran ran = desk.run("trace", "camera.json", "--out", name);
            assertEquals(0, ran.exit(), ran.err());
            assertEquals("", ran.out());
        }
        assertEquals(1440, ImageIO.read(desk.file("t.png").toFile()).getWidth());
        org.w3c.dom.Document svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(Files.readAllBytes(desk.file("t.svg"))));
        assertNotNull(svg.getElementsByTagName("polyline").item(0));
        try (var pdf = Loader.loadPDF(desk.file("t.pdf").toFile())) {
            assertTrue(new PDFTextStripper().getText(pdf).contains("Quay camera 3"));
        }
        assertEquals(List.of("camera.json", "reference.json", "t.pdf", "t.png", "t.svg"), desk.names());
    }

    @Test
    void quietSaysNothingAndOtherwiseWhatWasChosenIsSaid() {
        assertEquals(
                "",
                desk.run("trace", "camera.json", "--points", "10", "--quiet").err());
        String said = desk.run("trace", "camera.json", "--points", "10").err();
        assertTrue(said.contains("source 75 \u03a9") && said.contains("velocity 0.850"), said);
    }

    @Test
    void theExerciseFileServesForItsCable() throws IOException {
        desk.write("exercise.json", Samples.exercise());
        assertEquals(
                desk.run("trace", "camera.json", "--points", "20").out(),
                desk.run("trace", "exercise.json", "--points", "20").out());
    }

    @Test
    void aPlotInTextHasAnAxisInTheUnitAskedFor() {
        assertTrue(desk.run("trace", "camera.json", "--format", "text").out().contains("       m "));
        assertTrue(desk.run("trace", "camera.json", "--format", "text", "--feet")
                .out()
                .contains("      ft "));
        assertFalse(desk.run("trace", "camera.json", "--format", "text").out().contains("\u001b["));
    }

    private void writeSplitPair() throws IOException {
        Files.writeString(
                desk.file("pair.json"),
                """
                {"format": "cablewright-cable", "version": 1, "cable": {"title": "Pilot pair",
                 "runs": [{"type": "cat-5e", "lengthMetres": 60}],
                 "events": [{"kind": "split", "id": "s1", "startMetres": 20, "lengthMetres": 15,
                   "shape": {"layout": "twisted", "pitchOverSpacing": 2}, "putRight": true,
                   "neighbourNearEnd": "matched", "neighbourFarEnd": "matched"}],
                 "farEnd": {"kind": "terminated", "load": {"joined": "series", "resistanceOhms": 100}}, "celsius": 20}}
                """);
    }

    /**
     * Twisted pairs two spacings apart: even mode 1 + 2 ln 2/acosh(s/d) = 2.14 times the pair's impedance, odd mode the pair, so
     * (ρe − ρo)/2 = 0.18 is heard, less what loss takes, from the split to the re-split and not before.
     */
    @Test
    void crosstalkOfASplitIsHeardFromTheSplitToTheResplit() throws IOException {
        writeSplitPair();
        Desk.Ran answer = desk.run("trace", "pair.json", "--step", "2ns", "--crosstalk", "s1");
        assertEquals(0, answer.exit(), answer.err());
        assertTrue(
                answer.out().startsWith("time_s,distance_m,neighbour_v"),
                answer.out().substring(0, 60));
        double before = 0;
        double within = 0;
        double after = 0;
        for (double[] row : rows(answer.out())) {
            before = row[1] < 18 ? Math.max(before, Math.abs(row[2])) : before;
            within = row[1] > 26 && row[1] < 34 ? row[2] : within;
            after = row[1] > 45 ? row[2] : after;
        }
        assertTrue(before < 1e-3, "before " + before);
        assertEquals(0.17, within, 0.01);
        assertTrue(Math.abs(after) < 0.3 * within, "after " + after);
        Desk.Ran received = desk.run("trace", "pair.json", "--step", "2ns", "--crosstalk", "s1", "--averages", "4096");
        double[] heard = rows(received.out()).stream()
                .filter(row -> row[1] > 30 && row[1] < 30.2)
                .findFirst()
                .orElseThrow();
        assertEquals(0.17, heard[2], 0.01);
    }

    @Test
    void crosstalkOfWhatIsNoSplitIsRefused() throws IOException {
        writeSplitPair();
        Desk.Ran answer = desk.run("trace", "pair.json", "--crosstalk", "s2");
        assertEquals(1, answer.exit());
        assertTrue(answer.err().contains("no event \"s2\""), answer.err());
    }

    /** What a gradual change is taken in is said, with its error; a bend past the least radius too. */
    @Test
    void remarksTellWhereModelsAreStretched() throws IOException {
        Files.writeString(
                desk.file("bent.json"),
                """
                {"format": "cablewright-cable", "version": 1, "cable": {"title": "Bent feeder",
                 "runs": [{"type": "hardline-500", "lengthMetres": 60}],
                 "events": [{"kind": "kink", "id": "k1", "startMetres": 20, "lengthMetres": 0.3,
                   "bendRadiusMetres": 0.05, "profile": "raised-cosine"}],
                 "farEnd": {"kind": "open"}, "celsius": 20}}
                """);
        Desk.Ran ran = desk.run("trace", "bent.json", "--pulse", "5ns");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.err().contains("the bend has a radius of"), ran.err());
        assertTrue(ran.err().contains("millionths"), ran.err());
    }
}
