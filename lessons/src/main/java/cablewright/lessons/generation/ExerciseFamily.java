// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.lessons.exercise.Caution;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.line.CableType;
import java.util.Comparator;
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
            new double[] {150, 900},
            new double[] {25e-9, 50e-9, 100e-9, 200e-9},
            List.of(EventKind.BRIDGED_TAP, EventKind.SPLICE),
            List.of(
                    EventKind.WATER,
                    EventKind.PARTIAL_OPEN,
                    EventKind.PARTIAL_SHORT,
                    EventKind.SPLIT,
                    EventKind.ONE_SIDE_OPEN,
                    EventKind.ONE_SIDE_EARTHED,
                    EventKind.CROSS,
                    EventKind.OPEN,
                    EventKind.SHORT),
            List.of(Caution.RINGING_VOLTAGE, Caution.LIGHTNING, Caution.STATIC_CHARGE, Caution.LOCAL_CODES)),
    /** A pair of a data cable in a building. */
    DATA_CABLING(
            List.of("cat-5e", "cat-6", "cat-6a"),
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
            new double[] {100, 300},
            new double[] {5e-9, 10e-9, 25e-9},
            List.of(),
            List.of(EventKind.OFF_CENTRE, EventKind.PINCH, EventKind.GRADUAL_DAMAGE),
            List.of(Caution.STATIC_CHARGE, Caution.LOCAL_CODES));

    /** Resistances with which reflectometers are made (common practice, no source) [Ω]. */
    private static final List<Double> SOURCES_OHMS = List.of(50.0, 75.0, 100.0, 120.0);

    private final List<String> types;
    private final double[] lengths;
    private final double[] pulses;
    private final List<EventKind> hardware;
    private final List<EventKind> damage;
    private final List<Caution> cautions;

    ExerciseFamily(
            List<String> types,
            double[] lengths,
            double[] pulses,
            List<EventKind> hardware,
            List<EventKind> damage,
            List<Caution> cautions) {
        this.types = types;
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

    /** The source whose resistance is nearest to a cable's nominal impedance [Ω]. */
    static double sourceOhms(CableType type) {
        return SOURCES_OHMS.stream()
                .min(Comparator.comparingDouble(ohms -> Math.abs(ohms - type.nominalImpedanceOhms())))
                .orElseThrow();
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

    /** Whether such a line ends in its own impedance when it is used; building wire and a new reel end in nothing. */
    boolean isTerminatedInUse() {
        return this != BUILDING_WIRE && this != REEL_ACCEPTANCE;
    }

    List<Caution> cautions() {
        return cautions;
    }
}
