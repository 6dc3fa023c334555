// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Keeps what is set at the start among the choices when these change: what is still there stays, else the nearest is taken. */
final class NearestStart {

    private NearestStart() {}

    static Start within(Permitted permitted, Start start) {
        Settings set = start.settings();
        Stimulus stimulus = permitted.stimuli().contains(set.stimulus())
                ? set.stimulus()
                : nearest(
                        ofShape(permitted.stimuli(), set.stimulus().isStep()),
                        it -> logarithm(it.resolutionSeconds()),
                        logarithm(set.stimulus().resolutionSeconds()));
        double velocity = Math.max(
                permitted.velocity().leastFraction(),
                Math.min(permitted.velocity().mostFraction(), set.velocityFraction()));
        Settings nearest = new Settings(
                stimulus,
                velocity,
                nearest(permitted.rangesMetres(), NearestStart::logarithm, logarithm(set.rangeMetres())),
                nearest(permitted.gainsDecibels(), gain -> gain, set.gainDecibels()),
                nearest(permitted.averages(), NearestStart::logarithm, logarithm(set.averages())));
        LineEnd end = permitted.ends().contains(start.end())
                ? start.end()
                : permitted.ends().get(0);
        return new Start(nearest, end);
    }

    private static List<Stimulus> ofShape(List<Stimulus> all, boolean step) {
        List<Stimulus> alike = all.stream().filter(it -> it.isStep() == step).toList();
        return alike.isEmpty() ? all : alike;
    }

    private static double logarithm(Number value) {
        return Math.log(value.doubleValue());
    }

    private static <T> T nearest(List<T> choices, ToDoubleFunction<T> measure, double wanted) {
        return choices.stream()
                .min(Comparator.comparingDouble(choice -> Math.abs(measure.applyAsDouble(choice) - wanted)))
                .orElseThrow();
    }
}
