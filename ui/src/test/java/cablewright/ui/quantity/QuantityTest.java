// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prefixes as in the SI Brochure (BIPM, 9th edition, table 7); the foot is 0.3048 m exactly (yard and pound agreement, 1959). */
class QuantityTest {

    @ParameterizedTest
    @CsvSource({
        "TIME, 2ns, 2e-9",
        "TIME, 2 ns, 2e-9",
        "TIME, 500ps, 5e-10",
        "TIME, 1.5us, 1.5e-6",
        "TIME, 1.5µs, 1.5e-6",
        "TIME, 1ms, 1e-3",
        "TIME, 2e-9s, 2e-9",
        "LENGTH, 150m, 150",
        "LENGTH, 500ft, 152.4",
        "LENGTH, 12in, 0.3048",
        "LENGTH, 2km, 2000",
        "LENGTH, .5m, 0.5",
        "FREQUENCY, 10MHz, 1e7",
        "FREQUENCY, 10mhz, 1e7",
        "FREQUENCY, 1GHz, 1e9",
        "RESISTANCE, 75ohm, 75",
        "RESISTANCE, 75 Ohms, 75",
        "RESISTANCE, 75Ω, 75",
        "RESISTANCE, 1.2kohm, 1200",
        "VOLTAGE, 4mV, 0.004",
        "VOLTAGE, 0.4%, 0.004",
        "LEVEL, 20dB, 20",
        "LEVEL, −3dB, -3",
        "VELOCITY, 0.85, 0.85",
        "VELOCITY, 85%, 0.85",
        "VELOCITY, 0.85c, 0.85"
    })
    void readsNumberAndUnit(Quantity quantity, String text, double expected) {
        assertEquals(expected, quantity.parse(text));
    }

    @ParameterizedTest
    @CsvSource({
        "TIME, 1e-12, 1ps",
        "TIME, 1e-2, 10ms",
        "LENGTH, 0.1, 0.1m",
        "LENGTH, 200000, 200km",
        "FREQUENCY, 1e12, 1000GHz",
        "RESISTANCE, 1, 1ohm",
        "RESISTANCE, 10000, 10kohm",
        "VOLTAGE, 0, 0V",
        "VOLTAGE, 4e-3, 4mV",
        "LEVEL, -3, -3dB",
        "VELOCITY, 0.05, 0.05"
    })
    void writesWhatItReadsBack(Quantity quantity, double value, String expected) {
        assertEquals(expected, quantity.text(value));
        assertEquals(value, quantity.parse(expected));
    }

    @ParameterizedTest
    @CsvSource({
        "TIME, 2, has no unit",
        "LENGTH, 150, has no unit",
        "FREQUENCY, 10, has no unit",
        "RESISTANCE, 75, has no unit",
        "TIME, 2parsec, has the unit \"parsec\"",
        "TIME, 150m, has the unit \"m\"",
        "FREQUENCY, 10mHz, has the unit \"mHz\"",
        "LENGTH, '2,5m', decimals with a point",
        "LENGTH, long, is not a length",
        "LENGTH, '', is not a length",
        "LENGTH, NaNm, is not a length",
        "LENGTH, Infinitym, is not a length",
        "TIME, 1e999999ns, is out of reach",
        "TIME, 1e-999999ns, is out of reach",
        "VELOCITY, 85, faster than light"
    })
    void refusesInASentenceThatQuotesWhatWasTyped(Quantity quantity, String text, String said) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> quantity.parse(text));
        assertTrue(refusal.getMessage().contains(said), refusal.getMessage());
        assertTrue(refusal.getMessage().startsWith("\"" + text + "\""), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("such as"), refusal.getMessage());
    }

    @Property
    void givesTheDoubleNearestToWhatWasWritten(
            @ForAll @Scale(6) @BigRange(min = "-1000000", max = "1000000") BigDecimal number) {
        assertEquals(
                number.multiply(new BigDecimal("1e-9")).doubleValue(),
                Quantity.TIME.parse(number.toPlainString() + "ns"));
        assertEquals(
                number.multiply(new BigDecimal("0.3048")).doubleValue(),
                Quantity.LENGTH.parse(number.toPlainString() + " ft"));
    }
}
