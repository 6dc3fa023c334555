// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import cablewright.ui.commandline.environment.ExitCode;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainCommandTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void makeDesk() {
        desk = new Desk(folder);
    }

    private JsonNode events(Cable cable, String... more) throws IOException {
        desk.write("cable.json", cable);
        String[] command = new String[4 + more.length];
        System.arraycopy(new String[] {"explain", "cable.json", "--format", "json"}, 0, command, 0, 4);
        System.arraycopy(more, 0, command, 4, more.length);
        Desk.Ran ran = desk.run(command);
        assertEquals(0, ran.exit(), ran.err());
        return new ObjectMapper().readTree(ran.bytes()).get("events");
    }

    /** A resistor R across a line of impedance Z reflects −Z/(2R + Z); with R = 2Z that is −1/5, which looks like 2Z/3. */
    @Test
    void aShuntResistorReflectsAsItsClosedFormSays() throws IOException {
        Cable cable = Samples.reference(75).withEvents(List.of(new ShuntPart("leak", 40, Lumped.resistor(150))));
        JsonNode leak = events(cable, "--pulse", "20ns", "--bandwidth", "10GHz").get(0);
        assertEquals(40, leak.get("position_m").asDouble(), 1e-9);
        assertEquals(2 * 40 / (0.85 * 299_792_458.0), leak.get("delay_s").asDouble(), 1e-15);
        assertEquals(-0.2, leak.get("coefficient").asDouble(), 1e-3);
        assertEquals(50, leak.get("apparent_ohm").asDouble(), 0.2);
        assertEquals(0, leak.get("loss_db").asDouble(), 0.05);
        assertEquals("clear", leak.get("visibility").asText());
    }

    /** Behind such a resistor all comes back smaller by (2R/(2R + Z))² = 0.64: 3.88 dB. */
    @Test
    void lossHoldsWhatIsLostAtEventsOnTheWay() throws IOException {
        Cable cable = Samples.reference(75)
                .withEvents(List.of(
                        new ShuntPart("leak", 40, Lumped.resistor(150)),
                        new ShuntPart("other", 70, Lumped.resistor(150))));
        JsonNode other =
                events(cable, "--pulse", "20ns", "--bandwidth", "10GHz").get(1);
        assertEquals(-20 * Math.log10(0.64), other.get("loss_db").asDouble(), 0.02);
        assertEquals(-0.2, other.get("coefficient").asDouble(), 2e-3);
    }

    @Test
    void textTellsEachEventAndWhyItIsNotClear() throws IOException {
        desk.write("camera.json", Samples.camera().withEvents(List.of(new Splice("tiny", 60, 1e-11, 0, 0))));
        Desk.Ran ran = desk.run("explain", "camera.json", "--pulse", "5ns");
        assertEquals(0, ran.exit(), ran.err());
        assertTrue(ran.out().contains("splice \"tiny\""), ran.out());
        assertTrue(ran.out().contains("hidden: It changes the trace by"), ran.out());
    }

    @Test
    void csvHasARowForEachPlaceAndFeetChangeNothingInIt() throws IOException {
        desk.write("camera.json", Samples.camera());
        String metres = desk.run("explain", "camera.json", "--format", "csv").out();
        assertEquals(3, metres.lines().count());
        assertEquals(
                metres,
                desk.run("explain", "camera.json", "--format", "csv", "--feet").out());
        assertTrue(desk.run("explain", "camera.json", "--feet").out().contains("at 101.71 ft"));
    }

    /** Two such resistors at 40 and 70 m: a ghost at 2·70 − 40 m, −0.2³·0.64 high (lattice of a lossless line). */
    @Test
    void extremaAndBranchesAreToldWithTheirPaths() throws IOException {
        Cable branch = Samples.reference(1e6).withEvents(List.of());
        desk.write("tapped.json", Samples.reference(75).withEvents(List.of(new BridgedTap("b", 40, branch))));
        String[] command = {"explain", "tapped.json", "--pulse", "20ns", "--averages", "256", "--range", "180m"};
        String text = desk.run(command).out();
        assertTrue(text.contains("at 140.0 m, +44.4 %: the end of the branch at 40.0 m"), text);
        assertTrue(text.contains("down by 3") && text.contains(" %: the bridged tap at 40.0 m −3"), text);
        String[] json = Arrays.copyOf(command, command.length + 2);
        json[command.length] = "--format";
        json[command.length + 1] = "json";
        JsonNode told = new ObjectMapper().readTree(desk.run(json).out());
        assertEquals(4.0 / 9, told.path("branch_echoes").get(0).path("height_v").asDouble(), 1e-3);
        assertEquals(
                "b/end of line", told.path("branch_echoes").get(0).path("path").asText());
        assertEquals(
                "b",
                told.path("extrema").get(0).path("paths").get(0).path("path").asText());
        assertTrue(told.path("explained_share").asDouble() > 0.999);
    }

    @Test
    void aLatticeIsDrawnIntoAFileOfTheFormatThatItsNameAsksFor() throws IOException {
        desk.write("camera.json", Samples.camera());
        desk.run("explain", "camera.json", "--averages", "64", "--lattice", "ways.svg");
        desk.run("explain", "camera.json", "--averages", "64", "--lattice", "ways.txt");
        assertTrue(Files.readString(desk.file("ways.svg")).contains("<svg"));
        String drawn = Files.readString(desk.file("ways.txt"));
        assertTrue(drawn.contains("the splice at 31.0 m"), drawn);
        Desk.Ran refused = desk.run("explain", "camera.json", "--lattice", "ways.doc");
        assertEquals(ExitCode.INPUT_WRONG, refused.exit());
        assertTrue(refused.err().contains(".svg, .png, .pdf or .txt"), refused.err());
    }

    @Test
    void ghostsAreToldWithTheirPath() throws IOException {
        desk.write(
                "two.json",
                Samples.reference(75)
                        .withEvents(List.of(
                                new ShuntPart("a", 40, Lumped.resistor(150)),
                                new ShuntPart("b", 70, Lumped.resistor(150)))));
        String[] command = {
            "explain", "two.json", "--pulse", "20ns", "--bandwidth", "10GHz", "--averages", "64", "--range", "150m"
        };
        String text = desk.run(command).out();
        assertTrue(text.contains("at 100.0 m, −0.51 %: the plain element at 70.0 m, then the plain"), text);
        String[] json = Arrays.copyOf(command, command.length + 2);
        json[command.length] = "--format";
        json[command.length + 1] = "json";
        JsonNode ghost = new ObjectMapper()
                .readTree(desk.run(json).bytes())
                .get("ghosts")
                .get(0);
        assertEquals("b > a > b", ghost.get("path").asText());
        assertEquals(-0.2 * 0.2 * 0.2 * 0.64, ghost.get("height_v").asDouble(), 2e-4);
    }

    @Test
    void aCableWithoutEventsSaysSo() throws IOException {
        desk.write("line.json", Samples.reference(75));
        assertEquals(
                "There are no events on this cable.\n\nNo peak or dip of the trace stands above the noise.\n",
                desk.run("explain", "line.json").out());
    }
}
