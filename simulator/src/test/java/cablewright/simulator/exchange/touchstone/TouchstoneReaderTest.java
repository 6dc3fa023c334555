// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.exchange.ScatteringSweep;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against the IBIS Open Forum's Touchstone File Format Specification, version 2.0 (2009) and 2.1 (2024), and textbook
 * conversions (Pozar, Microwave Engineering, 4th ed., table 4.2, from memory).
 */
class TouchstoneReaderTest {

    private static ScatteringSweep read(String name, String... lines) throws TouchstoneFormatException {
        return TouchstoneReader.readText(name, String.join("\n", lines) + "\n");
    }

    private static void assertParameter(
            ScatteringSweep sweep, int to, int from, int k, double re, double im, double tolerance) {
        assertEquals(re, sweep.parameter(to, from).re(k), tolerance);
        assertEquals(im, sweep.parameter(to, from).im(k), tolerance);
    }

    /** The specification's first example, the same part told by version 1 (over 75 ohms) and version 2 (in ohms). */
    @Test
    void impedanceIsOverTheReferenceInVersionOneAndInOhmsInVersionTwo() throws TouchstoneFormatException {
        ScatteringSweep first = read(
                "part.s1p",
                "!1-port Z-parameter file, multiple frequency points",
                "# MHz Z MA R 75",
                "!freq magZ11 angZ11",
                "100 0.99 -4",
                "200 0.80 -22",
                "300 0.707 -45",
                "400 0.40 -62",
                "500 0.01 -89");
        ScatteringSweep second = read(
                "part.ts",
                "[Version] 2.0",
                "# MHz Z MA R 75",
                "[Number of Ports] 1",
                "[Number of Frequencies] 5",
                "[Network Data]",
                "100 74.25 -4",
                "200 60 -22",
                "300 53.025 -45",
                "400 30 -62",
                "500 0.75 -89",
                "[End]");
        assertEquals(5, first.count());
        for (int k = 0; k < 5; k++) {
            assertEquals((k + 1) * 1e8, first.hertz(k), 1e-6);
            assertParameter(
                    first,
                    1,
                    1,
                    k,
                    second.reflection(1).re(k),
                    second.reflection(1).im(k),
                    1e-14);
        }
        Complex z = new Complex(0.8 * Math.cos(Math.toRadians(-22)), 0.8 * Math.sin(Math.toRadians(-22)));
        Complex gamma = z.subtract(1).divide(z.add(1));
        assertParameter(first, 1, 1, 1, gamma.getReal(), gamma.getImaginary(), 1e-15);
    }

    /** An option line with nothing on it means GHz, S, MA, R 50; two ports of version 1 tell 11, 21, 12, 22. */
    @Test
    void emptyOptionLineMeansTheDefaults() throws TouchstoneFormatException {
        ScatteringSweep sweep = read("x.s2p", "#", "1 0.1 0 0.9 90 0.8 180 0.2 -90");
        assertEquals(1e9, sweep.hertz(0));
        assertEquals(50, sweep.ports().get(1).referenceOhms());
        assertParameter(sweep, 1, 1, 0, 0.1, 0, 1e-15);
        assertParameter(sweep, 2, 1, 0, 0, 0.9, 1e-15);
        assertParameter(sweep, 1, 2, 0, -0.8, 0, 1e-15);
        assertParameter(sweep, 2, 2, 0, 0, -0.2, 1e-15);
    }

    @Test
    void wordsMayComeInAnyOrderAndCaseAndLinesMayBreakAnywhere() throws TouchstoneFormatException {
        ScatteringSweep sweep = read(
                "x.S2P",
                "! a comment, with ümlaut",
                "",
                "#r 75 ri khZ s ! the options",
                "10 1 2 3 4",
                "\t5 6 7 8 ! the rest of it",
                "20 1 2 3 4 5 6 7 8",
                "# MHz S MA R 50 ! a second option line does not count");
        assertEquals(2, sweep.count());
        assertEquals(20e3, sweep.hertz(1));
        assertEquals(75, sweep.ports().get(0).referenceOhms());
        assertParameter(sweep, 1, 2, 0, 5, 6, 0);
    }

    @ParameterizedTest
    @CsvSource({"Hz, 1", "kHz, 1e3", "MHZ, 1e6", "ghz, 1e9"})
    void everyUnitOfFrequencyIsRead(String unit, double hertz) throws TouchstoneFormatException {
        assertEquals(
                2.5 * hertz,
                read("x.s1p", "# " + unit + " S RI R 50", "2.5 0 0").hertz(0));
    }

    /** |S| = 0.5 at 60 degrees, told three ways; 20 log10 0.5 = −6.020599913279624 dB. */
    @ParameterizedTest
    @CsvSource({"RI, 0.25 0.4330127018922193", "MA, 0.5 60", "DB, -6.020599913279624 60"})
    void everyFormatIsRead(String format, String numbers) throws TouchstoneFormatException {
        ScatteringSweep sweep = read("x.s1p", "# MHz S " + format + " R 50", "1 " + numbers);
        assertParameter(sweep, 1, 1, 0, 0.25, 0.4330127018922193, 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"21_12, 3, 2", "12_21, 2, 3"})
    void dataOrderOfTwoPortsIsHeeded(String order, double oneTwo, double twoOne) throws TouchstoneFormatException {
        ScatteringSweep sweep = read(
                "x.ts",
                "[VERSION] 2.1",
                "# Hz S RI",
                "[number of ports] 2",
                "[Two-Port Data Order] " + order,
                "[Number of Frequencies] 1",
                "[Reference] 50",
                " 75",
                "[Network Data]",
                "1 1 0",
                "2 0 3 0 4 0",
                "[END]");
        assertParameter(sweep, 1, 2, 0, oneTwo, 0, 0);
        assertParameter(sweep, 2, 1, 0, twoOne, 0, 0);
        assertEquals(75, sweep.ports().get(1).referenceOhms());
    }

    @ParameterizedTest
    @CsvSource({"Lower", "UPPER"})
    void halfOfASymmetricMatrixIsEnough(String format) throws TouchstoneFormatException {
        ScatteringSweep sweep = read(
                "x.ts",
                "[Version] 2.0",
                "# Hz S RI R 50",
                "[Number of Ports] 2",
                "[Two-Port Data Order] 12_21",
                "[Number of Frequencies] 1",
                "[Matrix Format] " + format,
                "[Begin Information]",
                "[anything] in here is passed over",
                "[End Information]",
                "[Network Data]",
                "1 0.1 0 0.9 0 0.2 0",
                "[End]");
        assertParameter(sweep, 1, 2, 0, 0.9, 0, 0);
        assertParameter(sweep, 2, 1, 0, 0.9, 0, 0);
        assertParameter(sweep, 2, 2, 0, 0.2, 0, 0);
    }

    @Test
    void noiseDataIsPassedOver() throws TouchstoneFormatException {
        ScatteringSweep first = read(
                "x.s2p",
                "# GHz S MA R 50",
                "2 .95 -26 3.57 157 .04 76 .66 -14",
                "22 .60 -144 1.30 40 .14 40 .56 -85",
                "! noise parameters",
                "4 .7 .64 69 .38",
                "18 2.7 .46 -33 .40");
        ScatteringSweep second = read(
                "x.ts",
                "[Version] 2.0",
                "#",
                "[Number of Ports] 2",
                "[Two-Port Data Order] 21_12",
                "[Number of Frequencies] 2",
                "[Number of Noise Frequencies] 2",
                "[Reference] 50 25.0",
                "[Network Data]",
                "2 .95 -26 3.57 157 .04 76 .66 -14",
                "22 .60 -144 1.30 40 .14 40 .56 -85",
                "[Noise Data]",
                "4 .7 .64 69 19",
                "18 2.7 .46 -33 20",
                "[End]");
        assertEquals(2, first.count());
        assertEquals(2, second.count());
        assertEquals(first.parameter(2, 1).re(1), second.parameter(2, 1).re(1));
    }

    /** Version 1.1 is the old form with a reference for each port. */
    @Test
    void optionLineOfVersionOnePointOneMayGiveEachPortItsReference() throws TouchstoneFormatException {
        ScatteringSweep sweep = read("x.s2p", "# GHz S MA R 50 75", "1 0 0 1 0 1 0 0 0");
        assertEquals(50, sweep.ports().get(0).referenceOhms());
        assertEquals(75, sweep.ports().get(1).referenceOhms());
    }

    /** Differential mode on 2R, common mode on R/2 (specification 2.0, mixed-mode concepts). */
    @Test
    void pairToldInMixedModesHasItsDifferentialReflectionOnTwiceTheReference() throws TouchstoneFormatException {
        ScatteringSweep sweep = read(
                "x.ts",
                "[Version] 2.0",
                "# Hz S RI R 50",
                "[Number of Ports] 2",
                "[Two-Port Data Order] 12_21",
                "[Number of Frequencies] 1",
                "[Mixed-Mode Order] D1,2 C1,2",
                "[Network Data]",
                "1 0.5 0 0 0 0 0 0.25 0",
                "[End]");
        assertEquals("D1,2", sweep.ports().get(0).name());
        assertEquals(100, sweep.ports().get(0).referenceOhms());
        assertEquals(25, sweep.ports().get(1).referenceOhms());
    }

    /**
     * A T of (20 + j5) ohms, (30 − j10) ohms and across them (40 + j60) ohms, told as Z, Y, H and G. What S must be
     * follows from its chain matrix: S11 = (A R2 + B − C R1 R2 − D R1)/(A R2 + B + C R1 R2 + D R1), and so on.
     */
    @ParameterizedTest
    @CsvSource({"Z", "Y", "H", "G"})
    void otherKindsOfParametersBecomeScattering(String kind) throws TouchstoneFormatException {
        Complex left = new Complex(20, 5);
        Complex right = new Complex(30, -10);
        Complex across = new Complex(40, 60);
        Complex a = left.divide(across).add(1);
        Complex c = across.reciprocal();
        Complex d = right.divide(across).add(1);
        Complex b = left.add(right).add(left.multiply(right).divide(across));
        Complex[] m = entries(kind, a, b, c, d);
        StringBuilder data = new StringBuilder("1");
        for (Complex each : m) {
            data.append(' ').append(each.getReal()).append(' ').append(each.getImaginary());
        }
        ScatteringSweep sweep = read(
                "x.ts",
                "[Version] 2.0",
                "# MHz " + kind + " RI R 50",
                "[Number of Ports] 2",
                "[Two-Port Data Order] 12_21",
                "[Number of Frequencies] 1",
                "[Reference] 50 75",
                "[Network Data]",
                data.toString(),
                "[End]");
        double r1 = 50;
        double r2 = 75;
        Complex below = a.multiply(r2).add(b).add(c.multiply(r1 * r2)).add(d.multiply(r1));
        Complex s11 = a.multiply(r2)
                .add(b)
                .subtract(c.multiply(r1 * r2))
                .subtract(d.multiply(r1))
                .divide(below);
        Complex s22 = a.multiply(-r2)
                .add(b)
                .subtract(c.multiply(r1 * r2))
                .add(d.multiply(r1))
                .divide(below);
        Complex s21 = new Complex(2 * Math.sqrt(r1 * r2)).divide(below);
        assertParameter(sweep, 1, 1, 0, s11.getReal(), s11.getImaginary(), 1e-14);
        assertParameter(sweep, 1, 2, 0, s21.getReal(), s21.getImaginary(), 1e-14);
        assertParameter(sweep, 2, 1, 0, s21.getReal(), s21.getImaginary(), 1e-14);
        assertParameter(sweep, 2, 2, 0, s22.getReal(), s22.getImaginary(), 1e-14);
    }

    /** The textbook's rows for a reciprocal two-port, AD − BC = 1. */
    private static Complex[] entries(String kind, Complex a, Complex b, Complex c, Complex d) {
        Complex one = Complex.ONE;
        switch (kind) {
            case "Z":
                return new Complex[] {a.divide(c), one.divide(c), one.divide(c), d.divide(c)};
            case "Y":
                return new Complex[] {
                    d.divide(b), one.divide(b).negate(), one.divide(b).negate(), a.divide(b)
                };
            case "H":
                return new Complex[] {b.divide(d), one.divide(d), one.divide(d).negate(), c.divide(d)};
            default:
                return new Complex[] {c.divide(a), one.divide(a).negate(), one.divide(a), b.divide(a)};
        }
    }

    /** In version 1 the same T over a reference of 50 ohms gives the same scattering on 50 ohms. */
    @ParameterizedTest
    @CsvSource({"H", "G", "Y", "Z"})
    void kindsOverTheReferenceGiveTheSameScattering(String kind) throws TouchstoneFormatException {
        double ohms = 50;
        double[] powers = kind.equals("Z") || kind.equals("H") ? new double[] {1 / ohms, 1, 1, 1 / ohms} : null;
        powers = powers == null ? new double[] {ohms, 1, 1, ohms} : powers;
        if (kind.equals("Z") || kind.equals("Y")) {
            powers[1] = powers[0];
            powers[2] = powers[0];
        } else {
            powers[3] = 1 / powers[0];
        }
        // 11, 21, 12, 22 as version 1 tells them
        double[] plain = kind.equals("Z") ? new double[] {60, 40, 40, 70} : new double[] {0.02, 0.5, -0.5, 0.03};
        plain = kind.equals("H") ? new double[] {30, -0.5, 0.5, 0.01} : plain;
        plain = kind.equals("G") ? new double[] {0.01, 0.5, -0.5, 30} : plain;
        StringBuilder over = new StringBuilder("1");
        StringBuilder whole = new StringBuilder("1");
        for (int i = 0; i < 4; i++) {
            over.append(' ').append(plain[i] * powers[i]).append(" 0");
            whole.append(' ').append(plain[i]).append(" 0");
        }
        ScatteringSweep first = read("x.s2p", "# MHz " + kind + " RI R 50", over.toString());
        ScatteringSweep second = read(
                "x.ts",
                "[Version] 2.0",
                "# MHz " + kind + " RI R 50",
                "[Number of Ports] 2",
                "[Two-Port Data Order] 21_12",
                "[Number of Frequencies] 1",
                "[Network Data]",
                whole.toString(),
                "[End]");
        for (int to = 1; to <= 2; to++) {
            for (int from = 1; from <= 2; from++) {
                assertParameter(first, to, from, 0, second.parameter(to, from).re(0), 0, 1e-14);
            }
        }
    }

    /** Without a known ending the first line of numbers tells the ports. */
    @Test
    void fileWithoutAnEndingIsToldByItsNumbers() throws TouchstoneFormatException {
        assertEquals(1, read("data.txt", "# Hz S RI R 50", "1 0 0").ports().size());
        assertEquals(
                2,
                read("data.txt", "# Hz S RI R 50", "1 0 0 1 0 1 0 0 0").ports().size());
    }

    /** A quarter of a wave of matched line, S21 = S12 = j, turns every reflection round: −(25 − 50)/(25 + 50) = 1/3. */
    @Test
    void twoPortsEndedByAnotherResistanceReflectAsThatEndDoes() throws TouchstoneFormatException {
        ScatteringSweep through = read("x.s2p", "# Hz S RI R 50", "1 0 0 0 1 0 1 0 0");
        assertEquals(1.0 / 3, through.reflectionWithOtherPortEndedBy(1, 25).re(0), 1e-15);
        assertEquals(
                -1,
                through.reflectionWithOtherPortEndedBy(1, Double.POSITIVE_INFINITY)
                        .re(0),
                1e-15);
        assertEquals(0, through.reflectionWithOtherPortEndedBy(2, 50).re(0), 1e-15);
    }

    private static final String GOOD = "# Hz S RI R 50|1 0 0|2 0 0";

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "x.s1p; # Hz S RI R 50|1 0 0|2 0; 3; 2",
                "x.s1p; # Hz S RI R 50|2 0 0|1 0 0; 3; 1",
                "x.s1p; # Hz S RI R 50|1 0 0|1 0 0; 3; 1",
                "x.s1p; # Hz S RI R 50|-1 0 0; 2; -1",
                "x.s1p; # Hz S RI R 50|1 0 zero; 2; zero",
                "x.s1p; # Hz S RI R 50|1 NaN 0; 2; NaN",
                "x.s1p; # Hz S RI R 50|1 0x1p3 0; 2; 0x1p3",
                "x.s1p; # Hz S RI R 50|1 1e999 0; 2; 1e999",
                "x.s1p; # Hz S RI R -50|1 0 0; 1; -50",
                "x.s1p; # Hz S RI R|1 0 0; 1; ''",
                "x.s1p; # THz S RI R 50|1 0 0; 1; THz",
                "x.s1p; # Hz H RI R 50|1 0 0; 2; H",
                "x.s1p; # Hz Z RI R 50|1 -1 0; 2; without finite scattering",
                "x.s1p; 1 0 0; 1; 1 0 0",
                "x.s1p; # Hz S RI R 50; 1; ''",
                "x.s4p; # Hz S RI R 50|1 0 0; 2; 4",
                "x.dat; # Hz S RI R 50|1 0 0 0; 2; 4",
                "x.s2p; # Hz S RI R 50 60 70|1 0 0 0 0 0 0 0 0; 2; 3",
                "x.s2p; # Hz S RI R 50|3 0 0 0 0 0 0 0 0|1 0 0 0 0 0 0 0 0; 3; 1",
                "x.s1p; # Hz S RI R 50|[Network Data]|1 0 0; 2; [Network Data]",
                "x.ts; [Number of Ports] 1; 1; [Number of Ports] 1",
                "x.ts; [Version] 3.0; 1; 3.0",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 4|[Network Data]; 3; 4",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Number of Ports] 1; 4; [Number of Ports] 1",
                "x.ts; [Version] 2.0|# Hz|[Colour] 1; 3; [Colour] 1",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|1 0 0; 4; 1 0 0",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Number of Frequencies] 1|[Network Data]|1 0 0; 6;"
                        + " missing",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Number of Frequencies] 2|[Network Data]|1 0 0|[End]; 4;"
                        + " 2",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Network Data]|1 0 0|[End]; 6; missing",
                "x.ts; [Version] 2.0|[Number of Ports] 1|[Number of Frequencies] 1|[Network Data]|1 0 0|[End]; 6;"
                        + " missing",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Number of Frequencies] 1|[Network Data]|1 0 0|[End]|2 0"
                        + " 0; 8; 2 0 0",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 2|[Number of Frequencies] 1|[Network Data]|1 0 0 0 0 0 0 0"
                        + " 0|[End]; 7; missing",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Number of Frequencies] 1|[Reference] 50 60|[Network"
                        + " Data]|1 0 0|[End]; 5; 50 60",
                "x.ts; [Version] 2.0|# Hz|[Number of Ports] 1|[Matrix Format] round|[Network Data]; 4; round",
            })
    void unsoundFileIsRefusedWithFileLineAndValue(String name, String text, int line, String value) {
        TouchstoneFormatException refusal =
                assertThrows(TouchstoneFormatException.class, () -> read(name, text.split("\\|")));
        assertEquals(name, refusal.file());
        assertEquals(line, refusal.line(), refusal.getMessage());
        assertEquals(value, refusal.value(), refusal.getMessage());
        assertTrue(
                refusal.getMessage().contains("allowed is ")
                        && refusal.getMessage().startsWith(name + ", line " + line),
                refusal.getMessage());
    }

    @Test
    void emptyFileIsRefused() {
        assertThrows(TouchstoneFormatException.class, () -> read("x.s1p", "! nothing but this"));
        assertThrows(TouchstoneFormatException.class, () -> TouchstoneReader.readText("x.s1p", ""));
    }

    @Test
    void everyKindOfLineEndIsRead() throws TouchstoneFormatException {
        for (String end : new String[] {"\n", "\r\n", "\r"}) {
            assertEquals(
                    2,
                    TouchstoneReader.readText("x.s1p", GOOD.replace("|", end)).count());
        }
    }

    /** A pair told in mixed modes has twice the reference in its differential mode, which must be a number too. */
    @ParameterizedTest
    @ValueSource(strings = {"1e308", "1.7e308", "1e-320", "-50", "0", "1e10"})
    void referencesOfNoRealPortAreRefused(String ohms) {
        TouchstoneFormatException refused = assertThrows(
                TouchstoneFormatException.class,
                () -> TouchstoneReader.readText(
                        "x.s2p",
                        String.join(
                                "\n",
                                "[Version] 2.0",
                                "# GHz S MA R 50",
                                "[Number of Ports] 2",
                                "[Two-Port Data Order] 12_21",
                                "[Number of Frequencies] 1",
                                "[Reference] " + ohms + " " + ohms,
                                "[Mixed-Mode Order] D1,2 C1,2",
                                "[Network Data]",
                                "1 0.1 0 0.2 10 0.2 10 0.1 0",
                                "[End]")));
        assertTrue(refused.getMessage().contains("reference resistance"), refused.getMessage());
    }

    /** 1.7e308 GHz is beyond all numbers in hertz. */
    @Test
    void frequencyBeyondAllNumbersIsRefused() {
        assertThrows(
                TouchstoneFormatException.class,
                () -> TouchstoneReader.readText("x.s1p", "# GHz S RI R 50\n1 0 0\n1.7e308 0 0\n"));
    }
}
