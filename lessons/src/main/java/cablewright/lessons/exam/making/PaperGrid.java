// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.making;

import cablewright.lessons.exam.paper.PortSamples;
import cablewright.lessons.exercise.ReadingTask;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.wave.Stimulus;

/**
 * The one grid on which every permitted setting of a task is exact: as long as the longest record, with
 * {@value #SAMPLES_PER_EDGE} samples across the shortest edge. It follows from what is permitted alone, never from the
 * cable.
 *
 * <p>Measured on the built-in lessons and on generated exercises against a grid 16 times as fine: with 12 samples the
 * reflected wave is up to 4 steps of the converter off at corners of the pulse, with 24 up to 1.1, with 32 below 1.
 */
final class PaperGrid {

    private static final int SAMPLES_PER_EDGE = 32;

    private PaperGrid() {}

    static ContourGrid of(ReadingTask task) {
        double longest = 0;
        double finest = Double.POSITIVE_INFINITY;
        Reflectometer reflectometer = new Reflectometer(task.instrument());
        Settings slowest = task.start()
                .settings()
                .withVelocityFraction(task.permitted().velocity().leastFraction());
        for (Stimulus stimulus : task.permitted().stimuli()) {
            finest = Math.min(finest, reflectometer.effectiveEdgeSeconds(stimulus) / SAMPLES_PER_EDGE);
            for (double range : task.permitted().rangesMetres()) {
                longest = Math.max(
                        longest,
                        reflectometer.recordSeconds(
                                slowest.withStimulus(stimulus).withRangeMetres(range)));
                finest = Math.min(finest, fastest(task, stimulus, range, reflectometer));
            }
        }
        ContourGrid grid = ContourGrid.forRecord(longest, finest);
        if (grid.samples() > PortSamples.MOST_SAMPLES) {
            throw new IllegalArgumentException("the permitted settings of \"" + task.id() + "\" need "
                    + grid.samples() + " samples, and a paper holds " + PortSamples.MOST_SAMPLES
                    + "; leave out the longest range or the shortest pulse");
        }
        return grid;
    }

    /** The shortest edge that is ever sent, by which a cable's profiles are cut into steps [s]. */
    static double shortestEdgeSeconds(ReadingTask task) {
        Reflectometer reflectometer = new Reflectometer(task.instrument());
        return task.permitted().stimuli().stream()
                .mapToDouble(reflectometer::effectiveEdgeSeconds)
                .min()
                .orElseThrow();
    }

    /** The samples of the shortest record, at the highest velocity. */
    private static double fastest(ReadingTask task, Stimulus stimulus, double range, Reflectometer reflectometer) {
        Settings settings = task.start()
                .settings()
                .withVelocityFraction(task.permitted().velocity().mostFraction())
                .withStimulus(stimulus)
                .withRangeMetres(range);
        return reflectometer.recordSeconds(settings) / task.instrument().samples();
    }
}
