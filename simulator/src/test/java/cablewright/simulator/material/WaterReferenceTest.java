// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Water against its published laws, worked out apart: U. Kaatze (1989, from memory), T. Meissner and F. J. Wentz (2004,
 * second-hand), H. J. Liebe et al. (1991), and the static values of C. G. Malmberg and A. A. Maryott, J. Res. NBS 56 (1956)
 * 1-8 (second-hand).
 */
class WaterReferenceTest {

    private static double statically(WaterModel model, double celsius) {
        return new Water(celsius, 0, model).dielectric().realPermittivityAt(1);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 87.740000, 87.910348, 87.918095, 87.814146",
        "10, 83.831770, 83.971130, 83.979586, 83.807289",
        "20, 80.103040, 80.208427, 80.219348, 80.073798",
        "25, 78.303344, 78.390783, 78.402342, 78.300969",
        "30, 76.545350, 76.614329, 76.625547, 76.586620",
        "40, 73.150240, 73.181280, 73.187371, 73.322159"
    })
    void staticPermittivityFallsWithTemperature(
            double celsius, double measured, double kaatze, double meissner, double liebe) {
        assertEquals(kaatze, statically(WaterModel.KAATZE, celsius), 1e-6);
        assertEquals(meissner, statically(WaterModel.MEISSNER_WENTZ, celsius), 1e-6);
        assertEquals(liebe, statically(WaterModel.LIEBE, celsius), 1e-6);
        for (WaterModel model : WaterModel.values()) {
            assertEquals(measured, statically(model, celsius), 0.0025 * measured);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "KAATZE, 1e8, 78.388802, 0.38100928",
        "KAATZE, 1e9, 78.193275, 3.7999299",
        "KAATZE, 1e10, 62.798901, 29.997805",
        "MEISSNER_WENTZ, 1e8, 78.400352, 0.38064666",
        "MEISSNER_WENTZ, 1e9, 78.203901, 3.7961817",
        "MEISSNER_WENTZ, 1e10, 62.784853, 29.889719",
        "LIEBE, 1e8, 78.299009, 0.37862954",
        "LIEBE, 1e9, 78.105463, 3.7762692",
        "LIEBE, 1e10, 62.845417, 29.857625"
    })
    void permittivityAt25DegreesRelaxesTowardTenGigahertz(WaterModel model, double f, double real, double loss) {
        DebyeDielectric water = new Water(25, 0, model).dielectric();
        double re = water.realPermittivityAt(f);
        assertEquals(real, re, 2e-7 * real);
        assertEquals(loss, re * water.lossTangentAt(f), 2e-7 * loss);
    }

    @ParameterizedTest
    @CsvSource({"0, 17.615688", "10, 12.699899", "20, 9.4663232", "25, 8.2723553", "40, 5.7807648"})
    void relaxationQuickensWithTemperature(double celsius, double picoseconds) {
        double tau = new Water(celsius, 0).dielectric().poles().get(0).relaxationSeconds();
        assertEquals(picoseconds, 1e12 * tau, 1e-6);
    }

    /** Form of A. Stogryn as in Meissner and Wentz (from memory). */
    @ParameterizedTest
    @CsvSource({"0, 35, 2.9035668", "15, 35, 4.291353", "20, 35, 4.7912661", "25, 35, 5.3064221", "25, 10, 1.7022195"})
    void saltMakesWaterConduct(double celsius, double salinity, double siemensPerMetre) {
        assertEquals(siemensPerMetre, Water.salt(celsius, salinity).conductivitySiemensPerMetre(), 1e-7);
    }

    /** tan delta = sigma/(2 pi f eps), eps 80, 0.05 S/m; unity at 11.23444 MHz. */
    @ParameterizedTest
    @CsvSource({"1e6, 11.2344", "1e7, 1.12344", "1e8, 0.112344", "11.23444e6, 1.0"})
    void conductionRulesBelowSomeMegahertz(double frequency, double tangent) {
        DebyeDielectric brackish = new DebyeDielectric(80, java.util.List.of(), 0.05);
        assertEquals(tangent, brackish.lossTangentAt(frequency), 2e-5 * tangent);
    }

    @Test
    void steamAndBrineAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Water(120, 0));
        assertThrows(IllegalArgumentException.class, () -> new Water(55, 0, WaterModel.MEISSNER_WENTZ));
        assertThrows(IllegalArgumentException.class, () -> new Water(20, -1));
        assertThrows(IllegalArgumentException.class, () -> Water.salt(20, 300));
    }
}
