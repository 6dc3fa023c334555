// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.instrument.Trace;

/** The difference between two traces of the same settings in a window of time. */
final class EventContrast {

    private final boolean empty;
    private final double contrastVolts;
    private final double expectedVolts;
    private final double clutterVolts;
    private final double peakSeconds;

    /** Times are counted from the start of the outgoing wave. */
    EventContrast(Trace with, Trace without, double fromSeconds, double toSeconds) {
        int from = (int) Math.max(0, Math.floor(fromSeconds / with.sampleSeconds()));
        int to = (int) Math.min(with.count() - 1.0, Math.ceil(toSeconds / with.sampleSeconds()));
        double clip = with.clipVolts();
        double most = 0;
        double largest = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int peak = from;
        for (int i = from; i <= to; i++) {
            double a = Math.max(-clip, Math.min(clip, with.volts(i)));
            double b = Math.max(-clip, Math.min(clip, without.volts(i)));
            low = Math.min(low, b);
            high = Math.max(high, b);
            if (Math.abs(a - b) > most) {
                most = Math.abs(a - b);
                peak = i;
            }
            largest = Math.max(largest, Math.abs(with.volts(i) - without.volts(i)));
        }
        this.empty = from > to;
        this.contrastVolts = most;
        this.expectedVolts = firstLobe(with, without, from, to, largest / 2);
        this.clutterVolts = empty ? 0 : high - low;
        this.peakSeconds = peak * with.sampleSeconds();
    }

    /** Top of the first run of one sign that rises above a floor: an up-and-down counts by how it begins. */
    private static double firstLobe(Trace with, Trace without, int from, int to, double floor) {
        double top = 0;
        for (int i = from; i <= to; i++) {
            double change = with.volts(i) - without.volts(i);
            boolean over = Math.abs(top) >= floor && top != 0;
            if (over && change * top <= 0) {
                return top;
            }
            if (change * top < 0) {
                top = 0;
            }
            if (Math.abs(change) > Math.abs(top)) {
                top = change;
            }
        }
        return top;
    }

    boolean isEmpty() {
        return empty;
    }

    double contrastVolts() {
        return contrastVolts;
    }

    double expectedVolts() {
        return expectedVolts;
    }

    double clutterVolts() {
        return clutterVolts;
    }

    double peakSeconds() {
        return peakSeconds;
    }
}
