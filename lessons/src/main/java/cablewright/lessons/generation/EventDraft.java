// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Cross;
import cablewright.simulator.cable.hardware.OneSideEarthed;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.Water;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Draws the size of an event. Hardware is as large as it is made ({@link HardwareSizes}), whether or not it then shows; of
 * damage, plain sizes stand high above the noise and hard ones low, within these ranges:
 *
 * <ul>
 *   <li>water in paired wires: 5 to 30 % of the dielectric, which takes a pair of 98 Ω to 92 down to 67 Ω; a flooded core doubles
 *       the capacitance or more (common practice, no source);
 *   <li>water in coax: a film under the shield, since closed-cell foam takes none up (common practice, no source);
 *   <li>a core off centre by 20 to 50 % of the most that there is room for, over a fifth to a half of the reel, between two
 *       restarts of the line (common practice, no source);
 *   <li>a bridged tap of 20 m and more (common practice, no source).
 * </ul>
 *
 * <p>Whether damage can be seen is never taken from its size but checked.
 */
final class EventDraft {

    private final SeededRandom dice;
    private final CableType type;
    private final double difficulty;
    private final double halfPulseMetres;
    private final HardwareSizes sizes;
    private final String branchTitle;

    private static final double LEAST_BRANCH_METRES = 20;

    EventDraft(SeededRandom dice, CableType type, double difficulty, double halfPulseMetres, String branchTitle) {
        this.branchTitle = branchTitle;
        this.dice = dice;
        this.type = type;
        this.difficulty = difficulty;
        this.halfPulseMetres = halfPulseMetres;
        this.sizes = new HardwareSizes(type);
    }

    /** A strength: near 1 for a plain exercise, near 0 for a hard one. */
    private double strength() {
        return Math.max(0, Math.min(1, 1 - difficulty + dice.between(-0.2, 0.2)));
    }

    private double ohms() {
        return type.nominalImpedanceOhms();
    }

    /** How long a stretch of this kind is, or 0 for a thing at one place. */
    double stretchMetres(EventKind kind) {
        return switch (kind) {
            case PINCH -> Math.min(0.25 * halfPulseMetres, dice.between(0.08, 0.4));
            case WATER, OFF_CENTRE, SPREAD_PAIR, SPLIT -> halfPulseMetres * dice.between(2.5, 6);
            case GRADUAL_DAMAGE -> halfPulseMetres * dice.between(1.5, 1.5 + 2 * difficulty);
            default -> 0;
        };
    }

    Event draw(String id, EventKind kind, double metres, double stretch) {
        double q = strength();
        return switch (kind) {
            case SPLICE -> sizes.splice(id, metres, age(q));
            case CONNECTOR -> sizes.connector(id, metres, insideMetres(), age(q));
            case TAP -> sizes.tap(id, metres, dice.between(0.6, 1.8), dice.between(-2, 2));
            case BRIDGED_TAP -> new BridgedTap(id, metres, branch());
            case PINCH -> new Pinch(id, metres, stretch, 0.45 + 0.4 * q, Profile.RAISED_COSINE);
            case WATER -> water(id, metres, stretch, q);
            case OFF_CENTRE ->
                new OffCentreCore(id, metres, stretch, 0.2 + 0.3 * q, Profile.FLAT, OptionalDouble.empty());
            case SPREAD_PAIR -> new SpreadPair(id, metres, stretch, 1.15 + 0.7 * q, Profile.FLAT);
            case SPLIT -> split(id, metres, stretch, 1.3 + 1.2 * q);
            case GRADUAL_DAMAGE -> new GradualDamage(id, metres, stretch, 0.9 - 0.15 * q, Profile.RAISED_COSINE);
            default -> contact(id, kind, metres, q);
        };
    }

    /**
     * By how much sound hardware misses its class [dB]: some is new and better than it, most has aged and still belongs. Data
     * cabling is certified link by link, so there it always meets its class.
     */
    private double age(double q) {
        return type.family() == CableFamily.DATA_PAIR ? dice.between(-10, -1) : dice.between(-4, 2 + 8 * q);
    }

    /** Electrical length of a connector's inside [m]: plug and jack of data cabling are longer than a plug of coax. */
    private double insideMetres() {
        return type.family() == CableFamily.DATA_PAIR ? dice.between(0.06, 0.1) : dice.between(0.02, 0.04);
    }

    private static Event split(String id, double metres, double stretch, double pitch) {
        SplitShape shape = new SplitShape(SplitLayout.TWISTED, OptionalDouble.of(pitch));
        return new Split(id, metres, stretch, shape, true, NeighbourEnd.MATCHED, NeighbourEnd.MATCHED);
    }

    /** One that sends a quarter to a half of the wave back. */
    Event strong(String id, EventKind kind, double metres) {
        double ohms = ohms();
        return switch (kind) {
            case PARTIAL_SHORT -> new TouchingConductors(id, metres, OptionalDouble.of(ohms * dice.between(0.5, 1.2)));
            case PARTIAL_OPEN -> new BrokenConductor(id, metres, OptionalDouble.of(ohms * dice.between(0.8, 2)));
            default -> new CorrodedJoint(id, metres, ohms * dice.between(0.8, 2), OptionalDouble.empty());
        };
    }

    private Event contact(String id, EventKind kind, double metres, double q) {
        switch (kind) {
            case CORRODED_JOINT:
                return new CorrodedJoint(id, metres, ohms() * (0.06 + 0.5 * q), OptionalDouble.empty());
            case PARTIAL_OPEN:
                return new BrokenConductor(id, metres, OptionalDouble.of(ohms() * dice.logBetween(0.8, 8)));
            case PARTIAL_SHORT:
                return new TouchingConductors(id, metres, OptionalDouble.of(ohms() * (7 - 6 * q)));
            case ONE_SIDE_OPEN:
                return new OneSideOpen(id, metres, OptionalDouble.of(dice.logBetween(20e-12, 150e-12)));
            case ONE_SIDE_EARTHED:
                return new OneSideEarthed(id, metres, ohms() * (1 - q) * dice.between(1, 4));
            case CROSS:
                return new Cross(id, metres, ohms() * (1 - q) * dice.between(1, 4));
            case OPEN:
                return new BrokenConductor(id, metres, OptionalDouble.empty());
            case SHORT:
                return new TouchingConductors(id, metres, OptionalDouble.empty());
            default:
                throw new IllegalArgumentException("kind \"" + kind.id() + "\" is not generated");
        }
    }

    private Event water(String id, double metres, double stretch, double q) {
        // Closed-cell foam drinks nothing: in coax water runs along the foil or the tube. Paired wires stand in it.
        boolean coax = !HardwareSizes.isPair(type.family());
        WaterDistribution picture = coax ? WaterDistribution.FILM_UNDER_SHIELD : WaterDistribution.MAXWELL_GARNETT;
        double fraction = coax ? 0.12 + 0.35 * q : 0.05 + 0.25 * q;
        Water water = new Water(Math.rint(dice.between(4, 18)), dice.logBetween(0.005, 0.05));
        return new WaterIngress(
                id, metres, stretch, metres + stretch * dice.between(0, 1), picture, fraction, water, 0);
    }

    /** A branch long enough to show both its ends, and as long as the trade leaves them: 20 m and more. */
    private Cable branch() {
        double least = Math.max(LEAST_BRANCH_METRES, 2.2 * halfPulseMetres);
        double length = Math.rint(dice.logBetween(least, Math.max(3 * least, 150)));
        return new Cable(branchTitle, List.of(new Run(type, length)), List.of(), new FarEnd.Open());
    }
}
