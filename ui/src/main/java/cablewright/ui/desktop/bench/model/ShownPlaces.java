// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.material.PhysicalConstants;

/**
 * Where on a cable lies what a trace shows at a distance. The axis shows distances from the tested end at the velocity that
 * is set; events are placed in metres of cable from its near end.
 */
final class ShownPlaces {

    private final CableProfile profile;
    private final double lengthMetres;
    private final double speed;
    private final LineEnd end;

    /**
     * Reads an axis.
     *
     * @param cable the cable, with distances from its near end
     * @param end the end that is tested
     * @param velocityFraction velocity that is set, over that of light
     */
    ShownPlaces(Cable cable, LineEnd end, double velocityFraction) {
        this.profile = CableProfile.of(cable.seenFrom(end));
        this.lengthMetres = cable.lengthMetres();
        this.speed = velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        this.end = end;
    }

    /** The place on the cable, from its near end [m], that the axis shows at a distance [m]. */
    double onCable(double shownMetres) {
        double fromTested = profile.metresAt(Math.max(0, shownMetres) / speed);
        return end == LineEnd.NEAR ? fromTested : Math.max(0, lengthMetres - fromTested);
    }

    /** The distance [m] at which the axis shows a place on the cable, with distances from its near end [m]. */
    double shown(double cableMetres) {
        double fromTested = end == LineEnd.NEAR ? cableMetres : lengthMetres - cableMetres;
        return speed * profile.secondsTo(Math.max(0, fromTested));
    }
}
