// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class QuantitiesTest {

    private static final String NBSP = "\u00a0";

    private final Quantities metres = new Quantities(LengthUnit.METRES);
    private final Quantities feet = new Quantities(LengthUnit.FEET);

    /** International yard and pound agreement, 1959: one foot is 0.3048 m exactly. */
    @Test
    void hundredFeetAreThirtyPointFourEightMetres() {
        assertEquals("100.0" + NBSP + "ft", feet.length(30.48));
        assertEquals(30.48, LengthUnit.FEET.toMetres(100), 1e-12);
    }

    @Property
    void feetAndMetresComeBack(@ForAll @DoubleRange(min = 0, max = 1e5) double length) {
        assertEquals(length, LengthUnit.FEET.fromMetres(LengthUnit.FEET.toMetres(length)), 1e-9 * (1 + length));
    }

    /** Halving an amplitude lowers its level by 6.02 dB (20 log10 2, IEC 60027-3 on logarithmic quantities, from memory). */
    @Test
    void levelsAreTwentyLogTen() {
        assertEquals("0.0" + NBSP + "dB", metres.decibels(1));
        assertEquals("−6.0" + NBSP + "dB", metres.decibels(-0.5));
        assertEquals("−20.0" + NBSP + "dB", metres.decibels(0.1));
        assertEquals("−∞" + NBSP + "dB", metres.decibels(0));
    }

    @Test
    void percentCarriesItsSignAndSmallOnesMoreDigits() {
        assertEquals("+2.4" + NBSP + "%", metres.percent(0.024));
        assertEquals("−2.4" + NBSP + "%", metres.percent(-0.024));
        assertEquals("+0.05" + NBSP + "%", metres.percent(0.0005));
        assertEquals("0.00" + NBSP + "%", metres.percent(-1e-9));
    }

    @Test
    void timesTurnToMicrosecondsAtOneMicrosecond() {
        assertEquals("661" + NBSP + "ns", metres.time(661.2e-9));
        assertEquals("5" + NBSP + "ns", metres.time(5e-9));
        assertEquals("1.32" + NBSP + "µs", metres.time(1.32e-6));
    }

    @Test
    void stretchNamesItsUnitOnce() {
        assertEquals("101.4–106.0" + NBSP + "m", metres.stretch(101.4, 106));
    }

    @Test
    void impedanceOfAnOpenIsInfinite() {
        assertEquals("∞" + NBSP + "Ω", metres.ohms(Double.POSITIVE_INFINITY));
        assertEquals("75" + NBSP + "Ω", metres.ohms(74.96));
        assertEquals("4.7" + NBSP + "Ω", metres.ohms(4.7));
    }

    @Property
    void numbersUseTheRealMinusSignAndNoNegativeZero(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        String text = Quantities.significant(value);
        assertFalse(text.contains("-"), text);
        assertTrue(!text.startsWith("−") || text.chars().anyMatch(c -> c >= '1' && c <= '9'), text);
    }

    @Property
    void threeDigitsAreEnough(@ForAll @DoubleRange(min = 0.01, max = 999) double value) {
        double read = Double.parseDouble(Quantities.significant(value));
        assertEquals(value, read, Math.max(0.005, 0.006 * value) + 1e-9);
    }
}
