// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Permitted;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The settings among which the best view of each event is sought: every permitted stimulus from every permitted end, at the
 * lowest gain, the one that the exercise opens with and the highest; most averages, since less noise never hides anything; the
 * shortest range that shows the whole line.
 */
final class PermittedSettings {

    /**
     * Settings and the end to which they apply.
     *
     * @param settings the settings
     * @param end the end tested
     */
    record View(Settings settings, LineEnd end) {}

    private PermittedSettings() {}

    /** What an exercise opens with, at the stated velocity, with most averages and the shortest range that shows the line. */
    static Settings base(Exercise exercise, double secondsThereAndBack) {
        Permitted permitted = exercise.permitted();
        Settings start = exercise.start().settings();
        double velocity = permitted.velocity().statedFraction().orElse(start.velocityFraction());
        Settings base = start.withVelocityFraction(velocity)
                .withAverages(last(permitted.averages()))
                .withRangeMetres(last(permitted.rangesMetres()));
        for (double range : permitted.rangesMetres()) {
            if (base.secondsThereAndBack(range) > secondsThereAndBack) {
                base = base.withRangeMetres(range);
                break;
            }
        }
        return base;
    }

    static List<View> of(Exercise exercise, double secondsThereAndBack) {
        Permitted permitted = exercise.permitted();
        Settings base = base(exercise, secondsThereAndBack);
        List<View> views = new ArrayList<>();
        for (double gain : gains(exercise)) {
            for (LineEnd end : firstFirst(exercise.start().end(), permitted.ends())) {
                for (Stimulus stimulus : firstFirst(base.stimulus(), permitted.stimuli())) {
                    views.add(new View(base.withStimulus(stimulus).withGainDecibels(gain), end));
                }
            }
        }
        return views;
    }

    private static Set<Double> gains(Exercise exercise) {
        Set<Double> gains = new LinkedHashSet<>();
        gains.add(exercise.permitted().gainsDecibels().get(0));
        gains.add(exercise.start().settings().gainDecibels());
        gains.add(last(exercise.permitted().gainsDecibels()));
        return gains;
    }

    private static <T> Set<T> firstFirst(T first, List<T> all) {
        Set<T> ordered = new LinkedHashSet<>();
        ordered.add(first);
        ordered.addAll(all);
        return ordered;
    }

    private static <T> T last(List<T> values) {
        return values.get(values.size() - 1);
    }
}
