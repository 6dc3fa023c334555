// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.ConductorLayout;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands that look at files and types, and what all commands have in common. */
class ListCommandsTest {

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void makeDesk() {
        desk = new Desk(folder);
    }

    @Test
    void checkIsSilentOnStandardOutputForSoundFiles() throws IOException {
        desk.write("camera.json", Samples.camera());
        desk.write("exercise.json", Samples.exercise());
        Desk.Ran ran = desk.run("check", "camera.json", "exercise.json");
        assertEquals(0, ran.exit());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains("exercise.json: sound"), ran.err());
    }

    /** Attenuation of 1.2/4.4 mm coax pairs as in ITU-T G.622 (from memory): 0.052719 and 0.165508 dB per 10 m at 1 and 10 MHz. */
    @Test
    void checkShowsHowWellADataSheetWasFitted() throws IOException {
        CableType type = new CableType(
                "trunk-pair",
                "Coax known by its sheet",
                CableFamily.COAX_PLANT,
                FittedSection.fitted(new DataSheet(
                        ConductorLayout.COAX,
                        75,
                        0.95,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        List.of(
                                new AttenuationPoint(1e6, 5.2719e-3),
                                new AttenuationPoint(1e7, 16.55084e-3),
                                new AttenuationPoint(6e7, 40.58103e-3)))),
                "ITU-T, from memory",
                75,
                0.95,
                List.of());
        desk.write("trunk.json", new Cable("Trunk", List.of(new Run(type, 500)), List.of(), new FarEnd.Open()));
        Desk.Ran ran = desk.run("check", "trunk.json");
        assertEquals(0, ran.exit(), ran.err());
        Matcher off = Pattern.compile("off by ([0-9.]+) %").matcher(ran.err());
        assertTrue(off.find(), ran.err());
        assertTrue(Double.parseDouble(off.group(1)) < 2, ran.err());
        assertTrue(ran.err().contains("sheet 1.655"), ran.err());
    }

    @Test
    void checkTellsEveryProblemOfEveryFile() throws IOException {
        String sound = Files.readString(desk.write("camera.json", Samples.camera()));
        Files.writeString(
                desk.file("bad.json"),
                sound.replace("\"lengthMetres\": 133", "\"lengthMetres\": -1").replace("0.58", "\"deep\""));
        Desk.Ran ran = desk.run("check", "bad.json", "camera.json", "nowhere.json");
        assertEquals(1, ran.exit());
        List<String> lines = ran.out().lines().toList();
        assertEquals(3, lines.size(), ran.out());
        assertTrue(lines.get(0).contains("bad.json: cable.runs[0].lengthMetres"), ran.out());
        assertTrue(lines.get(1).contains("bad.json: cable.events[1].depthFraction"), ran.out());
        assertTrue(lines.get(2).contains("nowhere.json"), ran.out());
    }

    /** A pair has no core to be off centre. */
    @Test
    void checkTellsWhatCantBeDoneToACable() throws IOException {
        desk.write(
                "pair.json",
                new Cable(
                        "Pilot pair",
                        List.of(new Run(Catalogue.standard().type("pair-24"), 50)),
                        List.of(new OffCentreCore("core", 5, 10, 0.3, Profile.FLAT, OptionalDouble.empty())),
                        new FarEnd.Open()));
        Desk.Ran ran = desk.run("check", "pair.json");
        assertEquals(1, ran.exit());
        assertTrue(ran.out().contains("pair.json") && ran.out().contains("no core"), ran.out());
        assertEquals(1, desk.run("trace", "pair.json").exit());
        assertEquals(1, desk.run("explain", "pair.json").exit());
    }

    /** Drop coax of series 6: 75 ohm, 85 % (ANSI/SCTE 74, from memory). */
    @Test
    void catalogueListsEveryTypeWithItsSource() {
        String list = desk.run("catalogue").out();
        String csv = desk.run("catalogue", "--format", "csv").out();
        Catalogue.standard().types().forEach(type -> assertTrue(list.contains(type.id())));
        assertEquals(1 + Catalogue.standard().types().size(), csv.lines().count());
        assertTrue(csv.lines().anyMatch(line -> line.startsWith("drop-6-foam,") && line.contains(",75.0,0.85,")), csv);
        String one = desk.run("catalogue", "drop-6-foam").out();
        assertTrue(one.contains("SCTE 74"), one);
        assertTrue(desk.run("catalogue", "--feet").out().contains("dB/100 ft"));
    }

    @Test
    void anUnknownTypeIsToldWithTheNearest() {
        Desk.Ran ran = desk.run("catalogue", "drop-6-form");
        assertEquals(1, ran.exit());
        assertTrue(ran.err().contains("drop-6-foam"), ran.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"trace", "response", "netlist", "explain", "check", "catalogue", "practise", "mark", "completion"
            })
    void everyCommandHelpsWithAnExample(String command) {
        Desk.Ran ran = desk.run(command, "--help");
        assertEquals(0, ran.exit());
        assertTrue(ran.out().contains("Example"), ran.out());
        assertTrue(ran.out().contains("cablewright " + command), ran.out());
        assertTrue(desk.run("--help").out().contains("\n  " + command), "not in the list of commands");
    }

    @ParameterizedTest
    @CsvSource({
        "trace, '0.1m to 200km|1ohm to 10kohm|1 to 65536|0dB to 80dB|1kHz to 1000GHz'",
        "response, 1ohm to 10kohm",
        "read, 1ohm to 10kohm",
        "study, '1 to 65536|0dB to 80dB'"
    })
    void helpStatesTheLimitsOfTheInstrument(String command, String limits) {
        String help = desk.run(command, "--help").out().replaceAll("\\s+", " ");
        for (String limit : limits.split("\\|")) {
            assertTrue(help.contains(limit), () -> limit + " is not in " + help);
        }
        assertFalse(help.contains("${"), help);
    }

    @Test
    void colourIsNeverSentToAFile() {
        assertFalse(desk.run("--help").out().contains("\u001b"));
        assertFalse(desk.run("trace").err().contains("\u001b"));
    }

    @Test
    void theCompletionScriptIsSoundForTheShellAndKnowsTheCommands() throws IOException, InterruptedException {
        String script = desk.run("completion").out();
        assertTrue(script.contains("practise") && script.contains("--in-terminal"), "commands are missing");
        Path file = Files.writeString(desk.file("completion.sh"), script);
        if (Files.isExecutable(Path.of("/bin/bash"))) {
            Process bash = new ProcessBuilder("/bin/bash", "-n", file.toString())
                    .inheritIO()
                    .start();
            assertEquals(0, bash.waitFor());
        }
    }

    @Test
    void versionNamesTheProgram() {
        assertTrue(desk.run("--version").out().startsWith("cablewright "));
    }
}
