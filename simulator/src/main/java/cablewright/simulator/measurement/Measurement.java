// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.measurement;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;

/**
 * An instrument connected to one end of a simulated cable, with the cache of what the lines do. Traces of cables that differ
 * in little cost little when they are taken by measurements that share the cache; see {@link #of(Cable)}.
 */
public final class Measurement {

    private final Cable tested;
    private final Reflectometer reflectometer;
    private final PropagationCache cache;

    private Measurement(Cable tested, Reflectometer reflectometer, PropagationCache cache) {
        this.tested = tested;
        this.reflectometer = reflectometer;
        this.cache = cache;
    }

    /**
     * Connects an instrument to the near end of a cable, with a cache of its own.
     *
     * @param cable the cable
     * @param instrument the instrument
     * @return the measurement
     */
    public static Measurement at(Cable cable, Instrument instrument) {
        return at(LineEnd.NEAR, cable, instrument, new PropagationCache());
    }

    /**
     * Connects an instrument to an end of a cable.
     *
     * @param end the end
     * @param cable the cable as it lies, described from its near end
     * @param instrument the instrument
     * @param cache what is kept of the lines; shared with other measurements where that helps
     * @return the measurement
     */
    public static Measurement at(LineEnd end, Cable cable, Instrument instrument, PropagationCache cache) {
        return new Measurement(cable.seenFrom(end), new Reflectometer(instrument), cache);
    }

    /**
     * Connects the same instrument, with the same cache, to another cable.
     *
     * @param other the cable, described from the end that is tested
     * @return the measurement
     */
    public Measurement of(Cable other) {
        return new Measurement(other, reflectometer, cache);
    }

    /**
     * Returns the cable as the instrument meets it.
     *
     * @return the cable, described from the end that is tested
     */
    public Cable tested() {
        return tested;
    }

    public Instrument instrument() {
        return reflectometer.instrument();
    }

    /**
     * Returns the instrument's working.
     *
     * @return the reflectometer
     */
    public Reflectometer reflectometer() {
        return reflectometer;
    }

    /**
     * Returns what the instrument is connected to.
     *
     * @return the port; its reference impedance is the resistance of the instrument's source
     */
    public SimulatedPort port() {
        return new SimulatedPort(tested, instrument().sourceOhms(), cache);
    }

    /**
     * Takes a trace.
     *
     * @param settings what is set
     * @param seed seed of the noise
     * @return the trace
     * @throws IllegalArgumentException if the range is too long for such a short pulse
     */
    public Trace trace(Settings settings, long seed) {
        return reflectometer.measure(port(), settings, seed);
    }

    /**
     * Takes a trace with no noise, no converter and no clipping.
     *
     * @param settings what is set
     * @return the trace; its noise and step are still those of the real one
     * @throws IllegalArgumentException if the range is too long for such a short pulse
     */
    public Trace withoutNoise(Settings settings) {
        return reflectometer.withoutNoise(port(), settings);
    }
}
