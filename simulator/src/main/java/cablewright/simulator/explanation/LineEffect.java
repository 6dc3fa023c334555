// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.crosssection.CrossSection;
import java.util.Optional;

/** What an event does to the line at one of its places, whatever the pulse makes of it. */
public enum LineEffect {
    /** A resistance in series at one place; beyond it the line is as before. */
    SERIES_RESISTANCE,
    /** A resistance from conductor to conductor at one place; beyond it the line is as before. */
    SHUNT_RESISTANCE,
    /** A branch is joined. */
    BRANCH,
    /** A conductor is broken through: no wave gets past. */
    OPEN,
    /** The conductors touch: no wave gets past. */
    SHORT,
    /** The impedance is lower over a stretch too short to show its two edges apart. */
    LOWER_HERE,
    /** The impedance is higher over a stretch too short to show its two edges apart. */
    HIGHER_HERE,
    /** The impedance is lower from here to the farther edge. */
    LOWER_FROM_HERE,
    /** The impedance is higher from here to the farther edge. */
    HIGHER_FROM_HERE,
    /** From here on the line is as before. */
    BACK_FROM_HERE;

    /** A change of impedance smaller than this share is none. */
    private static final double LEAST_SHARE = 1e-6;

    /**
     * Says what an event does at one of its places.
     *
     * @param cable the cable
     * @param eventId the event
     * @param places how many places of it the trace shows apart, 1 or 2
     * @param place which of them, 0 for the one that the wave meets first
     * @return the effect; empty where it is none of these
     */
    public static Optional<LineEffect> of(Cable cable, String eventId, int places, int place) {
        Event event = cable.event(eventId).orElseThrow();
        switch (event.kind()) {
            case OPEN:
                return Optional.of(OPEN);
            case SHORT:
                return Optional.of(SHORT);
            case PARTIAL_OPEN:
                return Optional.of(SERIES_RESISTANCE);
            case PARTIAL_SHORT:
                return Optional.of(SHUNT_RESISTANCE);
            default:
                break;
        }
        if (event instanceof CorrodedJoint joint) {
            return joint.oxideCapacitanceFarads().isEmpty() ? Optional.of(SERIES_RESISTANCE) : Optional.empty();
        }
        if (event instanceof BridgedTap) {
            return Optional.of(BRANCH);
        }
        return event instanceof LineCondition ? ofStretch(cable, event, places, place) : Optional.empty();
    }

    private static Optional<LineEffect> ofStretch(Cable cable, Event event, int places, int place) {
        CableProfile sound = CableProfile.of(cable.withoutEvent(event.id()));
        boolean lower = false;
        boolean higher = false;
        for (CableProfile.Piece piece : CableProfile.of(cable).pieces()) {
            if (piece.madeBy().contains(event.id())) {
                double before = ohmsAt(sound, (piece.startMetres() + piece.endMetres()) / 2);
                double share = piece.section().impedanceOhms() / before - 1;
                lower |= share < -LEAST_SHARE;
                higher |= share > LEAST_SHARE;
            }
        }
        if (lower == higher) {
            return Optional.empty();
        }
        if (places == 2) {
            return Optional.of(place == 1 ? BACK_FROM_HERE : lower ? LOWER_FROM_HERE : HIGHER_FROM_HERE);
        }
        return Optional.of(lower ? LOWER_HERE : HIGHER_HERE);
    }

    private static double ohmsAt(CableProfile profile, double metres) {
        return profile.pieces().stream()
                .filter(piece -> piece.startMetres() <= metres && metres <= piece.endMetres())
                .map(CableProfile.Piece::section)
                .mapToDouble(CrossSection::impedanceOhms)
                .findFirst()
                .orElseThrow();
    }
}
