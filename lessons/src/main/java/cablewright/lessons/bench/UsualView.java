// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * The instrument and the settings that suit a cable: pulses from about a two-hundredth of it up, ranges that hold it. All
 * of it common practice, no source.
 */
public final class UsualView {

    private static final double[] WIDTHS = {
        1e-9, 2e-9, 5e-9, 10e-9, 25e-9, 50e-9, 100e-9, 250e-9, 500e-9, 1e-6, 2.5e-6, 5e-6, 10e-6
    };
    private static final double[] RANGES = {
        10, 20, 30, 50, 75, 100, 150, 200, 300, 500, 750, 1000, 1500, 2000, 3000, 5000, 7500, 10_000, 15_000, 20_000,
        30_000, 50_000, 75_000, 100_000, 150_000, 200_000
    };
    private static final double PULSES_ON_CABLE = 200;
    private static final int WIDTHS_OFFERED = 5;
    private static final int RANGES_OFFERED = 4;
    private static final List<Double> GAINS = List.of(0.0, 6.0, 12.0, 18.0, 24.0, 30.0, 36.0);
    private static final List<Integer> AVERAGES = List.of(1, 4, 16, 64, 256, 1024);

    private UsualView() {}

    /**
     * Chooses the instrument.
     *
     * @param cable the cable
     * @return the usual instrument, its source as the cable's impedance is called
     */
    public static Instrument instrument(Cable cable) {
        CableType type = cable.runs().get(0).type();
        boolean pair = type.family() == CableFamily.TELEPHONE_PAIR || type.family() == CableFamily.DATA_PAIR;
        return Instrument.usual(pair ? 100 : Math.rint(type.nominalImpedanceOhms()));
    }

    /**
     * Chooses what may be set.
     *
     * @param cable the cable
     * @return the choices, for the near end, with the cable's velocity stated
     */
    public static Permitted permitted(Cable cable) {
        double velocity = velocity(cable);
        return new Permitted(
                pulses(cable),
                new VelocityRule(0.3, 1, OptionalDouble.of(velocity)),
                ranges(cable),
                GAINS,
                AVERAGES,
                List.of(LineEnd.NEAR));
    }

    private static double velocity(Cable cable) {
        return Math.rint(cable.runs().get(0).type().section().velocityFraction() * 1000) / 1000;
    }

    private static List<Stimulus> pulses(Cable cable) {
        double shortest = 2
                * cable.lengthMetres()
                / (velocity(cable) * PhysicalConstants.LIGHT_METRES_PER_SECOND)
                / PULSES_ON_CABLE;
        int first = 0;
        while (first < WIDTHS.length - WIDTHS_OFFERED && WIDTHS[first] < shortest) {
            first++;
        }
        List<Stimulus> pulses = new ArrayList<>();
        for (int i = first; i < first + WIDTHS_OFFERED; i++) {
            pulses.add(new HalfSine(WIDTHS[i]));
        }
        return pulses;
    }

    private static List<Double> ranges(Cable cable) {
        List<Double> ranges = new ArrayList<>();
        for (double range : RANGES) {
            if (range > 1.05 * cable.lengthMetres() && ranges.size() < RANGES_OFFERED) {
                ranges.add(range);
            }
        }
        return ranges;
    }

    /**
     * Chooses what is set at the start.
     *
     * @param cable the cable
     * @return the second shortest pulse and the shortest range that holds the cable
     */
    public static Start start(Cable cable) {
        Permitted permitted = permitted(cable);
        Settings settings = new Settings(
                permitted.stimuli().get(1),
                velocity(cable),
                permitted.rangesMetres().get(0),
                GAINS.get(2),
                AVERAGES.get(4));
        return new Start(settings, LineEnd.NEAR);
    }

    /**
     * Lists what the instructor may set on the Bench: what the exercise permits, steps beside pulses, both ends, and what
     * usually suits the cable.
     *
     * @param exercise the exercise
     * @return the choices; what the exercise opens with is among them
     */
    public static Permitted onTheBench(Exercise exercise) {
        Permitted usual = permitted(exercise.cable());
        Permitted set = exercise.permitted();
        Settings start = exercise.start().settings();
        List<Stimulus> stimuli = new ArrayList<>(set.stimuli());
        usual.stimuli().forEach(stimulus -> addIfRoom(stimuli, stimulus));
        addIfRoom(stimuli, new RaisedCosineStep(2 * start.stimulus().shortestEdgeSeconds()));
        return new Permitted(
                stimuli,
                new VelocityRule(0.05, 1, exercise.permitted().velocity().statedFraction()),
                joined(set.rangesMetres(), usual.rangesMetres()),
                joined(set.gainsDecibels(), usual.gainsDecibels()),
                joined(set.averages(), usual.averages()),
                List.of(LineEnd.NEAR, LineEnd.FAR));
    }

    private static void addIfRoom(List<Stimulus> stimuli, Stimulus one) {
        if (stimuli.size() < Permitted.MOST_CHOICES && !stimuli.contains(one)) {
            stimuli.add(one);
        }
    }

    /** What is set and what is usual, rising, as many as there is room for; all of what is set is kept. */
    private static <T extends Comparable<T>> List<T> joined(List<T> set, List<T> usual) {
        TreeSet<T> all = new TreeSet<>(set);
        for (T one : usual) {
            if (all.size() < Permitted.MOST_CHOICES) {
                all.add(one);
            }
        }
        return List.copyOf(all);
    }
}
