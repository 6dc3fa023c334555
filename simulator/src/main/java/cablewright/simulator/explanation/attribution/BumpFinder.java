// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Names the events that cause the bumps of a trace, once the paths are known. */
final class BumpFinder {

    private static final double SHARE_OF_BUMP = 0.05;
    private static final double POLES = 4;

    private final Instrument instrument;
    private final Trace quiet;
    private final Waveform reflected;
    private final List<PathEcho> echoes;

    /**
     * Prepares for traces of one cable at one setting.
     *
     * @param instrument the instrument
     * @param quiet the trace without noise
     * @param reflected what came back, as the receiver shows it, on time as it is [V]
     * @param echoes the paths
     */
    BumpFinder(Instrument instrument, Trace quiet, Waveform reflected, List<PathEcho> echoes) {
        this.instrument = instrument;
        this.quiet = quiet;
        this.reflected = reflected;
        this.echoes = List.copyOf(echoes);
    }

    List<Bump> of(Trace trace) {
        Settings settings = quiet.settings();
        if (trace.count() != quiet.count() || !trace.settings().equals(settings)) {
            throw new IllegalArgumentException("the trace was taken with " + trace.settings() + " and has "
                    + trace.count() + " samples; it must be one of " + quiet.count() + " samples with " + settings);
        }
        NoiseAveraging evening = new NoiseAveraging(quiet, instrument);
        double[] back = atSamples(reflected);
        double[] paths = new double[back.length];
        List<double[]> parts = new ArrayList<>();
        for (PathEcho echo : echoes) {
            double[] part = atSamples(echo.waveform());
            for (int i = 0; i < part.length; i++) {
                paths[i] += part[i];
            }
            parts.add(evening.of(part));
        }
        boolean clips = trace != quiet;
        double[] measured = new double[back.length];
        double[] surprise = new double[back.length];
        for (int i = 0; i < back.length; i++) {
            double outgoing = quiet.volts(i) - back[i];
            measured[i] = trace.volts(i) - outgoing;
            double expected = outgoing + paths[i];
            surprise[i] = trace.volts(i) - (clips ? clipped(expected) : expected);
        }
        double[] even = evening.of(measured);
        double[] unexplained = evening.of(surprise);
        int settled = (int) Math.ceil(settings.stimulus().settledSeconds() / quiet.sampleSeconds());
        List<Bump> bumps = new ArrayList<>();
        int reach = settled + (int) Math.ceil(POLES * instrument.poleSeconds() / quiet.sampleSeconds());
        int first = Math.min(settled, even.length - 1);
        for (Extremum extremum : Extremum.of(even, first, evening.leastVolts(), reach)) {
            double standsOut = extremum.standsOut(even) - notBackYet(extremum, parts);
            if (Math.abs(standsOut) >= evening.leastVolts()) {
                bumps.add(new Bump(
                        trace.metres(extremum.index()),
                        even[extremum.index()],
                        standsOut,
                        evening.noiseVolts(),
                        shares(extremum, standsOut, parts),
                        extremum.standsOut(unexplained)));
            }
        }
        return bumps;
    }

    /** What waves that come later do at the feet: a level stretch before another bump is none itself. */
    private double notBackYet(Extremum extremum, List<double[]> parts) {
        double sum = 0;
        for (int i = 0; i < parts.size(); i++) {
            sum += isBack(i, extremum) ? 0 : extremum.standsOut(parts.get(i));
        }
        return sum;
    }

    private boolean isBack(int path, Extremum extremum) {
        double seconds = (extremum.index() + 1) * quiet.sampleSeconds() * (1 + instrument.timebaseErrorFraction());
        return echoes.get(path).path().arrivalSeconds() <= seconds;
    }

    private List<Bump.Share> shares(Extremum extremum, double standsOut, List<double[]> parts) {
        List<Bump.Share> shares = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            double volts = extremum.standsOut(parts.get(i));
            if (isBack(i, extremum) && Math.abs(volts) >= SHARE_OF_BUMP * Math.abs(standsOut)) {
                shares.add(new Bump.Share(echoes.get(i).path(), volts));
            }
        }
        shares.sort(Comparator.comparingDouble(share -> -Math.abs(share.volts())));
        return shares;
    }

    /** The receiver's clock runs slow by its error, so each sample is later than it says. */
    private double[] atSamples(Waveform waveform) {
        double clock = 1 + instrument.timebaseErrorFraction();
        double[] values = new double[quiet.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = waveform.at(i * quiet.sampleSeconds() * clock);
        }
        return values;
    }

    private double clipped(double volts) {
        return Math.max(-quiet.clipVolts(), Math.min(quiet.clipVolts(), volts));
    }
}
