// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.multiconductor.NeighbourPort;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.reading.Reflection;
import cablewright.simulator.wave.RaisedCosineStep;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Split and re-split: between two joints each circuit uses one wire of each of two pairs. The circuit's wires stand a pitch
 * h apart instead of s, so its impedance is higher, and the two circuits share their field, so each hears the other.
 *
 * <p>Straight wires at the corners of a rectangle s by h: Z = (120 Ω/√εr) acosh(h/d); mutual over own inductance, thin wires,
 * M/L = ln(1 + h²/s²)/(2 ln(2h/d)). The even and the odd mode of the two circuits have Z (1 ± M/L) and reflect ρe and ρo on
 * the pairs before; half of the sum comes back, half of the difference is heard, about ½ M/L, from the split to the re-split
 * (a pair of coupled lines in one medium, C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed., ch. 9, from
 * memory). The curves are solved: four wires, two joints that permute them, loss and all.
 * Real joints vary; 110 to 150 Ω is a plausible range (common practice, no source).
 *
 * @param type a pair cable
 * @param cableMetres its length, terminated [m], 5 to 1000
 * @param splitMetres where the split is [m]
 * @param resplitMetres where it is put right [m]
 * @param pitchOverSpacing h/s, 1.2 to 5
 * @param riseSeconds rise of the step, 10–90 % [s], 1e-10 to 1e-7
 */
public record SplitPair(
        CableType type,
        @Between(least = 5, most = 1000) double cableMetres,
        double splitMetres,
        double resplitMetres,
        @Between(least = SplitShape.LEAST_PITCH, most = 5) double pitchOverSpacing,
        @Between(least = 1e-10, most = 1e-7) double riseSeconds) {

    private static final String SPLIT = "split";

    /** Checks the ranges. */
    public SplitPair {
        Require.components(
                SplitPair.class, type, cableMetres, splitMetres, resplitMetres, pitchOverSpacing, riseSeconds);
        if (!(type.section() instanceof PairSection)) {
            throw new IllegalArgumentException("type is \"" + type.id() + "\"; only pairs can be split");
        }
        Require.between("splitMetres", splitMetres, 0, cableMetres);
        Require.between("resplitMetres", resplitMetres, Math.nextUp(splitMetres), cableMetres);
    }

    /**
     * What the demonstration shows. Voltages are for an outgoing wave of 1 V.
     *
     * @param pairOhms impedance of the pair as made [Ω]
     * @param splitOhms impedance between split and re-split [Ω]
     * @param reflection ρ at the split, (ρe + ρo)/2, without loss; at the re-split it is nearly as large and the other way
     * @param mutualOverOwn M/L of the two circuits between the joints
     * @param crosstalk near-end crosstalk of a step there, over the step, (ρe − ρo)/2, without loss
     * @param crosstalkDecibels the same [dB], below 0
     * @param trace trace of a step on the circuit [V against m], its own level taken off
     * @param crosstalkTrace what the other circuit's near end sees [V against m]
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
        double even = Reflection.ofImpedance(split * (1 + shared), made).coefficient();
        double odd = Reflection.ofImpedance(split * (1 - shared), made).coefficient();
        double ohms = type.nominalImpedanceOhms();
        Cable cable = cable();
        return new Outcome(
                made,
                split,
                (even + odd) / 2,
                shared,
                (even - odd) / 2,
                20 * Math.log10((even - odd) / 2),
                trace(new SimulatedPort(cable, ohms), 1),
                trace(new NeighbourPort(cable, ohms, SPLIT), 0));
    }

    private Settings settings() {
        return new Settings(
                new RaisedCosineStep(riseSeconds), type.section().velocityFraction(), 1.15 * cableMetres, 0, 64);
    }

    /**
     * The cable itself: two twisted pairs that share nothing, straight wires at the corners of a rectangle between the joints,
     * and the twisted pairs once more; both pairs ended alike at both ends.
     */
    private Cable cable() {
        SplitShape shape = new SplitShape(SplitLayout.STRAIGHT, OptionalDouble.of(pitchOverSpacing));
        Split split = new Split(
                SPLIT,
                splitMetres,
                resplitMetres - splitMetres,
                shape,
                true,
                NeighbourEnd.MATCHED,
                NeighbourEnd.MATCHED);
        return new Cable(
                "Split pair",
                List.of(new Run(type, cableMetres)),
                List.of(split),
                FarEnd.Terminated.byOhms(type.nominalImpedanceOhms()));
    }

    private Curve trace(PortResponse response, double outgoingShare) {
        return Curve.of(
                new Reflectometer(Instrument.usual(type.nominalImpedanceOhms()).withOutgoingShare(outgoingShare))
                        .withoutNoise(response, settings()));
    }
}
