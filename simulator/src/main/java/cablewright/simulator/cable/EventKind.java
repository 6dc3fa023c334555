// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.cable.Signature.Extent;
import cablewright.simulator.cable.Signature.FirstEdge;
import cablewright.simulator.cable.Signature.Leaning;
import cablewright.simulator.cable.Signature.Recovery;

/**
 * The kinds of event a reader can name, each with its nature and its signature on a trace.
 *
 * <p>The kind is the trade's word for what lies there; several event records can share one kind (a short and a partial
 * short differ by resistance only in the record, but they are distinguished on a trace, so they are two kinds).
 */
public enum EventKind {
    /** Two lengths joined well. */
    SPLICE("splice", Nature.HARDWARE, FirstEdge.UP, Recovery.RECOVERS, Extent.LOCAL, Leaning.HIGH),
    /** A plug and socket in the line. */
    CONNECTOR("connector", Nature.HARDWARE, FirstEdge.UP, Recovery.RECOVERS, Extent.LOCAL, Leaning.HIGH),
    /** A joint whose contact has corroded: series resistance, perhaps bridged by an oxide's capacitance. */
    CORRODED_JOINT("corroded-joint", Nature.DAMAGE, FirstEdge.UP, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** A coax directional tap. */
    TAP("tap", Nature.HARDWARE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LOCAL, Leaning.HIGH),
    /** A device that divides the line into two legs. */
    SPLITTER("splitter", Nature.HARDWARE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LOCAL, Leaning.HIGH),
    /** An amplifier or other powered or passive housing in the line. */
    HOUSING("housing", Nature.HARDWARE, FirstEdge.DOWN, Recovery.STAYS, Extent.LOCAL, Leaning.LOW),
    /** An unused branch left joined to a pair or coax. */
    BRIDGED_TAP("bridged-tap", Nature.HARDWARE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LONG, Leaning.FLAT),
    /** An inductance put in a telephone pair to lift its voice band. */
    LOAD_COIL("load-coil", Nature.HARDWARE, FirstEdge.UP, Recovery.RECOVERS, Extent.LOCAL, Leaning.LOW),
    /** A capacitance (with resistance) that makes a short loading section behave like a full one. */
    BUILD_OUT("build-out", Nature.HARDWARE, FirstEdge.DOWN, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** A change from one type of cable to another. */
    CABLE_CHANGE("cable-change", Nature.HARDWARE, FirstEdge.NONE, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** The end of the line. */
    END("end", Nature.HARDWARE, FirstEdge.NONE, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** Outer conductor pressed toward the inner over a short length, or a pair pressed together. */
    PINCH("pinch", Nature.DAMAGE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LOCAL, Leaning.HIGH),
    /** Water in the cable, from where it came in to where it travelled. */
    WATER("water", Nature.DAMAGE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LONG, Leaning.FLAT),
    /** Inner conductor off the axis of its dielectric. */
    OFF_CENTRE("off-centre", Nature.DAMAGE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LONG, Leaning.FLAT),
    /** Damage that grows and fades over metres: heat, bending, lightning. */
    GRADUAL_DAMAGE("gradual-damage", Nature.DAMAGE, FirstEdge.DOWN, Recovery.RECOVERS, Extent.LONG, Leaning.LOW),
    /** The two wires of a pair pulled apart. */
    SPREAD_PAIR("spread-pair", Nature.DAMAGE, FirstEdge.UP, Recovery.RECOVERS, Extent.LONG, Leaning.FLAT),
    /** Unevenness of manufacture along a stretch. */
    UNEVENNESS("unevenness", Nature.DAMAGE, FirstEdge.NONE, Recovery.RECOVERS, Extent.LONG, Leaning.HIGH),
    /** A stretch at another temperature. */
    HEAT("heat", Nature.DAMAGE, FirstEdge.NONE, Recovery.RECOVERS, Extent.LONG, Leaning.FLAT),
    /** A conductor broken through. */
    OPEN("open", Nature.DAMAGE, FirstEdge.UP, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** A conductor broken, but for some resistance. */
    PARTIAL_OPEN("partial-open", Nature.DAMAGE, FirstEdge.UP, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** One conductor of a pair broken. */
    ONE_SIDE_OPEN("one-side-open", Nature.DAMAGE, FirstEdge.UP, Recovery.STAYS, Extent.LOCAL, Leaning.LOW),
    /** One conductor of a pair joined to earth or to the shield. */
    ONE_SIDE_EARTHED("one-side-earthed", Nature.DAMAGE, FirstEdge.DOWN, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** A wire of one pair touching a wire of another. */
    CROSS("cross", Nature.DAMAGE, FirstEdge.DOWN, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** Two conductors touching. */
    SHORT("short", Nature.DAMAGE, FirstEdge.DOWN, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** Two conductors joined by some resistance. */
    PARTIAL_SHORT("partial-short", Nature.DAMAGE, FirstEdge.DOWN, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT),
    /** From a wire of one pair joined to a wire of another, up to where it is put right. */
    SPLIT("split", Nature.DAMAGE, FirstEdge.UP, Recovery.RECOVERS, Extent.LONG, Leaning.FLAT),
    /** A lumped element of no trade name, given by its values. */
    ELEMENT("element", Nature.HARDWARE, FirstEdge.NONE, Recovery.STAYS, Extent.LOCAL, Leaning.FLAT);

    private final String id;
    private final Nature nature;
    private final Signature signature;

    EventKind(String id, Nature nature, FirstEdge firstEdge, Recovery recovery, Extent extent, Leaning leaning) {
        this.id = id;
        this.nature = nature;
        this.signature = new Signature(firstEdge, recovery, extent, leaning);
    }

    /**
     * Returns the word that files and commands use.
     *
     * @return lower-case word with hyphens
     */
    public String id() {
        return id;
    }

    /**
     * Returns whether the kind may belong in a line.
     *
     * @return hardware or damage
     */
    public Nature nature() {
        return nature;
    }

    /**
     * Returns how the kind usually looks on a trace.
     *
     * @return the usual signature; a given event may differ, and the explanation of its trace says how
     */
    public Signature signature() {
        return signature;
    }

    /**
     * Finds a kind by its word.
     *
     * @param id the word that files and commands use
     * @return the kind
     * @throws IllegalArgumentException if there is no such kind; the message lists those there are
     */
    public static EventKind ofId(String id) {
        for (EventKind kind : values()) {
            if (kind.id.equals(id)) {
                return kind;
            }
        }
        StringBuilder all = new StringBuilder();
        for (EventKind kind : values()) {
            all.append(all.length() == 0 ? "" : ", ").append(kind.id);
        }
        throw new IllegalArgumentException("kind is \"" + id + "\"; allowed are " + all);
    }
}
