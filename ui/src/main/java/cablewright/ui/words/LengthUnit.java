// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

/** The unit in which people read lengths. Values are metres everywhere inside; this is asked only where text is made. */
public enum LengthUnit {
    /** Metres. */
    METRES("m", 1),
    /** International feet: 1 ft is 0.3048 m exactly (International yard and pound agreement, 1959). */
    FEET("ft", 0.3048);

    private final String symbol;
    private final double metresInOne;

    LengthUnit(String symbol, double metresInOne) {
        this.symbol = symbol;
        this.metresInOne = metresInOne;
    }

    /**
     * Returns the symbol that stands behind a number.
     *
     * @return "m" or "ft"
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Converts a length to this unit.
     *
     * @param metres length [m]
     * @return the same length in this unit
     */
    public double fromMetres(double metres) {
        return metres / metresInOne;
    }

    /**
     * Converts a length in this unit to metres.
     *
     * @param length length in this unit
     * @return the same length [m]
     */
    public double toMetres(double length) {
        return length * metresInOne;
    }

    public LengthUnit other() {
        return this == METRES ? FEET : METRES;
    }
}
