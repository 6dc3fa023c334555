// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.file.SharedAppend;
import cablewright.simulator.file.BoundedLines;
import cablewright.simulator.file.PlainFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The log of one trainee: JSON Lines, one attempt a line with a checksum, only ever appended to, under a lock.
 *
 * <p>A line is on disk before the append returns. A last line that a crash tore is left where it is, named when the log is
 * read, and closed with a line end before the next record, so that nothing sound is ever lost.
 */
public final class TraineeLog {

    private static final long MOST_BYTES = 64L << 20;
    private static final int MOST_FAULTS = 100;

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
     * Appends a record. Other programs and threads may append to the same log at the same time.
     *
     * @param record the record
     * @throws IOException if it could not be written; the log is then as it was
     */
    public void append(AttemptRecord record) throws IOException {
        SharedAppend.line(file, (lines.write(record) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Reads the log. A line that is not sound hides none of the others.
     *
     * @return its records, and a sentence for each line that is not sound
     * @throws IOException if the file can't be read, is not a plain one, or is larger than 64 MiB
     */
    public Contents read() throws IOException {
        List<AttemptRecord> records = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        if (Files.notExists(file)) {
            return new Contents(records, faults);
        }
        int unsound = 0;
        try (InputStream in = PlainFile.open(file, MOST_BYTES)) {
            BoundedLines each = new BoundedLines(in, StandardCharsets.UTF_8, RecordLine.MOST_BYTES);
            while (each.advance()) {
                if (each.isBlank()) {
                    continue;
                }
                try {
                    records.add(lines.read(each.text()));
                } catch (IllegalArgumentException e) {
                    if (unsound++ < MOST_FAULTS) {
                        faults.add(file.getFileName() + ", line " + each.number() + ": " + e.getMessage()
                                + ". The line is left where it is and not counted.");
                    }
                }
            }
        }
        if (unsound > MOST_FAULTS) {
            faults.add(file.getFileName() + ": " + (unsound - MOST_FAULTS) + " more lines are not sound");
        }
        return new Contents(records, faults);
    }
}
