package cablewright.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    @Test
    void badInputIsSaidInASentence() throws IOException {
        assertEquals(1, desk.run("read", "nowhere.s1p", "--velocity", "0.85").exit());
        assertEquals(2, desk.run("read", "nowhere.s1p").exit());
        Files.writeString(folder.resolve("broken.s1p"), "# GHz S RI R 50\n1.0 0.5\n");
        Desk.Ran broken = desk.run("read", "broken.s1p", "--velocity", "0.85");
        assertEquals(1, broken.exit());
        assertTrue(broken.err().contains("broken.s1p"), broken.err());
    }
}
