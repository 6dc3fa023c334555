// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;

class StudyMergeProperties {

    private Path folder;

    @BeforeTry
    void makeFolder() throws IOException {
        folder = Files.createTempDirectory("study");
    }

    @AfterTry
    void removeFolder() throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    private static void run(Study study, Shard shard, Path file) throws IOException {
        assertTrue(new StudyRun(study, shard).into(file, (done, of) -> {}, () -> false));
    }

    private static byte[] merged(List<Path> files) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StudyMerge.of(files).writeTo(out);
        return out.toByteArray();
    }

    private byte[] whole(Study study) throws IOException {
        Path file = folder.resolve("whole.csv");
        run(study, new Shard(1, 1), file);
        return Files.readAllBytes(file);
    }

    @Property(tries = 8)
    void shardsMergeToTheSameBytesWhateverTheirNumberAndOrder(
            @ForAll @IntRange(min = 1, max = 15) int shards, @ForAll boolean random, @ForAll long order)
            throws IOException {
        Study study = random ? StudyCases.random() : StudyCases.grid();
        List<Path> files = new ArrayList<>();
        for (int i = 1; i <= shards; i++) {
            Path file = folder.resolve(i + ".csv");
            run(study, new Shard(i, shards), file);
            files.add(file);
        }
        Collections.shuffle(files, new Random(order));
        assertArrayEquals(whole(study), merged(files));
    }

    @Property(tries = 12)
    void runThatWasKilledAnywhereGoesOnToTheSameBytes(@ForAll @IntRange(min = 0, max = 100_000) int place)
            throws IOException {
        Study study = StudyCases.grid();
        byte[] whole = whole(study);
        Path torn = folder.resolve("torn.csv");
        Files.write(torn, Arrays.copyOf(whole, place % whole.length));
        run(study, new Shard(1, 1), torn);
        assertArrayEquals(whole, Files.readAllBytes(torn));
    }

    @Property(tries = 1)
    void rowsThatAreThereAreNotComputedAgain() throws IOException {
        Study study = StudyCases.grid();
        byte[] whole = whole(study);
        AtomicInteger calls = new AtomicInteger();
        new StudyRun(study, new Shard(1, 1))
                .into(folder.resolve("whole.csv"), (done, of) -> calls.addAndGet(done == of ? 1 : 100), () -> false);
        assertEquals(1, calls.get());
        assertArrayEquals(whole, Files.readAllBytes(folder.resolve("whole.csv")));
    }

    @Property(tries = 1)
    void cancelledRunLeavesAFileThatCanGoOn() throws IOException {
        Study study = StudyCases.grid();
        Path file = folder.resolve("stopped.csv");
        assertFalse(new StudyRun(study, new Shard(1, 1)).into(file, (done, of) -> {}, () -> true));
        run(study, new Shard(1, 1), file);
        assertArrayEquals(whole(study), Files.readAllBytes(file));
    }

    @Property(tries = 1)
    void missingRowsAndForeignFilesAreRefusedInWords() throws IOException {
        run(StudyCases.grid(), new Shard(1, 2), folder.resolve("1.csv"));
        run(StudyCases.random(), new Shard(2, 2), folder.resolve("2.csv"));
        IllegalArgumentException missing =
                assertThrows(IllegalArgumentException.class, () -> StudyMerge.of(List.of(folder.resolve("1.csv"))));
        assertTrue(
                missing.getMessage().startsWith("6 of 12 rows are missing (1, 3, 5, 7, 9, …)"), missing.getMessage());
        IllegalArgumentException foreign = assertThrows(
                IllegalArgumentException.class,
                () -> StudyMerge.of(List.of(folder.resolve("1.csv"), folder.resolve("2.csv"))));
        assertTrue(foreign.getMessage().contains("another study"), foreign.getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> run(StudyCases.random(), new Shard(1, 2), folder.resolve("1.csv")));
    }

    /** A file that was filled with zeros beyond 2 GiB, as a damaged disk may leave it; only its size is large. */
    @Property(tries = 1)
    void fileOfMoreThanTwoGibibytesIsGoneOnWith() throws IOException {
        Study study = StudyCases.grid();
        byte[] whole = whole(study);
        Path large = folder.resolve("large.csv");
        Files.write(large, Arrays.copyOf(whole, whole.length * 3 / 4));
        try (FileChannel channel = FileChannel.open(large, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(new byte[1]), (1L << 31) + 10);
        }
        run(study, new Shard(1, 1), large);
        assertArrayEquals(whole, Files.readAllBytes(large));
    }

    @Property(tries = 1)
    void lineThatIsNoTextOrOutOfOrderIsNamedWithItsFile() throws IOException {
        byte[] whole = whole(StudyCases.grid());
        Path bad = folder.resolve("bad.csv");
        Files.write(bad, whole);
        Files.write(bad, new byte[] {'1', ',', (byte) 0xC3, '\n'}, StandardOpenOption.APPEND);
        IllegalArgumentException noText =
                assertThrows(IllegalArgumentException.class, () -> StudyMerge.of(List.of(bad)));
        assertTrue(noText.getMessage().startsWith(bad + ", line "), noText.getMessage());
        Files.write(bad, whole);
        Files.write(bad, "3,again\n".getBytes(StandardCharsets.UTF_8), StandardOpenOption.APPEND);
        IllegalArgumentException again =
                assertThrows(IllegalArgumentException.class, () -> StudyMerge.of(List.of(bad)));
        assertTrue(again.getMessage().contains("row 3 after row 11"), again.getMessage());
    }

    @Property(tries = 200)
    void shardsShareTheRowsOut(@ForAll @IntRange(max = 500) int rows, @ForAll @IntRange(min = 1, max = 40) int of) {
        int all = 0;
        for (int i = 1; i <= of; i++) {
            Shard shard = new Shard(i, of);
            int mine = (int) IntStream.range(0, rows).filter(shard::has).count();
            assertEquals(mine, shard.count(rows));
            all += mine;
        }
        assertEquals(rows, all);
    }
}
