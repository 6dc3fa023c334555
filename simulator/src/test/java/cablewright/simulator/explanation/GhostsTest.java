package cablewright.simulator.explanation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.ShuntPart;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Interference;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Against the lattice of a lossless line with resistors across it, each of which reflects ρ = −Z/(2R + Z) from either side
 * and lets 1 + ρ through (first principles; Johnson & Graham, High-Speed Signal Propagation, 2003, lattice diagrams).
 */
class GhostsTest {

    private static final double NANOSECONDS_PER_METRE = 2e9 / (0.85 * 299_792_458.0);

    private static List<Ghost> ghosts(double sourceOhms, double loadOhms, double rangeMetres, Event... events) {
        Cable cable = new Cable(
                "line",
                List.of(new Run(Catalogue.standard().type("lossless-75"), 200)),
                List.of(events),
                FarEnd.Terminated.byOhms(loadOhms));
        Instrument instrument =
                new Instrument(sourceOhms, 1e11, 1, 0, 1e-9, 1e-4, 24, 2, 65_536, 0, Interference.none());
        Settings settings = new Settings(new HalfSine(20e-9), 0.85, rangeMetres, 0, 1);
        List<EventSight> sights = Sightings.of(cable, instrument, settings, LineEnd.NEAR);
        return Ghosts.of(cable, instrument, settings, LineEnd.NEAR, sights);
    }

    private static Event shunt(String id, double metres) {
        return new ShuntPart(id, metres, Lumped.resistor(150));
    }

    @Test
    void aWaveBetweenTwoEventsShowsBeyondThemAsHighAsTheLatticeSays() {
        List<Ghost> found = ghosts(75, 75, 150, shunt("a", 40), shunt("b", 70));
        assertEquals(1, found.size(), found.toString());
        Ghost ghost = found.get(0);
        double rho = -0.2;
        assertEquals(List.of("b", "a", "b"), ghost.path());
        assertEquals(100, ghost.shownMetres(), 1e-9);
        assertEquals(100 * NANOSECONDS_PER_METRE * 1e-9, ghost.thereAndBackSeconds(), 1e-14);
        assertEquals(Math.abs(Math.pow(rho, 3) * Math.pow(1 + rho, 2)), ghost.heightVolts(), 2e-4);
    }

    @Test
    void aMismatchedSourceSendsEveryEchoOutAgain() {
        List<Ghost> found = ghosts(150, 75, 150, shunt("a", 60));
        Ghost ghost = found.get(0);
        assertEquals(List.of("a", "port", "a"), ghost.path());
        assertEquals(120, ghost.shownMetres(), 1e-9);
        // at the port in and out: 1 − ρ² of the source, which turns the echo about in between
        double port = (150.0 - 75) / (150 + 75);
        double height = 0.2 * 0.2 * port * (1 - port * port);
        assertEquals(height, ghost.heightVolts(), 2e-4);
    }

    @Test
    void theEndOfTheLineIsTurnedBackByAnEvent() {
        List<Ghost> found = ghosts(75, 225, 400, shunt("a", 150));
        assertTrue(
                found.stream()
                        .anyMatch(ghost -> ghost.path().equals(List.of("end of line", "a", "end of line"))
                                && Math.abs(ghost.shownMetres() - 250) < 1e-6
                                && Math.abs(ghost.heightVolts() - 0.5 * 0.5 * 0.2 * 0.64) < 2e-4),
                found.toString());
    }

    @Test
    void whatIsBelowTheNoiseOrBeyondTheRangeIsNotTold() {
        assertEquals(List.of(), ghosts(75, 75, 90, shunt("a", 40), shunt("b", 70)));
        assertEquals(List.of(), ghosts(75, 75, 150, shunt("a", 40)));
    }
}
