// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * The log of one trainee: JSON Lines, one attempt a line, only ever appended to.
 *
 * <p>Crash-safe: a line is written in one call and forced to disk; a last line that a crash tore is left where it is, reported
 * when the log is read, and closed with a line end before the next record, so that nothing sound is ever lost.
 */
public final class TraineeLog {

    private static final long MOST_BYTES = 64L << 20;

    private final Path file;
    private final RecordLine lines = new RecordLine();

    /**
     * Names a log; it need not exist.
     *
     * @param file its file
     */
    public TraineeLog(Path file) {
        this.file = file;
    }

    /**
     * What a log holds.
     *
     * @param records the sound records, oldest first
     * @param faults one sentence for each line that is not sound
     */
    public record Contents(List<AttemptRecord> records, List<String> faults) {
        /** Copies the lists. */
        public Contents {
            records = List.copyOf(records);
            faults = List.copyOf(faults);
        }
    }

    /**
     * Appends a record.
     *
     * @param record the record
     * @throws IOException if it could not be written; the log is then as it was, or has a torn last line
     */
    public void append(AttemptRecord record) throws IOException {
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(file.toAbsolutePath().getParent());
        }
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.READ)) {
            String start = endsTorn(channel) ? "\n" : "";
            channel.position(channel.size());
            ByteBuffer bytes = ByteBuffer.wrap((start + lines.write(record) + "\n").getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    private static boolean endsTorn(FileChannel channel) throws IOException {
        if (channel.size() == 0) {
            return false;
        }
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, channel.size() - 1);
        return last.get(0) != '\n';
    }

    /**
     * Reads the log.
     *
     * @return its records, and a sentence for each line that is not sound
     * @throws IOException if the file can't be read, or is larger than 64 MiB
     */
    public Contents read() throws IOException {
        List<AttemptRecord> records = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        if (!Files.exists(file)) {
            return new Contents(records, faults);
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(file + " is " + Files.size(file) + " bytes; a log may have " + MOST_BYTES);
        }
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            int number = 0;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                number++;
                take(line, number, records, faults);
            }
        }
        return new Contents(records, faults);
    }

    private void take(String line, int number, List<AttemptRecord> records, List<String> faults) {
        if (line.isBlank()) {
            return;
        }
        try {
            if (line.length() > RecordLine.MOST_CHARACTERS) {
                throw new IllegalArgumentException("it is longer than " + RecordLine.MOST_CHARACTERS + " characters");
            }
            records.add(lines.read(line));
        } catch (IllegalArgumentException e) {
            faults.add(file.getFileName() + ", line " + number + ": " + e.getMessage()
                    + ". The line is left where it is and not counted.");
        }
    }
}
