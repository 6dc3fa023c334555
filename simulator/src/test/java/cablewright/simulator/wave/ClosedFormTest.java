// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.constants;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import java.util.List;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** Responses that are known in closed form. */
class ClosedFormTest {

    private static final double LIGHT = 299_792_458.0;

    private static Waveform reflected(Cable cable, double ohms, Stimulus stimulus, double seconds) {
        return PortVoltage.of(new SimulatedPort(cable, ohms), stimulus, seconds, 20)
                .reflected();
    }

    /**
     * Shunt C on a matched line under a Gaussian edge: −½ exp(σ²/2τ² − t/τ) erfc((σ/τ − t/σ)/√2), τ = Z0 C/2 (Johnson
     * &amp; Graham, High-Speed Digital Design, ch. 4, for the exponential; the Gaussian edge by convolution).
     */
    @Test
    void shuntCapacitorUnderAGaussianEdge() {
        double sigma = 375e-12;
        double tau = 375e-12;
        GaussianStep step = new GaussianStep(2.5631031310892007 * sigma);
        Cable line = cable(
                lossless(75, 2e8), 4, FarEnd.Terminated.byOhms(75), new ShuntPart("c", 2, Lumped.capacitor(10e-12)));
        Waveform wave = reflected(line, 75, step, 60e-9);
        double arrival = 2 * 2 / 2e8 + 8 * sigma;
        double lowest = 0;
        for (int i = 0; i < wave.count(); i++) {
            double t = wave.time(i) - arrival;
            double exact = -0.5
                    * Math.exp(sigma * sigma / (2 * tau * tau) - t / tau)
                    * Erf.erfc((sigma / tau - t / sigma) / Math.sqrt(2));
            if (Math.abs(t) < 10e-9) {
                assertEquals(exact, wave.sample(i), 1e-8);
            }
            lowest = Math.min(lowest, wave.sample(i));
        }
        assertEquals(-0.312828424, lowest, 1e-3);
    }

    /** Series L is the shunt C upside down: τ = L/(2 Z0). */
    @Test
    void seriesInductorUnderAGaussianEdge() {
        double sigma = 100e-12;
        double tau = 100e-9 / 150;
        GaussianStep step = new GaussianStep(2.5631031310892007 * sigma);
        Cable line = cable(
                lossless(75, 2e8), 4, FarEnd.Terminated.byOhms(75), new SeriesPart("l", 2, Lumped.inductor(100e-9)));
        Waveform wave = reflected(line, 75, step, 60e-9);
        double arrival = 2 * 2 / 2e8 + 8 * sigma;
        int near = 0;
        for (int i = 0; i < wave.count(); i++) {
            double t = wave.time(i) - arrival;
            double exact = 0.5
                    * Math.exp(sigma * sigma / (2 * tau * tau) - t / tau)
                    * Erf.erfc((sigma / tau - t / sigma) / Math.sqrt(2));
            if (Math.abs(t) < 5e-9) {
                assertEquals(exact, wave.sample(i), 1e-8);
                near++;
            }
        }
        assertTrue(near > 100, near + " samples about the arrival");
    }

    /** Area of a shunt C's reflection of a step: −Z0 C/2, whatever the edge. */
    @Test
    void areaOfAShuntCapacitorIsHalfItsTimeConstant() {
        Cable line = cable(
                lossless(75, 2e8), 4, FarEnd.Terminated.byOhms(75), new ShuntPart("c", 2, Lumped.capacitor(10e-12)));
        Waveform wave = reflected(line, 75, new RaisedCosineStep(2e-9), 60e-9);
        double area = 0;
        for (int i = 0; i < wave.count(); i++) {
            area += wave.sample(i) * wave.sampleSeconds();
        }
        assertEquals(-375e-12, area, 1e-15);
    }

    /**
     * Endless line of constant R, L, C on a source of √(L/C): Γ = (√(s + 2a) − √s)/(√(s + 2a) + √s), a = R/2L, whose step
     * response is 1 − e^(−at)(I0(at) + I1(at)) (Abramowitz &amp; Stegun, table 29.3, from memory).
     */
    @Test
    void endlessLineOfConstantResistanceDriftsAsBesselFunctionsSay() {
        double r = 10;
        double l = 0.25e-6;
        double c = 100e-12;
        double a = r / (2 * l);
        CableType type = constants(r, l, 0, 0, c);
        Cable line = cable(type, 1, new FarEnd.Endless(type));
        GaussianStep step = new GaussianStep(0.1e-9);
        Waveform wave = reflected(line, 50, step, 200e-9);
        // at = 1, 2: I0 + I1 = 1.266065877752008 + 0.565159103992485, 2.279585302336067 + 1.590636854637329
        double[] at = {1, 2};
        double[] sums = {1.831224981744493, 3.870222156973396};
        for (int k = 0; k < at.length; k++) {
            double exact = 1 - Math.exp(-at[k]) * sums[k];
            assertEquals(exact, wave.at(at[k] / a + step.halfHeightSeconds()), 1e-6);
        }
    }

    /** R/L = G/C: no distortion; an open end sends back exactly e^(−2√(RG) l) of the step. */
    @Test
    void lineWithoutDistortionOnlyShrinksTheStep() {
        CableType type = constants(1, 0.25e-6, 0, 1 / 2500.0, 100e-12);
        Cable line = cable(type, 20, new FarEnd.Open());
        Waveform wave = reflected(line, 50, new RaisedCosineStep(1e-9), 600e-9);
        assertEquals(Math.exp(-2 * 20 * Math.sqrt(1 / 2500.0)), wave.at(300e-9), 1e-8);
    }

    /** erfc law: exp(−s Td − K l √s)/s is erfc(K l/(2√t')) (Wigington &amp; Nahman, Proc. IRE 45, 166 (1957), from memory). */
    @Test
    void inversionGivesTheErfcLaw() {
        double delay = 100e-9;
        double kl = Math.sqrt(4 * 10e-9);
        GaussianStep step = new GaussianStep(0.2e-9);
        ContourGrid grid = ContourGrid.forRecord(1e-6, step.shortestEdgeSeconds() / 20);
        ComplexArray sent = PortVoltage.spectrum(grid, step);
        double[] re = new double[sent.count()];
        double[] im = new double[sent.count()];
        for (int k = 0; k < re.length; k++) {
            double c = grid.dampingPerSecond();
            double w = k * grid.spacingRadiansPerSecond();
            double size = Math.hypot(c, w);
            double rootRe = Math.sqrt((size + c) / 2);
            double rootIm = w / (2 * rootRe);
            double decay = Math.exp(-c * delay - kl * rootRe);
            double angle = -w * delay - kl * rootIm;
            re[k] = decay * (sent.re(k) * Math.cos(angle) - sent.im(k) * Math.sin(angle));
            im[k] = decay * (sent.re(k) * Math.sin(angle) + sent.im(k) * Math.cos(angle));
        }
        Waveform wave = Inversion.invert(grid, ComplexArray.takingOver(re, im));
        for (double later : new double[] {50e-9, 100e-9, 400e-9, 800e-9}) {
            double exact = Erf.erfc(kl / (2 * Math.sqrt(later)));
            assertEquals(exact, wave.at(delay + later + step.halfHeightSeconds()), 1e-6);
        }
    }

    /** 26 loops of a line that loses nothing and is shorted at one end, open at the source side by 1 MΩ. */
    @Test
    void ringingLineFoldsBackLessThan1e5OfTheWave() {
        Cable line = cable(lossless(50, 2e8), 10, new FarEnd.Short());
        double source = 1e5;
        RaisedCosineStep step = new RaisedCosineStep(2e-9);
        Waveform wave = reflected(line, source, step, 2.55e-6);
        double r = (50 - source) / (50 + source);
        double worst = 0;
        for (int i = 0; i < wave.count(); i++) {
            double t = wave.time(i);
            double exact = r * step.at(t);
            double amplitude = -(1 - r * r);
            for (int k = 1; k * 100e-9 < t; k++) {
                exact += amplitude * step.at(t - k * 100e-9);
                amplitude *= r;
            }
            double intoLoop = t % 100e-9;
            if (intoLoop > 5e-9 && intoLoop < 99e-9) {
                worst = Math.max(worst, Math.abs(exact - wave.sample(i)));
            }
        }
        assertTrue(worst < 1e-5, "worst error " + worst);
    }

    /** Shown distance: round trip 7.8485669 ns/m at 0.85 (computed from c). */
    @Test
    void echoOfAnOpenArrivesAfterTheRoundTrip() {
        Cable line = new Cable(
                "One length",
                List.of(new Run(TestCables.lossless(75, 0.85 * LIGHT), 100)),
                List.of(),
                new FarEnd.Open());
        GaussianStep step = new GaussianStep(0.5e-9);
        Waveform wave = reflected(line, 75, step, 1e-6);
        assertEquals(0.5, wave.at(784.85669e-9 + step.halfHeightSeconds()), 1e-3);
    }
}
