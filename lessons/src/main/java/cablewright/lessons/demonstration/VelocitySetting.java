// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.HalfSine;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A wrong velocity of propagation moves everything: shown = Σ l_i · set/v_i, over the runs up to the place.
 *
 * @param runs one type of cable, or several one after the other
 * @param setFraction the velocity that is set, over that of light, 0.3 to 1
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 1e-6
 */
public record VelocitySetting(
        @Entries(least = 1, most = 10) List<Run> runs,
        @Between(least = 0.3, most = 1) double setFraction,
        @Between(least = 1e-9, most = 1e-6) double pulseSeconds) {

    private static final double FAULT_SHARE = 0.8;
    private static final double FAULT_OHMS = 300;

    /** Copies the list and checks the ranges. */
    public VelocitySetting {
        Require.components(VelocitySetting.class, runs, setFraction, pulseSeconds);
        runs = List.copyOf(runs);
    }

    /**
     * A place on the cable and where the trace shows it.
     *
     * @param trueMetres where it is [m]
     * @param shownMetres where the trace shows it at the set velocity [m]
     */
    public record Place(double trueMetres, double shownMetres) {

        /**
         * Returns how far off a dig would be.
         *
         * @return shown less true [m]
         */
        public double errorMetres() {
            return shownMetres - trueMetres;
        }
    }

    /**
     * What the demonstration shows.
     *
     * @param trace the trace at the set velocity [V against m]
     * @param fault the fault that somebody is to dig for
     * @param joints where runs meet, and the far end
     * @param rightFraction the one velocity that would show the fault where it is
     */
    public record Outcome(Curve trace, Place fault, List<Place> joints, double rightFraction) {

        /** Copies the list. */
        public Outcome {
            joints = List.copyOf(joints);
        }
    }

    /**
     * Returns where a place is shown.
     *
     * @param trueMetres the place [m]
     * @return where a trace shows it at the set velocity [m]
     */
    public double shownMetres(double trueMetres) {
        double left = trueMetres;
        double shown = 0;
        for (Run run : runs) {
            double here = Math.min(left, run.lengthMetres());
            shown += here * setFraction / run.type().section().velocityFraction();
            left -= here;
        }
        return shown;
    }

    /**
     * Returns where the fault is.
     *
     * @return four fifths of the whole way [m]
     */
    public double faultMetres() {
        return FAULT_SHARE * lengthMetres();
    }

    private double lengthMetres() {
        return runs.stream().mapToDouble(Run::lengthMetres).sum();
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curve and places
     */
    public Outcome outcome() {
        List<Place> joints = new ArrayList<>();
        double end = 0;
        for (Run run : runs) {
            end += run.lengthMetres();
            joints.add(new Place(end, shownMetres(end)));
        }
        Place fault = new Place(faultMetres(), shownMetres(faultMetres()));
        double ohms = runs.get(0).type().nominalImpedanceOhms();
        Event partialShort = new TouchingConductors("fault", faultMetres(), OptionalDouble.of(FAULT_OHMS));
        Cable cable = new Cable("Line of several runs", runs, List.of(partialShort), new FarEnd.Open());
        Settings settings =
                new Settings(new HalfSine(pulseSeconds), setFraction, 1.2 * Math.max(end, shownMetres(end)), 0, 64);
        Curve trace = Curve.of(Measurement.at(cable, Instrument.usual(ohms)).withoutNoise(settings));
        return new Outcome(trace, fault, joints, setFraction * fault.trueMetres() / fault.shownMetres());
    }
}
