// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.classbook.ClassRecords;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged program where the system is against it: full disks, other programs on the same files, kills, no network. The
 * long run of kills: {@code mvn verify -Dit.test=RobustIT -Dcablewright.kills=250}.
 */
@EnabledOnOs(OS.LINUX)
@Timeout(value = 20, unit = TimeUnit.MINUTES)
class RobustIT {

    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final Path PROGRAM = Path.of("target", "cablewright.jar").toAbsolutePath();
    private static final int KILLS = Integer.getInteger("cablewright.kills", 4);
    private static final String ROUNDS = "commit\ncommit\nnext\n";

    @TempDir
    private Path folder;

    /** How a program ended, and what it said on both streams. */
    private record Ended(int exit, String said) {}

    private Process start(String locale, List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY", "NO_COLOR", "COLUMNS"));
        builder.environment().put("LC_ALL", locale);
        builder.environment().put("XDG_DATA_HOME", folder.resolve("data").toString());
        return builder.redirectErrorStream(true).start();
    }

    private static Ended ended(Process program) throws IOException, InterruptedException {
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(program.waitFor(), said);
    }

    private Ended shell(String locale, String line) throws IOException, InterruptedException {
        return ended(start(locale, List.of("/bin/sh", "-c", line.replace("cablewright", java("-jar")))));
    }

    private static String java(String arguments) {
        return JAVA + " -XX:-UsePerfData " + arguments + " " + PROGRAM;
    }

    private Process practising(int rounds) throws IOException {
        Process program = start(
                "C.UTF-8",
                List.of(
                        JAVA.toString(),
                        "-jar",
                        PROGRAM.toString(),
                        "practise",
                        "built-in:harbour-line",
                        "--in-terminal",
                        "--trainee",
                        "Ada"));
        program.getOutputStream().write(ROUNDS.repeat(rounds).getBytes(StandardCharsets.UTF_8));
        program.getOutputStream().flush();
        return program;
    }

    @Test
    void threeProgramsAtOnceLoseNoRecord() throws IOException, InterruptedException {
        List<Process> programs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            programs.add(practising(7));
        }
        int marked = 0;
        for (Process program : programs) {
            program.getOutputStream().close();
            Ended ended = ended(program);
            assertEquals(0, ended.exit(), ended.said());
            marked += (int) ended.said()
                    .lines()
                    .filter(line -> line.matches("\\d+ of \\d+ marks.*"))
                    .count();
        }
        assertTrue(marked >= 15, "marked " + marked);
        ClassRecords.Contents kept = new ClassRecords(folder.resolve("data/cablewright/records")).read();
        assertEquals(List.of(), kept.faults());
        assertEquals(marked, kept.records().size());
    }

    @Test
    void fullDiskIsOneSentenceAndTheOldFileStays() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("out.csv"), "old");
        Ended generated = shell("C.UTF-8", "cablewright generate --seed 1 --count 1 --out . && ls *.json");
        assertEquals(0, generated.exit(), generated.said());
        String exercise = generated.said().lines().reduce((a, b) -> b).orElseThrow();
        Ended full = shell("C.UTF-8", "ulimit -f 8; cablewright trace " + exercise + " --out out.csv");
        assertEquals(1, full.exit(), full.said());
        assertTrue(full.said().contains("can't be written"), full.said());
        assertEquals("old", Files.readString(folder.resolve("out.csv")));
        Ended device = shell("C.UTF-8", "cablewright trace " + exercise + " >/dev/full; echo exit $?");
        assertTrue(device.said().contains("exit 1"), device.said());
        Ended help = shell("C.UTF-8", "cablewright --help >/dev/full; echo exit $?");
        assertTrue(help.said().contains("exit 1"), help.said());
        assertFalse((full.said() + device.said() + help.said()).contains("Exception"));
    }

    @Test
    void nameThatTheLocaleCanNotHoldIsOneSentence() throws IOException, InterruptedException {
        Ended ended = shell("C", "cablewright trace k\u00e4i.json; echo exit $?");
        assertFalse(ended.said().contains("Exception") || ended.said().contains("java."), ended.said());
        assertFalse(ended.said().contains("exit 0"), ended.said());
    }

    @Test
    void widthIsThatOfTheVariableWhenPiped() throws IOException, InterruptedException {
        Ended narrow = shell("C.UTF-8", "COLUMNS=60 cablewright trace --help | cat");
        assertTrue(narrow.said().lines().mapToInt(String::length).max().orElse(0) <= 60, narrow.said());
    }

    /** Whenever the program is killed, what it has said it wrote is whole, and the next one goes on. */
    @Test
    void killedProgramsLeaveWholeFiles() throws IOException, InterruptedException {
        Random random = new Random(17);
        for (int i = 0; i < KILLS; i++) {
            Process program = practising(7);
            Thread.sleep(random.nextInt(4000));
            program.toHandle().destroyForcibly();
            program.waitFor();
        }
        Process last = practising(1);
        last.getOutputStream().close();
        assertEquals(0, ended(last).exit());
        ClassRecords.Contents kept = new ClassRecords(folder.resolve("data/cablewright/records")).read();
        assertTrue(kept.records().size() >= 1);
        assertTrue(kept.faults().size() <= KILLS, "at most one torn line for each kill: " + kept.faults());
    }

    /** All that a program may do but for what opens a connection (Java SE 17, java.net.SocketPermission). */
    @Test
    void everythingWorksWhereNoConnectionMayBeOpened() throws IOException, InterruptedException {
        Path policy = folder.resolve("no-network.policy");
        Files.writeString(
                policy,
                """
                grant {
                  permission java.io.FilePermission "<<ALL FILES>>", "read,write,delete,execute,readlink";
                  permission java.util.PropertyPermission "*", "read,write";
                  permission java.lang.RuntimePermission "*";
                  permission java.lang.reflect.ReflectPermission "*";
                  permission java.util.logging.LoggingPermission "control";
                  permission java.nio.file.LinkPermission "*";
                  permission java.awt.AWTPermission "*";
                  permission java.security.SecurityPermission "*";
                  permission java.lang.management.ManagementPermission "monitor";
                };
                """);
        String denied = java("-Djava.security.manager -Djava.security.policy==" + policy + " -jar");
        for (String command : List.of(
                " generate --seed 1 --count 1 --out .",
                " trace *.json --format svg --out trace.svg",
                " explain *.json",
                " check *.json",
                " catalogue",
                " practise --in-terminal </dev/null")) {
            Ended ended = ended(start("C.UTF-8", List.of("/bin/sh", "-c", denied + command)));
            assertEquals(0, ended.exit(), command + ": " + ended.said());
        }
    }
}
