// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.measured;

import cablewright.simulator.exchange.MeasuredPort;
import cablewright.simulator.exchange.RecordedTrace;
import cablewright.simulator.exchange.ScatteringSweep;
import cablewright.simulator.exchange.SweepReport;
import cablewright.simulator.exchange.TraceCsvReader;
import cablewright.simulator.exchange.touchstone.TouchstoneReader;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reach;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.reading.CandidateRules;
import cablewright.simulator.reading.NoiseLevel;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.Waveform;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A line of which there is a file and no cable: a measured sweep, which can be shown with any pulse that its band supports, or a
 * trace, which is as it was taken.
 */
public final class MeasuredLine {

    /** Share of a sweep's time span that is offered as range. */
    private static final double SHARE_OF_RECORD = 0.9;

    /** Share of the energy that came back that lies within the range that is shown at first. */
    private static final double SHARE_OF_ENERGY = 0.999;

    private static final double ROOM_BEHIND = 1.25;
    private static final double LEAST_PULSES = 20;
    private static final int SAMPLES = 4096;

    /** Width of a half-sine over its shortest edge, and a little more, so that rounding refuses nothing. */
    private static final double WIDTH_OVER_EDGE = 1.4;

    /** Smallest reflection by which a sweep may be trusted, given its accuracy by {@link MeasuredPort} [V]. */
    private static final double LEAST_OF_SWEEP = 0.003;

    private final String name;
    private final Optional<ScatteringSweep> sweep;
    private final Optional<RecordedTrace> recorded;

    private MeasuredLine(String name, Optional<ScatteringSweep> sweep, Optional<RecordedTrace> recorded) {
        this.name = name;
        this.sweep = sweep;
        this.recorded = recorded;
    }

    /**
     * Reads a file: Touchstone where its name ends in {@code .s1p} or {@code .s2p}, else a table of numbers.
     *
     * @param file the file
     * @return the line
     * @throws IOException if the file can't be read, or holds something else; the message says where and what is allowed
     */
    public static MeasuredLine read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        return isTouchstone(file)
                ? new MeasuredLine(name, Optional.of(TouchstoneReader.read(file)), Optional.empty())
                : new MeasuredLine(name, Optional.empty(), Optional.of(TraceCsvReader.read(file)));
    }

    /**
     * Returns whether a file is a sweep, by its name.
     *
     * @param file the file
     * @return whether it ends in .s1p or .s2p
     */
    public static boolean isTouchstone(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".s1p") || name.endsWith(".s2p");
    }

    /**
     * Returns the file's name.
     *
     * @return the name without its folder
     */
    public String name() {
        return name;
    }

    /**
     * Distinguishes a sweep from a trace.
     *
     * @return whether any pulse that the band supports can be sent
     */
    public boolean isSweep() {
        return sweep.isPresent();
    }

    public int ports() {
        return sweep.map(measured -> measured.ports().size()).orElse(1);
    }

    /**
     * Returns the resistance on which a port was measured.
     *
     * @param port number of the port, from 1
     * @return resistance [Ω]; empty for a trace, which does not tell
     */
    public OptionalDouble referenceOhms(int port) {
        return sweep.map(measured ->
                        OptionalDouble.of(measured.ports().get(port - 1).referenceOhms()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Opens one port on a source.
     *
     * @param port number of the port, from 1
     * @param sourceOhms resistance of the source [Ω]; it counts for a sweep only
     * @return the view
     * @throws IllegalArgumentException if the sweep is too poor to see a line through it
     */
    public View view(int port, double sourceOhms) {
        return new View(sweep.map(measured -> MeasuredPort.of(measured, port, sourceOhms, OptionalDouble.empty())));
    }

    /** One port, ready to be looked at. */
    public final class View {

        private final Optional<MeasuredPort> opened;

        private View(Optional<MeasuredPort> opened) {
            this.opened = opened;
        }

        /**
         * Returns what can be said of the sweep itself.
         *
         * @return the report; empty for a trace
         */
        public Optional<SweepReport> report() {
            return opened.map(MeasuredPort::report);
        }

        /**
         * Returns how far the file reaches, and the shortest edge that it supports.
         *
         * @return the reach; empty for a trace, which has the pulse with which it was taken
         */
        public Optional<Reach> reach() {
            return opened.map(Reach::of);
        }

        /**
         * Returns the longest range to show.
         *
         * @param velocityFraction velocity over that of light, above 0 to 1
         * @return range [m]: nearly all that the file supports
         */
        public double longestMetres(double velocityFraction) {
            double metresPerSecond = PhysicalConstants.LIGHT_METRES_PER_SECOND / 2 * velocityFraction;
            if (opened.isPresent()) {
                return SHARE_OF_RECORD * Reach.of(opened.get()).longestRecordSeconds() * metresPerSecond;
            }
            Waveform even = recorded.orElseThrow().evenly(velocityFraction);
            double first = recorded.orElseThrow().firstSeconds(velocityFraction);
            return (first + even.sampleSeconds() * (even.count() - 1)) * metresPerSecond;
        }

        /**
         * Returns the width of the shortest pulse that the file supports.
         *
         * @return width [s]; 0 for a trace, which was taken with another
         */
        public double shortestPulseSeconds() {
            return opened.map(port -> WIDTH_OVER_EDGE * Reach.of(port).shortestEdgeSeconds())
                    .orElse(0.0);
        }

        /**
         * Returns the range to show at first: where nearly all of the energy comes back, and a little beyond.
         *
         * @param velocityFraction velocity over that of light, above 0 to 1
         * @return range [m], at most the longest; the longest for a trace
         */
        public double usualMetres(double velocityFraction) {
            double longest = longestMetres(velocityFraction);
            if (opened.isEmpty()) {
                return longest;
            }
            HalfSine pulse = new HalfSine(shortestPulseSeconds());
            double pulseMetres =
                    pulse.widthSeconds() * velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND / 2;
            Instrument blind =
                    Instrument.asMeasured(opened.get().referenceOhms(), SAMPLES).withOutgoingShare(0);
            Trace back = new Reflectometer(blind)
                    .withoutNoise(opened.get(), new Settings(pulse, velocityFraction, longest, 0, 1));
            double all = 0;
            for (int i = 0; i < back.count(); i++) {
                all += back.volts(i) * back.volts(i);
            }
            double sum = 0;
            int last = 0;
            while (last < back.count() - 1 && sum < SHARE_OF_ENERGY * all) {
                sum += back.volts(last) * back.volts(last);
                last++;
            }
            double wanted = ROOM_BEHIND * Math.max(0, back.metres(last)) + LEAST_PULSES * pulseMetres;
            return all == 0 ? longest : Math.min(longest, wanted);
        }

        /**
         * Shows the line at settings.
         *
         * @param settings what is set; of a recorded trace they give the pulse with which it was taken, and the axis
         * @param instrument the receiver for a sweep
         * @param seed seed of the receiver's noise
         * @return the trace; the noise of a recorded one is estimated from it
         * @throws IllegalArgumentException if the settings ask for what the file does not support
         */
        public Trace trace(Settings settings, Instrument instrument, long seed) {
            if (opened.isPresent()) {
                return new Reflectometer(instrument).measure(opened.get(), settings, seed);
            }
            double velocity = settings.velocityFraction();
            Waveform even = recorded.orElseThrow().evenly(velocity);
            return new Trace(
                    settings,
                    even,
                    -recorded.orElseThrow().firstSeconds(velocity),
                    NoiseLevel.volts(even.copyOfValues()),
                    Double.POSITIVE_INFINITY,
                    0);
        }

        /**
         * Returns by which rules candidates are sought.
         *
         * @return the usual ones; for a sweep nothing smaller than it may be trusted for
         */
        public CandidateRules rules() {
            CandidateRules usual = CandidateRules.usual();
            return opened.isPresent() ? usual.withLeastVolts(LEAST_OF_SWEEP) : usual;
        }
    }
}
