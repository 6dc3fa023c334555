// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.PortVoltage;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;

/**
 * Takes traces: the port's voltage through receiver, noise, averaging and converter. The same port, settings and seed give
 * the same trace, bit for bit.
 */
public final class Reflectometer {

    private static final int SAMPLES_PER_EDGE = 12;

    private final Instrument instrument;

    /** What was sent last: most traces that are taken one after another differ in the line alone. */
    private volatile SentWave last;

    /**
     * Makes a reflectometer.
     *
     * @param instrument what it is
     */
    public Reflectometer(Instrument instrument) {
        this.instrument = instrument;
    }

    public Instrument instrument() {
        return instrument;
    }

    /**
     * Takes a trace.
     *
     * @param port the port; its reference resistance must be that of the instrument's source
     * @param settings what is set
     * @param seed seed of the noise
     * @return the trace
     * @throws IllegalArgumentException if the range is too long for such a short pulse, or the source isn't the port's
     */
    public Trace measure(PortResponse port, Settings settings, long seed) {
        Received received = receive(port, settings);
        double[] volts = received.values().copyOfValues();
        new ReceiverNoise(instrument, seed).addTo(volts, received.values().sampleSeconds(), settings.averages());
        new Ingress(instrument, seed).addTo(volts, received.values().sampleSeconds(), settings.averages());
        new Converter(instrument, settings.gainDecibels(), settings.averages()).convert(volts);
        return trace(settings, new Waveform(received.values().sampleSeconds(), volts), received.zeroSeconds());
    }

    /**
     * Takes a trace with no noise, no converter and no clipping: what the receiver would settle on if it were ideal.
     *
     * @param port the port; its reference resistance must be that of the instrument's source
     * @param settings what is set
     * @return the trace; its noise and step still tell what the real one would have
     */
    public Trace withoutNoise(PortResponse port, Settings settings) {
        Received received = receive(port, settings);
        return trace(settings, received.values(), received.zeroSeconds());
    }

    /**
     * Computes what the receiver makes of the outgoing wave.
     *
     * @param grid the grid
     * @param stimulus the outgoing wave, of 1 V
     * @return spectrum at the first frequencies of the grid [V s]; times a port's reflection coefficient, it is that of
     *     what came back, as the receiver shows it
     */
    public ComplexArray received(ContourGrid grid, Stimulus stimulus) {
        return filtered(grid, PortVoltage.spectrum(grid, stimulus));
    }

    /**
     * Returns the longest distance of samples by which a trace is resolved.
     *
     * @param stimulus the outgoing wave
     * @return time [s]: a twelfth of the edge that the receiver leaves of it
     */
    public double longestSampleSeconds(Stimulus stimulus) {
        return effectiveEdgeSeconds(stimulus) / SAMPLES_PER_EDGE;
    }

    /**
     * Returns how long a record lasts.
     *
     * @param settings what is set
     * @return time from when the outgoing wave begins to the end of the range, with room before the zero of distance [s]
     */
    public double recordSeconds(Settings settings) {
        double before = 2 * (settings.stimulus().halfHeightSeconds() + 4 * instrument.poleSeconds());
        return before + settings.secondsThereAndBack(settings.rangeMetres());
    }

    private Trace trace(Settings settings, Waveform waveform, double zeroSeconds) {
        return new Trace(
                settings,
                waveform,
                zeroSeconds,
                instrument.noiseVoltsAfter(settings.averages()),
                instrument.clipVolts(settings.gainDecibels()),
                instrument.stepVolts(settings.gainDecibels()));
    }

    private record Received(Waveform values, double zeroSeconds) {}

    /** What the receiver makes of an outgoing wave on a grid. */
    private record SentWave(
            ContourGrid grid, Stimulus stimulus, ComplexArray spectrum, Waveform outgoing, double halfHeightSeconds) {

        boolean isOf(ContourGrid otherGrid, Stimulus other) {
            return grid.equals(otherGrid) && stimulus.equals(other);
        }
    }

    private SentWave sent(ContourGrid grid, Stimulus stimulus) {
        SentWave known = last;
        if (known == null || !known.isOf(grid, stimulus)) {
            ComplexArray spectrum = received(grid, stimulus);
            Waveform outgoing = Inversion.invert(grid, spectrum);
            known = new SentWave(grid, stimulus, spectrum, outgoing, halfHeight(outgoing));
            last = known;
        }
        return known;
    }

    private Received receive(PortResponse port, Settings settings) {
        if (port.referenceOhms() != instrument.sourceOhms()) {
            throw new IllegalArgumentException("the reference of the port is a source of " + port.referenceOhms()
                    + " ohms and the instrument has " + instrument.sourceOhms() + "; they must be the same");
        }
        double record = recordSeconds(settings);
        double longestSample =
                Math.min(record / instrument.samples(), effectiveEdgeSeconds(settings.stimulus()) / SAMPLES_PER_EDGE);
        ContourGrid own = port.nativeGrid().orElseGet(() -> ContourGrid.forRecord(record, longestSample));
        Reach.of(port).require(record, effectiveEdgeSeconds(settings.stimulus()), settings);
        ContourGrid grid = refined(own, longestSample);
        SentWave sent = sent(grid, settings.stimulus());
        Waveform outgoing = sent.outgoing();
        int known = Math.min(sent.spectrum().count(), own.frequencies());
        Waveform reflected = Inversion.invert(
                grid, sent.spectrum().times(port.reflection(own, known, effectiveEdgeSeconds(settings.stimulus()))));
        int shown = (int) Math.min(outgoing.count(), Math.max(2, Math.rint(record / grid.sampleSeconds())));
        return new Received(
                thinned(outgoing, reflected, shown, settings),
                sent.halfHeightSeconds() / (1 + instrument.timebaseErrorFraction()));
    }

    /**
     * Returns the edge that the receiver leaves of a stimulus: rises add as squares (common practice, no source).
     *
     * @param stimulus the outgoing wave
     * @return duration of the shortest edge [s]
     */
    public double effectiveEdgeSeconds(Stimulus stimulus) {
        return Math.hypot(stimulus.shortestEdgeSeconds(), 0.5 / instrument.bandwidthHertz());
    }

    private ComplexArray filtered(ContourGrid grid, ComplexArray values) {
        double tau = instrument.poleSeconds();
        double late = instrument.recoveryShare();
        double slow = instrument.recoverySeconds();
        int n = values.count();
        ComplexBlock pole = onePlus(grid, n, tau);
        ComplexBlock recovery = onePlus(grid, n, slow);
        ComplexBlock passed = new ComplexBlock(n).fill(late).over(recovery).plus(1 - late);
        return passed.over(pole.times(pole))
                .times(new ComplexBlock(n).set(values))
                .copy();
    }

    /** 1 + s τ. */
    private static ComplexBlock onePlus(ContourGrid grid, int count, double tau) {
        ComplexBlock values = new ComplexBlock(count);
        for (int k = 0; k < count; k++) {
            values.put(k, 1 + grid.dampingPerSecond() * tau, k * grid.spacingRadiansPerSecond() * tau);
        }
        return values;
    }

    /**
     * Lays more samples over the same period where a port's own grid is coarser than the instrument; what the response
     * does not tell above its own top counts as nothing.
     */
    private static ContourGrid refined(ContourGrid own, double longestSampleSeconds) {
        int samples = own.samples();
        while (own.periodSeconds() / samples > longestSampleSeconds && samples < ContourGrid.MOST_SAMPLES) {
            samples *= 2;
        }
        return samples == own.samples() ? own : new ContourGrid(own.dampingPerSecond(), own.periodSeconds(), samples);
    }

    /** The sum that the receiver sees, at the instrument's own samples; a step's own level is taken off. */
    private Waveform thinned(Waveform outgoing, Waveform reflected, int shown, Settings settings) {
        int stride = Math.max(1, shown / instrument.samples());
        double level = settings.stimulus().isStep() ? instrument.outgoingShare() : 0;
        double[] values = new double[shown / stride];
        double clock = 1 + instrument.timebaseErrorFraction();
        for (int i = 0; i < values.length; i++) {
            double t = outgoing.time(i * stride) * clock;
            values[i] = instrument.outgoingShare() * sample(outgoing, i * stride, t, clock)
                    + sample(reflected, i * stride, t, clock)
                    - level;
        }
        return new Waveform(outgoing.sampleSeconds() * stride, values);
    }

    private static double sample(Waveform waveform, int index, double seconds, double clock) {
        return clock == 1 ? waveform.sample(index) : waveform.at(seconds);
    }

    /** When the outgoing wave first passes half of its height, on the straight line between samples. */
    private static double halfHeight(Waveform outgoing) {
        double top = 0;
        for (int i = 0; i < outgoing.count(); i++) {
            top = Math.max(top, outgoing.sample(i));
        }
        for (int i = 1; i < outgoing.count(); i++) {
            if (outgoing.sample(i) >= top / 2) {
                double before = outgoing.sample(i - 1);
                return outgoing.time(i - 1)
                        + outgoing.sampleSeconds() * (top / 2 - before) / (outgoing.sample(i) - before);
            }
        }
        return 0;
    }
}
