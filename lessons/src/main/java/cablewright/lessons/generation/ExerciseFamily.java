// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.lessons.exercise.Caution;
import cablewright.simulator.cable.EventKind;
import java.util.List;

/**
 * The families of line in which exercises are set, with what is met on each. The mixes are common practice, no source; no
 * family has two kinds of damage that a trace alone can't tell apart, such as water and an off-centre core, or a split and
 * a spread pair.
 */
public enum ExerciseFamily {
    /** Hardline between amplifiers, with taps and splices. */
    COAX_PLANT(
            List.of("hardline-500", "hardline-625", "hardline-750", "hardline-875"),
            75,
            new double[] {120, 480},
            new double[] {10e-9, 25e-9, 50e-9, 100e-9},
            List.of(EventKind.TAP, EventKind.SPLICE),
            List.of(
                    EventKind.WATER,
                    EventKind.PINCH,
                    EventKind.CORRODED_JOINT,
                    EventKind.PARTIAL_SHORT,
                    EventKind.GRADUAL_DAMAGE,
                    EventKind.OPEN,
                    EventKind.SHORT),
            List.of(Caution.LIVE_PLANT_POWER, Caution.LIGHTNING, Caution.DIGGING, Caution.LOCAL_CODES)),
    /** Drop coax from a tap to a building or a mast. */
    COAX_DROP(
            List.of("drop-59-foam", "drop-6-foam", "drop-11-foam"),
            75,
            new double[] {40, 150},
            new double[] {2e-9, 5e-9, 10e-9, 25e-9},
            List.of(EventKind.SPLICE, EventKind.CONNECTOR),
            List.of(
                    EventKind.PINCH,
                    EventKind.WATER,
                    EventKind.CORRODED_JOINT,
                    EventKind.PARTIAL_SHORT,
                    EventKind.OPEN,
                    EventKind.SHORT),
            List.of(Caution.LIVE_PLANT_POWER, Caution.LIGHTNING, Caution.DIGGING, Caution.LOCAL_CODES)),
    /** A telephone pair from an exchange to a customer. */
    TELEPHONE_LOOP(
            List.of("pair-19", "pair-22", "pair-24", "pair-26"),
            100,
            new double[] {150, 900},
            new double[] {25e-9, 50e-9, 100e-9, 200e-9},
            List.of(EventKind.BRIDGED_TAP, EventKind.SPLICE),
            List.of(
                    EventKind.WATER,
                    EventKind.PARTIAL_OPEN,
                    EventKind.PARTIAL_SHORT,
                    EventKind.SPLIT,
                    EventKind.ONE_SIDE_OPEN,
                    EventKind.OPEN,
                    EventKind.SHORT),
            List.of(Caution.RINGING_VOLTAGE, Caution.LIGHTNING, Caution.STATIC_CHARGE, Caution.LOCAL_CODES)),
    /** A pair of a data cable in a building. */
    DATA_CABLING(
            List.of("cat-5e", "cat-6", "cat-6a"),
            100,
            new double[] {25, 95},
            new double[] {2e-9, 5e-9, 10e-9},
            List.of(EventKind.CONNECTOR, EventKind.SPLICE),
            List.of(
                    EventKind.SPREAD_PAIR,
                    EventKind.PINCH,
                    EventKind.CORRODED_JOINT,
                    EventKind.PARTIAL_SHORT,
                    EventKind.OPEN,
                    EventKind.SHORT),
            List.of(Caution.MAINS, Caution.LOCAL_CODES)),
    /** Building wire, dead and proved dead. */
    BUILDING_WIRE(
            List.of("building-14", "building-12"),
            120,
            new double[] {15, 70},
            new double[] {2e-9, 5e-9, 10e-9},
            List.of(EventKind.CONNECTOR, EventKind.SPLICE),
            List.of(
                    EventKind.CORRODED_JOINT,
                    EventKind.PARTIAL_SHORT,
                    EventKind.PINCH,
                    EventKind.OPEN,
                    EventKind.SHORT),
            List.of(Caution.MAINS, Caution.LOCAL_CODES)),
    /** A new, dry reel on the factory floor: nothing belongs on it. */
    REEL_ACCEPTANCE(
            List.of("hardline-500", "drop-6-foam", "drop-11-foam", "coax-213-solid"),
            75,
            new double[] {100, 300},
            new double[] {5e-9, 10e-9, 25e-9},
            List.of(),
            List.of(EventKind.OFF_CENTRE, EventKind.PINCH, EventKind.GRADUAL_DAMAGE),
            List.of(Caution.STATIC_CHARGE, Caution.LOCAL_CODES));

    private final List<String> types;
    private final double sourceOhms;
    private final double[] lengths;
    private final double[] pulses;
    private final List<EventKind> hardware;
    private final List<EventKind> damage;
    private final List<Caution> cautions;

    ExerciseFamily(
            List<String> types,
            double sourceOhms,
            double[] lengths,
            double[] pulses,
            List<EventKind> hardware,
            List<EventKind> damage,
            List<Caution> cautions) {
        this.types = types;
        this.sourceOhms = sourceOhms;
        this.lengths = lengths;
        this.pulses = pulses;
        this.hardware = hardware;
        this.damage = damage;
        this.cautions = cautions;
    }

    /**
     * Returns the types of cable that are met.
     *
     * @return ids in the catalogue
     */
    public List<String> types() {
        return types;
    }

    double sourceOhms(String type) {
        return type.equals("coax-213-solid") ? 50 : sourceOhms;
    }

    double shortestMetres() {
        return lengths[0];
    }

    double longestMetres() {
        return lengths[1];
    }

    double[] pulseSeconds() {
        return pulses.clone();
    }

    /**
     * Returns the hardware that belongs on such lines.
     *
     * @return kinds; none on a new reel
     */
    public List<EventKind> hardware() {
        return hardware;
    }

    public List<EventKind> damage() {
        return damage;
    }

    List<Caution> cautions() {
        return cautions;
    }
}
