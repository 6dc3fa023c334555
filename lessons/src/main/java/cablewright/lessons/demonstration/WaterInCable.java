// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.Water;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.reading.Reflection;
import cablewright.simulator.wave.HalfSine;
import java.util.List;

/**
 * Water: where it came in and where it went. The same share of water does very different things as it lies: 5 % of the
 * dielectric of a 75 Ω foam coax gives 74.4 Ω as a film under the shield and 66.5 Ω as a film on the core.
 *
 * @param type the cable
 * @param cableMetres length of the cable [m], 5 to 2000
 * @param startMetres where the soaked length begins [m]
 * @param soakedMetres how long it is [m]
 * @param picture how the water lies
 * @param volumeFraction share of the dielectric that is water, 0 to 0.5
 * @param water the water
 * @param dryingShare how far it has dried from both edges, 0 for not at all to 1 for up to the middle
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 1e-6
 */
public record WaterInCable(
        CableType type,
        @Between(least = 5, most = 2000) double cableMetres,
        double startMetres,
        double soakedMetres,
        WaterDistribution picture,
        @Between(least = 0, most = WaterInCable.MOST_FRACTION) double volumeFraction,
        Water water,
        @Between(least = 0, most = 1) double dryingShare,
        @Between(least = 1e-9, most = 1e-6) double pulseSeconds) {

    private static final double MOST_FRACTION = 0.5;
    private static final int POINTS = 51;

    /** Checks the ranges. */
    public WaterInCable {
        Require.components(
                WaterInCable.class,
                type,
                cableMetres,
                startMetres,
                soakedMetres,
                picture,
                volumeFraction,
                water,
                dryingShare,
                pulseSeconds);
        Require.between("startMetres", startMetres, 0, cableMetres);
        Require.between("soakedMetres", soakedMetres, 1e-3, cableMetres - startMetres);
    }

    /**
     * What the demonstration shows. Voltages are for an outgoing wave of 1 V.
     *
     * @param dryOhms impedance of the dry cable [Ω]
     * @param wetOhms impedance where it is wettest, at 100 MHz [Ω]
     * @param wetVelocityFraction velocity there, over that of light
     * @param entryReflection ρ of a sharp edge from dry to wet
     * @param shownMetres how long the soaked length looks, where its edges are sharp [m]
     * @param dryTrace trace of the dry cable [V against m]
     * @param trace trace of the wet one
     * @param noiseVolts noise of both, root mean square [V]
     */
    public record Outcome(
            double dryOhms,
            double wetOhms,
            double wetVelocityFraction,
            double entryReflection,
            double shownMetres,
            Curve dryTrace,
            Curve trace,
            double noiseVolts) {}

    /**
     * Computes what the demonstration shows.
     *
     * @return curves and figures
     */
    public Outcome outcome() {
        CrossSection dry = type.section();
        CrossSection wet = volumeFraction > 0 ? dry.wet(picture, volumeFraction, water) : dry;
        Trace dryTrace = trace(List.of());
        double edge = dryingShare * soakedMetres / 2;
        List<Event> soaked = volumeFraction > 0
                ? List.of(new WaterIngress(
                        "water", startMetres, soakedMetres, startMetres, picture, volumeFraction, water, edge))
                : List.of();
        return new Outcome(
                dry.impedanceOhms(),
                wet.impedanceOhms(),
                wet.velocityFraction(),
                Reflection.ofImpedance(wet.impedanceOhms(), dry.impedanceOhms()).coefficient(),
                soakedMetres * dry.velocityFraction() / wet.velocityFraction(),
                Curve.of(dryTrace),
                Curve.of(trace(soaked)),
                dryTrace.noiseVolts());
    }

    /**
     * Draws the impedance against the share of water.
     *
     * @param how how the water lies
     * @return impedance [Ω] against share, 0 to 0.5
     */
    public Curve impedanceAgainstShare(WaterDistribution how) {
        CrossSection dry = type.section();
        return Curve.of(
                0, MOST_FRACTION, POINTS, share -> (share > 0 ? dry.wet(how, share, water) : dry).impedanceOhms());
    }

    private Trace trace(List<Event> events) {
        double ohms = type.nominalImpedanceOhms();
        Cable cable = new Cable(
                "Cable with water", List.of(new Run(type, cableMetres)), events, FarEnd.Terminated.byOhms(ohms));
        Settings settings =
                new Settings(new HalfSine(pulseSeconds), type.section().velocityFraction(), 1.2 * cableMetres, 0, 64);
        return Measurement.at(cable, Instrument.usual(ohms)).withoutNoise(settings);
    }
}
