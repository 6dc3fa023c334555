// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.cable.LineEnd;
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
        List<Stimulus> stimuli,
        VelocityRule velocity,
        List<Double> rangesMetres,
        List<Double> gainsDecibels,
        List<Integer> averages,
        List<LineEnd> ends) {

    /** Most choices of one setting. */
    public static final int MOST_CHOICES = 12;

    /** Copies the lists and refuses choices that can't be. */
    public Permitted {
        stimuli = Require.list("stimuli", stimuli, 1, MOST_CHOICES);
        Require.distinct("stimuli", stimuli, Stimulus::toString);
        Require.present("velocity", velocity);
        rangesMetres = rising("rangesMetres", rangesMetres, 0.1, 200_000);
        gainsDecibels = rising("gainsDecibels", gainsDecibels, 0, 80);
        averages = Require.list("averages", averages, 1, MOST_CHOICES);
        rising("averages", averages.stream().map(Integer::doubleValue).toList(), 1, Settings.MOST_AVERAGES);
        ends = Require.list("ends", ends, 1, 2);
        Require.distinct("ends", ends, LineEnd::toString);
    }

    private static List<Double> rising(String field, List<Double> values, double least, double most) {
        List<Double> copy = Require.list(field, values, 1, MOST_CHOICES);
        double before = Double.NEGATIVE_INFINITY;
        for (double value : copy) {
            Require.between(field, value, least, most);
            if (value <= before) {
                throw new IllegalArgumentException(
                        field + " has " + value + " after " + before + "; list the choices rising");
            }
            before = value;
        }
        return copy;
    }

    /**
     * Tells whether settings keep to what is permitted.
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
