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
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
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
 * Draws the size of an event: plain ones stand high above the noise, hard ones low. The ranges are common practice, no
 * source; whether an event can be seen is never taken from them but checked.
 */
final class EventDraft {

    private final SeededRandom dice;
    private final CableType type;
    private final double difficulty;
    private final double halfPulseMetres;

    EventDraft(SeededRandom dice, CableType type, double difficulty, double halfPulseMetres) {
        this.dice = dice;
        this.type = type;
        this.difficulty = difficulty;
        this.halfPulseMetres = halfPulseMetres;
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
        switch (kind) {
            case PINCH:
                return Math.min(0.25 * halfPulseMetres, dice.between(0.08, 0.4));
            case WATER:
            case OFF_CENTRE:
            case SPREAD_PAIR:
            case SPLIT:
                return halfPulseMetres * dice.between(2.5, 6);
            case GRADUAL_DAMAGE:
                return halfPulseMetres * dice.between(1.5, 1.5 + 2 * difficulty);
            default:
                return 0;
        }
    }

    Event draw(String id, EventKind kind, double metres, double stretch) {
        double q = strength();
        switch (kind) {
            case SPLICE:
                return new Splice(id, metres, excessInductance(q), 0, 0.01);
            case CONNECTOR:
                double length = dice.between(0.03, 0.05) * (1 + q);
                return new Connector(id, metres, ohms() * (0.75 - 0.15 * q), length, 0.01);
            case TAP:
                double stray = clamp((0.08 + 0.08 * q) * halfPulseTime() / ohms(), 0.5e-12, 4e-12);
                return new Tap(id, metres, ohms(), dice.between(0.6, 1.8), stray, 0);
            case BRIDGED_TAP:
                return new BridgedTap(id, metres, branch());
            case PINCH:
                return new Pinch(id, metres, stretch, 0.45 + 0.4 * q, Profile.RAISED_COSINE);
            case WATER:
                return water(id, metres, stretch, q);
            case OFF_CENTRE:
                return new OffCentreCore(id, metres, stretch, 0.35 + 0.4 * q, Profile.FLAT, OptionalDouble.empty());
            case SPREAD_PAIR:
                return new SpreadPair(id, metres, stretch, 1.15 + 0.7 * q, Profile.FLAT);
            case SPLIT:
                return split(id, metres, stretch, 1.3 + 1.2 * q);
            case GRADUAL_DAMAGE:
                return new GradualDamage(id, metres, stretch, 0.9 - 0.15 * q, Profile.RAISED_COSINE);
            default:
                return contact(id, kind, metres, q);
        }
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
                return new OneSideOpen(id, metres, dice.logBetween(20e-12, 150e-12));
            case OPEN:
                return new BrokenConductor(id, metres, OptionalDouble.empty());
            case SHORT:
                return new TouchingConductors(id, metres, OptionalDouble.empty());
            default:
                throw new IllegalArgumentException("kind \"" + kind.id() + "\" is not generated");
        }
    }

    /** A few centimetres of conductor led apart: up to 20 nH in coax, up to 150 nH in a pair that is untwisted there. */
    private double excessInductance(double q) {
        boolean pair = type.family() == CableFamily.TELEPHONE_PAIR
                || type.family() == CableFamily.DATA_PAIR
                || type.family() == CableFamily.BUILDING_WIRE;
        return clamp((0.06 + 0.08 * q) * ohms() * halfPulseTime(), 4e-9, pair ? 150e-9 : 20e-9);
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private double halfPulseTime() {
        return halfPulseMetres / (type.section().velocityFraction() * 299_792_458.0);
    }

    private Event water(String id, double metres, double stretch, double q) {
        boolean coax = type.family() == CableFamily.COAX_DROP
                || type.family() == CableFamily.COAX_PLANT
                || type.family() == CableFamily.COAX_SOLID;
        WaterDistribution picture =
                coax && dice.chance(0.4) ? WaterDistribution.FILM_UNDER_SHIELD : WaterDistribution.MAXWELL_GARNETT;
        double fraction = picture == WaterDistribution.FILM_UNDER_SHIELD ? 0.15 + 0.3 * q : 0.03 + 0.1 * q;
        Water water = new Water(Math.rint(dice.between(4, 18)), dice.logBetween(0.005, 0.05));
        return new WaterIngress(
                id, metres, stretch, metres + stretch * dice.between(0, 1), picture, fraction, water, 0);
    }

    private Cable branch() {
        double length = Math.rint(halfPulseMetres * dice.between(2.2, 5));
        return new Cable(
                "Branch left joined", List.of(new Run(type, Math.max(2, length))), List.of(), new FarEnd.Open());
    }
}
