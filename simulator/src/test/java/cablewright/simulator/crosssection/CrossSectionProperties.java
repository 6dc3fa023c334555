// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws that hold for every cross-section of the catalogue with any conditions done to it. */
class CrossSectionProperties {

    private static final List<WaterDistribution> MIXING =
            List.of(WaterDistribution.values()).subList(0, 6);

    private static boolean isPair(CableType type) {
        return type.section() instanceof PairSection;
    }

    @Provide
    Arbitrary<CrossSection> sections() {
        List<CableType> real = Catalogue.standard().types().stream()
                .filter(type -> type.family() != CableFamily.REFERENCE)
                .toList();
        return Combinators.combine(
                        Arbitraries.of(real),
                        Arbitraries.doubles().between(0, 0.8),
                        Arbitraries.doubles().between(0, 0.8),
                        Arbitraries.of(WaterDistribution.values()),
                        Arbitraries.doubles().between(0, 0.6),
                        Arbitraries.doubles().between(0, 5),
                        Arbitraries.doubles().between(-40, 80))
                .as(CrossSectionProperties::conditioned);
    }

    private static CrossSection conditioned(
            CableType type,
            double shift,
            double press,
            WaterDistribution picture,
            double wet,
            double sigma,
            double celsius) {
        Water water = new Water(20, sigma);
        CrossSection warm = type.section().atTemperature(celsius).scaled(1 + 0.2 * (shift - press));
        if (isPair(type)) {
            WaterDistribution mixing = picture.isFilm() ? MIXING.get(1) : picture;
            return warm.spread(1 + 3 * shift).pinched(press).wet(mixing, wet, water);
        }
        return warm.offCentre(shift).pinched(press).wet(picture, wet, water);
    }

    private static double[] at(CrossSection section, double sRe, double sIm) {
        PrimaryConstants at = section.primaryConstants(new double[] {sRe}, new double[] {sIm});
        return new double[] {at.zRe()[0], at.zIm()[0], at.yRe()[0], at.yIm()[0]};
    }

    @Property(tries = 300)
    void isPassive(
            @ForAll("sections") CrossSection section,
            @ForAll @DoubleRange(min = 0, max = 10) double decade,
            @ForAll @DoubleRange(min = 0, max = 2) double damping) {
        double omega = 2 * Math.PI * Math.pow(10, decade);
        for (double sRe : new double[] {0, damping * omega}) {
            double[] at = at(section, sRe, omega);
            assertTrue(at[0] >= 0, "Re z is " + at[0]);
            assertTrue(at[2] >= 0, "Re y is " + at[2]);
        }
    }

    @Property(tries = 100)
    void mirroredFrequencyGivesTheConjugate(
            @ForAll("sections") CrossSection section,
            @ForAll @DoubleRange(min = 0, max = 10) double decade,
            @ForAll @DoubleRange(min = 0, max = 2) double damping) {
        double omega = Math.pow(10, decade);
        double[] up = at(section, damping * omega, omega);
        double[] down = at(section, damping * omega, -omega);
        assertEquals(up[0], down[0], 1e-12 * Math.hypot(up[0], up[1]));
        assertEquals(up[1], -down[1], 1e-12 * Math.hypot(up[0], up[1]));
        assertEquals(up[2], down[2], 1e-12 * Math.hypot(up[2], up[3]));
        assertEquals(up[3], -down[3], 1e-12 * Math.hypot(up[2], up[3]));
    }

    /**
     * Causal, because analytic for Re s above 0: the mean over a circle is the value in its middle (Cauchy). A wrong branch
     * of a root anywhere within would break it.
     */
    @Property(tries = 100)
    void isAnalyticInTheRightHalfPlaneAndSoCausal(
            @ForAll("sections") CrossSection section,
            @ForAll @DoubleRange(min = 2, max = 10) double decade,
            @ForAll @DoubleRange(min = 0, max = 3) double height) {
        int n = 96;
        double centre = Math.pow(10, decade);
        double[] sRe = new double[n + 1];
        double[] sIm = new double[n + 1];
        for (int i = 0; i < n; i++) {
            sRe[i] = centre * (1 + 0.7 * Math.cos(2 * Math.PI * i / n));
            sIm[i] = centre * (height + 0.7 * Math.sin(2 * Math.PI * i / n));
        }
        sRe[n] = centre;
        sIm[n] = centre * height;
        PrimaryConstants at = section.primaryConstants(sRe, sIm);
        assertMean(at.zRe(), at.zIm());
        assertMean(at.yRe(), at.yIm());
    }

    private static void assertMean(double[] re, double[] im) {
        int n = re.length - 1;
        double meanRe = 0;
        double meanIm = 0;
        for (int i = 0; i < n; i++) {
            meanRe += re[i] / n;
            meanIm += im[i] / n;
        }
        double size = Math.hypot(re[n], im[n]);
        assertEquals(re[n], meanRe, 1e-9 * size);
        assertEquals(im[n], meanIm, 1e-9 * size);
    }

    @Property(tries = 50)
    void realFrequencyGivesRealPositiveConstants(
            @ForAll("sections") CrossSection section, @ForAll @DoubleRange(min = 0, max = 10) double decade) {
        double[] at = at(section, Math.pow(10, decade), 0);
        assertTrue(at[0] > 0 && at[2] > 0);
        assertEquals(0, at[1], 1e-12 * at[0]);
        assertEquals(0, at[3], 1e-12 * at[2]);
    }

    @Property(tries = 50)
    void onePointOfAManyPointContourIsThatPointAlone(
            @ForAll("sections") CrossSection section, @ForAll @DoubleRange(min = 1, max = 9) double decade) {
        double omega = Math.pow(10, decade);
        ContourSamples contour = new ContourSamples(new double[] {0, 3, omega}, new double[] {omega, omega, 0});
        PrimaryConstants first = section.primaryConstants(contour);
        PrimaryConstants again = section.primaryConstants(contour);
        double[] alone = at(section, 0, omega);
        assertEquals(alone[0], first.zRe()[0]);
        assertEquals(alone[3], first.yIm()[0]);
        assertEquals(first.zRe()[2], again.zRe()[2]);
    }

    @Property(tries = 50)
    void vanishingConditionsChangeNothing(@ForAll @DoubleRange(min = 0, max = 9) double decade) {
        double omega = Math.pow(10, decade);
        for (CableType type : Catalogue.standard().types()) {
            if (type.section() instanceof CoaxSection coax) {
                double[] before = at(coax, 0, omega);
                double[] after = at(coax.offCentre(1e-7).pinched(1e-9).scaled(1 + 1e-9), 0, omega);
                assertEquals(before[0], after[0], 1e-7 * before[0]);
                assertEquals(before[1], after[1], 1e-7 * before[1]);
                assertEquals(coax, coax.offCentre(0).pinched(0).scaled(1).atTemperature(20));
            }
        }
    }

    @Property(tries = 100)
    void unevennessScalesImpedanceAtTheSameVelocity(
            @ForAll("sections") CrossSection section, @ForAll @DoubleRange(min = 0.5, max = 2) double factor) {
        CrossSection uneven = section.scaled(factor);
        assertEquals(factor * section.impedanceOhms(), uneven.impedanceOhms(), 1e-9 * uneven.impedanceOhms());
        assertEquals(section.velocityFraction(), uneven.velocityFraction(), 1e-12);
    }

    @Property(tries = 60)
    void orderOfCallingDoesNotMatterAcrossKinds(
            @ForAll @DoubleRange(min = 0, max = 0.7) double shift,
            @ForAll @DoubleRange(min = 0, max = 0.7) double depth) {
        Water water = new Water(20, 0.01);
        for (CableType type : Catalogue.standard().types()) {
            if (type.section() instanceof CoaxSection coax) {
                CrossSection one = coax.offCentre(shift)
                        .pinched(depth)
                        .wet(WaterDistribution.CRIM, 0.1, water)
                        .scaled(1.1);
                CrossSection two = coax.scaled(1.1)
                        .wet(WaterDistribution.CRIM, 0.1, water)
                        .pinched(depth)
                        .offCentre(shift);
                assertEquals(one, two);
            }
        }
    }

    @Property(tries = 60)
    void dcResistanceOutlivesEveryChangeOfShape(@ForAll("sections") CrossSection section) {
        double[] at = at(section, 0, 1e-4);
        assertEquals(section.loopResistanceOhmsPerMetre(), at[0], 1e-6 * at[0]);
    }
}
