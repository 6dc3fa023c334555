// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * A value with its standard uncertainty, in the same unit.
 *
 * <p>Uncertainties of independent inputs add as squares, each weighted by how much the result follows it (JCGM 100:2008,
 * Guide to the expression of uncertainty in measurement, eq. 10, number from memory).
 *
 * @param value the value
 * @param uncertainty its standard uncertainty, 0 or more
 */
public record Measured(@Between double value, @Between(least = 0) double uncertainty) {

    /** Refuses what is not a number and an uncertainty below 0. */
    public Measured {
        Require.components(Measured.class, value, uncertainty);
    }

    /**
     * Takes a value as exact.
     *
     * @param value the value
     * @return the value with no uncertainty
     */
    public static Measured exactly(double value) {
        return new Measured(value, 0);
    }

    /**
     * Takes an independent value away.
     *
     * @param other the other value, same unit
     * @return the difference
     */
    public Measured minus(Measured other) {
        return new Measured(value - other.value, Math.hypot(uncertainty, other.uncertainty));
    }

    /**
     * Adds an independent value.
     *
     * @param other the other value, same unit
     * @return the sum
     */
    public Measured plus(Measured other) {
        return new Measured(value + other.value, Math.hypot(uncertainty, other.uncertainty));
    }

    /**
     * Multiplies by a number that is exact.
     *
     * @param factor the number
     * @return the product
     */
    public Measured times(double factor) {
        return new Measured(value * factor, Math.abs(uncertainty * factor));
    }
}
