// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareLadderCommandTest {

    @TempDir
    private Path folder;

    /**
     * A smooth pulse's error falls with the square of the sections' length (the cell is late by (π/n)²/6, O. J. Zobel's
     * constant-k section, from memory): twice the sections leave a quarter.
     */
    @Test
    void twiceTheSectionsLeaveAQuarterOfTheErrorOfASmoothPulse() throws IOException {
        Desk desk = new Desk(folder);
        desk.write("reference.json", Samples.reference(150));
        Desk.Ran ran = desk.run(
                "compare-ladder",
                "reference.json",
                "--pulse",
                "100ns",
                "--shape",
                "gaussian",
                "--sections",
                "20,40",
                "--format",
                "csv");
        assertEquals(0, ran.exit(), ran.err());
        String[] lines = ran.out().split("\n");
        assertEquals("sections_per_wavelength,sections,late_share,worst_v,rms_v", lines[0]);
        String[] coarse = lines[1].split(",");
        String[] fine = lines[2].split(",");
        // 100 m at 85 % take 392.4 ns; a wavelength at 5 MHz takes 200 ns, so a section of a twentieth 10 ns.
        assertEquals("40", coarse[1]);
        assertEquals("79", fine[1]);
        double lateness = Math.asin(Math.PI / 20) / (Math.PI / 20) - 1;
        assertEquals(lateness, Double.parseDouble(coarse[2]), 1e-12);
        double ratio = Double.parseDouble(coarse[4]) / Double.parseDouble(fine[4]);
        assertTrue(ratio > 3.5 && ratio < 4.5, "ratio " + ratio + " of " + ran.out());
    }

    @Test
    void lossThatNoLadderHasIsStated() throws IOException {
        Desk desk = new Desk(folder);
        desk.write("camera.json", Samples.camera());
        Desk.Ran ran = desk.run("compare-ladder", "camera.json", "--pulse", "50ns", "--sections", "3,10");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.err().contains("a ladder has no loss that rises with frequency"), ran.err());
        assertTrue(ran.out().contains("nothing passes"), ran.out());
    }

    @Test
    void sectionsHaveALimit() throws IOException {
        Desk desk = new Desk(folder);
        desk.write("camera.json", Samples.camera());
        Desk.Ran ran = desk.run("compare-ladder", "camera.json", "--sections", "0");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("--sections is 0; allowed is 1 to 10000"), ran.err());
    }
}
