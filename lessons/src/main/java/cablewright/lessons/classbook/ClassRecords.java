// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.file.FileFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The folder that holds the logs: one file of JSON Lines for each trainee, which only ever grows. Used from threads that
 * work, one call at a time.
 */
public final class ClassRecords {

    private static final String ENDING = ".jsonl";

    private final Optional<Path> folder;
    private final List<AttemptRecord> inMemory = new ArrayList<>();

    /**
     * Names a folder; it need not exist.
     *
     * @param folder the folder
     */
    public ClassRecords(Path folder) {
        this(Optional.of(folder));
    }

    private ClassRecords(Optional<Path> folder) {
        this.folder = folder;
    }

    /**
     * Keeps records only as long as the program runs.
     *
     * @return records without a folder
     */
    public static ClassRecords inMemory() {
        return new ClassRecords(Optional.empty());
    }

    /**
     * Returns the records of this user: beside what other programs of the system keep. Desktop and terminal share them.
     *
     * @param environment the environment variables
     * @return the records in the user's data folder
     */
    public static ClassRecords ofThisUser(Map<String, String> environment) {
        return new ClassRecords(UserFolder.data(environment).resolve("records"));
    }

    /**
     * What was read.
     *
     * @param records sound records, oldest first
     * @param faults one sentence for each line or file that is not sound
     */
    public record Contents(List<AttemptRecord> records, List<String> faults) {
        /** Copies the lists. */
        public Contents {
            records = List.copyOf(records);
            faults = List.copyOf(faults);
        }
    }

    /**
     * Appends a record to the log of its trainee.
     *
     * @param record the record
     * @throws IOException if it can't be written
     */
    public synchronized void append(AttemptRecord record) throws IOException {
        if (folder.isEmpty()) {
            inMemory.add(record);
        } else {
            new TraineeLog(folder.get().resolve(fileName(record.trainee()))).append(record);
        }
    }

    /** A name that every system can have: letters and digits of the trainee's name, and a number for the rest of it. */
    private static String fileName(String trainee) {
        String plain = trainee.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String rest = plain.equals(trainee) ? "" : "-" + Integer.toHexString(trainee.hashCode());
        return plain.substring(0, Math.min(40, plain.length())) + rest + ENDING;
    }

    /**
     * Reads all logs of the folder.
     *
     * @return what they hold
     */
    public synchronized Contents read() {
        return folder.filter(Files::isDirectory)
                .map(path -> read(List.of(path)))
                .orElseGet(() -> new Contents(inMemory, List.of()));
    }

    private static Contents read(List<Path> paths) {
        List<AttemptRecord> records = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (Path file : logs(paths, faults)) {
            try {
                TraineeLog.Contents contents = new TraineeLog(file).read();
                records.addAll(contents.records());
                faults.addAll(contents.faults());
            } catch (IOException e) {
                faults.add(FileFault.reading(file, e));
            }
        }
        records.sort(Comparator.comparing(AttemptRecord::committedAt).thenComparing(AttemptRecord::trainee));
        return new Contents(records, faults);
    }

    private static List<Path> logs(List<Path> paths, List<String> faults) {
        List<Path> logs = new ArrayList<>();
        for (Path path : paths) {
            if (!Files.isDirectory(path)) {
                logs.add(path);
                continue;
            }
            try (Stream<Path> all = Files.list(path)) {
                all.filter(file -> file.toString().endsWith(ENDING)).sorted().forEach(logs::add);
            } catch (IOException e) {
                faults.add(FileFault.reading(path, e));
            }
        }
        return logs;
    }

    /**
     * Takes the records of other logs over. A record that is there already is not taken twice, so taking the same log again
     * changes nothing.
     *
     * @param paths logs, or folders of them
     * @return what was new, and what is not sound in the logs
     * @throws IOException if it can't be written
     */
    public synchronized Contents takeOver(List<Path> paths) throws IOException {
        Contents others = read(paths);
        Set<AttemptRecord> known = new HashSet<>(read().records());
        List<AttemptRecord> fresh = new ArrayList<>();
        for (AttemptRecord record : others.records()) {
            if (known.add(record)) {
                append(record);
                fresh.add(record);
            }
        }
        return new Contents(fresh, others.faults());
    }
}
