// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Several programs, threads and kills on one log. The long runs:
 *
 * <pre>mvn -pl lessons -am test -Dtest=SeveralWritersTest -Dsurefire.failIfNoSpecifiedTests=false \
 *     -Dcablewright.writers=10 -Dcablewright.records=1000 -Dcablewright.kills=250</pre>
 */
class SeveralWritersTest {

    private static final int WRITERS = Integer.getInteger("cablewright.writers", 3);
    private static final int RECORDS = Integer.getInteger("cablewright.records", 40);
    private static final int KILLS = Integer.getInteger("cablewright.kills", 3);

    @TempDir
    Path folder;

    private static Process start(Path log, String writer, int count) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        LogWriter.class.getName(),
                        log.toString(),
                        writer,
                        String.valueOf(count))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static void requireAll(Path log, int writers, int records) throws IOException {
        TraineeLog.Contents contents = new TraineeLog(log).read();
        assertEquals(List.of(), contents.faults());
        assertEquals(writers * records, contents.records().size());
        Set<AttemptRecord> all = new HashSet<>(contents.records());
        for (int w = 0; w < writers; w++) {
            for (int i = 0; i < records; i++) {
                assertTrue(all.contains(LogWriter.numbered("w" + w, i)), "writer " + w + ", record " + i);
            }
        }
    }

    @Test
    void programsThatAppendAtOnceLoseNoRecord() throws IOException, InterruptedException {
        Path log = folder.resolve("ada.jsonl");
        List<Process> programs = new ArrayList<>();
        for (int w = 0; w < WRITERS; w++) {
            programs.add(start(log, "w" + w, RECORDS));
        }
        for (Process program : programs) {
            program.getInputStream().readAllBytes();
            assertEquals(0, program.waitFor());
        }
        requireAll(log, WRITERS, RECORDS);
    }

    @Test
    void threadsThatAppendAtOnceLoseNoRecord() throws IOException, InterruptedException, ExecutionException {
        Path log = folder.resolve("ada.jsonl");
        ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
        try {
            List<Future<?>> writers = new ArrayList<>();
            for (int w = 0; w < WRITERS; w++) {
                String name = "w" + w;
                writers.add(threads.submit(() -> {
                    for (int i = 0; i < RECORDS; i++) {
                        new TraineeLog(log).append(LogWriter.numbered(name, i));
                    }
                    return null;
                }));
            }
            for (Future<?> writer : writers) {
                writer.get();
            }
        } finally {
            threads.shutdownNow();
        }
        requireAll(log, WRITERS, RECORDS);
    }

    /** A record whose number was printed is on disk, whenever the program is killed, and the next program goes on. */
    @Test
    void programThatIsKilledLosesNothingItHasCommitted() throws IOException, InterruptedException {
        Random random = new Random(17);
        for (int kill = 0; kill < KILLS; kill++) {
            Path log = folder.resolve("kill-" + kill + ".jsonl");
            int stop = 1 + random.nextInt(60);
            Process program = start(log, "w0", 1_000_000);
            int committed = -1;
            try (BufferedReader said = program.inputReader()) {
                while (committed < stop) {
                    committed = Integer.parseInt(said.readLine());
                }
                Thread.sleep(0, random.nextInt(999_999));
                program.toHandle().destroyForcibly();
                for (String line = said.readLine(); line != null; line = said.readLine()) {
                    committed = line.matches("\\d+") ? Math.max(committed, Integer.parseInt(line)) : committed;
                }
                program.waitFor();
            }
            new TraineeLog(log).append(LogWriter.numbered("next", 0));
            Set<AttemptRecord> kept = new HashSet<>(new TraineeLog(log).read().records());
            for (int i = 0; i < committed; i++) {
                assertTrue(kept.contains(LogWriter.numbered("w0", i)), "kill " + kill + ", record " + i);
            }
            assertTrue(kept.contains(LogWriter.numbered("next", 0)), "kill " + kill);
        }
    }
}
