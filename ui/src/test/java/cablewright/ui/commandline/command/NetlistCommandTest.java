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

class NetlistCommandTest {

    @TempDir
    private Path folder;

    @Test
    void aLosslessLineIsToldWholeAndALossyOneSaysWhatIsLeftOut() throws IOException {
        Desk desk = new Desk(folder);
        desk.write("reference.json", Samples.reference(150));
        desk.write("camera.json", Samples.camera());

        Desk.Ran whole = desk.run("netlist", "reference.json", "--pulse", "5ns", "--source", "50ohm");
        assertEquals(0, whole.exit(), whole.err());
        assertEquals("", whole.err());
        assertTrue(whole.out().startsWith("Reference line\n"), whole.out());
        assertTrue(whole.out().contains("Rsource emf port 50.0"), whole.out());
        assertTrue(whole.out().contains("TD=3.924"), "100 m at 85 % take 392.4 ns: " + whole.out());
        assertTrue(whole.out().endsWith(".end\n"), whole.out());

        Desk.Ran lossy = desk.run("netlist", "camera.json", "--pulse", "5ns");
        assertEquals(0, lossy.exit());
        assertTrue(lossy.err().contains("note: Loss that rises with frequency"), lossy.err());
        assertTrue(lossy.out().contains("* left out: loss that rises with frequency"), lossy.out());
        assertEquals(
                "",
                desk.run("netlist", "camera.json", "--pulse", "5ns", "--quiet").err());
    }
}
