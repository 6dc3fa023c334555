// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.Dielectric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pairs against Ramo, Whinnery, Van Duzer, table 8.09 (from memory), and against full field solutions. */
class PairReferenceTest {

    private static final double D24 = 0.5105592e-3;

    private static PairSection pair(double diameter, double ratio, double er) {
        double s = ratio * diameter;
        return PairSection.solid(
                diameter, s, s, 1, Conductor.COPPER, new ConstantLossTangent(er, 0, 1e8), Math.max(er, 2.3));
    }

    private static PrimaryConstants at(CrossSection section, double frequency) {
        return section.primaryConstants(new double[1], new double[] {2 * Math.PI * frequency});
    }

    @ParameterizedTest
    @CsvSource({
        "1.2, 74.6318339, 51.5008582, 49.2107740, 1.8090681, 248.945, 93.858688",
        "1.5, 115.410941, 79.6411153, 76.0997207, 1.3416408, 384.96946, 60.694818",
        "1.8, 143.050256, 98.7140550, 94.3245456, 1.2026756, 477.16429, 48.967728",
        "2.0, 157.925618, 108.979030, 104.133069, 1.1547005, 526.78316, 44.355350",
        "3.0, 211.383323, 145.868351, 139.382036, 1.0606602, 705.09887, 33.138120",
        "5.0, 274.901490, 189.700050, 181.264675, 1.0206207, 916.97267, 25.481295",
        "10, 358.938254, 247.690927, 236.676876, 1.0050378, 1197.2891, 19.515462"
    })
    void constantsFollowFromGeometry(
            double ratio, double air, double er21, double er23, double proximity, double nanohenry, double picofarad) {
        assertEquals(air, pair(D24, ratio, 1).impedanceOhms(), 1e-6);
        assertEquals(er21, pair(D24, ratio, 2.1).impedanceOhms(), 1e-6);
        assertEquals(er23, pair(D24, ratio, 2.3).impedanceOhms(), 1e-6);
        PairGeometry wires = pair(D24, ratio, 2.1).geometry();
        assertEquals(proximity, wires.crowding(), 1e-7);
        assertEquals(nanohenry, 1e9 * wires.inductanceHenriesPerMetre(), 1e-5 * nanohenry);
        assertEquals(picofarad, 2.1e12 * wires.vacuumCapacitanceFaradsPerMetre(), 1e-6 * picofarad);
    }

    @Test
    void hundredOhmAtPermittivityOfTwoPointOne() {
        PairSection section = pair(D24, 1.82347644, 2.1);
        assertEquals(100, section.impedanceOhms(), 1e-6);
        assertEquals(0.69006556, section.velocityFraction(), 1e-8);
    }

    /** Skin-effect formula with proximity, 24 AWG at s/d = 1.824; the exact form adds about Rdc/4. */
    @ParameterizedTest
    @CsvSource({"1e7, 1.2299687", "1e8, 3.8895026"})
    void loopResistanceTendsToTheProximityFormula(double frequency, double ohmsPerMetre) {
        double formula = ohmsPerMetre + 0.25 * 0.1684265;
        assertEquals(formula, at(pair(D24, 1.824, 2.1), frequency).zRe()[0], 0.01 * formula);
    }

    /** ASTM B258 diameters, 1.7241e-8 ohm m (from memory); ours is 5.8e7 S/m, 5e-6 less. */
    @ParameterizedTest
    @CsvSource({
        "1.023687e-3, 41.89555",
        "0.9116199e-3, 52.82931",
        "0.6438033e-3, 105.9244",
        "0.5105592e-3, 168.4265",
        "0.4048919e-3, 267.8086"
    })
    void loopResistanceAtDcFollowsTheWireGauge(double diameter, double ohmsPerKilometre) {
        PairSection section = pair(diameter, 1.8, 2.1);
        assertEquals(ohmsPerKilometre, 1e3 * section.loopResistanceOhmsPerMetre(), 3e-5 * ohmsPerKilometre);
        assertEquals(section.loopResistanceOhmsPerMetre(), at(section, 0.01).zRe()[0], 1e-9);
    }

    /** Against a full multipole solution, whose file tells its origin. */
    @Test
    void proximityFollowsTheFullFieldSolutionAtAllFrequencies() {
        for (double[] row : ReferenceTable.rows("two-wires.csv")) {
            PairSection section = pair(2 * 0.2553e-3, row[0], 1);
            double tolerance = row[0] < 1.3 ? 0.04 : row[0] < 1.6 ? 0.005 : 0.002;
            PrimaryConstants constants = at(section, row[1]);
            String where = "s/d " + row[0] + " at " + row[1] + " Hz";
            assertEquals(row[2], constants.zRe()[0], tolerance * row[2], where);
            assertEquals(row[3], constants.zIm()[0] / (2 * Math.PI * row[1]), tolerance * row[3], where);
        }
    }

    /** Against a full multipole solution of two coated wires, whose file tells its origin. */
    @Test
    void spreadPairFollowsTheFieldOfCoatedWires() {
        double asMade = 0;
        for (double[] row : ReferenceTable.rows("coated-wires.csv")) {
            asMade = row[2] == 1 ? row[3] : asMade;
            double coat = row[1] * D24;
            PairSection spread = PairSection.solid(
                            D24, coat, coat, 1, Conductor.COPPER, new ConstantLossTangent(asMade, 0, 1e8), row[0])
                    .spread(row[2]);
            double root = 1 / spread.velocityFraction();
            assertEquals(Math.sqrt(row[3]), root, 0.02 * root, "spacing factor " + row[2]);
        }
    }

    /** Between the two cases of a pair pulled from s/d 1.82 to 3: plastic all the way, 145.87 ohm, and none, 211.38 ohm. */
    @Test
    void spreadPairLiesBetweenAllPlasticAndAllAir() {
        PairSection made = pair(D24, 1.82347644, 2.1);
        PairSection spread = made.spread(3 / 1.82347644);
        assertTrue(spread.impedanceOhms() > 145.868351 && spread.impedanceOhms() < 211.383323);
        assertTrue(spread.velocityFraction() > made.velocityFraction());
        assertEquals(211.383323 * spread.velocityFraction(), spread.impedanceOhms(), 1e-5);
    }

    @Test
    void pinchedPairIsACloserPair() {
        PairSection pinched = pair(D24, 1.8, 2.1).pinched(0.75);
        assertEquals(51.5008582, pinched.impedanceOhms(), 1e-6);
        assertEquals(pair(D24, 1.8, 2.1).velocityFraction(), pinched.velocityFraction(), 1e-15);
    }

    @Test
    void twistLengthensTheWireAndSlowsTheWave() {
        PairSection straight = PairSection.solid(D24, 1e-3, 1e-3, 1, Conductor.COPPER, Dielectric.AIR, 2.3);
        PairSection twisted = PairSection.solid(D24, 1e-3, 1e-3, 1.03, Conductor.COPPER, Dielectric.AIR, 2.3);
        assertEquals(straight.impedanceOhms(), twisted.impedanceOhms(), 1e-12);
        assertEquals(straight.velocityFraction() / 1.03, twisted.velocityFraction(), 1e-15);
        assertEquals(1.03 * at(straight, 1e6).zRe()[0], at(twisted, 1e6).zRe()[0], 1e-12);
        assertEquals(1.03 * at(straight, 1e6).yIm()[0], at(twisted, 1e6).yIm()[0], 1e-12);
    }

    /**
     * Lattice sum of r^−4 over a hexagonal lattice, 6 ζ(2) L−3(2) = 7.7111 (exact, known): pairs far apart for their spacing add
     * k = 3.8556 d² s²/h⁴ of skin-effect resistance.
     */
    @Test
    void neighboursFarApartAddTheLatticeSum() {
        double s = 0.9e-3;
        double h = 100 * s;
        double k = new PairBundle(1000, h).crowding(D24, s);
        double expected = 7.7111 / 2 * D24 * D24 * s * s / (h * h * h * h);
        assertEquals(expected, k, 3e-3 * expected);
        // Two at a pitch and one across the square: 2 + 1/4.
        double four = new PairBundle(4, h).crowding(D24, s);
        assertEquals(2.25 / 2 * D24 * D24 * s * s / (h * h * h * h), four, 2e-3 * four);
    }

    /** Neighbours change nothing at DC but the inductance, by μ0 k/(2π), and at skin effect the resistance by k Rs/(πa). */
    @Test
    void neighboursTakeResistanceAtSkinEffectAndInductanceFromDcOn() {
        PairSection alone = pair(D24, 1.8, 2.1);
        PairBundle bundle = new PairBundle(100, 1.8 * 1.8 * D24);
        PairSection among = alone.among(bundle);
        double k = bundle.crowding(D24, 1.8 * D24);
        assertEquals(0.15, k, 0.02);
        assertEquals(at(alone, 1).zRe()[0], at(among, 1).zRe()[0], 1e-9);
        double extra = (at(among, 1).zIm()[0] - at(alone, 1).zIm()[0]) / (2 * Math.PI);
        assertEquals(4e-7 * Math.PI * k / (2 * Math.PI), extra, 1e-3 * extra);
        double rs = Conductor.COPPER.surfaceResistanceOhms(1e9);
        double more = at(among, 1e9).zRe()[0] - at(alone, 1e9).zRe()[0];
        assertEquals(k * rs / (Math.PI * D24 / 2), more, 0.01 * more);
    }

    @Test
    void pairsThatStandWithinEachOtherAreRefused() {
        PairSection alone = pair(D24, 1.8, 2.1);
        assertThrows(IllegalArgumentException.class, () -> alone.among(new PairBundle(4, 0.9 * 1.8 * D24)));
        assertThrows(IllegalArgumentException.class, () -> new PairBundle(1, 2e-3));
    }
}
