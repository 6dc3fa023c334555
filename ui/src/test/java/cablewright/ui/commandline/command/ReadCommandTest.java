// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files read back against the closed forms of a lossless line of 75 Ω, 100 m at 0.85, ended by 150 Ω: ρ = 1/3. */
class ReadCommandTest {

    private static final Path MEASURED = Path.of(
            "../simulator/src/test/resources/cablewright/simulator/exchange/measured-stepped-line/stepped-line.s2p");

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void writeCables() throws IOException {
        desk = new Desk(folder);
        desk.write("reference.json", Samples.reference(150));
    }

    private static List<double[]> rows(String csv) {
        return csv.lines()
                .skip(1)
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    @Test
    void sweepIsShownAsAReflectometerWouldShowTheLine() {
        desk.run(
                "response",
                "reference.json",
                "--from",
                "200kHz",
                "--to",
                "400MHz",
                "--points",
                "2000",
                "--out",
                "line.s1p");
        Desk.Ran ran = desk.run(
                "read", "line.s1p", "--velocity", "0.85", "--step", "20ns", "--noise", "0V", "--range", "150m");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().startsWith("time_s,distance_m,trace_v\n"), ran.out());
        assertTrue(ran.err().contains("estimated"), ran.err());
        for (double[] row : rows(ran.out())) {
            if (row[1] > 10 && row[1] < 95) {
                assertEquals(0, row[2], 0.01);
            } else if (row[1] > 106 && row[1] < 140) {
                assertEquals(1.0 / 3, row[2], 0.01);
            }
        }
    }

    @Test
    void exportedTraceKeepsItsValuesAndGetsTheAxisAsked() {
        desk.run("trace", "reference.json", "--step", "5ns", "--points", "501", "--out", "trace.csv");
        List<double[]> first = rows(read("trace.csv"));
        Desk.Ran ran = desk.run("read", "trace.csv", "--velocity", "0.425");
        assertEquals(0, ran.exit(), ran.err());
        List<double[]> again = rows(ran.out());
        assertEquals(first.size(), again.size());
        for (int i = 0; i < first.size(); i++) {
            assertEquals(first.get(i)[3], again.get(i)[2], 1e-9, "the wave that came back");
            assertEquals(first.get(i)[0] * 0.425 * 299_792_458.0 / 2, again.get(i)[1], 1e-6);
        }
    }

    private String read(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void whatTheSweepCannotTellIsRefusedInWords() {
        desk.run(
                "response",
                "reference.json",
                "--from",
                "200kHz",
                "--to",
                "40MHz",
                "--points",
                "200",
                "--out",
                "slow.s1p");
        Desk.Ran ran = desk.run("read", "slow.s1p", "--velocity", "0.85", "--pulse", "1ns");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("wider pulse"), ran.err());
    }

    private void sweep(String cable, String out, String... more) {
        List<String> words = new java.util.ArrayList<>(
                List.of("response", cable, "--from", "200kHz", "--to", "400MHz", "--points", "2000", "--out", out));
        words.addAll(List.of(more));
        desk.run(words.toArray(String[]::new));
    }

    /** 100 m of 75 ohm ended by 150 ohm (the sample): both come out, the end where it is. */
    @Test
    void impedanceOfASweepIsThatOfTheLineAndOfItsEnd() {
        sweep("reference.json", "line.s1p");
        String[] read = {"read", "line.s1p", "--velocity", "0.85", "--noise", "0V", "--range", "120m", "--impedance"};
        List<String> step = new java.util.ArrayList<>(List.of(read));
        step.addAll(List.of("--step", "20ns", "--format", "csv"));
        Desk.Ran ran = desk.run(step.toArray(String[]::new));
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.err().contains("loss on the way lifts the impedance"), ran.err());
        String[] lines = ran.out().split("\n");
        assertEquals("start_s,start_m,end_m,impedance_ohm", lines[0]);
        int ofLine = 0;
        int ofEnd = 0;
        for (String line : List.of(lines).subList(1, lines.length)) {
            String[] cells = line.split(",");
            double ohms = Double.parseDouble(cells[3]);
            if (Double.parseDouble(cells[2]) < 99) {
                assertEquals(75, ohms, 0.75, line);
                ofLine++;
            } else if (Double.parseDouble(cells[1]) > 101) {
                assertEquals(150, ohms, 3, line);
                ofEnd++;
            }
        }
        assertTrue(ofLine >= 15 && ofEnd >= 2, ofLine + " layers of line and " + ofEnd + " of its end");

        Desk.Ran pulse = desk.run(read);
        assertEquals(2, pulse.exit());
        assertTrue(pulse.err().contains("--impedance needs a step"), pulse.err());
    }

    /** ρ = 1/3 at 100 m, and nothing else. */
    @Test
    void candidatesOfASweepAreListedWithTheirDoubt() {
        sweep("reference.json", "line.s1p");
        Desk.Ran ran = desk.run(
                "read",
                "line.s1p",
                "--velocity",
                "0.85",
                "--pulse",
                "20ns",
                "--noise",
                "0V",
                "--range",
                "150m",
                "--events",
                "--format",
                "csv");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().startsWith("distance_m,distance_uncertainty_m,time_s,"), ran.out());
        List<String[]> lines =
                ran.out().lines().skip(1).map(line -> line.split(",")).toList();
        assertEquals(1, lines.size(), ran.out());
        assertEquals(100, Double.parseDouble(lines.get(0)[0]), 0.3);
        assertEquals(1.0 / 3, Double.parseDouble(lines.get(0)[4]), 0.02);
        assertEquals("1", lines.get(0)[6]);
        assertEquals("up", lines.get(0)[7]);
        Desk.Ran text = desk.run(
                "read",
                "line.s1p",
                "--velocity",
                "0.85",
                "--pulse",
                "20ns",
                "--noise",
                "0V",
                "--range",
                "150m",
                "--events");
        assertTrue(text.out().contains("100"), text.out());
        assertTrue(text.out().contains("up"), text.out());
        Desk.Ran json = desk.run(
                "read",
                "line.s1p",
                "--velocity",
                "0.85",
                "--pulse",
                "20ns",
                "--noise",
                "0V",
                "--range",
                "150m",
                "--events",
                "--format",
                "json");
        assertTrue(json.out().contains("\"distance_uncertainty_m\""), json.out());
    }

    /** The line is alike from both ends but for its load, so each end shows the other at 100 m. */
    @Test
    void twoEndsAgreeOnTheLengthAndGiveTheVelocity() {
        sweep("reference.json", "near.s1p");
        Desk.Ran ran = desk.run(
                "read",
                "near.s1p",
                "--other-end",
                "near.s1p",
                "--velocity",
                "0.8",
                "--pulse",
                "20ns",
                "--noise",
                "0V",
                "--range",
                "140m",
                "--length",
                "100m",
                "--length-doubt",
                "0.1m");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().contains("velocity is 0.8"), ran.out());
        assertTrue(ran.out().contains("2 things agree"), ran.out());
    }

    @Test
    void differenceOfALineWithItselfIsNothing() {
        desk.run("trace", "reference.json", "--pulse", "5ns", "--points", "2001", "--out", "trace.csv");
        Desk.Ran ran = desk.run(
                "read", "trace.csv", "--against", "trace.csv", "--velocity", "0.85", "--pulse", "5ns", "--events");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.err().contains("don't part"), ran.err());
        assertTrue(ran.out().contains("Nothing stands out"), ran.out());
        assertEquals(
                2,
                desk.run("read", "trace.csv", "--velocity", "0.85", "--length", "5m")
                        .exit());
    }

    @Test
    void badInputIsSaidInASentence() throws IOException {
        assertEquals(1, desk.run("read", "nowhere.s1p", "--velocity", "0.85").exit());
        assertEquals(1, desk.run("read", "nowhere.s1p").exit());
        Files.writeString(folder.resolve("broken.s1p"), "# GHz S RI R 50\n1.0 0.5\n");
        Desk.Ran broken = desk.run("read", "broken.s1p", "--velocity", "0.85");
        assertEquals(1, broken.exit());
        assertTrue(broken.err().contains("broken.s1p"), broken.err());
    }

    /** The microstrip of 140 mm that the folder's licence describes; its substrate slows waves to about 0.55. */
    @Test
    void measuredSweepIsShownAsItIsWhereItsEnergyLies() throws IOException {
        Files.copy(MEASURED, folder.resolve("stepped-line.s2p"));
        Desk.Ran once = desk.run("read", "stepped-line.s2p", "--velocity", "0.55", "--seed", "1");
        Desk.Ran again = desk.run("read", "stepped-line.s2p", "--velocity", "0.55", "--seed", "2", "--noise", "0");
        assertEquals(0, once.exit(), once.err());
        assertEquals(once.out(), again.out(), "no noise is added unless it is asked for, and zero needs no unit");
        List<double[]> rows = rows(once.out());
        double last = rows.get(rows.size() - 1)[1];
        assertTrue(last > 0.2 && last < 2, "shown to " + last + " m");
        assertTrue(rows.size() > 1000, rows.size() + " points");
        String events = desk.run("read", "stepped-line.s2p", "--velocity", "0.55", "--events")
                .out();
        assertTrue(events.matches("(?s).*m  0\\.0*[1-9]\\d.m  .*"), "two digits of uncertainty: " + events);
    }

    @Test
    void velocityMayBeLeftOpen() {
        sweep("reference.json", "line.s1p");
        Desk.Ran open = desk.run("read", "line.s1p", "--range", "150m");
        assertEquals(0, open.exit(), open.err());
        assertTrue(open.err().contains("velocity of light"), open.err());
        double[] row = rows(open.out()).get(50);
        assertEquals(row[0] * 299_792_458.0 / 2, row[1], 1e-6);
    }
}
