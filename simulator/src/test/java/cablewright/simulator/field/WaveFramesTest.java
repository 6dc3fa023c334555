// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.constants;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** An outgoing wave of 1 V from a source of Rs is a source of 2 V behind Rs; published voltages are scaled so. */
class WaveFramesTest {

    private static final double TOLERANCE = 1e-7;

    private static WaveFrames frames(
            Cable cable, double sourceOhms, Stimulus stimulus, double seconds, LinePlaces... tracks) {
        return WaveFrames.of(new LineField(cable, sourceOhms, List.of(tracks)), stimulus, seconds, 601);
    }

    private static LinePlaces at(Double... metres) {
        return new LinePlaces(List.of(), List.of(metres));
    }

    /**
     * Ulaby, Fundamentals of Applied Electromagnetics, Problem 2.75: 60 V, 100 Ω, line 50 Ω, 1 m at 2c/3, load 25 Ω. Mid-line
     * 20, 13.34, 11.12, 11.86, 12.10 V as printed, from 2.5, 7.5, 12.5, 17.5, 22.5 ns; recomputed to more digits.
     */
    @Test
    void middleOfTheLineFollowsUlabyProblem2Point75() {
        double v = 2.0 / 3 * 299_792_458.0;
        Cable line = cable(lossless(50, v), 1, FarEnd.Terminated.byOhms(25));
        WaveFrames frames = frames(line, 100, new RaisedCosineStep(0.2e-9), 60e-9, at(0.5));
        double[] volts = {20, 13.333333333, 11.111111111, 11.851851852, 12.098765432, 12.016460905};
        for (int k = 0; k < volts.length; k++) {
            double middle = (k + 0.5) / v + 0.5 / v;
            assertEquals(volts[k], 30 * frames.volts(0, frames.frameAt(middle), 0), 30 * TOLERANCE);
        }
        double current = 30 * frames.amperes(0, frames.count() - 1, 0);
        assertEquals(60.0 / 125, current, 1e-4);
    }

    /**
     * Grainger &amp; Stevenson, Elements of Power System Analysis, Ex. 5.6: 120 V, Zs 0, Zc 30 Ω, ZR 90 or 10 Ω. The least
     * source that may be is 0.1 Ω, so all impedances are told a million times larger.
     */
    @Test
    void receivingEndFollowsGraingerExample5Point6() {
        double[][] published = {{180, 90, 135, 112.5, 123.75}, {60, 90, 105, 112.5, 116.25}};
        double[] loads = {90e6, 10e6};
        for (int load = 0; load < loads.length; load++) {
            Cable line = cable(lossless(30e6, 2e8), 200, FarEnd.Terminated.byOhms(loads[load]));
            WaveFrames frames = frames(line, 0.1, new RaisedCosineStep(10e-9), 12e-6, at(200.0));
            for (int k = 0; k < published[load].length; k++) {
                double seconds = (2 * k + 2) * 1e-6;
                assertEquals(published[load][k], 60 * frames.volts(0, frames.frameAt(seconds), 0), 60 * TOLERANCE);
            }
        }
    }

    @Test
    void openEndDoublesTheVoltageAndCarriesNoCurrent() {
        Cable line = cable(lossless(75, 2e8), 100, new FarEnd.Open());
        WaveFrames frames = frames(line, 75, new GaussianPulse(20e-9), 1e-6, at(50.0, 100.0));
        double t0 = 8 * 20e-9 / (2 * Math.sqrt(2 * Math.log(2)));
        int there = frames.frameAt(0.5e-6 + t0);
        GaussianPulse pulse = new GaussianPulse(20e-9);
        assertEquals(2 * pulse.at(frames.seconds(there) - 0.5e-6), frames.volts(0, there, 1), TOLERANCE);
        assertEquals(0, frames.amperes(0, there, 1), TOLERANCE / 75);
        int passing = frames.frameAt(0.25e-6 + t0);
        double volts = pulse.at(frames.seconds(passing) - 0.25e-6);
        assertEquals(volts, frames.volts(0, passing, 0), TOLERANCE);
        assertEquals(volts / 75, frames.amperes(0, passing, 0), TOLERANCE / 75);
        int returning = frames.frameAt(0.75e-6 + t0);
        assertEquals(-frames.volts(0, returning, 0) / 75, frames.amperes(0, returning, 0), TOLERANCE / 75);
    }

    @Test
    void shortedEndHasNoVoltageAndTwiceTheCurrent() {
        Cable line = cable(lossless(75, 2e8), 100, new FarEnd.Short());
        WaveFrames frames = frames(line, 75, new GaussianStep(5e-9), 0.9e-6, at(100.0));
        assertEquals(0, frames.volts(0, 600, 0), TOLERANCE);
        assertEquals(2.0 / 75, frames.amperes(0, 600, 0), TOLERANCE / 75);
    }

    /** Starr, Cioffi, Silverman, Understanding DSL Technology, ch. 3 (from memory): 2/3 goes each way at a joint of three. */
    @Test
    void bridgedTapSendsTwoThirdsEachWayAndItsOpenEndDoublesThem() {
        Cable branch = cable(lossless(100, 2e8), 20, new FarEnd.Open());
        Cable line = cable(lossless(100, 2e8), 200, FarEnd.Terminated.byOhms(100), new BridgedTap("b", 100, branch));
        LinePlaces onBranch = new LinePlaces(List.of("b"), List.of(0.0, 10.0, 20.0));
        WaveFrames frames = frames(line, 100, new RaisedCosineStep(1e-9), 0.9e-6, at(0.0, 150.0), onBranch);
        int before = frames.frameAt(0.54e-6);
        int atEnd = frames.frameAt(0.62e-6);
        assertEquals(0, frames.volts(1, before, 1), TOLERANCE);
        assertEquals(2.0 / 3, frames.volts(1, before, 0), TOLERANCE);
        assertEquals(4.0 / 3, frames.volts(1, atEnd, 2), TOLERANCE);
        assertEquals(0, frames.amperes(1, atEnd, 2), TOLERANCE / 100);
        // One trip along the branch later 2/3 of the echo is added to the line beyond: 2/3 + 2/3 · 2/3.
        assertEquals(2.0 / 3, frames.volts(0, frames.frameAt(0.85e-6), 1), TOLERANCE);
        assertEquals(10.0 / 9, frames.volts(1, frames.frameAt(0.73e-6), 0), TOLERANCE);
    }

    @Test
    void portIsThatOfTheTrace() {
        Cable branch =
                cable(lossless(90, 1.9e8), 13, new FarEnd.Open(), new ShuntPart("c", 5, Lumped.capacitor(1e-11)));
        Event[] events = {
            new ShuntPart("zero", 0, Lumped.resistor(500)),
            new Connector("j", 9, 60, 0.05, 0.2),
            new SeriesPart("l", 20, Lumped.inductor(3e-8)),
            new BridgedTap("b", 31, branch),
            new Pinch("p", 45, 0.4, 0.3, Profile.FLAT),
            new TouchingConductors("s", 60, OptionalDouble.of(200))
        };
        Cable line = cable(Catalogue.standard().type("drop-6-foam"), 80, FarEnd.Terminated.byOhms(30), events);
        for (Stimulus stimulus : List.of(new GaussianPulse(8e-9), new GaussianStep(3e-9))) {
            int perStep = 128;
            double step = 1.5e-6 / 600;
            double period = 2048 * step;
            ContourGrid grid = new ContourGrid(ContourGrid.DAMPING_TIMES_PERIOD / period, period, 2048 * perStep);
            PortVoltage port = PortVoltage.on(grid, new SimulatedPort(line, 75), stimulus);
            WaveFrames frames = frames(line, 75, stimulus, 1.5e-6, at(0.0, 40.0));
            for (int m = 0; m < frames.count(); m++) {
                double out = port.outgoing().sample(m * perStep);
                double back = port.reflected().sample(m * perStep);
                assertEquals(out + back, frames.volts(0, m, 0), 1e-9);
                assertEquals((out - back) / 75, frames.amperes(0, m, 0), 1e-11);
            }
        }
    }

    /** A place a hair from the port has the port's voltage, so what is told along the line joins on to what is told there. */
    @Test
    void lineJoinsOnToItsPort() {
        Cable line = cable(Catalogue.standard().type("cat-5e"), 40, FarEnd.Terminated.byOhms(400));
        WaveFrames frames = frames(line, 120, new GaussianPulse(8e-9), 0.8e-6, at(0.0, 1e-6));
        for (int m = 0; m < frames.count(); m++) {
            assertEquals(frames.volts(0, m, 0), frames.volts(0, m, 1), 1e-6);
            assertEquals(frames.amperes(0, m, 0), frames.amperes(0, m, 1), 1e-8);
        }
    }

    /** Kirchhoff: a shunt leaves the voltage, a series part the current, and each changes the other by what it draws. */
    @Test
    void voltageAndCurrentAroundAPartObeyOhm() {
        Event across = new ShuntPart("x", 20, Lumped.resistor(50));
        Event along = new SeriesPart("y", 40, Lumped.resistor(35));
        Cable line = cable(lossless(75, 2e8), 60, FarEnd.Terminated.byOhms(20), across, along);
        double hair = 1e-7;
        WaveFrames frames = frames(line, 75, new GaussianPulse(20e-9), 1e-6, at(20.0, 20 + hair, 40.0, 40 + hair));
        for (int m = 0; m < frames.count(); m++) {
            double v = frames.volts(0, m, 0);
            assertEquals(v, frames.volts(0, m, 1), 1e-6);
            assertEquals(v / 50, frames.amperes(0, m, 0) - frames.amperes(0, m, 1), 1e-8);
            double i = frames.amperes(0, m, 2);
            assertEquals(i, frames.amperes(0, m, 3), 1e-8);
            assertEquals(35 * i, frames.volts(0, m, 2) - frames.volts(0, m, 3), 1e-6);
        }
    }

    @Test
    void nothingGetsPastAFullBreakOrAFullContact() {
        for (Event event : List.of(
                new BrokenConductor("e", 30, OptionalDouble.empty()),
                new TouchingConductors("e", 30, OptionalDouble.empty()))) {
            Cable line = cable(lossless(75, 2e8), 60, new FarEnd.Open(), event);
            WaveFrames frames = frames(line, 75, new GaussianStep(5e-9), 1e-6, at(30.0, 45.0, 60.0));
            boolean broken = event instanceof BrokenConductor;
            assertEquals(broken ? 2 : 0, frames.volts(0, 600, 0), TOLERANCE);
            assertEquals(broken ? 0 : 2.0 / 75, frames.amperes(0, 600, 0), TOLERANCE);
            for (int m = 0; m < frames.count(); m++) {
                assertEquals(0, frames.volts(0, m, 1), 0);
                assertEquals(0, frames.amperes(0, m, 2), 0);
            }
        }
    }

    @Test
    void dividerSharesTheWaveByItsAmplitudes() {
        Cable leg = cable(lossless(75, 2e8), 30, new FarEnd.Open());
        Splitter splitter = new Splitter("s", 50, 75, 3.5, 4, 0, leg, false);
        Cable line = cable(lossless(75, 2e8), 100, FarEnd.Terminated.byOhms(75), splitter);
        LinePlaces onLeg = new LinePlaces(List.of("s"), List.of(15.0, 30.0));
        WaveFrames frames = frames(line, 75, new GaussianStep(4e-9), 0.45e-6, at(75.0), onLeg);
        assertEquals(Math.pow(10, -3.5 / 20), frames.volts(0, 600, 0), TOLERANCE);
        assertEquals(2 * Math.pow(10, -4.0 / 20), frames.volts(1, 600, 1), TOLERANCE);
        assertEquals(Math.pow(10, -4.0 / 20), frames.volts(1, frames.frameAt(0.37e-6), 0), TOLERANCE);
    }

    /**
     * Wigington &amp; Nahman, Proc. IRE 45, 166 (1957) (from memory): a step along a skin-effect line is erfc(Kx/(2√t)), t
     * counted from its arrival. Good while t is short against the delay; Zc's own square root then adds up to 2 %.
     */
    @Test
    void stepAlongASkinEffectLineFollowsWigingtonAndNahman() {
        double slowness = 5e-9;
        double k = 2e-6;
        Cable line = cable(constants(0, 75 * slowness, 2 * 75 * k, 0, slowness / 75), 40, FarEnd.Terminated.byOhms(75));
        WaveFrames frames = frames(line, 75, new RaisedCosineStep(5e-11), 108e-9, at(10.0, 20.0));
        for (int place = 0; place < 2; place++) {
            double metres = 10 * (place + 1);
            for (double wanted : new double[] {1e-9, 2e-9, 4e-9}) {
                int frame = frames.frameAt(metres * slowness + wanted);
                double t = frames.seconds(frame) - metres * slowness - 4e-11;
                double expected = Erf.erfc(k * metres / (2 * Math.sqrt(t)));
                assertEquals(expected, frames.volts(0, frame, place), 0.02);
            }
        }
    }

    @Test
    void testLeadLiesBelowZero() {
        Cable plain = cable(lossless(75, 2e8), 50, new FarEnd.Open());
        TestLead lead = new TestLead(lossless(75, 2e8), 4);
        Cable line = new Cable(
                "With lead",
                List.of(new Run(lossless(75, 2e8), 50)),
                List.of(),
                new FarEnd.Open(),
                20,
                Optional.of(lead));
        GaussianPulse pulse = new GaussianPulse(4e-9);
        WaveFrames with = frames(line, 75, pulse, 0.4e-6, at(-4.0, 0.0, 46.0));
        WaveFrames without = frames(plain, 75, pulse, 0.4e-6, at(0.0, 4.0, 50.0));
        for (int m = 0; m < with.count(); m++) {
            assertEquals(without.volts(0, m, 1), with.volts(0, m, 1), 1e-9);
        }
        int leaving = with.frameAt(pulse.halfHeightSeconds());
        assertEquals(pulse.at(with.seconds(leaving)), with.volts(0, leaving, 0), 1e-9);
    }

    @Test
    void evenTracksCoverTheLineItsLeadAndItsBranches() {
        Cable branch = cable(lossless(100, 2e8), 12, new FarEnd.Open());
        TestLead lead = new TestLead(lossless(75, 2e8), 5);
        Cable line = new Cable(
                "Whole",
                List.of(new Run(lossless(75, 2e8), 55)),
                List.of(new BridgedTap("b", 20, branch)),
                new FarEnd.Open(),
                20,
                Optional.of(lead));
        List<LinePlaces> tracks = LinePlaces.evenly(line, 61);
        assertEquals(2, tracks.size());
        assertEquals(-5, tracks.get(0).metres().get(0), 0);
        assertEquals(55, tracks.get(0).metres().get(60), 0);
        assertEquals(List.of("b"), tracks.get(1).branchIds());
        assertEquals(13, tracks.get(1).metres().size());
        WaveFrames frames = WaveFrames.of(new LineField(line, 75, tracks), new GaussianPulse(5e-9), 0.5e-6, 100);
        assertTrue(frames.largestVolts() > 1 && frames.largestVolts() <= 2, "largest " + frames.largestVolts());
        assertEquals(61, frames.copyOfVolts(0, 50).length);
    }

    @Test
    void placesOffTheCableAreRefused() {
        Cable line = cable(lossless(75, 2e8), 50, new FarEnd.Open());
        assertThrows(IllegalArgumentException.class, () -> new LineField(line, 75, List.of(at(51.0))));
        LinePlaces stray = new LinePlaces(List.of("nowhere"), List.of(1.0));
        assertThrows(IllegalArgumentException.class, () -> new LineField(line, 75, List.of(stray)));
    }
}
