// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.ui.commandline.Samples;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Shards of a study as processes of their own, started by a scheduler, and killed. */
@EnabledOnOs(OS.LINUX)
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class StudyShardsIT {

    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final Path PROGRAM = Path.of("target", "cablewright.jar").toAbsolutePath();
    private static final String DEPTHS = "/cable/events/p1/depthFraction=0.2..0.8:6";
    private static final String PULSES = "pulse=2ns..50ns:4:log";

    /** Makes the run so long that it can't end between its first row and the kill. */
    private static final String MORE = "averages=1..4000:25:log";

    private static final int ROWS = 6 * 4 * 25;
    private static final int KILLED = 128 + 9;

    @TempDir
    private Path folder;

    @BeforeEach
    void writeCable() throws IOException {
        Files.write(folder.resolve("camera.json"), new DocumentWriter().bytes(new Document.OfCable(Samples.camera())));
    }

    private static List<String> study(String... more) {
        List<String> command = new ArrayList<>(List.of(
                JAVA.toString(),
                "-jar",
                PROGRAM.toString(),
                "study",
                "camera.json",
                "--event",
                "p1",
                "--vary",
                DEPTHS,
                "--vary",
                PULSES));
        command.addAll(List.of(more));
        return command;
    }

    private Process started(List<String> command) throws IOException {
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
    }

    private void run(List<String> command) throws IOException, InterruptedException {
        Process process = started(command);
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
    }

    private byte[] whole() throws IOException, InterruptedException {
        run(study("--out", "whole.csv"));
        return Files.readAllBytes(folder.resolve("whole.csv"));
    }

    private static boolean hasGnuParallel() throws IOException, InterruptedException {
        boolean there = Arrays.stream(System.getenv("PATH").split(":"))
                .anyMatch(place -> Files.isExecutable(Path.of(place, "parallel")));
        if (!there) {
            return false;
        }
        Process asked = new ProcessBuilder("parallel", "--version")
                .redirectErrorStream(true)
                .start();
        String said = new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return asked.waitFor() == 0 && said.contains("GNU parallel");
    }

    @Test
    void shardsUnderGnuParallelMergeToWhatOneRunWrites() throws IOException, InterruptedException {
        assumeTrue(
                hasGnuParallel() || System.getenv("CI") != null,
                "GNU parallel is not here; install the Debian package 'parallel' to run this test");
        List<String> command = new ArrayList<>(List.of("parallel", "--will-cite", "--jobs", "2"));
        command.addAll(study("--shard", "{}/4", "--out", "part-{}.csv"));
        command.addAll(List.of(":::", "1", "2", "3", "4"));
        run(command);
        run(List.of(
                JAVA.toString(),
                "-jar",
                PROGRAM.toString(),
                "study",
                "merge",
                "part-4.csv",
                "part-2.csv",
                "part-1.csv",
                "part-3.csv",
                "--out",
                "merged.csv"));
        assertArrayEquals(whole(), Files.readAllBytes(folder.resolve("merged.csv")));
    }

    @Test
    void runThatIsKilledGoesOnToTheSameBytes() throws IOException, InterruptedException {
        Process killed = started(study("--vary", MORE, "--out", "killed.csv"));
        Path results = folder.resolve("killed.csv");
        while (killed.isAlive() && rows(results) < 1) {
            Thread.sleep(5);
        }
        int exit = killed.destroyForcibly().waitFor();
        long done = rows(results);
        assertEquals(KILLED, exit, "the run was killed, not finished");
        assertTrue(done >= 1 && done < ROWS, done + " of " + ROWS + " rows were there when it was killed");
        run(study("--vary", MORE, "--out", "killed.csv"));
        assertEquals(ROWS, rows(results));
        run(study("--vary", MORE, "--out", "whole.csv"));
        assertArrayEquals(Files.readAllBytes(folder.resolve("whole.csv")), Files.readAllBytes(results));
    }

    private static long rows(Path results) throws IOException {
        if (!Files.exists(results)) {
            return 0;
        }
        try (Stream<String> lines = Files.lines(results, StandardCharsets.UTF_8)) {
            return lines.filter(line -> Character.isDigit(line.isEmpty() ? '#' : line.charAt(0)))
                    .count();
        }
    }
}
