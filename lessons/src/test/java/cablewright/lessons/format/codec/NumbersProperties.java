// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class NumbersProperties {

    @Property(tries = 5000)
    void everyFiniteNumberReadsBackBitForBit(@ForAll long bits) {
        double value = Double.longBitsToDouble(bits);
        Assume.that(Double.isFinite(value));

        assertEquals(bits, Double.doubleToRawLongBits(Double.parseDouble(Numbers.text(value))));
    }

    /**
     * One digit less would be another number, held against the JDK's own decimal arithmetic. Numbers too small to have all
     * their bits are written with two digits where one would do.
     */
    @Property(tries = 2000)
    void noShorterNumberReadsBackTheSame(@ForAll long seed) {
        double value = Double.longBitsToDouble(new SplittableRandom(seed).nextLong());
        Assume.that(Double.isFinite(value) && Math.abs(value) >= Double.MIN_NORMAL);
        BigDecimal written = new BigDecimal(Numbers.text(value)).stripTrailingZeros();
        Assume.that(written.precision() > 1);

        BigDecimal cut = written.round(new MathContext(written.precision() - 1));

        assertTrue(cut.doubleValue() != value, () -> Numbers.text(value) + " could be " + cut);
    }

    @Example
    void wholeNumbersHaveNoPointAndSmallOnesASmallE() {
        assertEquals("133", Numbers.text(133.0));
        assertEquals("-0.0", Numbers.text(-0.0));
        assertEquals("0", Numbers.text(0.0));
        assertEquals("1e-12", Numbers.text(1e-12));
        assertEquals("2.5e-8", Numbers.text(2.5e-8));
        assertEquals("2e23", Numbers.text(2e23));
    }
}
