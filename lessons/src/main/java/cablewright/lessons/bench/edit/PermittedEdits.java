// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;

/** Edits of what a trainee may change: each gives choices alike but for one list, or throws with a sentence. */
public final class PermittedEdits {

    private PermittedEdits() {}

    /**
     * Changes what may be sent: pulses first, then steps.
     *
     * @param permitted the choices
     * @param pulses pulses
     * @param steps steps
     * @return the choices
     */
    public static Permitted withStimuli(Permitted permitted, List<Stimulus> pulses, List<Stimulus> steps) {
        List<Stimulus> all = new ArrayList<>(pulses);
        all.addAll(steps);
        return Copies.with(permitted, "stimuli", all);
    }

    /**
     * Changes what may be set as velocity.
     *
     * @param permitted the choices
     * @param velocity the rule
     * @return the choices
     */
    public static Permitted withVelocity(Permitted permitted, VelocityRule velocity) {
        return Copies.with(permitted, "velocity", velocity);
    }

    /**
     * Changes the ranges.
     *
     * @param permitted the choices
     * @param metres ranges, rising [m]
     * @return the choices
     */
    public static Permitted withRanges(Permitted permitted, List<Double> metres) {
        return Copies.with(permitted, "rangesMetres", metres);
    }

    /**
     * Changes the gains.
     *
     * @param permitted the choices
     * @param decibels gains, rising [dB]
     * @return the choices
     */
    public static Permitted withGains(Permitted permitted, List<Double> decibels) {
        return Copies.with(permitted, "gainsDecibels", decibels);
    }

    /**
     * Changes the numbers of averages.
     *
     * @param permitted the choices
     * @param averages numbers, rising
     * @return the choices
     */
    public static Permitted withAverages(Permitted permitted, List<Integer> averages) {
        return Copies.with(permitted, "averages", averages);
    }

    /**
     * Changes the ends from which the line may be tested.
     *
     * @param permitted the choices
     * @param ends the ends
     * @return the choices
     */
    public static Permitted withEnds(Permitted permitted, List<LineEnd> ends) {
        return Copies.with(permitted, "ends", ends);
    }
}
