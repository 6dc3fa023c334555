// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

/**
 * How strongly a condition applies along its stretch: 0 is not at all, 1 is its full severity.
 *
 * <p>With u the place along the stretch, 0 at its start and 1 at its end: {@code FLAT} is 1; {@code RAISED_COSINE} is
 * (1 − cos 2πu)/2, smooth at both ends; {@code LINEAR_RISE} is u and {@code LINEAR_FALL} is 1 − u, each with one sharp
 * end; {@code TRIANGLE} is 1 − |2u − 1|.
 */
public enum Profile {
    /** The same all along. */
    FLAT,
    /** Grows and fades smoothly, most in the middle. */
    RAISED_COSINE,
    /** Grows from nothing to full at the far edge. */
    LINEAR_RISE,
    /** Full at the near edge, fades to nothing. */
    LINEAR_FALL,
    /** Grows evenly to the middle and fades evenly. */
    TRIANGLE;

    /** Fewest steps in which a profile is taken; the compiler takes more where the band asks for it. */
    public static final int STEPS = 12;

    /**
     * Returns the longest step in which the profile may be taken as constant.
     *
     * @param lengthMetres length of the stretch [m]
     * @return step [m]; infinite for a flat profile
     */
    public double longestStepMetres(double lengthMetres) {
        return this == FLAT ? Double.POSITIVE_INFINITY : lengthMetres / STEPS;
    }

    /**
     * Returns the share of the full severity at a place.
     *
     * @param along place along the stretch, 0 at its start and 1 at its end
     * @return share from 0 to 1
     */
    public double at(double along) {
        switch (this) {
            case RAISED_COSINE:
                return 0.5 - 0.5 * Math.cos(2 * Math.PI * along);
            case LINEAR_RISE:
                return along;
            case LINEAR_FALL:
                return 1 - along;
            case TRIANGLE:
                return 1 - Math.abs(2 * along - 1);
            default:
                return 1;
        }
    }

    /**
     * Returns the profile as met from the other end.
     *
     * @return the mirrored profile
     */
    public Profile mirrored() {
        if (this == LINEAR_RISE) {
            return LINEAR_FALL;
        }
        return this == LINEAR_FALL ? LINEAR_RISE : this;
    }
}
