// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.cable.Event;

/** A thing at one place in the line; it becomes lumped elements, a two-port or a branch. */
public sealed interface InlineComponent extends Event
        permits Splice,
                Connector,
                CorrodedJoint,
                Tap,
                Splitter,
                Housing,
                BridgedTap,
                LoadCoil,
                BuildOut,
                BrokenConductor,
                TouchingConductors,
                OneSideOpen,
                SeriesPart,
                OneSideEarthed,
                Cross,
                ShuntPart {

    /**
     * Returns where the thing is.
     *
     * @return distance along the cable from its near end [m]
     */
    double positionMetres();

    @Override
    InlineComponent movedTo(double newPositionMetres);

    @Override
    default double startMetres() {
        return positionMetres();
    }

    @Override
    default double endMetres() {
        return positionMetres();
    }

    @Override
    default InlineComponent mirrored(double cableLengthMetres) {
        return movedTo(Math.max(0, cableLengthMetres - positionMetres()));
    }

    /**
     * Calls the visitor's method for this kind of component.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(ComponentVisitor<T> visitor);
}
