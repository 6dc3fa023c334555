// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.PhysicalConstants;

/**
 * A velocity of propagation found by measurement, with its standard uncertainty.
 *
 * <p>VoP = 2 l/(c t) with l a length that is known and t the time there and back. Relative uncertainties of l and t add as
 * squares, to first order (JCGM 100:2008, eq. 10 and 12, numbers from memory). What dispersion adds to t is not in it: read
 * both marks the same way.
 *
 * @param fraction velocity over that of light, above 0
 * @param uncertainty its standard uncertainty, 0 or more
 */
public record VelocityFinding(@Above(floor = 0) double fraction, @Between(least = 0) double uncertainty) {

    /** Checks the ranges. */
    public VelocityFinding {
        Require.components(VelocityFinding.class, fraction, uncertainty);
    }

    /**
     * Finds the velocity from a cable of known length.
     *
     * @param metres its length [m], above 0
     * @param thereAndBackSeconds time of the echo of its end [s], above 0
     * @return the velocity
     */
    public static VelocityFinding fromKnownLength(Measured metres, Measured thereAndBackSeconds) {
        Require.above("metres", metres.value(), 0);
        Require.above("thereAndBackSeconds", thereAndBackSeconds.value(), 0);
        double fraction =
                2 * metres.value() / (PhysicalConstants.LIGHT_METRES_PER_SECOND * thereAndBackSeconds.value());
        double relative = Math.hypot(
                metres.uncertainty() / metres.value(), thereAndBackSeconds.uncertainty() / thereAndBackSeconds.value());
        return new VelocityFinding(fraction, fraction * relative);
    }

    /**
     * Finds the velocity from two marks of known spacing. What lies before the first, a test lead or another cable, drops
     * out.
     *
     * @param spacingMetres distance between the marks along the cable [m], above 0
     * @param firstSeconds time of the first mark's echo [s]
     * @param secondSeconds time of the second mark's echo [s], later than the first
     * @return the velocity between the marks
     */
    public static VelocityFinding fromTwoMarks(Measured spacingMetres, Measured firstSeconds, Measured secondSeconds) {
        return fromKnownLength(spacingMetres, secondSeconds.minus(firstSeconds));
    }

    /**
     * Turns a time into a distance.
     *
     * @param thereAndBackSeconds time there and back, with its uncertainty [s]
     * @return distance [m]; its uncertainty is that of time and velocity together
     */
    public Measured metres(Measured thereAndBackSeconds) {
        double half = PhysicalConstants.LIGHT_METRES_PER_SECOND / 2;
        double t = thereAndBackSeconds.value();
        return new Measured(
                half * fraction * t, half * Math.hypot(fraction * thereAndBackSeconds.uncertainty(), t * uncertainty));
    }

    /**
     * Turns a distance that was read at another setting into one at this velocity.
     *
     * @param shownMetres distance as shown [m]
     * @param setFraction velocity that was set, over that of light, above 0
     * @return distance at this velocity [m]
     */
    public Measured metresForShown(Measured shownMetres, double setFraction) {
        Require.above("setFraction", setFraction, 0);
        return metres(shownMetres.times(2 / (setFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND)));
    }
}
