// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.compile;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.explanation.CableNotices;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CableCompilerTest {

    private static final double LIGHT = 299_792_458.0;

    @Test
    void piecesKnowWhichEventsMadeThem() {
        Cable line = cable(
                Catalogue.standard().type("drop-6-foam"),
                100,
                new FarEnd.Open(),
                new OffCentreCore("core", 20, 40, 0.3, Profile.FLAT, OptionalDouble.empty()),
                new Pinch("pinch", 50, 0.5, 0.4, Profile.FLAT),
                new Splice("splice", 70, 5e-9, 0, 0));
        List<Element> elements = CableCompiler.compile(line, 1e9).elements();
        List<Set<String>> makers = elements.stream().map(Element::madeBy).toList();
        assertEquals(
                List.of(
                        Set.of(),
                        Set.of("core"),
                        Set.of("core", "pinch"),
                        Set.of("core"),
                        Set.of(),
                        Set.of("splice"),
                        Set.of("splice"),
                        Set.of()),
                makers);
        double metres = elements.stream()
                .filter(Element.Line.class::isInstance)
                .mapToDouble(e -> ((Element.Line) e).lengthMetres())
                .sum();
        assertEquals(100, metres, 1e-9);
    }

    @Test
    void equalNeighboursAreMerged() {
        Cable line = new Cable(
                "Two equal runs",
                List.of(
                        new Run(Catalogue.standard().type("drop-6-foam"), 30),
                        new Run(Catalogue.standard().type("drop-6-foam"), 20)),
                List.of(),
                new FarEnd.Open());
        assertEquals(1, CableCompiler.compile(line, 1e9).elements().size());
    }

    /** Pozar, Microwave Engineering, 4th ed., sec. 5.8: the exact values of the exponential taper by Riccati, r = 4/3. */
    @Test
    void linearRiseOfGradualDamageIsAnExponentialTaper() {
        double v = 2e8;
        double metres = 10;
        Cable line = cable(
                lossless(75, v),
                metres,
                FarEnd.Terminated.byOhms(100),
                new GradualDamage("taper", 0, metres, 4.0 / 3, Profile.LINEAR_RISE));
        double[] betaL = {Math.PI / 4, Math.PI / 2, Math.PI, 1.5 * Math.PI};
        double[] exact = {0.12888501, 0.0915700702, 0.000151008, 0.0305239424};
        SimulatedPort port = new SimulatedPort(line, 75);
        for (int k = 0; k < betaL.length; k++) {
            ComplexArray gamma = port.sweep(betaL[k] * v / (2 * Math.PI * metres));
            assertEquals(exact[k], gamma.magnitude(0), 5e-6);
        }
    }

    /** The stated errors of the steps, at places where a band has its weight and at the band's own top. */
    @Test
    void halvingTheStepsChangesTheReflectionByLessThanIsStated() {
        Cable line = cable(
                Catalogue.standard().type("drop-6-foam"),
                80,
                new FarEnd.Endless(Catalogue.standard().type("drop-6-foam")),
                new Pinch("p", 10, 0.3, 0.5, Profile.RAISED_COSINE),
                new GradualDamage("g", 20, 8, 0.8, Profile.RAISED_COSINE),
                new GradualDamage("h", 40, 30, 0.9, Profile.TRIANGLE));
        double[] band = {1e6, 1e7, 5e7, 1e8, 2e8, 5e8, 1e9};
        double sweep = CableNotices.profileStepError(line, ProfileSteps.forSweepTo(1e9), band);
        assertTrue(sweep < ProfileSteps.SWEEP_ERROR / 10, "sweep " + sweep);
    }

    @Test
    void halvingTheStepsChangesATraceByLessThanIsStated() {
        Cable line = cable(
                lossless(75, 2e8),
                80,
                new FarEnd.Endless(lossless(75, 2e8)),
                new GradualDamage("g", 20, 8, 0.8, Profile.RAISED_COSINE),
                new GradualDamage("h", 40, 30, 0.9, Profile.TRIANGLE));
        RaisedCosineStep step = new RaisedCosineStep(1e-9);
        ContourGrid grid = ContourGrid.forRecord(1e-6, step.shortestEdgeSeconds() / 16);
        Waveform coarse = inTime(line, grid, step, step.shortestEdgeSeconds());
        Waveform fine = inTime(line, grid, step, step.shortestEdgeSeconds() / 4);
        double most = 0;
        for (int i = 0; i < coarse.count(); i++) {
            most = Math.max(most, Math.abs(coarse.sample(i) - fine.sample(i)));
        }
        assertTrue(most < 2 * ProfileSteps.TIME_ERROR, "in time " + most);
    }

    /** Sixteen times as short an edge takes 6.3 times as many steps; 66.7 ns is longer than the damage in time. */
    @Test
    void smoothDamageUnderALongPulseErrsByLessThanThreeMillionths() {
        for (double ohms : new double[] {65, 60}) {
            Cable line = cable(
                    lossless(75, 2e8),
                    30,
                    new FarEnd.Endless(lossless(75, 2e8)),
                    new GradualDamage("g", 0.001, 6, ohms / 75, Profile.RAISED_COSINE));
            HalfSine pulse = new HalfSine(66.7e-9);
            ContourGrid grid = ContourGrid.forRecord(2e-6, pulse.shortestEdgeSeconds() / 16);
            Waveform coarse = inTime(line, grid, pulse, pulse.shortestEdgeSeconds());
            Waveform fine = inTime(line, grid, pulse, pulse.shortestEdgeSeconds() / 16);
            double most = 0;
            for (int i = 0; i < coarse.count(); i++) {
                most = Math.max(most, Math.abs(coarse.sample(i) - fine.sample(i)));
            }
            assertTrue(most < 3e-6, "in time " + most);
        }
    }

    private static Waveform inTime(Cable line, ContourGrid grid, Stimulus step, double edge) {
        ComplexArray sent = PortVoltage.spectrum(grid, step);
        ComplexArray back = new SimulatedPort(line, 75).reflection(grid, sent.count(), edge);
        return Inversion.invert(grid, sent.times(back));
    }

    /** A matched T of loss L in front of an open sends back 10^(−2L/20) (definition of loss). */
    @Test
    void tapPassesWithItsStatedLoss() {
        Cable line = cable(lossless(75, 0.85 * LIGHT), 20, new FarEnd.Open(), new Tap("t", 10, 75, 1.2, 0, 0));
        ComplexArray gamma = new SimulatedPort(line, 75).sweep(1e6, 1e8);
        assertEquals(Math.pow(10, -2 * 1.2 / 20), gamma.magnitude(0), 1e-12);
        assertEquals(Math.pow(10, -2 * 1.2 / 20), gamma.magnitude(1), 1e-12);
    }

    /** A matched two-way divider with 3.01 dB to each leg: Γ = ½Γ1 + ½Γ2. */
    @Test
    void splitterAddsTheReflectionsOfItsLegs() {
        double half = 10 * Math.log10(2);
        Cable leg = cable(lossless(75, 2e8), 5, new FarEnd.Open());
        Cable line =
                cable(lossless(75, 2e8), 10, new FarEnd.Short(), new Splitter("s", 5, 75, half, half, 0, leg, false));
        ComplexArray gamma = new SimulatedPort(line, 75).sweep(1e7);
        assertEquals(0, gamma.magnitude(0), 1e-12);
        ComplexArray fromOutput = new SimulatedPort(line.seenFromFarEnd(), 75).sweep(1e7);
        assertEquals(0.5, fromOutput.magnitude(0), 1e-12);
    }

    @Test
    void farEndSeesTheMirroredCable() {
        Cable line = cable(
                lossless(75, 2e8),
                100,
                new FarEnd.Short(),
                new Splice("s", 30, 1e-9, 0, 0),
                new GradualDamage("g", 40, 10, 0.9, Profile.LINEAR_RISE));
        Cable seen = line.seenFromFarEnd();
        assertEquals(70, seen.event("s").orElseThrow().startMetres(), 1e-12);
        assertEquals(50, seen.event("g").orElseThrow().startMetres(), 1e-12);
        assertEquals(Profile.LINEAR_FALL, ((GradualDamage) seen.event("g").orElseThrow()).profile());
        assertEquals(line.events(), seen.seenFromFarEnd().events());
    }

    @Test
    void mirroredUnevennessIsTheSameUnevenness() {
        ImpedanceVariation rough = new ImpedanceVariation("u", 0, 50, 0.01, 0.5, OptionalLong.of(7), false);
        Cable line = cable(lossless(75, 2e8), 50, FarEnd.Terminated.byOhms(75), rough);
        ComplexArray near = new SimulatedPort(line, 75).sweep(1e7, 5e7, 2e8);
        ComplexArray far =
                new SimulatedPort(line.seenFromFarEnd(FarEnd.Terminated.byOhms(75)), 75).sweep(1e7, 5e7, 2e8);
        for (int k = 0; k < 3; k++) {
            assertEquals(near.magnitude(k), far.magnitude(k), 1e-9);
        }
        assertTrue(near.magnitude(1) > 1e-4);
    }

    /** |Γ| = tanh(N atanh r) at f = v/(2d) for N equal small reflections (coupled-mode theory, from memory). */
    @Test
    void regularUnevennessAddsUpAtHalfAWavelengthPerPeriod() {
        double v = 2e8;
        double pitch = 1;
        int periods = 100;
        ImpedanceVariation regular =
                new ImpedanceVariation("u", 0, pitch * periods, 0.001, pitch, OptionalLong.empty(), false);
        Cable line = cable(lossless(75, v), pitch * periods, FarEnd.Terminated.byOhms(75), regular);
        ComplexArray gamma = new SimulatedPort(line, 75).sweep(v / (2 * pitch), 0.8 * v / (2 * pitch), 4e9);
        // Z = Z0(1 + a cos 2πz/d): each period reflects r = πa/2 (first Fourier coefficient of d ln Z/dz, times d/2).
        double expected = Math.tanh(periods * Math.PI * 0.001 / 2);
        assertEquals(expected, gamma.magnitude(0), 0.01 * expected);
        assertTrue(gamma.magnitude(1) < 0.1 * expected);
    }

    @Test
    void cableOfTooManyPiecesIsRefusedInWords() {
        Cable line = cable(
                lossless(75, 2e8),
                100_000,
                new FarEnd.Open(),
                new GradualDamage("long", 0, 100_000, 0.5, Profile.RAISED_COSINE));
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> CableCompiler.compile(line, 1e11));
        assertTrue(refusal.getMessage().contains("long"), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("wider pulse"), refusal.getMessage());
    }

    @Test
    void conditionThatCannotBeDoneNamesItsEvent() {
        Cable line = cable(
                lossless(75, 2e8),
                100,
                new FarEnd.Open(),
                new OffCentreCore("core", 0, 100, 0.5, Profile.FLAT, OptionalDouble.empty()));
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> CableCompiler.compile(line, 1e9));
        assertTrue(refusal.getMessage().startsWith("event \"core\""), refusal.getMessage());
    }
}
