// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Readings made from places that are known, so that the answer is known too. */
class MergedReadingTest {

    private static final double LIGHT = 299_792_458.0;
    private static final double DOUBT = 0.3e-9;

    private static CandidateEvent seen(double seconds, SplittableRandom random) {
        return seen(seconds, 0.1, random);
    }

    private static CandidateEvent seen(double seconds, double volts, SplittableRandom random) {
        Measured time = new Measured(seconds + DOUBT * random.nextGaussian(), DOUBT);
        Measured metres = time.times(0.8 * LIGHT / 2);
        return new CandidateEvent(metres, time, new Measured(volts, 0.001), CandidateShape.UP, 50);
    }

    /** Places at least 15 ns apart, none mirrored by chance. */
    private static List<Double> places(double whole, int count, SplittableRandom random) {
        List<Double> places = new ArrayList<>();
        while (places.size() < count) {
            double place = whole * (0.05 + 0.9 * random.nextDouble());
            boolean free = Math.abs(2 * place - whole) > 30e-9
                    && places.stream()
                            .allMatch(other ->
                                    Math.abs(other - place) > 15e-9 && Math.abs(whole - other - place) > 15e-9);
            if (free) {
                places.add(place);
            }
        }
        places.sort(Double::compare);
        return places;
    }

    @Property(tries = 300)
    void wholeLineIsReadFromBothSides(
            @ForAll @IntRange(min = 3, max = 5) int count,
            @ForAll boolean openEnds,
            @ForAll @IntRange(min = 0, max = 100_000) int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double whole = 800e-9 + 700e-9 * random.nextDouble();
        List<CandidateEvent> near = new ArrayList<>();
        List<CandidateEvent> far = new ArrayList<>();
        for (double place : places(whole, count, random)) {
            near.add(seen(place, random));
            far.add(seen(whole - place, random));
        }
        if (openEnds) {
            near.add(seen(whole, random));
            far.add(seen(whole, random));
        }
        MergedReading merged = MergedReading.of(near, far);
        Measured found = merged.thereAndBackSeconds().orElseThrow();
        assertEquals(whole, found.value(), 5 * found.uncertainty());
        assertEquals(count + (openEnds ? 2 : 0), merged.agreements());
        assertTrue(merged.isSure());
        assertEquals(count, merged.events().size());
        assertTrue(merged.events().stream().allMatch(MergedEvent::isSeenFromBoth));
        assertEquals(openEnds, merged.nearEndEcho().isPresent());
        // JCGM 100 eq. 10: the mean of two doubts is smaller than either.
        assertTrue(
                merged.events().stream().allMatch(event -> event.nearSeconds().uncertainty() < DOUBT));
    }

    @Property(tries = 300)
    void breakIsFoundFromBothSidesAndHidesWhatLiesBehind(
            @ForAll @IntRange(min = 2, max = 5) int count, @ForAll @IntRange(min = 0, max = 100_000) int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double whole = 800e-9 + 700e-9 * random.nextDouble();
        List<Double> places = places(whole, count, random);
        double broken = places.get(count / 2);
        List<CandidateEvent> near = new ArrayList<>();
        List<CandidateEvent> far = new ArrayList<>();
        for (double place : places) {
            if (place <= broken) {
                near.add(seen(place, place == broken ? 0.8 : 0.05, random));
            }
            if (place >= broken) {
                far.add(seen(whole - place, place == broken ? 0.8 : 0.05, random));
            }
        }
        // Length and velocity are told, so that no other sum can be meant.
        MergedReading merged = MergedReading.of(near, far, new Measured(whole, 1e-9));
        assertEquals(whole, merged.thereAndBackSeconds().orElseThrow().value(), 4e-9);
        assertEquals(count, merged.events().size());
        for (MergedEvent event : merged.events()) {
            boolean isBreak = Math.abs(event.nearSeconds().value() - broken) < 3e-9;
            assertEquals(isBreak, event.isSeenFromBoth());
            assertEquals(!isBreak, event.hidden());
        }
    }

    @Test
    void whereNothingDecidesTheLastOfEachEndIsTheBreak() {
        SplittableRandom random = new SplittableRandom(1);
        List<CandidateEvent> near = List.of(seen(210e-9, random), seen(400e-9, random));
        List<CandidateEvent> far = List.of(seen(310e-9, random), seen(590e-9, random));
        MergedReading merged = MergedReading.of(near, far);
        assertEquals(990e-9, merged.thereAndBackSeconds().orElseThrow().value(), 2e-9);
        assertFalse(merged.isSure());
        assertEquals(1, merged.agreements());
    }

    /** VoP = 2 l/(c T), and a place by its share of the way is right whatever velocity was set. */
    @Test
    void knownLengthGivesTheVelocityAndPlacesWithoutIt() {
        SplittableRandom random = new SplittableRandom(2);
        double whole = 2 * 120 / (0.7 * LIGHT);
        List<CandidateEvent> near = List.of(seen(whole / 4, random), seen(whole, random));
        List<CandidateEvent> far = List.of(seen(3 * whole / 4, random), seen(whole, random));
        MergedReading merged = MergedReading.of(near, far);
        VelocityFinding velocity = merged.velocity(new Measured(120, 0.5)).orElseThrow();
        assertEquals(0.7, velocity.fraction(), 3 * velocity.uncertainty());
        assertEquals(0.7 * 0.5 / 120, velocity.uncertainty(), 0.0005);
        Measured place = merged.metresByShare(merged.events().get(0), new Measured(120, 0.5))
                .orElseThrow();
        assertEquals(30, place.value(), 4 * place.uncertainty());
        assertEquals(
                120,
                merged.lengthMetres(new VelocityFinding(0.7, 0)).orElseThrow().value(),
                0.2);
        assertEquals(0, merged.mismatch(merged.events().get(0)).orElseThrow(), 4);
    }

    @Test
    void nothingFromOneEndAgreesOnNothing() {
        SplittableRandom random = new SplittableRandom(3);
        MergedReading merged = MergedReading.of(List.of(), List.of());
        assertTrue(merged.thereAndBackSeconds().isEmpty());
        assertTrue(MergedReading.of(List.of(seen(2e-7, random)), List.of(seen(3e-7, random)), new Measured(9e-7, 1e-9))
                .thereAndBackSeconds()
                .isEmpty());
    }

    /** From traces of a simulated line: what the near end hides behind the open, the far end shows. */
    @Test
    void openHidesFromOneEndWhatTheOtherShows() {
        Cable line = cable(
                lossless(75, 0.8 * LIGHT),
                150,
                new FarEnd.Open(),
                new SeriesPart("a", 30, Lumped.resistor(30)),
                new BrokenConductor("b", 80, OptionalDouble.empty()),
                new SeriesPart("c", 120, Lumped.resistor(30)));
        List<CandidateEvent> near = candidates(line);
        List<CandidateEvent> far = candidates(line.seenFromFarEnd());
        MergedReading merged = MergedReading.of(near, far, new Measured(2 * 150 / (0.8 * LIGHT), 2e-9));
        // What else either end shows are ghosts, which nothing mirrors.
        double[] expected = {30, 80, 120};
        VelocityFinding velocity = new VelocityFinding(0.8, 0);
        for (double place : expected) {
            MergedEvent event = merged.events().stream()
                    .filter(one -> Math.abs(velocity.metres(one.nearSeconds()).value() - place) < 0.4)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(merged.toString()));
            assertEquals(place == 80, event.isSeenFromBoth(), merged.toString());
            assertEquals(place != 80, event.hidden(), merged.toString());
            assertEquals(place < 100, event.near().isPresent(), merged.toString());
        }
    }

    private static List<CandidateEvent> candidates(Cable line) {
        Settings settings = new Settings(new HalfSine(10e-9), 0.8, 160, 0, 256);
        return CandidateEvents.on(
                new Reflectometer(Instrument.usual(75)).measure(new SimulatedPort(line, 75), settings, 3));
    }
}
