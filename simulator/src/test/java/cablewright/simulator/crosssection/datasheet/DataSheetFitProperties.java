// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.datasheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.surface.FittedSurface;
import cablewright.simulator.material.ConstantLossTangent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Fits of data sheets of invented cables. */
class DataSheetFitProperties {

    private static final double[] MEGAHERTZ = {1, 5, 20, 100, 400, 1000};

    private static List<AttenuationPoint> attenuation(CrossSection cable, double scatter, long seed) {
        Random random = new Random(seed);
        List<AttenuationPoint> points = new ArrayList<>();
        for (double f : MEGAHERTZ) {
            double true1 = cable.attenuationDecibelPerMetreAt(f * 1e6);
            points.add(new AttenuationPoint(f * 1e6, true1 * (1 + scatter * random.nextGaussian())));
        }
        return points;
    }

    private static CoaxSection cable(double resistance, double skin, double tangent) {
        return CoaxSection.of(
                new FittedSurface(0.8 * resistance, 0.8 * skin, 0.004),
                1e-3,
                new FittedSurface(0.2 * resistance, 0.2 * skin, 0.004),
                4.5e-3,
                new ConstantLossTangent(1.5, tangent, 1e8));
    }

    @Property(tries = 100)
    void everySheetIsFittedAboutAsWellAsItsFiguresScatter(
            @ForAll @DoubleRange(min = -3, max = -0.3) double resistanceDecade,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double skinDecade,
            @ForAll @DoubleRange(min = 0, max = 2) double tangentPerCent,
            @ForAll @DoubleRange(min = 0, max = 0.05) double scatter,
            @ForAll long seed) {
        double resistance = Math.pow(10, resistanceDecade);
        double skin = Math.sqrt(1e-7 * resistance) * Math.pow(10, skinDecade);
        double tangent = tangentPerCent / 100;
        CoaxSection cable = cable(resistance, skin, tangent);
        for (OptionalDouble given : List.of(OptionalDouble.of(resistance), OptionalDouble.empty())) {
            DataSheet sheet = new DataSheet(
                    ConductorLayout.COAX,
                    cable.impedanceOhms(),
                    cable.velocityFraction(),
                    given,
                    OptionalDouble.empty(),
                    attenuation(cable, scatter, seed));
            FittedSection fitted = FittedSection.fitted(sheet);
            assertTrue(fitted.fit().relativeRms() < 0.02 + 2.5 * scatter, () -> "rms " + fitted.fit());
            assertEquals(cable.impedanceOhms(), fitted.impedanceOhms(), 1e-9 * cable.impedanceOhms());
            assertEquals(fitted, FittedSection.fitted(sheet));
        }
    }
}
