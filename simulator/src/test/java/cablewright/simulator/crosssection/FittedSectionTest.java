// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.ConductorLayout;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.simulator.crosssection.surface.FittedSurface;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.notice.Notice;
import cablewright.simulator.notice.NoticeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Cables known by their data sheets. */
class FittedSectionTest {

    private static DataSheet sheet(
            ConductorLayout layout, double z0, double velocity, OptionalDouble resistance, double[][] decibelPer100m) {
        List<AttenuationPoint> points = new ArrayList<>();
        for (double[] row : decibelPer100m) {
            points.add(AttenuationPoint.perHundredMetres(row[0], row[1]));
        }
        return new DataSheet(layout, z0, velocity, resistance, OptionalDouble.empty(), points);
    }

    /** RG-213 to MIL-C-17F in an open data set, dB per 100 m. */
    private static DataSheet rg213() {
        return sheet(ConductorLayout.COAX, 50, 0.66, OptionalDouble.empty(), new double[][] {
            {10, 1.8}, {100, 6.8}, {400, 14.4}, {1000, 24.7}
        });
    }

    @Test
    void publishedCoaxIsMetWithinFourPerCentAndKeepsItsResiduals() {
        FittedSection section = FittedSection.fitted(rg213());
        assertEquals(50, section.impedanceOhms(), 1e-9);
        assertEquals(0.66, section.velocityFraction(), 1e-12);
        assertTrue(
                section.fit().relativeRms() < 0.04, () -> "rms " + section.fit().relativeRms());
        for (DataSheetFit.Point point : section.fit().points()) {
            double model = section.attenuationDecibelPerMetreAt(point.frequencyHertz());
            assertEquals(point.sheetDecibelPerMetre() + point.residualDecibelPerMetre(), model, 1e-15);
        }
    }

    /** TIA-568 category 5e limit (second-hand): 1.967 sqrt f + 0.023 f + 0.050/sqrt f. */
    @Test
    void categoryCableLimitIsMetAsAPair() {
        double[][] rows = new double[7][];
        double[] f = {1, 4, 10, 16, 31.25, 62.5, 100};
        for (int i = 0; i < f.length; i++) {
            rows[i] = new double[] {f[i], 1.967 * Math.sqrt(f[i]) + 0.023 * f[i] + 0.05 / Math.sqrt(f[i])};
        }
        FittedSection section =
                FittedSection.fitted(sheet(ConductorLayout.PAIR, 100, 0.68, OptionalDouble.empty(), rows));
        assertTrue(
                section.fit().relativeRms() < 0.01, () -> "rms " + section.fit().relativeRms());
        assertEquals(DataSheetFit.Resistance.FITTED, section.fit().resistanceOrigin());
    }

    @Test
    void cableThatIsKnownIsFoundAgain() {
        CoaxSection known = CoaxSection.of(
                new FittedSurface(0.05, 2e-5, 0.00393),
                1e-3,
                new FittedSurface(0.01, 4e-6, 0.00393),
                5e-3,
                new ConstantLossTangent(1 / (0.8 * 0.8), 5e-4, 1e8));
        double[] f = {1, 10, 100, 500, 1000};
        double[][] rows = new double[f.length][];
        for (int i = 0; i < f.length; i++) {
            rows[i] = new double[] {f[i], 100 * known.attenuationDecibelPerMetreAt(1e6 * f[i])};
        }
        FittedSection found = FittedSection.fitted(
                sheet(ConductorLayout.COAX, known.impedanceOhms(), 0.8, OptionalDouble.of(0.06), rows));
        assertEquals(2.4e-5, found.fit().skinOhmsPerMetrePerRootRadian(), 2e-8);
        assertEquals(5e-4, found.fit().lossTangent(), 1e-6);
        assertEquals(0.06, found.loopResistanceOhmsPerMetre(), 1e-12);
        assertTrue(found.fit().relativeRms() < 1e-3);
        assertEquals(DataSheetFit.Resistance.GIVEN, found.fit().resistanceOrigin());
    }

    @Test
    void lossWithoutDielectricShareGivesNoNegativeLossTangent() {
        FittedSection section = FittedSection.fitted(sheet(
                ConductorLayout.COAX, 75, 0.85, OptionalDouble.of(0.1), new double[][] {{10, 2}, {100, 6}, {1000, 17}
                }));
        assertTrue(section.fit().lossTangent() >= 0 && section.fit().lossTangent() < 1e-4);
    }

    @Test
    void sizeComesFromTheSkinEffectOfCopperIfTheSheetHasNone() {
        FittedSection section = FittedSection.fitted(rg213());
        SectionDrawing.Coax drawing = (SectionDrawing.Coax) section.drawing();
        assertTrue(drawing.outerDiameterMetres() > 3e-3 && drawing.outerDiameterMetres() < 9e-3);
        DataSheet sized = new DataSheet(
                ConductorLayout.COAX,
                50,
                0.66,
                OptionalDouble.empty(),
                OptionalDouble.of(7.24e-3),
                rg213().attenuation());
        SectionDrawing.Coax given =
                (SectionDrawing.Coax) FittedSection.fitted(sized).drawing();
        assertEquals(7.24e-3, given.outerDiameterMetres());
    }

    private static List<NoticeKind> kinds(CrossSection section, double top) {
        return section.notices(top).stream().map(Notice::kind).toList();
    }

    @Test
    void conditionsActOnTheEquivalentAndSaySo() {
        FittedSection section = FittedSection.fitted(rg213());
        assertFalse(kinds(section, 1e9).contains(NoticeKind.EQUIVALENT_GEOMETRY));
        FittedSection pinched = section.pinched(0.3);
        assertTrue(pinched.impedanceOhms() < 48);
        assertTrue(kinds(pinched, 1e9).contains(NoticeKind.EQUIVALENT_GEOMETRY));
        assertTrue(kinds(section, 2e9).contains(NoticeKind.ABOVE_FITTED_RANGE));
    }

    @Test
    void warmthRaisesTheConductorsShareOfTheLoss() {
        FittedSection section = FittedSection.fitted(rg213());
        double cold = section.attenuationDecibelPerMetreAt(1e8);
        double warm = section.atTemperature(50).attenuationDecibelPerMetreAt(1e8);
        double conductorShare =
                1 - section.fit().lossTangent() * Math.PI * 1e8 / (0.66 * 299792458.0) * 8.685889638 / cold;
        double slower = section.velocityFraction() / section.atTemperature(50).velocityFraction();
        double expected = slower * (conductorShare * Math.sqrt(1 + 30 * 0.00393) + 1 - conductorShare);
        assertEquals(expected, warm / cold, 0.002);
        double hot = section.atTemperature(50).loopResistanceOhmsPerMetre();
        assertEquals(
                1 + 30 * Conductor.COPPER.temperatureCoefficientPerKelvin(),
                hot / section.loopResistanceOhmsPerMetre(),
                1e-12);
    }

    @Test
    void sheetWithOnePointIsRefused() {
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class,
                () -> sheet(ConductorLayout.COAX, 50, 0.66, OptionalDouble.empty(), new double[][] {{10, 1.8}}));
        assertTrue(e.getMessage().contains("allowed is 2 or more"), e.getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> sheet(ConductorLayout.COAX, 50, 1.1, OptionalDouble.empty(), new double[][] {{1, 1}, {10, 1.8}}));
    }
}
