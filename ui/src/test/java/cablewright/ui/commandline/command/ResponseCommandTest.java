// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.hardware.Splice;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Closed forms of a lossless line between resistors (Pozar, Microwave Engineering, 4th ed., ch. 2 and 4, from memory). */
class ResponseCommandTest {

    private static final double LIGHT = 299_792_458.0;

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void writeCables() throws IOException {
        desk = new Desk(folder);
        desk.write("reference.json", Samples.reference(150));
        desk.write("camera.json", Samples.camera());
    }

    private static List<double[]> rows(String touchstone) {
        return touchstone
                .lines()
                .filter(line -> !line.startsWith("!") && !line.startsWith("#"))
                .map(line -> Arrays.stream(line.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    @Test
    void onePortTurnsTheLoadsReflectionByTwiceTheLength() {
        Desk.Ran ran = desk.run("response", "reference.json", "--from", "1MHz", "--to", "200MHz", "--points", "201");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().contains("# Hz S RI R 75.0"), ran.out().substring(0, 200));
        List<double[]> rows = rows(ran.out());
        assertEquals(201, rows.size());
        assertEquals(2e8, rows.get(200)[0]);
        for (double[] row : rows) {
            double angle = -4 * Math.PI * row[0] * 100 / (0.85 * LIGHT);
            assertEquals(Math.cos(angle) / 3, row[1], 1e-9);
            assertEquals(Math.sin(angle) / 3, row[2], 1e-9);
        }
    }

    @Test
    void twoPortsOnTheLinesOwnImpedanceOnlyDelay() throws IOException {
        assertEquals(
                0,
                desk.run("response", "reference.json", "--points", "51", "--out", "line.s2p")
                        .exit());
        for (double[] row : rows(Files.readString(desk.file("line.s2p")))) {
            double angle = -2 * Math.PI * row[0] * 100 / (0.85 * LIGHT);
            assertEquals(0, Math.hypot(row[1], row[2]), 1e-9);
            assertEquals(Math.cos(angle), row[3], 1e-8);
            assertEquals(Math.sin(angle), row[4], 1e-8);
            assertEquals(0, Math.hypot(row[7], row[8]), 1e-9);
        }
    }

    @Test
    void whatALosslessLineDoesNotReflectItPassesOn() {
        Desk.Ran ran = desk.run(
                "response",
                "reference.json",
                "--ports",
                "2",
                "--source",
                "50ohm",
                "--far-source",
                "200ohm",
                "--points",
                "101");
        for (double[] row : rows(ran.out())) {
            double reflected = row[1] * row[1] + row[2] * row[2];
            double passed = row[3] * row[3] + row[4] * row[4];
            assertEquals(1, reflected + passed, 1e-9);
        }
    }

    @Test
    void aCableIsReciprocalAndPassiveAlsoWithASpliceAtItsVeryEnd() throws IOException {
        desk.write("end.json", Samples.camera().withEvents(List.of(new Splice("s", 133, 40e-9, 0, 2))));
        for (String file : List.of("camera.json", "end.json")) {
            Desk.Ran ran = desk.run("response", file, "--ports", "2", "--log", "--points", "61");
            assertEquals(0, ran.exit(), ran.err());
            for (double[] row : rows(ran.out())) {
                assertEquals(row[3], row[5], 1e-8);
                assertEquals(row[4], row[6], 1e-8);
                assertTrue(row[1] * row[1] + row[2] * row[2] + row[3] * row[3] + row[4] * row[4] <= 1);
            }
        }
        double[] last =
                rows(desk.run("response", "end.json", "--ports", "2").out()).get(1000);
        assertTrue(Math.hypot(last[7], last[8]) > 0.5, "40 nH at 1 GHz must show at the far port");
    }

    @Test
    void wrongSweepsAreUsage() {
        assertEquals(2, desk.run("response", "camera.json", "--from", "2GHz").exit());
        assertEquals(2, desk.run("response", "camera.json", "--ports", "3").exit());
        assertEquals(2, desk.run("response", "camera.json", "--to", "1000").exit());
        assertEquals(2, desk.run("response", "camera.json", "--points", "1").exit());
    }

    @Test
    void crosstalkIsTwoPortsSideBySide() throws IOException {
        Files.writeString(
                desk.file("pair.json"),
                """
                {"format": "cablewright-cable", "version": 1, "cable": {"title": "Pilot pair",
                 "runs": [{"type": "cat-5e", "lengthMetres": 60}],
                 "events": [{"kind": "split", "id": "s1", "startMetres": 20, "lengthMetres": 15,
                   "shape": {"layout": "quad"}, "putRight": true,
                   "neighbourNearEnd": "matched", "neighbourFarEnd": "matched"}],
                 "farEnd": {"kind": "terminated", "load": {"joined": "series", "resistanceOhms": 100}}, "celsius": 20}}
                """);
        Desk.Ran ran = desk.run("response", "pair.json", "--crosstalk", "s1", "--points", "41", "--to", "100MHz");
        assertEquals(0, ran.exit(), ran.err());
        double most = 0;
        for (double[] row : rows(ran.out())) {
            assertEquals(row[3], row[5], 1e-10);
            assertEquals(row[4], row[6], 1e-10);
            most = Math.max(most, Math.hypot(row[3], row[4]));
        }
        assertTrue(most > 0.1 && most < 0.6, "heard " + most);
        assertEquals(1, desk.run("response", "pair.json", "--crosstalk", "s2").exit());
    }
}
