// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.LineWave;
import cablewright.simulator.wave.HalfSine;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.DoubleStream;

/**
 * Every metre the same wrong: an impedance that swings by a small share with a fixed pitch shows nothing on a trace and a
 * spike in a sweep at f = v/(2d), where all the small reflections add up.
 *
 * <p>Z = Z₀(1 + a cos 2πz/d) couples the two waves by κ = πa/(2d), so without loss |Γ| = tanh(κl); with an attenuation of α
 * at most about κ/(2α) (coupled modes, as A. Yariv and H. Kogelnik; from memory).
 *
 * @param type the cable
 * @param cableMetres its length, terminated [m], 5 to 1000
 * @param pitchMetres d [m], 0.05 to 10
 * @param relativeAmplitude a, 0.0001 to 0.1
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 1e-6
 */
public record EveryMetreTheSame(
        CableType type,
        @Between(least = 5, most = 1000) double cableMetres,
        @Between(least = 0.05, most = 10) double pitchMetres,
        @Between(least = 1e-4, most = 0.1) double relativeAmplitude,
        @Between(least = 1e-9, most = 1e-6) double pulseSeconds) {

    private static final int WIDE_POINTS = 401;
    private static final int NEAR_POINTS = 201;
    private static final int AVERAGES = 64;

    /** Checks the ranges. */
    public EveryMetreTheSame {
        Require.components(EveryMetreTheSame.class, type, cableMetres, pitchMetres, relativeAmplitude, pulseSeconds);
    }

    /**
     * What the demonstration shows. Voltages are for an outgoing wave of 1 V.
     *
     * @param spikeHertz v/(2d) [Hz]
     * @param losslessReflection tanh(κl)
     * @param spikeReflection highest |Γ| of the sweep near there
     * @param foundHertz where it is [Hz]
     * @param swingVolts largest change that the unevenness makes on the trace between pulse and end [V]
     * @param noiseVolts noise of the trace, root mean square [V]
     * @param evenTrace trace of an even cable [V against m]
     * @param trace trace of this one
     * @param returnLoss return loss [dB against Hz], from 0.4 to 1.6 times the spike's frequency
     * @param evenReturnLoss return loss of an even cable, at the same frequencies
     */
    public record Outcome(
            double spikeHertz,
            double losslessReflection,
            double spikeReflection,
            double foundHertz,
            double swingVolts,
            double noiseVolts,
            Curve evenTrace,
            Curve trace,
            Curve returnLoss,
            Curve evenReturnLoss) {}

    private double velocity() {
        return type.section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND;
    }

    /** What one metre of the wave there and one back give each other [1/m]. */
    private double coupling() {
        return Math.PI * relativeAmplitude / (2 * pitchMetres);
    }

    /**
     * Returns the spike of an endless cable with this loss.
     *
     * @return κ/(√(κ² + α²) + α): the |Γ| that more length no longer raises
     */
    public double longestReflection() {
        double hertz = velocity() / (2 * pitchMetres);
        double alpha = LineWave.on(type.section(), Frequencies.ofSweep(hertz))
                .propagation()
                .re(0);
        return coupling() / (Math.hypot(coupling(), alpha) + alpha);
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curves and figures
     */
    public Outcome outcome() {
        double spike = velocity() / (2 * pitchMetres);
        Event swing = new ImpedanceVariation(
                "swing", 0, cableMetres, relativeAmplitude, pitchMetres, OptionalLong.empty(), false);
        Cable even = cable(List.of());
        Cable uneven = cable(List.of(swing));
        double[] hertz = frequencies(spike);
        Curve loss = LineSweep.returnLoss(uneven, type.nominalImpedanceOhms(), hertz);
        int found = 0;
        for (int k = 0; k < loss.count(); k++) {
            found = loss.y(k) < loss.y(found) ? k : found;
        }
        Trace evenTrace = trace(even);
        Curve good = Curve.of(evenTrace);
        Curve bad = Curve.of(trace(uneven));
        Curve change = bad.minus(good);
        double pulseMetres = pulseSeconds * velocity();
        int largest = change.largestBetween(pulseMetres, cableMetres - pulseMetres);
        return new Outcome(
                spike,
                Math.tanh(coupling() * cableMetres),
                Math.pow(10, -loss.y(found) / 20),
                loss.x(found),
                largest < 0 ? 0 : Math.abs(change.y(largest)),
                evenTrace.noiseVolts(),
                good,
                bad,
                loss,
                LineSweep.returnLoss(even, type.nominalImpedanceOhms(), hertz));
    }

    private Cable cable(List<Event> events) {
        return new Cable(
                "Uneven cable",
                List.of(new Run(type, cableMetres)),
                events,
                FarEnd.Terminated.byOhms(type.nominalImpedanceOhms()));
    }

    /** Wide about the spike, and close together where it stands: ten of its widths, v/l each, to either side. */
    private double[] frequencies(double spike) {
        double near = Math.min(0.5 * spike, 5 * velocity() / cableMetres + 0.01 * spike);
        double[] wide = LineSweep.evenly(0.4 * spike, 1.6 * spike, WIDE_POINTS);
        double[] close = LineSweep.evenly(spike - near, spike + near, NEAR_POINTS);
        return DoubleStream.concat(Arrays.stream(wide), Arrays.stream(close))
                .sorted()
                .distinct()
                .toArray();
    }

    private Trace trace(Cable cable) {
        double ohms = type.nominalImpedanceOhms();
        Settings settings = new Settings(
                new HalfSine(pulseSeconds), type.section().velocityFraction(), 1.15 * cableMetres, 0, AVERAGES);
        return Measurement.at(cable, Instrument.usual(ohms)).withoutNoise(settings);
    }
}
