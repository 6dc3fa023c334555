// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.explanation.visibility.BlindZone;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a wider pulse costs and what it buys: events nearer than half of its length merge, the outgoing pulse covers more,
 * and it reaches farther.
 *
 * @param type the cable
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 2e-6
 * @param firstMetres where the first of two equal events lies [m], 1 to 1000
 * @param apartMetres how far behind it the second lies [m], 0.01 to 1000
 * @param reflection ρ of each event, −0.5 to −0.001
 * @param averages how many records are averaged, 1 to 65536
 */
public record WidthAgainstSight(
        CableType type,
        @Between(least = 1e-9, most = 2e-6) double pulseSeconds,
        @Between(least = 1, most = 1000) double firstMetres,
        @Between(least = 0.01, most = 1000) double apartMetres,
        @Between(least = -0.5, most = -0.001) double reflection,
        @Between(least = 1, most = Settings.MOST_AVERAGES) int averages) {

    private static final double BEYOND_METRES = 20;
    private static final double MOST_REACH_METRES = 50_000;
    private static final int HALVINGS = 12;

    /** Checks the ranges. */
    public WidthAgainstSight {
        Require.components(WidthAgainstSight.class, type, pulseSeconds, firstMetres, apartMetres, reflection, averages);
    }

    /**
     * What a width gives.
     *
     * @param pulseMetres length of the pulse in the cable [m]
     * @param resolutionMetres half of it: how far apart two events must lie [m]
     * @param blindMetres up to where the outgoing pulse covers such an event [m]
     * @param reachMetres up to where such an event stands six times above the noise [m]; at most 50 km
     */
    public record Sight(double pulseMetres, double resolutionMetres, double blindMetres, double reachMetres) {}

    /**
     * What the demonstration shows.
     *
     * @param sight what this width gives
     * @param trace trace of the two events [V against m]
     * @param noiseVolts its noise, root mean square [V]
     * @param first how the first event shows
     * @param second how the second event shows
     */
    public record Outcome(Sight sight, Curve trace, double noiseVolts, EventVisibility first, EventVisibility second) {}

    /**
     * Computes what the demonstration shows.
     *
     * @return curve and figures
     */
    public Outcome outcome() {
        Instrument instrument = Instrument.usual(type.nominalImpedanceOhms());
        Settings settings = settings(new HalfSine(pulseSeconds));
        Cable cable = cable();
        List<EventVisibility> sights = VisibilityAnalysis.of(cable, instrument, settings, LineEnd.NEAR);
        Curve trace = Curve.of(Measurement.at(cable, instrument).withoutNoise(settings));
        return new Outcome(
                sight(pulseSeconds), trace, instrument.noiseVoltsAfter(averages), sights.get(0), sights.get(1));
    }

    /**
     * Returns what another width would give.
     *
     * @param widthSeconds width of the pulse at half height [s]
     * @return resolution, blind zone and reach
     */
    public Sight sight(double widthSeconds) {
        Reflectometer reflectometer = new Reflectometer(Instrument.usual(type.nominalImpedanceOhms()));
        Settings settings = settings(new HalfSine(widthSeconds));
        double blind = BlindZone.of(reflectometer, settings).endSeconds(Math.abs(reflection));
        double zero = settings.stimulus().halfHeightSeconds();
        return new Sight(
                2 * settings.halfPulseMetres(),
                settings.halfPulseMetres(),
                Math.max(0, settings.metresThereAndBack(blind - zero)),
                reach(reflectometer, settings.stimulus()));
    }

    private Settings settings(Stimulus stimulus) {
        double range = firstMetres + apartMetres + BEYOND_METRES;
        return new Settings(stimulus, type.section().velocityFraction(), range, 0, averages);
    }

    private Cable cable() {
        double z = type.section().impedanceOhms();
        OptionalDouble across = OptionalDouble.of(-z * (1 + reflection) / (2 * reflection));
        return new Cable(
                "Two events",
                List.of(new Run(type, firstMetres + apartMetres + 2 * BEYOND_METRES)),
                List.of(
                        new TouchingConductors("first", firstMetres, across),
                        new TouchingConductors("second", firstMetres + apartMetres, across)),
                new FarEnd.Endless(type));
    }

    /** By doubling, then by halving: the echo only falls with distance. */
    private double reach(Reflectometer reflectometer, Stimulus stimulus) {
        double needed = VisibilityRules.CLEAR_OVER_NOISE
                * reflectometer.instrument().noiseVoltsAfter(averages)
                / Math.abs(reflection);
        double near = 0;
        double far = 1;
        while (far < MOST_REACH_METRES && top(reflectometer, stimulus, far) >= needed) {
            near = far;
            far = Math.min(MOST_REACH_METRES, 2 * far);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (near + far) / 2;
            if (top(reflectometer, stimulus, middle) >= needed) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return near;
    }

    /** Height of the pulse after a way there and back, over that of the outgoing one. */
    private double top(Reflectometer reflectometer, Stimulus stimulus, double metres) {
        double longest = reflectometer.longestSampleSeconds(stimulus);
        RoundTrip trip = new RoundTrip(type, 1 / longest);
        double late = 2 * metres * trip.slowness() - trip.firstSeconds(metres);
        double record =
                4 * stimulus.settledSeconds() + 4 / reflectometer.instrument().bandwidthHertz() + 2 * late;
        ContourGrid grid = ContourGrid.forRecord(record, longest);
        ComplexArray sent = reflectometer.received(grid, stimulus);
        ComplexArray way = trip.decay(grid, trip.propagation(grid, sent.count()), metres);
        double[] re = new double[sent.count()];
        double[] im = new double[sent.count()];
        for (int k = 0; k < re.length; k++) {
            re[k] = sent.re(k) * way.re(k) - sent.im(k) * way.im(k);
            im[k] = sent.re(k) * way.im(k) + sent.im(k) * way.re(k);
        }
        Waveform back = Inversion.invert(grid, ComplexArray.takingOver(re, im));
        double top = 0;
        for (int i = 0; i < back.count(); i++) {
            top = Math.max(top, back.sample(i));
        }
        return top;
    }
}
