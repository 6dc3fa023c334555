// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.simulator.cable.Cable;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.Environment;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A folder in which commands are run as the system runs them, with captured streams. */
public final class Desk {

    private final Path folder;

    public Desk(Path folder) {
        this.folder = folder;
    }

    /** What a command left behind. */
    public record Ran(int exit, byte[] bytes, String err) {
        public String out() {
            return new String(bytes, StandardCharsets.UTF_8);
        }
    }

    Path folder() {
        return folder;
    }

    public Path file(String name) {
        return folder.resolve(name);
    }

    public Path write(String name, Cable cable) throws IOException {
        return Files.write(file(name), new DocumentWriter().bytes(new Document.OfCable(cable)));
    }

    public Path write(String name, Exercise exercise) throws IOException {
        return Files.write(file(name), new DocumentWriter().bytes(new Document.OfExercise(exercise)));
    }

    public Path write(String name, Lesson lesson) throws IOException {
        return Files.write(file(name), new DocumentWriter().bytes(new Document.OfLesson(lesson)));
    }

    public Path write(String name, AttemptSheet sheet) throws IOException {
        return Files.write(file(name), new DocumentWriter().bytes(new Document.OfAttempts(sheet)));
    }

    public Ran run(String... arguments) {
        return typed("", arguments);
    }

    public Ran typed(String input, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new Program(surroundings(input, out, err), noDesktop()).run(arguments);
        return new Ran(exit, out.toByteArray(), err.toString(StandardCharsets.UTF_8));
    }

    public Ran started(String input) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new ProgramStart(surroundings(input, out, err), noDesktop()).run();
        return new Ran(exit, out.toByteArray(), err.toString(StandardCharsets.UTF_8));
    }

    static DesktopOpener noDesktop() {
        return lesson -> {
            throw new DesktopOpener.NoWindow("there is no display");
        };
    }

    public Environment surroundings(String input, OutputStream out, OutputStream err) {
        InputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
        return new Environment(
                in,
                out,
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false,
                Map.of(
                        "LANG",
                        "C.UTF-8",
                        "COLUMNS",
                        "100",
                        "LINES",
                        "30",
                        "TMPDIR",
                        folder.toAbsolutePath().toString(),
                        "XDG_DATA_HOME",
                        folder.resolve("data").toAbsolutePath().toString()),
                folder);
    }

    /** Names of all files in the folder. */
    public java.util.List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
