// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.InputProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Where a command's data go: a file, which is there whole or not at all, or standard output. */
public final class Output {

    private final Environment surroundings;
    private final Optional<Path> file;

    /**
     * Chooses where data go.
     *
     * @param surroundings where the program runs
     * @param file the file; empty, or "-", for standard output
     */
    public Output(Environment surroundings, Optional<Path> file) {
        this.surroundings = surroundings;
        this.file = file.filter(path -> !path.toString().equals("-")).map(surroundings.folder()::resolve);
    }

    public boolean isFile() {
        return file.isPresent();
    }

    /** Refuses, before any work is done, a file that could not be written or that is one of those that were read. */
    public Output notOver(Path read) {
        if (file.isPresent() && Files.exists(file.get()) && Files.exists(read)) {
            try {
                if (Files.isSameFile(file.get(), read)) {
                    throw new InputProblem(file.get() + " is the file that is read; choose another for --out");
                }
            } catch (IOException e) {
                throw new InputProblem(reason(file.get(), e));
            }
        }
        return checked();
    }

    /** Refuses, before any work is done, a file that could not be written. */
    public Output checked() {
        if (file.isPresent()) {
            Path folder = folderOf(file.get());
            if (Files.isDirectory(file.get())) {
                throw new InputProblem(file.get() + " is a folder; name a file for --out");
            }
            if (!Files.isDirectory(folder)) {
                throw new InputProblem(file.get() + " can't be written: there is no folder " + folder);
            }
        }
        return this;
    }

    public void write(byte[] bytes) {
        if (file.isEmpty()) {
            surroundings.writeOut(bytes);
            return;
        }
        try {
            writeFile(file.get(), bytes);
        } catch (IOException e) {
            throw new InputProblem(reason(file.get(), e));
        }
    }

    /** Writes a file beside its place, then moves it there: nobody ever sees a part of it. */
    public static void writeFile(Path target, byte[] bytes) throws IOException {
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            Files.write(target, bytes, StandardOpenOption.WRITE);
            return;
        }
        Path part = folderOf(target)
                .resolve("." + target.getFileName() + "."
                        + ProcessHandle.current().pid() + ".part");
        try {
            Files.write(part, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            try {
                Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static Path folderOf(Path target) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null) {
            throw new UncheckedIOException(new IOException(target + " is not a file"));
        }
        return folder;
    }

    public static String reason(Path target, IOException e) {
        if (e instanceof AccessDeniedException) {
            return target + " can't be written: this account may not write there";
        }
        if (e instanceof NoSuchFileException) {
            return target + " can't be written: there is no folder " + folderOf(target);
        }
        String why = e instanceof FileSystemException fse ? fse.getReason() : e.getMessage();
        return target + " can't be written: " + (why == null ? e.getClass().getSimpleName() : why);
    }
}
