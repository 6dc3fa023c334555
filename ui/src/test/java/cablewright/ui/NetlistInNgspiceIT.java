// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the help of {@code netlist} says, done word for word: write the netlist, run it in ngspice, and read the port voltage off
 * what ngspice prints. It is held against {@code trace} of the same cable. ngspice is installed with the packages of the tests.
 */
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class NetlistInNgspiceIT {

    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final Path PROGRAM = Path.of("target", "cablewright.jar").toAbsolutePath();
    private static final String CABLE =
            """
            {"format": "cablewright-cable", "version": 1, "cable": {"title": "Two lengths and a leak",
             "runs": [{"type": "lossless-75", "lengthMetres": 12}, {"type": "lossless-50", "lengthMetres": 9}],
             "events": [{"kind": "partial-short", "id": "leak", "positionMetres": 7, "shuntResistanceOhms": 200}],
             "farEnd": {"kind": "open"}, "celsius": 20}}
            """;

    @TempDir
    private Path folder;

    private String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), () -> command + " ended badly; it printed " + out);
        return out;
    }

    private String program(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(JAVA.toString(), "-jar", PROGRAM.toString()));
        command.addAll(List.of(arguments));
        return run(command);
    }

    @Test
    void netlistRunAsItsHelpSaysPrintsThePortVoltageOfTheTrace() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("line.json"), CABLE);
        program("netlist", "line.json", "--pulse", "5ns", "--range", "30m", "--out", "line.cir");
        List<double[]> theirs = run(List.of("ngspice", "-b", "line.cir"))
                .lines()
                .filter(line -> line.matches("\\d+\\s+\\S+\\s+\\S+\\s*"))
                .map(line -> Arrays.stream(line.strip().split("\\s+"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        List<double[]> ours = program("trace", "line.json", "--pulse", "5ns", "--range", "30m", "--points", "2001")
                .lines()
                .filter(line -> line.matches("[-0-9].*"))
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        assertTrue(theirs.size() > 500, "ngspice printed " + theirs.size() + " rows");
        int compared = 0;
        for (double[] our : ours) {
            double time = our[0];
            int after = 0;
            while (after < theirs.size() && theirs.get(after)[1] < time) {
                after++;
            }
            if (after == 0 || after == theirs.size()) {
                continue;
            }
            double[] left = theirs.get(after - 1);
            double[] right = theirs.get(after);
            double share = (time - left[1]) / (right[1] - left[1]);
            assertEquals(left[2] + share * (right[2] - left[2]), our[2], 2e-3, () -> "at " + time + " s");
            compared++;
        }
        assertTrue(compared > 1500, "only " + compared + " points could be compared");
    }
}
