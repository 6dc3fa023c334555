package cablewright.simulator.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.GradualDamage;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.network.SimulatedPort;
import cablewright.simulator.reading.Reflection;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.List;

/**
 * Split and re-split: between two joints each circuit uses one wire of each of two pairs. The circuit's wires stand a pitch
 * h apart instead of s, so its impedance is higher, and the two circuits share their field, so each hears the other.
 *
 * <p>Straight wires at the corners of a rectangle s by h: Z = (120 Ω/√εr) acosh(h/d); mutual over own inductance, thin wires,
 * M/L = ln(1 + h²/s²)/(2 ln(2h/d)); a step there makes a near-end crosstalk of ½ M/L from the split to the re-split (a pair
 * of coupled lines in one medium, C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed., ch. 9, from memory).
 * Real joints vary; 110 to 150 Ω is a plausible range (common practice, no source).
 *
 * @param type a pair cable
 * @param cableMetres its length, terminated [m], 5 to 1000
 * @param splitMetres where the split is [m]
 * @param resplitMetres where it is put right [m]
 * @param pitchOverSpacing h/s, 1 to 5
 * @param riseSeconds rise of the step, 10–90 % [s], 1e-10 to 1e-7
 */
public record SplitPair(
        CableType type,
        double cableMetres,
        double splitMetres,
        double resplitMetres,
        double pitchOverSpacing,
        double riseSeconds) {

    private static final int POINTS = 1201;

    /** Refuses values that can't be. */
    public SplitPair {
        if (!(type.section() instanceof PairSection)) {
            throw new IllegalArgumentException("type is \"" + type.id() + "\"; only pairs can be split");
        }
        Allow.between("cableMetres", cableMetres, 5, 1000);
        Allow.between("splitMetres", splitMetres, 0, cableMetres);
        Allow.between("resplitMetres", resplitMetres, Math.nextUp(splitMetres), cableMetres);
        Allow.between("pitchOverSpacing", pitchOverSpacing, 1, 5);
        Allow.between("riseSeconds", riseSeconds, 1e-10, 1e-7);
    }

    /**
     * What the demonstration shows. Voltages are for an outgoing wave of 1 V.
     *
     * @param pairOhms impedance of the pair as made [Ω]
     * @param splitOhms impedance between split and re-split [Ω]
     * @param reflection ρ at the split; at the re-split it is as large and the other way
     * @param mutualOverOwn M/L of the two circuits between the joints
     * @param crosstalk near-end crosstalk of a step there, over the step: ½ M/L
     * @param crosstalkDecibels the same [dB], below 0
     * @param trace trace of a step on the circuit [V against m], its own level taken off
     * @param crosstalkTrace what the other circuit's near end sees [V against m], on a lossless line
     */
    public record Outcome(
            double pairOhms,
            double splitOhms,
            double reflection,
            double mutualOverOwn,
            double crosstalk,
            double crosstalkDecibels,
            Curve trace,
            Curve crosstalkTrace) {}

    /**
     * Returns the impedance of two wires.
     *
     * @param spacingOverDiameter distance of centres over the wires' diameter, more than 1
     * @param permittivity what they stand in
     * @return (η₀/(π√εr)) acosh(s/d) [Ω]
     */
    public static double pairOhms(double spacingOverDiameter, double permittivity) {
        double x = spacingOverDiameter;
        return PhysicalConstants.ETA_0 / (Math.PI * Math.sqrt(permittivity)) * Math.log(x + Math.sqrt(x * x - 1));
    }

    /**
     * Returns how much two split circuits share.
     *
     * @param pitchOverSpacing h/s
     * @param pitchOverDiameter h/d
     * @return M/L of thin wires: ln(1 + h²/s²)/(2 ln(2h/d))
     */
    public static double mutualOverOwn(double pitchOverSpacing, double pitchOverDiameter) {
        return Math.log(1 + pitchOverSpacing * pitchOverSpacing) / (2 * Math.log(2 * pitchOverDiameter));
    }

    /**
     * Computes what the demonstration shows.
     *
     * @return curves and figures
     */
    public Outcome outcome() {
        PairSection pair = (PairSection) type.section();
        double apart = pair.geometry().spacingMetres() / pair.geometry().wireDiameterMetres();
        double made = type.section().impedanceOhms();
        double split = made * pairOhms(pitchOverSpacing * apart, 1) / pairOhms(apart, 1);
        double shared = mutualOverOwn(pitchOverSpacing, pitchOverSpacing * apart);
        return new Outcome(
                made,
                split,
                Reflection.ofImpedance(split, made).coefficient(),
                shared,
                shared / 2,
                20 * Math.log10(shared / 2),
                trace(split / made),
                crosstalk(shared / 2));
    }

    private Settings settings() {
        return new Settings(
                new RaisedCosineStep(riseSeconds), type.section().velocityFraction(), 1.15 * cableMetres, 0, 64);
    }

    private Curve trace(double relativeImpedance) {
        double ohms = type.nominalImpedanceOhms();
        List<GradualDamage> stretch = relativeImpedance == 1
                ? List.of()
                : List.of(new GradualDamage(
                        "split", splitMetres, resplitMetres - splitMetres, relativeImpedance, Profile.FLAT));
        Cable cable = new Cable(
                "Split pair",
                List.of(new Run(type, cableMetres)),
                List.copyOf(stretch),
                FarEnd.Terminated.byOhms(ohms));
        return Curve.of(
                new Reflectometer(Instrument.usual(ohms)).withoutNoise(new SimulatedPort(cable, ohms), settings()));
    }

    private Curve crosstalk(double plateau) {
        Settings settings = settings();
        Stimulus step = settings.stimulus();
        return Curve.of(0, settings.rangeMetres(), POINTS, metres -> {
            double zero = step.halfHeightSeconds();
            double begin = step.at(zero + settings.secondsThereAndBack(metres - splitMetres));
            double end = step.at(zero + settings.secondsThereAndBack(metres - resplitMetres));
            return plateau * (begin - end);
        });
    }
}
