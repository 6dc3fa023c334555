// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exam.ExamSamples;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a sitting again and again, at any moment; what it said was kept is there when it is taken up. */
class SittingKillTest {

    /** {@code -Dcablewright.kills=200} for more. */
    private static final int KILLS = Integer.getInteger("cablewright.kills", 12);

    private static final int MOST_FLAGS = 150;

    @TempDir
    private Path folder;

    @Test
    void nothingThatWasKeptIsLostByAKill() throws Exception {
        Path paper = folder.resolve("paper.json");
        Path kept = folder.resolve("sitting.json");
        Files.write(paper, ExamSamples.paper());
        Random moments = new Random(3);
        int before = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            before = sitAndKill(paper, kept, before, 1 + moments.nextInt(12), moments.nextInt(3_000_000));
        }
    }

    /** Waits for some flags, then a moment of up to 3 ms more, and kills. Returns how many flags were kept for certain. */
    private int sitAndKill(Path paper, Path kept, int before, int flags, int nanosMore)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledSitting.class.getName(),
                        paper.toString(),
                        kept.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int certain = before;
        try (BufferedReader said = process.inputReader()) {
            String line = said.readLine();
            assertTrue(line != null && line.startsWith("has "), "it did not start: " + line);
            int has = Integer.parseInt(line.substring(4));
            // It may have kept one more than it came to say.
            assertTrue(has == before || has == before % MOST_FLAGS + 1, "kept " + before + ", found " + has);
            for (int i = 0; i < flags; i++) {
                line = said.readLine();
                assertTrue(line != null && line.startsWith("kept "), "it ended by itself: " + line);
            }
            long until = System.nanoTime() + nanosMore;
            while (System.nanoTime() < until) {
                Thread.onSpinWait();
            }
            // By its handle: that of the process would close its streams before they are read to the end.
            process.toHandle().destroyForcibly();
            for (; line != null; line = said.readLine()) {
                certain = line.matches("kept [0-9]+") ? Integer.parseInt(line.substring(5)) : certain;
            }
        }
        assertEquals(137, process.waitFor());
        return certain;
    }
}
