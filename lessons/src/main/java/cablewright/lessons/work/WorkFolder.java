// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.work;

import cablewright.lessons.classbook.UserFolder;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.FileKind;
import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps the unfinished work of each trainee in a file of its own, replaced whole at each change. A file that is not sound is
 * put aside under another name, so that it can be looked at and does not stand in the way. Used from threads that work, one
 * call at a time.
 */
public final class WorkFolder {

    private static final int MOST_NAME = 40;

    private final Optional<Path> folder;
    private final Map<String, UnfinishedWork> inMemory = new HashMap<>();

    private WorkFolder(Optional<Path> folder) {
        this.folder = folder;
    }

    /**
     * Names a folder; it is made when first written to.
     *
     * @param folder the folder
     * @return work that lies there
     */
    public static WorkFolder in(Path folder) {
        return new WorkFolder(Optional.of(folder));
    }

    /**
     * Keeps work only as long as the program runs.
     *
     * @return work without a folder
     */
    public static WorkFolder inMemory() {
        return new WorkFolder(Optional.empty());
    }

    /**
     * Returns the work of this user: beside the records.
     *
     * @param environment the environment variables
     * @return the work in the user's data folder
     */
    public static WorkFolder ofThisUser(Map<String, String> environment) {
        return in(UserFolder.data(environment).resolve("work"));
    }

    private static Path file(Path folder, String trainee) {
        String plain = trainee.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String rest = plain.equals(trainee) ? "" : "-" + Integer.toHexString(trainee.hashCode());
        return folder.resolve(plain.substring(0, Math.min(MOST_NAME, plain.length())) + rest + ".json");
    }

    /**
     * Reads where a trainee left off.
     *
     * @param trainee the trainee
     * @return the work; empty where there is none, or where what there was is not sound and was put aside
     */
    public synchronized Optional<UnfinishedWork> read(String trainee) {
        if (folder.isEmpty()) {
            return Optional.ofNullable(inMemory.get(trainee));
        }
        Path file = file(folder.get(), trainee);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            Document read = new DocumentReader().parse(file.toString(), bytes(file), FileKind.WORK);
            return Optional.of(((Document.OfWork) read).work())
                    .filter(work -> work.trainee().equals(trainee));
        } catch (IOException | LessonFormatException e) {
            putAside(file);
            return Optional.empty();
        }
    }

    private static byte[] bytes(Path file) throws IOException {
        if (Files.size(file) > DocumentReader.MOST_BYTES) {
            throw new IOException(file + " has more than " + DocumentReader.MOST_BYTES + " bytes");
        }
        return Files.readAllBytes(file);
    }

    private static void putAside(Path file) {
        try {
            Files.move(
                    file,
                    file.resolveSibling(file.getFileName() + ".unsound"),
                    java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // It stays where it is, and the next change replaces it.
            return;
        }
    }

    /**
     * Keeps where a trainee left off, in place of what was kept before.
     *
     * @param work the work
     * @throws IOException if it can't be written
     */
    public synchronized void keep(UnfinishedWork work) throws IOException {
        if (folder.isEmpty()) {
            inMemory.put(work.trainee(), work);
            return;
        }
        Files.createDirectories(folder.get());
        AtomicSave.save(file(folder.get(), work.trainee()), new DocumentWriter().bytes(new Document.OfWork(work)));
    }
}
