// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Run;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.ladder.LadderSolver;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.HalfSine;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * When a chain of coils and capacitors stops being a cable: the same inductance and capacitance in all, as a lossless line
 * and as N sections.
 *
 * <p>A section is l/N long, so f_c = N v/(π l); at f it turns the wave by 2 asin(f/f_c) where the line turns it by 2 f/f_c.
 *
 * @param impedanceOhms √(L/C) of both [Ω], 10 to 1000
 * @param velocityFraction velocity of the line over that of light, 0.3 to 1
 * @param lineMetres length of the line [m], 0.1 to 10000
 * @param sections how many sections the chain has, 1 to 2000
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 1e-4
 */
public record LadderOrLine(
        @Between(least = 10, most = 1000) double impedanceOhms,
        @Between(least = 0.3, most = 1) double velocityFraction,
        @Between(least = 0.1, most = 10_000) double lineMetres,
        @Between(least = 1, most = 2000) int sections,
        @Between(least = 1e-9, most = 1e-4) double pulseSeconds) {

    private static final int SWEEP_POINTS = 2001;
    private static final double SWEEP_CUTOFFS = 1.3;
    private static final double LEAST = 1e-6;
    private static final double RANGE_LENGTHS = 2.5;

    /** Steps of the ladder solver in a pulse width, at best and at worst, and how many node voltages it may work out. */
    private static final int FINEST_STEPS = 100;

    private static final int COARSEST_STEPS = 20;
    private static final double MOST_NODE_STEPS = 2e7;

    /** Checks the ranges. */
    public LadderOrLine {
        Require.components(LadderOrLine.class, impedanceOhms, velocityFraction, lineMetres, sections, pulseSeconds);
    }

    /**
     * What the demonstration shows.
     *
     * @param cutoffHertz f_c, above which the chain passes nothing [Hz]
     * @param onePercentHertz up to where the chain delays within 1 % of the line [Hz]
     * @param sectionsPerWavelength how many sections a wavelength holds there
     * @param lateBy delay of a section over that of its length of line, less 1, at the highest frequency that the pulse
     *     needs, 1/(2w); infinite above f_c
     * @param lineTrace trace of the line, open at its end [V against m]
     * @param ladderTrace trace of the chain, open at its end [V against m]
     * @param steppedTrace the chain's port voltage as the ladder solver steps it in time, without a receiver [V against m]: no
     *     formula in common with the others; empty where its steps would be too many
     * @param returnLoss return loss of the chain, closed by √(L/C) [dB against Hz]
     */
    public record Outcome(
            double cutoffHertz,
            double onePercentHertz,
            double sectionsPerWavelength,
            double lateBy,
            Curve lineTrace,
            Curve ladderTrace,
            Optional<Curve> steppedTrace,
            Curve returnLoss) {}

    /**
     * Returns how much later than the line a chain is.
     *
     * @param cutoffs frequency over f_c, above 0
     * @return asin(x)/x − 1; infinite above 1
     */
    public static double lateness(double cutoffs) {
        return cutoffs > 1 ? Double.POSITIVE_INFINITY : Math.asin(cutoffs) / cutoffs - 1;
    }

    /** Where the lateness is a share, as a part of f_c, by halving. */
    private static double cutoffsOfLateness(double share) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (lateness(middle) > share) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private LadderSweep ladder(Load load) {
        double seconds = lineMetres / (velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND) / sections;
        return new LadderSweep(sections, impedanceOhms * seconds, seconds / impedanceOhms, load, impedanceOhms);
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curves and figures
     */
    public Outcome outcome() {
        LadderSweep open = ladder(new Load.Open());
        double cutoff = open.cutoffHertz();
        double onePercent = cutoffsOfLateness(0.01);
        return new Outcome(
                cutoff,
                onePercent * cutoff,
                Math.PI / onePercent,
                lateness(1 / (2 * pulseSeconds) / cutoff),
                trace(linePort()),
                trace(open),
                stepped(open),
                returnLoss(cutoff));
    }

    private PortResponse linePort() {
        CableType type = new CableType(
                "lossless-line",
                "Line without loss",
                CableFamily.REFERENCE,
                ConstantsSection.lossless(impedanceOhms, velocityFraction),
                "Definition: z = s L, y = s C.",
                impedanceOhms,
                velocityFraction,
                List.of());
        Cable cable = new Cable("Line", List.of(new Run(type, lineMetres)), List.of(), new FarEnd.Open());
        return new SimulatedPort(cable, impedanceOhms);
    }

    private Curve trace(PortResponse port) {
        Settings settings =
                new Settings(new HalfSine(pulseSeconds), velocityFraction, RANGE_LENGTHS * lineMetres, 0, 64);
        return Curve.of(new Reflectometer(Instrument.usual(impedanceOhms)).withoutNoise(port, settings));
    }

    /** Steps the chain itself from rest, in steps that resolve the pulse. */
    private Optional<Curve> stepped(LadderSweep chain) {
        HalfSine pulse = new HalfSine(pulseSeconds);
        double metresPerSecond = velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND / 2;
        double zero = pulse.halfHeightSeconds();
        double record = RANGE_LENGTHS * lineMetres / metresPerSecond + zero;
        double step = Math.max(pulseSeconds / FINEST_STEPS, record * sections / MOST_NODE_STEPS);
        if (step > pulseSeconds / COARSEST_STEPS) {
            return Optional.empty();
        }
        LadderSolver solver = new LadderSolver(chain.network(), line -> 1, impedanceOhms, step);
        double[] volts = solver.portVolts(t -> 2 * pulse.at(t), (int) Math.ceil(record / step));
        double[] metres = new double[volts.length];
        Arrays.setAll(metres, i -> (i * step - zero) * metresPerSecond);
        return Optional.of(new Curve(metres, volts));
    }

    private Curve returnLoss(double cutoff) {
        LadderSweep closed = ladder(new Load.Part(Lumped.resistor(impedanceOhms)));
        double[] hertz = LineSweep.evenly(cutoff / SWEEP_POINTS, SWEEP_CUTOFFS * cutoff, SWEEP_POINTS);
        ComplexArray reflection = closed.reflection(Frequencies.ofSweep(hertz));
        double[] decibels = new double[hertz.length];
        for (int k = 0; k < hertz.length; k++) {
            decibels[k] = -20 * Math.log10(Math.max(LEAST, reflection.magnitude(k)));
        }
        return new Curve(hertz, decibels);
    }
}
