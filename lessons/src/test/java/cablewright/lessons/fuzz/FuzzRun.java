// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.fuzz;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;

/**
 * The long run over all readers, which counts what it did and ends with 1 if anything was found:
 *
 * <pre>mvn -q -Pfuzz -DskipTests -pl lessons -am verify -Dinputs=1000000 [-Dseed=1]</pre>
 *
 * <p>Besides what the readers themselves must hold to, an input may take a second of processor time for each megabyte, at
 * least one second, and 256 MB of memory.
 */
final class FuzzRun {

    private static final double NANOS_PER_BYTE = 1000;
    private static final long LEAST_NANOS = 1_000_000_000;
    private static final long MOST_ALLOCATED = 256L << 20;
    private static final int MOST_SHOWN = 10;

    private final ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final Map<Reader, Integer> faults = new EnumMap<>(Reader.class);
    private final Path folder;
    private long slowest;
    private long largest;

    private FuzzRun(Path folder) {
        this.folder = folder;
    }

    /** Arguments: how many inputs over all readers, first seed. */
    public static void main(String[] arguments) throws IOException {
        int inputs = Integer.parseInt(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
        FuzzRun run = new FuzzRun(Files.createTempDirectory("fuzz"));
        Reader[] readers = Reader.values();
        for (int i = 0; i < inputs; i++) {
            run.one(readers[i % readers.length], seed + i / readers.length);
        }
        System.out.printf(
                "%d inputs over %d readers from seed %d: %d faults; slowest %.0f ms, most allocated %.1f MB%n",
                inputs, readers.length, seed, run.count(), run.slowest / 1e6, run.largest / 1e6);
        System.exit(run.count() == 0 ? 0 : 1);
    }

    private int count() {
        return faults.values().stream().mapToInt(Integer::intValue).sum();
    }

    private void one(Reader reader, long seed) throws IOException {
        byte[] bytes = new TokenMutator(seed).changed(reader.sound());
        Path own = Files.createDirectories(folder.resolve(reader.name()));
        long nanos = thread.getCurrentThreadCpuTime();
        long allocated = thread.getCurrentThreadAllocatedBytes();
        try {
            reader.read(bytes, own);
        } catch (IOException | RuntimeException | Error e) {
            found(reader, seed, e.toString(), e);
        }
        nanos = thread.getCurrentThreadCpuTime() - nanos;
        allocated = thread.getCurrentThreadAllocatedBytes() - allocated;
        slowest = Math.max(slowest, nanos);
        largest = Math.max(largest, allocated);
        if (nanos > Math.max(LEAST_NANOS, NANOS_PER_BYTE * bytes.length) || allocated > MOST_ALLOCATED) {
            found(reader, seed, nanos / 1e6 + " ms, " + allocated / 1e6 + " MB", new IllegalStateException());
        }
    }

    private void found(Reader reader, long seed, String what, Throwable cause) throws IOException {
        int before = faults.merge(reader, 1, Integer::sum);
        if (before <= MOST_SHOWN) {
            Path kept = Path.of("fuzz-" + reader + "-" + seed + ".bin");
            Files.write(kept, new TokenMutator(seed).changed(reader.sound()));
            System.out.println(reader + ", seed " + seed + ": " + what + "; kept as " + kept);
            StackTraceElement[] stack = cause.getStackTrace();
            for (int i = 0; i < Math.min(6, stack.length); i++) {
                System.out.println("    at " + stack[i]);
            }
        }
    }
}
