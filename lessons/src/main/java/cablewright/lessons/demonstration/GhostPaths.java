// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A wave that goes to and fro between two events comes back late and shows where there is nothing: at 2 x₂ − x₁. From the
 * other end the two real events keep their places on the cable and the ghost does not.
 *
 * @param type the cable
 * @param cableMetres its length, terminated [m], 10 to 2000
 * @param firstMetres where the first event is [m]
 * @param secondMetres where the second event is [m], after the first
 * @param reflection ρ of each, −0.9 to −0.01: a part across the conductors, R = −Z₀(1 + ρ)/(2ρ)
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 1e-6
 */
public record GhostPaths(
        CableType type,
        @Between(least = 10, most = 2000) double cableMetres,
        double firstMetres,
        double secondMetres,
        @Between(least = -0.9, most = -0.01) double reflection,
        @Between(least = 1e-9, most = 1e-6) double pulseSeconds) {

    private static final double LEAST_AMPLITUDE = 1e-4;
    private static final int AVERAGES = 1024;

    /** Checks the ranges. */
    public GhostPaths {
        Require.components(GhostPaths.class, type, cableMetres, firstMetres, secondMetres, reflection, pulseSeconds);
        Require.between("firstMetres", firstMetres, 0.1, cableMetres);
        Require.between("secondMetres", secondMetres, Math.nextUp(firstMetres), cableMetres);
    }

    /**
     * What the demonstration shows. Voltages are for an outgoing wave of 1 V.
     *
     * @param ghostMetres where the first ghost shows, tested from the near end [m]
     * @param ghostFromFarMetres where it shows when tested from the far end, measured from the near end [m]; negative if it seems to
     *     lie before the cable
     * @param firstEcho echo of the first event on a lossless line: ρ
     * @param secondEcho echo of the second: ρ (1 + ρ)²
     * @param ghostEcho echo of the ghost: ρ³ (1 + ρ)²
     * @param trace trace from the near end [V against m]
     * @param farTrace trace from the far end [V against m from the far end]
     * @param rays the lattice diagram, lossless
     * @param lastSeconds how far in time the lattice goes [s]
     */
    public record Outcome(
            double ghostMetres,
            double ghostFromFarMetres,
            double firstEcho,
            double secondEcho,
            double ghostEcho,
            Curve trace,
            Curve farTrace,
            List<BounceRay> rays,
            double lastSeconds) {

        /** Copies the list. */
        public Outcome {
            rays = List.copyOf(rays);
        }
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curves, rays and figures
     */
    public Outcome outcome() {
        double velocity = type.section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        double lastSeconds = 2 * rangeMetres() / velocity;
        double through = (1 + reflection) * (1 + reflection);
        BounceLattice lattice = new BounceLattice(
                new double[] {firstMetres, secondMetres, cableMetres},
                new double[] {reflection, reflection, 0},
                velocity);
        Cable cable = cable();
        return new Outcome(
                2 * secondMetres - firstMetres,
                2 * firstMetres - secondMetres,
                reflection,
                reflection * through,
                reflection * reflection * reflection * through,
                trace(cable),
                trace(cable.seenFromFarEnd()),
                lattice.rays(lastSeconds, LEAST_AMPLITUDE),
                lastSeconds);
    }

    private double rangeMetres() {
        return Math.max(1.1 * cableMetres, 1.1 * (2 * secondMetres - firstMetres));
    }

    private Cable cable() {
        double z = type.section().impedanceOhms();
        OptionalDouble across = OptionalDouble.of(-z * (1 + reflection) / (2 * reflection));
        return new Cable(
                "Cable with two events",
                List.of(new Run(type, cableMetres)),
                List.of(
                        new TouchingConductors("first", firstMetres, across),
                        new TouchingConductors("second", secondMetres, across)),
                FarEnd.Terminated.byOhms(type.nominalImpedanceOhms()));
    }

    private Curve trace(Cable cable) {
        double ohms = type.nominalImpedanceOhms();
        Settings settings =
                new Settings(new HalfSine(pulseSeconds), type.section().velocityFraction(), rangeMetres(), 0, AVERAGES);
        return Curve.of(Measurement.at(cable, Instrument.usual(ohms)).withoutNoise(settings));
    }
}
