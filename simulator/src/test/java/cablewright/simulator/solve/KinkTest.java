// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import static cablewright.simulator.TestCables.cable;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.crosssection.BentTube;
import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.explanation.CableNotices;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.Dielectric;
import cablewright.simulator.notice.NoticeKind;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kinks against Brazier's tube and against Laplace's equation between a circle and an oval. */
class KinkTest {

    private static final CableType HARDLINE = Catalogue.standard().type("hardline-500");

    /**
     * Least radius of bend of hardline as makers give it: 6, 7, 8 and 9 inches (from memory). The bare tube folds
     * near it.
     */
    @ParameterizedTest
    @CsvSource({"hardline-500, 0.152", "hardline-625, 0.178", "hardline-750, 0.203", "hardline-875, 0.229"})
    void tubesOfHardlineFoldBelowTheRadiusThatMakersAllow(String id, double published) {
        CrossSection section = Catalogue.standard().type(id).section();
        double least = BentTube.leastRadiusMetres(section).orElseThrow();
        assertTrue(least < 1.05 * published && least > 0.7 * published, id + " folds below " + least);
    }

    /** Rmin = (3/√2) r² √(1 − ν²)/t with ν = 0.33, worked out by hand for r = 6 mm and t = 0.6 mm: 120.15 mm. */
    @Test
    void leastRadiusIsBraziers() {
        CrossSection tube =
                CoaxSection.solid(2e-3, 11.4e-3, Conductor.COPPER, 0.6e-3, Conductor.ALUMINIUM, Dielectric.AIR);
        assertEquals(0.12015, BentTube.leastRadiusMetres(tube).orElseThrow(), 1e-5);
    }

    /**
     * Impedance of a circle within an oval b(1 + ζ cos 2θ) of the circumference of the unit circle, over that without ζ:
     * Laplace's equation by collocation in 24 harmonics, solved with numpy.
     */
    @ParameterizedTest
    @CsvSource({
        "4.356, 0.4743416, 0.9961711514",
        "4.356, 0.6708204, 0.9847207141",
        "4.356, 1, 0.9253503023",
        "5, 0.6708204, 0.9860456474",
        "2.5, 0.6708204, 0.9749041658",
        "2.5, 1, 0.8762752684"
    })
    void ovalHasTheImpedanceOfTheField(double ratio, double tightness, double expected) {
        CoaxSection round =
                CoaxSection.solid(2e-3, ratio * 2e-3, Conductor.COPPER, 0.6e-3, Conductor.ALUMINIUM, Dielectric.AIR);
        double found = BentTube.bent(round, tightness).impedanceOhms() / round.impedanceOhms();
        assertEquals(expected, found, tightness < 0.9 ? 1e-4 : 1.5e-3);
        assertEquals(round.velocityFraction(), BentTube.bent(round, tightness).velocityFraction(), 1e-12);
    }

    @Test
    void tighterBendsReflectMoreAndNeverUp() {
        double before = 0;
        for (double radius : new double[] {0.5, 0.2, 0.12, 0.1, 0.06, 0.03}) {
            CrossSection bent = bend(radius).applyTo(HARDLINE.section(), 1);
            double drop = 1 - bent.impedanceOhms() / HARDLINE.section().impedanceOhms();
            assertTrue(drop > before, radius + " m drops " + drop);
            before = drop;
        }
        assertTrue(before > 0.3);
    }

    private static Kink bend(double radius) {
        return new Kink("k", 5, 0.3, radius, OptionalDouble.empty(), Profile.RAISED_COSINE);
    }

    @Test
    void noticeTellsThatTheCableFolds() {
        Cable tight = cable(HARDLINE, 20, new FarEnd.Open(), bend(0.05));
        List<CableNotices.Placed> placed = CableNotices.of(tight, 1e8);
        assertEquals(
                NoticeKind.BENT_TOO_TIGHTLY,
                placed.get(placed.size() - 1).notice().kind());
        assertEquals(0.05, placed.get(placed.size() - 1).notice().value());
        Cable wide = cable(HARDLINE, 20, new FarEnd.Open(), bend(0.5));
        assertTrue(CableNotices.of(wide, 1e8).stream()
                .noneMatch(one -> one.notice().kind() == NoticeKind.BENT_TOO_TIGHTLY));
    }

    @Test
    void cableWithoutATubeNeedsItsLeastRadius() {
        CrossSection drop = Catalogue.standard().type("drop-6-foam").section();
        String said = assertThrows(
                        IllegalArgumentException.class, () -> bend(0.02).applyTo(drop, 1))
                .getMessage();
        assertTrue(said.startsWith("leastRadiusMetres is missing"), said);
        Kink given = new Kink("k", 5, 0.3, 0.02, OptionalDouble.of(0.07), Profile.FLAT);
        assertTrue(given.applyTo(drop, 1).impedanceOhms() < 0.8 * drop.impedanceOhms());
        CrossSection pair = Catalogue.standard().type("cat-5e").section();
        assertThrows(IllegalArgumentException.class, () -> given.applyTo(pair, 1));
    }
}
