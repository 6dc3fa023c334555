// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyCommandTest {

    private static final String DEPTH = "/cable/events/p1/depthFraction=0.2..0.8:3";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void makeDesk() throws IOException {
        desk = new Desk(folder);
        desk.write("camera.json", Samples.camera());
    }

    private Desk.Ran study(String... more) {
        List<String> arguments = new ArrayList<>(List.of("study", "camera.json", "--event", "p1"));
        arguments.addAll(List.of(more));
        return desk.run(arguments.toArray(String[]::new));
    }

    @Test
    void gridHasARowForEachCombinationAndSaysWhereItComesFrom() throws IOException {
        Desk.Ran ran = study("--vary", "pulse=5ns..20ns:2:log", "--vary", DEPTH, "--out", "study.csv");
        assertEquals(0, ran.exit(), ran.err());
        List<String> lines = Files.readAllLines(desk.file("study.csv"), StandardCharsets.UTF_8);
        List<String> rows = lines.stream().filter(line -> !line.startsWith("#")).toList();
        assertEquals(7, rows.size());
        assertTrue(rows.get(0).startsWith("row,pulse_s,/cable/events/p1/depthFraction,visibility,reason,contrast_v,"));
        assertTrue(rows.get(1).startsWith("0,5.0E-9,0.2,"), rows.get(1));
        assertTrue(rows.get(6).startsWith("5,"));
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("# cable file camera.json, sha256 ")));
        assertTrue(lines.contains("# rows 6, grid"));
        assertTrue(ran.err().contains("6 of 6 rows"), ran.err());
    }

    @Test
    void shardsMergeToWhatOneRunWrites() throws IOException {
        String[] asked = {"--random", "5", "--seed", "3", "--vary", "/cable/events/p1/startMetres=5..120"};
        assertEquals(0, study(with(asked, "--out", "whole.csv")).exit());
        for (int k = 1; k <= 3; k++) {
            assertEquals(
                    0,
                    study(with(asked, "--shard", k + "/3", "--out", "part-" + k + ".csv"))
                            .exit());
        }
        Desk.Ran merged = desk.run("study", "merge", "part-3.csv", "part-1.csv", "part-2.csv");
        assertEquals(0, merged.exit(), merged.err());
        assertArrayEquals(Files.readAllBytes(desk.file("whole.csv")), merged.bytes());
        Desk.Ran lacking = desk.run("study", "merge", "part-1.csv", "part-2.csv");
        assertEquals(1, lacking.exit());
        assertTrue(lacking.err().contains("1 of 5 rows are missing (2)"), lacking.err());
    }

    private static String[] with(String[] first, String... more) {
        String[] all = Arrays.copyOf(first, first.length + more.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return all;
    }

    @Test
    void whatIsWrongIsSaidWithItsRemedy() {
        assertTrue(study("--vary", DEPTH).err().contains("--out is missing"));
        assertEquals(2, study("--vary", DEPTH).exit());
        assertTrue(study("--out", "x.csv", "--vary", "pulse=2..5:3").err().contains("unit"));
        assertEquals(2, study("--out", "x.csv", "--vary", "pulse=2ns..5ns").exit());
        assertEquals(
                2, study("--out", "x.csv", "--vary", DEPTH, "--shard", "4/3").exit());
        Desk.Ran nowhere = study("--out", "x.csv", "--vary", "/cable/events/p9/depthFraction=0..1:2");
        assertEquals(1, nowhere.exit());
        assertTrue(nowhere.err().contains("no \"p9\"; there is s1, p1"), nowhere.err());
        Desk.Ran noEvent = desk.run("study", "camera.json", "--event", "x", "--vary", DEPTH, "--out", "x.csv");
        assertTrue(noEvent.err().contains("has no event \"x\"; it has s1, p1"), noEvent.err());
    }

    @Test
    void fileOfAnotherStudyIsNotTouched() throws IOException {
        study("--vary", DEPTH, "--out", "study.csv");
        byte[] before = Files.readAllBytes(desk.file("study.csv"));
        Desk.Ran other = study("--vary", "averages=1..64:3:log", "--out", "study.csv");
        assertEquals(1, other.exit());
        assertTrue(other.err().contains("holds another study"), other.err());
        assertArrayEquals(before, Files.readAllBytes(desk.file("study.csv")));
    }
}
