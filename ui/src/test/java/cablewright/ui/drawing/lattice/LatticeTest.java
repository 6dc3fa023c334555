// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.pen.RecordingPen;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LatticeTest {

    private static final Lattice NEAR = lattice(LineEnd.NEAR, LengthUnit.METRES);

    private static Cable pair(double metres, Event... events) {
        return new Cable(
                "Pair",
                List.of(new Run(Catalogue.standard().type("pair-24"), metres)),
                List.of(events),
                new FarEnd.Open());
    }

    private static Lattice lattice(LineEnd end, LengthUnit unit) {
        Cable branch = pair(45, new BridgedTap("inner", 20, pair(14)));
        Cable cable = pair(310, new Splice("s", 60, 2.5e-7, 0, 0), new BridgedTap("outer", 118, branch));
        Settings settings = new Settings(new HalfSine(40e-9), 0.66, 500, 0, 256);
        Attribution attribution = Attribution.of(cable, Instrument.usual(98), settings, end);
        return new LatticeMaker(cable, end, Words.in(unit, Locale.ROOT)).of(attribution, 1e-3);
    }

    @Test
    void eachBranchIsLaidBesideItsJoint() {
        List<Lattice.Strip> strips = NEAR.strips();
        assertEquals(
                List.of(List.of(), List.of("outer"), List.of("outer", "inner"), List.of("outer"), List.of()),
                strips.stream().map(Lattice.Strip::branchIds).toList());
        assertEquals(118, strips.get(0).toMetres(), 1e-9);
        assertEquals(20, strips.get(1).toMetres(), 1e-9);
        assertEquals(14, strips.get(2).toMetres(), 1e-9);
        assertEquals(45, strips.get(3).toMetres(), 1e-9);
        assertEquals(310, strips.get(4).toMetres(), 1e-9);
    }

    /** The slope of every line is the speed of the pair's front, on the line and in its branches. */
    @Test
    void everyRayStaysOnItsStripAndGoesWithTheFront() {
        Lattice lattice = NEAR;
        double front = Catalogue.standard().type("pair-24").section().velocityFraction() * 299_792_458;
        assertTrue(lattice.rays().size() > 20);
        for (Lattice.Ray ray : lattice.rays()) {
            Lattice.Strip strip = lattice.strips().get(ray.strip());
            assertTrue(strip.has(strip.branchIds(), ray.fromMetres()) && strip.has(strip.branchIds(), ray.toMetres()));
            double metres = Math.abs(ray.toMetres() - ray.fromMetres());
            assertEquals(front, metres / (ray.toSeconds() - ray.fromSeconds()), 1e-6 * front);
            assertTrue(ray.volts() > 0 && ray.volts() < 1.2);
        }
    }

    @Test
    void everyEchoHasAWayFromThePortAndBack() {
        Lattice lattice = lattice(LineEnd.FAR, LengthUnit.METRES);
        for (int i = 0; i < lattice.echoes().size(); i++) {
            int echo = i;
            double arrival = lattice.echoes().get(i).path().arrivalSeconds();
            List<Lattice.Ray> way = lattice.rays().stream()
                    .filter(ray -> ray.echoes().contains(echo))
                    .toList();
            assertTrue(way.stream().anyMatch(ray -> ray.strip() == 0 && ray.fromMetres() == 0));
            assertTrue(way.stream()
                    .anyMatch(ray ->
                            ray.strip() == 0 && ray.toMetres() == 0 && Math.abs(ray.toSeconds() - arrival) < 1e-15));
        }
    }

    @Test
    void aPictureTellsPlacesHeightsAndBothUnitsOfLength() {
        String metres = svg(LengthUnit.METRES);
        for (String text :
                List.of("branch at 118 m", "branch at 20 m", "bridged tap", "splice", "60.0 m", "shown at")) {
            assertTrue(metres.replace('\u00a0', ' ').replace('\u202f', ' ').contains(text), text);
        }
        assertTrue(svg(LengthUnit.FEET)
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .contains("196.9 ft"));
    }

    private static String svg(LengthUnit unit) {
        return new String(
                new LatticeSheet(unit == LengthUnit.METRES ? NEAR : lattice(LineEnd.NEAR, unit))
                        .bytes(PictureFormat.SVG),
                StandardCharsets.UTF_8);
    }

    @Test
    void theSameCableGivesTheSamePicture() {
        assertArrayEquals(
                new LatticeSheet(NEAR).bytes(PictureFormat.PDF),
                new LatticeSheet(lattice(LineEnd.NEAR, LengthUnit.METRES)).bytes(PictureFormat.PDF));
    }

    @Test
    void whatIsPointedAtIsTheEchoThatIsDrawnThere() {
        Lattice lattice = NEAR;
        RecordingPen pen = new RecordingPen();
        Box sheet = new Box(0, 0, 800, 600);
        new LatticeDrawing(pen, Palette.LIGHT, 10, lattice, sheet).draw(Set.of(0));
        LatticeLayout layout = new LatticeLayout(lattice, sheet, 10);
        List<double[]> lines = pen.lines().stream()
                .filter(it -> it.colour().equals(Palette.LIGHT.of(Tone.MAIN)))
                .filter(it -> it.xs().length == 2 && it.thickness() > 1)
                .map(it -> new double[] {it.xs()[0], it.ys()[0], it.xs()[1], it.ys()[1]})
                .toList();
        assertEquals(2, lines.size(), "out to the splice and home");
        double[] home = lines.get(1)[2] < lines.get(1)[0] ? lines.get(1) : lines.get(0);
        assertEquals(Set.of(0), layout.echoesAt((home[0] + 2 * home[2]) / 3, (home[1] + 2 * home[3]) / 3));
        RecordingPen.Text label = pen.texts().stream()
                .filter(it -> it.text().equals(lattice.echoes().get(2).shown()))
                .findFirst()
                .orElseThrow();
        assertEquals(Set.of(2), layout.echoesAt(label.x() - 5, label.y()));
        assertEquals(Set.of(), layout.echoesAt(799, 1));
    }

    @Test
    void charactersDrawItToo() {
        Lattice lattice = NEAR;
        String text = new LatticeText(lattice, 110, 36).draw();
        List<String> lines = text.lines().toList();
        String arrival =
                lattice.echoes().get(0).shown() + " " + lattice.echoes().get(0).height() + " <";
        String row = lines.stream()
                .filter(line -> line.contains(arrival))
                .findFirst()
                .orElseThrow();
        assertTrue(row.contains("/"), row);
        assertTrue(lines.get(0).contains("\\"), lines.get(0));
        assertTrue(text.contains("the splice at"), text);
    }
}
