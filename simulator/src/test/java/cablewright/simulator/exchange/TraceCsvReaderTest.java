// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.wave.Waveform;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TraceCsvReaderTest {

    private static RecordedTrace read(String... lines) throws IOException {
        byte[] bytes = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
        return TraceCsvReader.read("x.csv", new ByteArrayInputStream(bytes));
    }

    /** The columns that the command line writes for a trace without receiver options. */
    @Test
    void ourOwnTraceIsReadBackToTheLastDigit() throws IOException {
        RecordedTrace trace = read(
                "time_s,distance_m,port_v,reflected_v",
                "0.0,-0.25,0.0,0.0",
                "1.25E-9,0.0,0.5000000000000001,1.0E-17",
                "2.5E-9,0.25,1.0,-0.3333333333333333");
        assertTrue(trace.isByTime());
        assertEquals("reflected_v", trace.valueColumn());
        assertEquals(-0.3333333333333333, trace.volts(2));
        Waveform even = trace.evenly(0.85);
        assertEquals(1.25e-9, even.sampleSeconds(), 1e-24);
        assertArrayEquals(new double[] {0, 1.0E-17, -0.3333333333333333}, even.copyOfValues());
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", " ", " , "})
    void cellsMayBePartedInManyWays(String between) throws IOException {
        RecordedTrace trace = read("# a comment", "", "1e-9" + between + "0.5", "2e-9" + between + "-0.25");
        assertEquals(2e-9, trace.place(1));
        assertEquals(-0.25, trace.volts(1));
        assertEquals("", trace.valueColumn());
    }

    @ParameterizedTest
    @CsvSource({"time_ns, 1e-9, true", "Time_us, 1e-6, true", "distance_ft, 0.3048, false", "distance_km, 1000, false"})
    void unitsOfTheNamesAreHeeded(String name, double unit, boolean byTime) throws IOException {
        RecordedTrace trace = read(name + ",trace_mv", "1,250", "3,500");
        assertEquals(byTime, trace.isByTime());
        assertEquals(3 * unit, trace.place(1), 1e-12 * unit);
        assertEquals(0.5, trace.volts(1), 1e-15);
    }

    /** There and back to 1 m at two thirds of light: 2/(0.666…·299 792 458) s. */
    @Test
    void distancesBecomeTimesThereAndBack() throws IOException {
        RecordedTrace trace = read("distance_m,v", "1,0", "2,1", "3,0");
        double there = 2 / (2.0 / 3 * 299_792_458.0);
        assertEquals(there, trace.firstSeconds(2.0 / 3), 1e-20);
        assertEquals(there, trace.evenly(2.0 / 3).sampleSeconds(), 1e-20);
        assertThrows(IllegalArgumentException.class, () -> trace.evenly(0));
    }

    @Test
    void unevenTimesAreLaidEvenlyOnStraightLines() throws IOException {
        Waveform even = read("0,0", "1,1", "3,5", "4,5").evenly(1);
        assertArrayEquals(new double[] {0, 1, 3, 5, 5}, even.copyOfValues(), 1e-12);
        assertEquals(1, even.sampleSeconds(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time_s,port_v;0,1;0,2 | 3 | 0",
                "time_s,port_v;0,1;1,two | 3 | two",
                "time_s,port_v;0,1;1 | 3 | ''",
                "time_s,port_v;0,1;1,NaN | 3 | NaN",
                "time_s,port_v;0,1 | 2 | 1",
                "when,what;0,1;1,2 | 1 | when,what",
                "time_s,port_v | 1 | 0",
            })
    void unsoundTableIsRefusedWithFileLineAndValue(String text, int line, String value) {
        ExchangeFormatException refusal = assertThrows(ExchangeFormatException.class, () -> read(text.split(";")));
        assertEquals("x.csv", refusal.file());
        assertEquals(line, refusal.line(), refusal.getMessage());
        assertEquals(value, refusal.value(), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("allowed is "), refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ",,,", ";", "\"\"", ",1"})
    void firstLineWithoutCellsIsRefusedInWords(String first) {
        ExchangeFormatException refused = assertThrows(ExchangeFormatException.class, () -> read(first, "0,1"));
        assertTrue(refused.getMessage().startsWith("x.csv, line 1: "), refused.getMessage());
    }

    /** A stream that says how much of it was read: what is wrong early costs no more than that. */
    private static final class Endless extends InputStream {
        private final byte[] pattern;
        private long taken;

        Endless(String pattern) {
            this.pattern = pattern.getBytes(StandardCharsets.US_ASCII);
        }

        @Override
        public int read() {
            return pattern[(int) (taken++ % pattern.length)];
        }
    }

    @Test
    void fileThatIsWrongInItsSecondLineIsReadNoFurther() {
        Endless ones = new Endless("1,1\n");
        ExchangeFormatException refused =
                assertThrows(ExchangeFormatException.class, () -> TraceCsvReader.read("x.csv", ones));
        assertEquals(2, refused.line());
        assertTrue(ones.taken < 1 << 20, ones.taken + " bytes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "#\n", "x", " "})
    void endlessFileIsRefusedAtItsLimit(String pattern) {
        Endless endless = new Endless(pattern);
        assertThrows(ExchangeFormatException.class, () -> TraceCsvReader.read("x.csv", endless));
        assertTrue(endless.taken < 66L << 20, endless.taken + " bytes");
    }
}
