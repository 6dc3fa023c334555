// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.generation.TypicalEvents;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.cable.hardware.BuildOut;
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.crosssection.BentTube;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;

/**
 * What can be put on a cable: hardware first, then damage, each made in a usual size that can be changed after. The sizes
 * are common practice, no source.
 */
public enum Insertable {
    /** A good splice. */
    SPLICE(EventKind.SPLICE, Where.ANY),
    /** A connector. */
    CONNECTOR(EventKind.CONNECTOR, Where.ANY),
    /** A directional tap. */
    TAP(EventKind.TAP, Where.COAX),
    /** A splitter with a leg. */
    SPLITTER(EventKind.SPLITTER, Where.COAX),
    /** An amplifier or other housing. */
    HOUSING(EventKind.HOUSING, Where.COAX),
    /** A branch left joined. */
    BRIDGED_TAP(EventKind.BRIDGED_TAP, Where.ANY),
    /** A load coil of 88 mH. */
    LOAD_COIL(EventKind.LOAD_COIL, Where.PAIR),
    /** A build-out. */
    BUILD_OUT(EventKind.BUILD_OUT, Where.PAIR),
    /** A lumped element in series. */
    SERIES_ELEMENT(EventKind.ELEMENT, Where.ANY),
    /** A lumped element across the line. */
    SHUNT_ELEMENT(EventKind.ELEMENT, Where.ANY),
    /** A pinch. */
    PINCH(EventKind.PINCH, Where.ANY),
    /** A bend past the least radius. */
    KINK(EventKind.PINCH, Where.COAX),
    /** A soaked length. */
    WATER(EventKind.WATER, Where.ANY),
    /** A corroded joint. */
    CORRODED_JOINT(EventKind.CORRODED_JOINT, Where.ANY),
    /** A conductor all but broken. */
    PARTIAL_OPEN(EventKind.PARTIAL_OPEN, Where.ANY),
    /** Conductors joined by a resistance. */
    PARTIAL_SHORT(EventKind.PARTIAL_SHORT, Where.ANY),
    /** A conductor broken through. */
    OPEN(EventKind.OPEN, Where.ANY),
    /** Conductors touching. */
    SHORT(EventKind.SHORT, Where.ANY),
    /** One wire of a pair broken. */
    ONE_SIDE_OPEN(EventKind.ONE_SIDE_OPEN, Where.PAIR),
    /** One wire of a pair joined to earth. */
    ONE_SIDE_EARTHED(EventKind.ONE_SIDE_EARTHED, Where.PAIR),
    /** A wire of the pair touching one of a neighbour. */
    CROSS(EventKind.CROSS, Where.PAIR),
    /** Wires of a pair pulled apart. */
    SPREAD_PAIR(EventKind.SPREAD_PAIR, Where.PAIR),
    /** A wire of the pair joined to one of a neighbour, and put right further on. */
    SPLIT(EventKind.SPLIT, Where.PAIR),
    /** A core off the axis. */
    OFF_CENTRE(EventKind.OFF_CENTRE, Where.COAX),
    /** Damage that grows and fades. */
    GRADUAL_DAMAGE(EventKind.GRADUAL_DAMAGE, Where.ANY),
    /** Unevenness of manufacture. */
    UNEVENNESS(EventKind.UNEVENNESS, Where.ANY),
    /** A stretch at another temperature. */
    HEAT(EventKind.HEAT, Where.ANY);

    private static final Set<CableFamily> PAIRS =
            EnumSet.of(CableFamily.TELEPHONE_PAIR, CableFamily.DATA_PAIR, CableFamily.BUILDING_WIRE);
    private static final double LEAST_HALF_PULSE_METRES = 0.05;

    /** Ten times the diameter of series 6 drop cable. */
    private static final double USUAL_LEAST_RADIUS_METRES = 0.07;

    private final EventKind kind;
    private final Where where;

    private enum Where {
        ANY,
        COAX,
        PAIR
    }

    Insertable(EventKind kind, Where where) {
        this.kind = kind;
        this.where = where;
    }

    public EventKind kind() {
        return kind;
    }

    /**
     * Returns the word of it.
     *
     * @return lower-case word with hyphens
     */
    public String word() {
        return BenchChoices.word(this);
    }

    /**
     * Lists what can be put on a type of cable.
     *
     * @param type the type
     * @return hardware first, then damage
     */
    public static List<Insertable> on(CableType type) {
        Where cable = PAIRS.contains(type.family()) ? Where.PAIR : Where.COAX;
        return Arrays.stream(values())
                .filter(one -> one.where == Where.ANY || one.where == cable)
                .toList();
    }

    /**
     * Puts one on a cable, in its usual size; a stretch is made as long as the rest of the cable allows.
     *
     * @param cable the cable
     * @param metres where [m]; kept on the cable
     * @param halfPulseMetres half of the length of the pulse in use [m]: stretches show two edges to it
     * @return the cable with it as its last event
     */
    public Cable putOn(Cable cable, double metres, double halfPulseMetres) {
        double at = Math.max(0, Math.min(cable.lengthMetres(), metres));
        CableType type = cable.runAt(at).type();
        String id = CableEdits.freshId(cable, word());
        double halfPulse = Math.max(
                LEAST_HALF_PULSE_METRES,
                Math.min(halfPulseMetres, Math.max(LEAST_HALF_PULSE_METRES, cable.lengthMetres() / 15)));
        Event event = make(id, type, at, halfPulse);
        double length = event.endMetres() - event.startMetres();
        if (length > 0.9 * cable.lengthMetres()) {
            event = Copies.with(event, "lengthMetres", 0.5 * cable.lengthMetres());
        }
        return CableEdits.added(cable, event.movedTo(CableEdits.kept(cable, event, at)));
    }

    private Event make(String id, CableType type, double metres, double halfPulse) {
        double ohms = type.nominalImpedanceOhms();
        switch (this) {
            case SPLITTER:
                Cable leg = new Cable("leg", List.of(leg(type, halfPulse)), List.of(), FarEnd.Terminated.byOhms(ohms));
                return new Splitter(id, metres, ohms, 3.5, 3.5, 1e-12, leg, false);
            case HOUSING:
                return new Housing(id, metres, ohms, 1, 1e-12, 5e6);
            case LOAD_COIL:
                return new LoadCoil(id, metres, 88e-3, 8, 100e-12);
            case BUILD_OUT:
                return new BuildOut(id, metres, 33e-9, 50);
            case SERIES_ELEMENT:
                return new SeriesPart(id, metres, Lumped.resistor(Math.rint(ohms / 5)));
            case SHUNT_ELEMENT:
                return new ShuntPart(id, metres, Lumped.capacitor(2e-12));
            case KINK:
                double least = BentTube.leastRadiusMetres(type.section()).orElse(USUAL_LEAST_RADIUS_METRES);
                return new Kink(id, metres, 2 * least, 0.6 * least, OptionalDouble.of(least), Profile.RAISED_COSINE);
            case UNEVENNESS:
                return new ImpedanceVariation(id, metres, 40 * halfPulse, 0.01, halfPulse, OptionalLong.of(1), false);
            case HEAT:
                return new Heat(id, metres, 10 * halfPulse, 60, Cable.BASE_CELSIUS, Profile.RAISED_COSINE);
            default:
                return TypicalEvents.of(id, kind, type, metres, halfPulse).orElseThrow();
        }
    }

    private static Run leg(CableType type, double halfPulse) {
        return new Run(type, Math.rint(Math.max(2, 4 * halfPulse)));
    }
}
