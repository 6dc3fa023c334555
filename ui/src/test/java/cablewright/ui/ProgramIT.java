package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** Starts the program as a person does, from the jar that the build has just made. */
class ProgramIT {
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final Path PROGRAM = Path.of("target", "cablewright.jar");

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    @EnabledOnOs(OS.LINUX) // elsewhere there is always a display, and a window would open
    void withoutADisplayTheProgramSaysSoInWordsAndEnds() throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(JAVA.toString(), "-jar", PROGRAM.toString());
        builder.environment().remove("DISPLAY");
        builder.redirectErrorStream(true);

        Process program = builder.start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertEquals(1, program.waitFor(), said);
        assertTrue(said.contains("can't open a window here"), said);
    }
}
