// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.reading.Reflection;
import cablewright.simulator.solve.LineWave;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A mistake that is the same everywhere: a core off centre over a whole reel, or from here to there.
 *
 * <p>Z = (η₀/(2π√εr)) acosh((D² + d² − 4c²)/(2Dd)), e = 2c/(D − d); where nothing changes along the way nothing comes back
 * from inside, and ρ = (Z − Z₀)/(Z + Z₀) at the start hides in the outgoing pulse.
 *
 * @param type a coax with a cross-section
 * @param reelMetres length of the reel [m], 5 to 2000
 * @param eccentricity e, 0 to 0.95
 * @param fromMetres where the mistake begins [m]
 * @param toMetres where it ends [m], after where it begins
 * @param pulseSeconds width of the pulse at half height [s], 1e-9 to 1e-6
 */
public record OffCentreReel(
        CableType type,
        @Between(least = 5, most = 2000) double reelMetres,
        @Between(least = 0, most = 0.95) double eccentricity,
        double fromMetres,
        double toMetres,
        @Between(least = 1e-9, most = 1e-6) double pulseSeconds) {

    private static final double LOSS_HERTZ = 1e9;
    private static final double STEP_RISE_SECONDS = 0.5e-9;
    private static final double SWEEP_FROM_HERTZ = 5e6;
    private static final int RIPPLES_SHOWN = 10;
    private static final int POINTS_PER_RIPPLE = 60;
    private static final int AVERAGES = 64;

    /** Checks the ranges. */
    public OffCentreReel {
        Require.components(OffCentreReel.class, type, reelMetres, eccentricity, fromMetres, toMetres, pulseSeconds);
        Require.between("fromMetres", fromMetres, 0, reelMetres);
        Require.between("toMetres", toMetres, Math.nextUp(fromMetres), reelMetres);
    }

    /**
     * What the demonstration shows. Voltages are for an outgoing wave of 1 V.
     *
     * @param soundOhms impedance of a sound reel [Ω]
     * @param offCentreOhms impedance where the core is off centre [Ω]
     * @param launchReflection ρ where the mistake begins
     * @param lossFactor attenuation over that of a sound reel, at 1 GHz
     * @param soundFaradsPerMetre capacitance of a sound reel [F/m]
     * @param offCentreFaradsPerMetre capacitance where the core is off centre [F/m]
     * @param soundTrace pulse trace of a sound reel [V against m]
     * @param trace pulse trace of this reel [V against m]
     * @param noiseVolts noise of both, root mean square [V]
     * @param betweenVolts largest difference of the two traces between the pulse and the far end, with its sign [V]
     * @param soundStep trace of a calibrated step on a sound reel [V against m], its own level taken off
     * @param step the same of this reel
     * @param soundReturnLoss return loss of a sound reel that is terminated [dB against Hz]
     * @param returnLoss the same of this reel
     * @param rippleHertz distance of the ripples in it, v/(2l) [Hz]
     */
    public record Outcome(
            double soundOhms,
            double offCentreOhms,
            double launchReflection,
            double lossFactor,
            double soundFaradsPerMetre,
            double offCentreFaradsPerMetre,
            Curve soundTrace,
            Curve trace,
            double noiseVolts,
            double betweenVolts,
            Curve soundStep,
            Curve step,
            Curve soundReturnLoss,
            Curve returnLoss,
            double rippleHertz) {}

    /**
     * Returns whether the whole reel is off centre.
     *
     * @return whether there is no edge between its ends
     */
    public boolean isWholeReel() {
        return fromMetres == 0 && toMetres == reelMetres;
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curves and figures
     */
    public Outcome outcome() {
        CrossSection sound = type.section();
        CrossSection off = eccentricity > 0 ? sound.offCentre(eccentricity) : sound;
        Stimulus pulse = new HalfSine(pulseSeconds);
        Trace soundTrace = trace(reel(new FarEnd.Open(), false), pulse);
        Curve good = Curve.of(soundTrace);
        Curve bad = Curve.of(trace(reel(new FarEnd.Open(), true), pulse));
        Stimulus step = new RaisedCosineStep(STEP_RISE_SECONDS);
        double ripple = velocity() / (2 * (toMetres - fromMetres));
        double[] band = LineSweep.evenly(
                SWEEP_FROM_HERTZ, SWEEP_FROM_HERTZ + RIPPLES_SHOWN * ripple, RIPPLES_SHOWN * POINTS_PER_RIPPLE + 1);
        FarEnd terminated = FarEnd.Terminated.byOhms(type.nominalImpedanceOhms());
        return new Outcome(
                sound.impedanceOhms(),
                off.impedanceOhms(),
                Reflection.ofImpedance(off.impedanceOhms(), sound.impedanceOhms())
                        .coefficient(),
                attenuation(off) / attenuation(sound),
                capacitance(sound),
                capacitance(off),
                good,
                bad,
                soundTrace.noiseVolts(),
                between(bad.minus(good)),
                Curve.of(trace(reel(new FarEnd.Open(), false), step)),
                Curve.of(trace(reel(new FarEnd.Open(), true), step)),
                LineSweep.returnLoss(reel(terminated, false), type.nominalImpedanceOhms(), band),
                LineSweep.returnLoss(reel(terminated, true), type.nominalImpedanceOhms(), band),
                ripple);
    }

    private double velocity() {
        return type.section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND;
    }

    /** C' = 1/(Z v). */
    private static double capacitance(CrossSection section) {
        return 1 / (section.impedanceOhms() * section.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
    }

    private static double attenuation(CrossSection section) {
        return LineWave.on(section, Frequencies.ofSweep(LOSS_HERTZ))
                .propagation()
                .re(0);
    }

    private Cable reel(FarEnd end, boolean offCentre) {
        List<Event> events = offCentre && eccentricity > 0
                ? List.of(new OffCentreCore(
                        "core", fromMetres, toMetres - fromMetres, eccentricity, Profile.FLAT, OptionalDouble.empty()))
                : List.of();
        return new Cable("Reel", List.of(new Run(type, reelMetres)), events, end);
    }

    private Trace trace(Cable cable, Stimulus stimulus) {
        double ohms = type.nominalImpedanceOhms();
        Settings settings = new Settings(stimulus, type.section().velocityFraction(), 1.15 * reelMetres, 0, AVERAGES);
        return Measurement.at(cable, Instrument.usual(ohms)).withoutNoise(settings);
    }

    private double between(Curve difference) {
        double pulseMetres = pulseSeconds * velocity();
        int found = difference.largestBetween(1.5 * pulseMetres, reelMetres - pulseMetres);
        return found < 0 ? 0 : difference.y(found);
    }
}
