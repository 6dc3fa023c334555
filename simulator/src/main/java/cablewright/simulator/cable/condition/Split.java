// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LengthOnCable;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Readable;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.split.SplitShape;
import java.util.List;

/**
 * A wire of the tested pair joined to a wire of a neighbour, from the joint to where it is put right, or to the end of the
 * line. In between each circuit uses one wire of each pair, so its impedance is another and each hears the other.
 *
 * <p>Model: the wires are permuted, nothing is painted. Two circuits, even and odd mode {@link SplitShape}; the neighbour is
 * a sound pair of the same cable, described by its two ends. Reflection of a matched step: (ρe + ρo)/2; near-end crosstalk:
 * (ρe − ρo)/2 (a pair of coupled lines, C. R. Paul, Analysis of Multiconductor Transmission Lines, 2nd ed., ch. 9, from
 * memory). Twisted pairs and straight wires reflect up, a quad down. Pairs share nothing where they are not split: twist is
 * taken to average it away.
 *
 * <p>A split that is never put right leaves the end of the line across wires of both circuits: to the circuit of one pair
 * against the other the end is open, whatever the pairs end in, and the two pairs then count as ended alike.
 *
 * @param id name within the cable
 * @param startMetres where the split is, from the near end [m]
 * @param lengthMetres from there to the re-split, or to the end of the cable [m]
 * @param shape how the wires lie in between
 * @param putRight whether there is a re-split; without, the stretch reaches the end of the cable
 * @param neighbourNearEnd how the neighbour is left at the near end
 * @param neighbourFarEnd how it is left at the far end; of no effect where the split is never put right
 */
public record Split(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        SplitShape shape,
        boolean putRight,
        NeighbourEnd neighbourNearEnd,
        NeighbourEnd neighbourFarEnd)
        implements LineCondition {

    private static final double LEAST_METRES = 1e-3;
    private static final double RELATIVE_SLACK = 1e-9;

    /** Checks the ranges. */
    public Split {
        Require.components(
                Split.class, id, startMetres, lengthMetres, shape, putRight, neighbourNearEnd, neighbourFarEnd);
    }

    @Override
    public EventKind kind() {
        return EventKind.SPLIT;
    }

    @Override
    public Split movedTo(double newStartMetres) {
        double length = putRight ? lengthMetres : Math.max(LEAST_METRES, endMetres() - newStartMetres);
        return new Split(id, newStartMetres, length, shape, putRight, neighbourNearEnd, neighbourFarEnd);
    }

    /** Without a re-split the one joint is all there is: from the other end too, what lies beyond it is split. */
    @Override
    public Split mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        double length = lengthMetres;
        if (!putRight) {
            length = Math.max(LEAST_METRES, startMetres);
            start = Math.max(0, cableLengthMetres - length);
        }
        return new Split(id, start, length, shape, putRight, neighbourFarEnd, neighbourNearEnd);
    }

    @Override
    public double depthAt(double along) {
        return 1;
    }

    /** Leaves the pair as it is: the compiler treats the two circuits together. */
    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        shape.modes(section);
        return section;
    }

    @Override
    public double longestStepMetres() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public int compositionOrder() {
        return 3;
    }

    /** A pair can be split from one neighbour at a time, and one that is never put right runs to the end. */
    @Override
    public void requireRoom(double cableLengthMetres, List<Event> all) {
        double slack = cableLengthMetres * RELATIVE_SLACK;
        if (!putRight && endMetres() < cableLengthMetres - slack) {
            throw new IllegalArgumentException("event \"" + id + "\" is never put right but ends at "
                    + Readable.number(endMetres(), cableLengthMetres)
                    + " m; its stretch must reach the end of the cable, "
                    + Readable.number(cableLengthMetres, endMetres()) + " m");
        }
        for (Event other : all) {
            boolean within = other instanceof Split
                    && other != this
                    && other.startMetres() <= startMetres()
                    && other.endMetres() > startMetres() + slack;
            if (within) {
                throw new IllegalArgumentException("event \"" + id + "\" begins at "
                        + Readable.number(startMetres, other.endMetres()) + " m, before \""
                        + other.id() + "\" is put right at " + Readable.number(other.endMetres(), startMetres)
                        + " m; a pair can be split from one neighbour at a time");
            }
        }
    }

    @Override
    public <T> T accept(ConditionVisitor<T> visitor) {
        return visitor.split(this);
    }
}
