// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.crosssection.ContourSamples;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.Frequencies;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Some neighbouring frequencies, with what metals and plastics do at them: that is dear, and few cables differ in it. */
final class FrequencyBlock {

    private final ComplexBlock s;
    private final ContourSamples samples;
    private final Map<Integer, LineTrip> trips = new ConcurrentHashMap<>();

    FrequencyBlock(Frequencies frequencies) {
        this.s = new ComplexBlock(frequencies.real(), frequencies.imaginary());
        this.samples = new ContourSamples(s.real(), s.imaginary());
    }

    ComplexBlock s() {
        return s;
    }

    ContourSamples samples() {
        return samples;
    }

    /** What is remembered of a line, by its number; null for nothing. */
    LineTrip trip(int number) {
        return trips.get(number);
    }

    void remember(int number, LineTrip trip) {
        trips.put(number, trip.copy());
    }

    void forgetBefore(int number) {
        if (!trips.isEmpty()) {
            trips.keySet().removeIf(old -> old < number);
        }
    }

    int count() {
        return s.count();
    }
}
