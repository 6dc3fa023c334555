// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.measured;

import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Reach;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.measured.MeasuredLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What may be set on a measured line: only what its file supports. */
final class MeasuredChoices {

    private static final double LEAST_VELOCITY = 0.3;
    private static final double[] WIDTHS = {
        0.1e-9, 0.2e-9, 0.5e-9, 1e-9, 2e-9, 5e-9, 10e-9, 20e-9, 50e-9, 100e-9, 200e-9, 500e-9, 1e-6, 2e-6, 5e-6
    };
    private static final double[] SHARES = {0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1};
    private static final double LEAST_PULSES = 10;
    private static final double SLACK = 1.05;
    private static final int MOST_PULSES = 6;
    private static final int MOST_STEPS = 4;

    private MeasuredChoices() {}

    static Permitted of(MeasuredLine line, MeasuredLine.View view) {
        double longest = view.longestMetres(LEAST_VELOCITY);
        double pulse = view.shortestPulseSeconds() * LEAST_VELOCITY * PhysicalConstants.LIGHT_METRES_PER_SECOND / 2;
        List<Double> ranges = new ArrayList<>();
        for (double share : SHARES) {
            double metres = rounded(share * longest);
            if (metres >= 0.1
                    && metres >= LEAST_PULSES * pulse
                    && (ranges.isEmpty() || metres > ranges.get(ranges.size() - 1))) {
                ranges.add(metres);
            }
        }
        if (ranges.isEmpty()) {
            ranges.add(0.1);
        }
        return new Permitted(
                stimuli(view.reach()),
                new VelocityRule(LEAST_VELOCITY, 1, OptionalDouble.empty()),
                ranges,
                List.of(0.0),
                List.of(1),
                line.ports() == 2 ? List.of(LineEnd.NEAR, LineEnd.FAR) : List.of(LineEnd.NEAR));
    }

    /** Down to two figures, so that it stays within what is known. */
    private static double rounded(double metres) {
        double power = Math.pow(10, Math.floor(Math.log10(metres)) - 1);
        return Math.floor(metres / power) * power;
    }

    /** The pulses and steps whose edges the file supports; for a trace, those with which it may have been taken. */
    private static List<Stimulus> stimuli(Optional<Reach> reach) {
        double shortest = reach.map(Reach::shortestEdgeSeconds).orElse(0.0) * SLACK;
        List<Stimulus> pulses = new ArrayList<>();
        List<Stimulus> steps = new ArrayList<>();
        for (double width : WIDTHS) {
            HalfSine pulse = new HalfSine(width);
            RaisedCosineStep step = new RaisedCosineStep(width);
            if (supported(pulse, shortest) && pulses.size() < MOST_PULSES + (reach.isEmpty() ? 2 : 0)) {
                addUnlessTooShort(pulses, pulse, reach);
            }
            if (supported(step, shortest) && steps.size() < MOST_STEPS) {
                addUnlessTooShort(steps, step, reach);
            }
        }
        List<Stimulus> all = new ArrayList<>(pulses);
        all.addAll(steps);
        if (all.isEmpty()) {
            all.add(new HalfSine(shortest * 4 / 3));
        }
        return all;
    }

    /** A recorded trace was seldom taken with less than a nanosecond. */
    private static void addUnlessTooShort(List<Stimulus> stimuli, Stimulus stimulus, Optional<Reach> reach) {
        if (reach.isPresent() || stimulus.resolutionSeconds() > 0.9e-9) {
            stimuli.add(stimulus);
        }
    }

    private static boolean supported(Stimulus stimulus, double shortest) {
        return stimulus.shortestEdgeSeconds() >= shortest;
    }
}
