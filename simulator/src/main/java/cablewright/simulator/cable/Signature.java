// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

/**
 * How a kind of event looks on a trace, in the four marks by which a reader distinguishes kinds.
 *
 * <p>Source: the sign and recovery of lumped elements follow from series Z: ρ = Z/(Z + 2 Z0), shunt Y:
 * ρ = −Y Z0/(2 + Y Z0) (Pozar, Microwave Engineering, 4th ed., sec. 4.3, number from memory); which kind shows as which
 * is common practice, no source.
 *
 * @param firstEdge direction of the first edge of the reflection of a positive pulse or step
 * @param recovery what the step reflection does after its first edge
 * @param extent whether the event is shorter than usual pulses or stretches along the line
 * @param leaning which part of the band it reflects
 */
public record Signature(FirstEdge firstEdge, Recovery recovery, Extent extent, Leaning leaning) {

    /** Direction of the first edge. */
    public enum FirstEdge {
        /** Impedance rises. */
        UP,
        /** Impedance falls. */
        DOWN,
        /** Either way, or nothing at all. */
        NONE
    }

    /** What the step reflection does after its first edge. */
    public enum Recovery {
        /** Comes back to the level before. */
        RECOVERS,
        /** Stays at a new level. */
        STAYS
    }

    /** Length of the event. */
    public enum Extent {
        /** At one place. */
        LOCAL,
        /** Over a stretch, with two ends. */
        LONG
    }

    /** Which part of the band is reflected. */
    public enum Leaning {
        /** Much the same at all frequencies. */
        FLAT,
        /** More at high frequencies: short pulses show it best. */
        HIGH,
        /** More at low frequencies: long pulses show it best. */
        LOW
    }

    /**
     * Counts the marks in which two signatures agree.
     *
     * @param other the signature to compare with
     * @return 0 to 4
     */
    public int agreementWith(Signature other) {
        return (firstEdge == other.firstEdge ? 1 : 0)
                + (recovery == other.recovery ? 1 : 0)
                + (extent == other.extent ? 1 : 0)
                + (leaning == other.leaning ? 1 : 0);
    }
}
