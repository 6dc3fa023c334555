// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Starts the program as a person does, from the jar that the build has just made, where there is no display. */
@EnabledOnOs(OS.LINUX) // elsewhere there is always a display, and a window would open
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class ProgramIT {
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final Path PROGRAM = Path.of("target", "cablewright.jar").toAbsolutePath();
    private static final Path SCRIPT = Path.of("/usr/bin/script");

    @TempDir
    private Path folder;

    /** What a process said, both streams together, and how it ended. */
    private record Ended(int exit, String said) {}

    private Ended run(String display, String input, List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY", "NO_COLOR"));
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().put("TMPDIR", folder.toString());
        if (!display.isEmpty()) {
            builder.environment().put("DISPLAY", display);
        }
        builder.redirectErrorStream(true);
        Process program = builder.start();
        try (var typed = program.getOutputStream()) {
            typed.write(input.getBytes(StandardCharsets.UTF_8));
        }
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(program.waitFor(), said);
    }

    private static List<String> program(String... arguments) {
        List<String> command = new ArrayList<>(List.of(JAVA.toString(), "-jar", PROGRAM.toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    private void playedThrough(Ended ended) throws IOException {
        assertEquals(0, ended.exit(), ended.said());
        assertTrue(ended.said().contains("can be opened here"), ended.said());
        assertTrue(ended.said().contains("A sample answer:"), ended.said());
        assertTrue(ended.said().contains("The cable"), ended.said());
        assertFalse(ended.said().contains("\tat "), ended.said());
        try (Stream<Path> files = Files.list(folder)) {
            Path picture = files.findFirst().orElseThrow();
            assertTrue(ended.said().contains(picture.getFileName().toString()), ended.said());
            assertTrue(ImageIO.read(picture.toFile()).getWidth() > 0);
        }
    }

    @Test
    void withoutADisplayAndPipedTheFirstExercisePlaysItself() throws IOException, InterruptedException {
        playedThrough(run("", "", program()));
    }

    @Test
    void aDisplayThatCantBeUsedIsToldInWordsAndTheExercisePlaysItself() throws IOException, InterruptedException {
        playedThrough(run(":987", "", program()));
    }

    @Test
    void inATerminalTheLessonIsPractised() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(SCRIPT) || System.getenv("CI") != null, "no pseudo-terminal to be had here");
        String start = String.join(" ", program());
        Ended ended = run("", "settings\nquit\n", List.of(SCRIPT.toString(), "-qec", start, "/dev/null"));
        assertEquals(0, ended.exit(), ended.said());
        assertTrue(ended.said().contains("practise in the terminal"), ended.said());
        assertTrue(ended.said().contains("1/6> "), ended.said());
        assertTrue(ended.said().contains("Goodbye."), ended.said());
    }

    @Test
    void aReaderThatStopsReadingEndsTheProgramQuietly() throws IOException, InterruptedException {
        String catalogue = String.join(" ", program("catalogue", "--format", "csv"));
        Ended ended =
                run("", "", List.of("/bin/sh", "-c", "(sleep 0; " + catalogue + "; echo exit $? >&2) | head -c 1"));
        assertFalse(ended.said().contains("Exception"), ended.said());
        assertTrue(ended.said().contains("exit 0"), ended.said());
    }

    @Test
    void aMistakeIsOneSentence() throws IOException, InterruptedException {
        Ended ended = run("", "", program("trace", "nowhere.json"));
        assertEquals(1, ended.exit());
        assertEquals(1, ended.said().lines().count(), ended.said());
    }
}
