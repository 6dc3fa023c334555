// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.surface.TubeShield;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.notice.Notice;
import cablewright.simulator.notice.NoticeKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What can be done to a cross-section, what is refused and with what words. */
class ConditionsTest {

    private static final CrossSection COAX =
            Catalogue.standard().type("drop-6-foam").section();
    private static final CrossSection PAIR =
            Catalogue.standard().type("pair-24").section();
    private static final Water WATER = new Water(20, 0.01);

    private static void assertRefused(String message, Executable action) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, action).getMessage());
    }

    @Test
    void impossibleValuesAreNamedWithTheirLimits() {
        assertRefused("depthFraction is 1; allowed is 0 to below 1", () -> COAX.pinched(1));
        assertRefused("depthFraction is -0.1; allowed is 0 to below 1", () -> PAIR.pinched(-0.1));
        assertRefused("eccentricity is 1; allowed is 0 to below 1", () -> COAX.offCentre(1));
        assertRefused("volumeFraction is 1.2; allowed is 0 to 1", () -> COAX.wet(WaterDistribution.CRIM, 1.2, WATER));
        assertRefused("celsius is 400; allowed is -80 to 150", () -> COAX.atTemperature(400));
        assertRefused("spacingFactor is 0.5; allowed is 1 to 50", () -> PAIR.spread(0.5));
        assertRefused("relativeImpedance is 0; allowed is 0.05 to 20", () -> COAX.scaled(0));
        assertThrows(IllegalArgumentException.class, () -> COAX.pinched(Double.NaN));
    }

    @Test
    void conditionsOfTheOtherLayoutAreRefusedInWords() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PAIR.offCentre(0.1))
                .getMessage()
                .contains("a pair has no core"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> COAX.spread(2))
                .getMessage()
                .contains("a coax has no pair"));
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> PAIR.wet(WaterDistribution.FILM_ON_CORE, 0.1, WATER))
                        .getMessage()
                        .contains("choose one of the mixing pictures"));
    }

    @Test
    void twoFilmsCannotHoldMoreThanTheWholeDielectric() {
        CrossSection film = COAX.wet(WaterDistribution.FILM_ON_CORE, 0.7, WATER);
        assertThrows(IllegalArgumentException.class, () -> film.wet(WaterDistribution.FILM_UNDER_SHIELD, 0.4, WATER));
        CrossSection full = film.wet(WaterDistribution.FILM_UNDER_SHIELD, 0.3, WATER);
        assertEquals(COAX.wet(WaterDistribution.CRIM, 1, WATER).impedanceOhms(), full.impedanceOhms(), 1e-6);
    }

    @Test
    void wiresThatCannotBeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CoaxGeometry(2e-3, 1e-3));
        assertThrows(
                IllegalArgumentException.class,
                () -> new PairGeometry(1e-3, 0.9e-3, 1e-3, 1e-3, 1, 1, Optional.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TubeShield(1e-3, 2e-3, cablewright.simulator.material.Conductor.COPPER));
    }

    @Test
    void drawingsTellWhatWasDone() {
        SectionDrawing.Coax coax = (SectionDrawing.Coax) COAX.offCentre(0.2)
                .pinched(0.5)
                .wet(WaterDistribution.CRIM, 0.1, WATER)
                .drawing();
        double gap = 0.5 * (coax.outerDiameterMetres() - coax.coreDiameterMetres());
        assertEquals(0.2 * gap, coax.coreOffsetMetres(), 1e-12);
        assertEquals(0.5 * 0.8 * gap, coax.pressedDepthMetres(), 1e-12);
        assertEquals(0.1, coax.wetFraction(), 1e-15);
        assertEquals(WaterDistribution.CRIM, coax.waterPicture().orElseThrow());
        SectionDrawing.Pair pair = (SectionDrawing.Pair) PAIR.spread(2).drawing();
        SectionDrawing.Pair made = (SectionDrawing.Pair) PAIR.drawing();
        assertEquals(2 * made.spacingMetres(), pair.spacingMetres(), 1e-15);
    }

    @Test
    void everyModelSaysWhereItEnds() {
        assertEquals(List.of(), COAX.notices(1e9));
        // TE11 of an 85 % drop cable: c v/(pi (a + b)), about 29.6 GHz
        Notice cutoff = COAX.notices(4e10).get(0);
        assertEquals(NoticeKind.HIGHER_MODES, cutoff.kind());
        assertEquals(29.6e9, cutoff.limit(), 0.1e9);
        assertEquals(
                NoticeKind.STRONG_CROWDING,
                COAX.offCentre(0.9).notices(1e9).get(0).kind());
        assertEquals(NoticeKind.PAIR_RADIATES, PAIR.notices(1e11).get(0).kind());
        CrossSection film = COAX.offCentre(0.1).wet(WaterDistribution.FILM_ON_CORE, 0.1, WATER);
        assertEquals(
                NoticeKind.FILM_ON_OFF_CENTRE_CORE, film.notices(1e9).get(0).kind());
    }

    /** Common practice, no source: attenuation of plant coax rises by 0.18 to 0.2 % per kelvin. */
    @Test
    void warmHardlineLosesAFifthOfAPerCentMorePerKelvin() {
        CrossSection line = Catalogue.standard().type("hardline-500").section();
        double growth =
                line.atTemperature(50).attenuationDecibelPerMetreAt(5.5e7) / line.attenuationDecibelPerMetreAt(5.5e7)
                        - 1;
        assertEquals(0.0019, growth / 30, 0.0002);
    }

    @Test
    void warmthRaisesLossAndVelocity() {
        CrossSection warm = COAX.atTemperature(50);
        assertTrue(warm.attenuationDecibelPerMetreAt(1e9) > COAX.attenuationDecibelPerMetreAt(1e9));
        assertTrue(warm.velocityFraction() > COAX.velocityFraction());
        assertTrue(warm.velocityFraction() < 1.004 * COAX.velocityFraction());
        assertEquals(COAX, warm.atTemperature(20));
    }
}
