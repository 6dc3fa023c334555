// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import java.util.Locale;
import java.util.Optional;

/** Units of frequency in a Touchstone file. */
public enum FrequencyUnit {
    /** Hertz. */
    HZ("Hz", 1),
    /** Kilohertz. */
    KHZ("kHz", 1e3),
    /** Megahertz. */
    MHZ("MHz", 1e6),
    /** Gigahertz. */
    GHZ("GHz", 1e9);

    private final String symbol;
    private final double hertz;

    FrequencyUnit(String symbol, double hertz) {
        this.symbol = symbol;
        this.hertz = hertz;
    }

    public String symbol() {
        return symbol;
    }

    /**
     * Returns the size of the unit.
     *
     * @return how many hertz it holds
     */
    public double hertz() {
        return hertz;
    }

    static Optional<FrequencyUnit> named(String word) {
        for (FrequencyUnit unit : values()) {
            if (unit.name().equals(word.toUpperCase(Locale.ROOT))) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
