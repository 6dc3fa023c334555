package cablewright.simulator.cable;

/** A thing at one place in the line; it becomes lumped elements, a two-port or a branch. */
public sealed interface PutInLine extends Event
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
                ShuntPart {

    /**
     * Returns where the thing is.
     *
     * @return distance along the cable from its near end [m]
     */
    double positionMetres();

    @Override
    PutInLine movedTo(double newPositionMetres);

    @Override
    default double startMetres() {
        return positionMetres();
    }

    @Override
    default double endMetres() {
        return positionMetres();
    }

    @Override
    default PutInLine mirrored(double cableLengthMetres) {
        return movedTo(Math.max(0, cableLengthMetres - positionMetres()));
    }
}
