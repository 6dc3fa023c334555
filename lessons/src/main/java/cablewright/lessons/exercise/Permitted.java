// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.SettableAverages;
import cablewright.simulator.instrument.SettableGain;
import cablewright.simulator.instrument.SettableRange;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import java.util.Comparator;
import java.util.List;

/**
 * What a trainee may change. The choices are those of the settings shelf, in its order; marking demands only what some
 * choice of them shows clearly.
 *
 * @param stimuli pulses and steps, 1 to 12
 * @param velocity velocity of propagation
 * @param rangesMetres ranges, 1 to 12, rising [m]
 * @param gainsDecibels gains, 1 to 12, rising [dB]
 * @param averages numbers of averages, 1 to 12, rising
 * @param ends ends from which the line may be tested, 1 or 2
 */
public record Permitted(
        @Entries(least = 1, most = Permitted.MOST_CHOICES, distinct = true) List<Stimulus> stimuli,
        VelocityRule velocity,
        @Entries(least = 1, most = Permitted.MOST_CHOICES, distinct = true) @SettableRange List<Double> rangesMetres,
        @Entries(least = 1, most = Permitted.MOST_CHOICES, distinct = true) @SettableGain List<Double> gainsDecibels,
        @Entries(least = 1, most = Permitted.MOST_CHOICES, distinct = true) @SettableAverages List<Integer> averages,
        @Entries(least = 1, most = 2, distinct = true) List<LineEnd> ends) {

    /** Most choices of one setting. */
    public static final int MOST_CHOICES = 12;

    /** Copies the lists and checks the ranges. */
    public Permitted {
        Require.components(Permitted.class, stimuli, velocity, rangesMetres, gainsDecibels, averages, ends);
        stimuli = List.copyOf(stimuli);
        rangesMetres = List.copyOf(rangesMetres);
        gainsDecibels = List.copyOf(gainsDecibels);
        averages = List.copyOf(averages);
        ends = List.copyOf(ends);
        requireRising("rangesMetres", rangesMetres);
        requireRising("gainsDecibels", gainsDecibels);
        requireRising("averages", averages);
    }

    private static void requireRising(String field, List<? extends Number> values) {
        for (int i = 1; i < values.size(); i++) {
            if (values.get(i).doubleValue() <= values.get(i - 1).doubleValue()) {
                throw new IllegalArgumentException(
                        field + " has " + values.get(i) + " after " + values.get(i - 1) + "; list the choices rising");
            }
        }
    }

    /**
     * Returns whether settings keep to what is permitted.
     *
     * @param settings settings of a trainee
     * @param end the end that is tested
     * @return whether every one of them is among the choices
     */
    public boolean allows(Settings settings, LineEnd end) {
        return stimuli.contains(settings.stimulus())
                && velocity.allows(settings.velocityFraction())
                && rangesMetres.contains(settings.rangeMetres())
                && gainsDecibels.contains(settings.gainDecibels())
                && averages.contains(settings.averages())
                && ends.contains(end);
    }

    /**
     * Returns the stimulus that resolves most.
     *
     * @return the one of the shortest width or rise
     */
    public Stimulus narrowestStimulus() {
        return stimuli.stream()
                .min(Comparator.comparingDouble(Stimulus::resolutionSeconds))
                .orElseThrow();
    }
}
