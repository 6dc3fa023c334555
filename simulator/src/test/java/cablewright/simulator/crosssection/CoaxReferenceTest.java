// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.Dielectric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coax against the closed forms of Pozar, Microwave Engineering, 4th ed. (from memory), worked out at high precision. */
class CoaxReferenceTest {

    private static final double HUNDRED_FEET = 30.48;

    private static CoaxSection copper(double d, double bigD, double er, double lossTangent) {
        return CoaxSection.solid(
                d, bigD, Conductor.COPPER, 0.3 * bigD, Conductor.COPPER, new ConstantLossTangent(er, lossTangent, 1e8));
    }

    private static CoaxSection foam75() {
        return copper(1.0495321e-3, 4.572e-3, 1.384083045, 0);
    }

    @ParameterizedTest
    @CsvSource({
        "1.02362e-3, 4.572e-3, 1.384083045, 2.9932108e-7, 5.1449771e-11, 76.274071, 0.85",
        "2.7686e-3, 11.43e-3, 1.321178491, 2.8357994e-7, 5.1837564e-11, 73.963161, 0.87",
        "0.9e-3, 2.95e-3, 2.25, 2.3743314e-7, 1.0543864e-10, 47.453776, 0.666666667",
        "0.58e-3, 3.71e-3, 2.25, 3.7115181e-7, 6.7451176e-11, 74.179009, 0.666666667"
    })
    void constantsFollowFromGeometry(
            double d, double bigD, double er, double inductance, double capacitance, double z0, double velocity) {
        CoaxSection coax = copper(d, bigD, er, 0);
        assertEquals(inductance, coax.geometry().inductanceHenriesPerMetre(), 3e-8 * inductance);
        assertEquals(capacitance, er * coax.geometry().vacuumCapacitanceFaradsPerMetre(), 5e-8 * capacitance);
        assertEquals(z0, coax.impedanceOhms(), 1e-6);
        assertEquals(velocity, coax.velocityFraction(), 1e-9);
    }

    /** The same case in a general-purpose library's documentation prints 50 ohm. */
    @Test
    void airLineOfSevenMillimetresHasFiftyOhm() {
        assertEquals(50.0030378, copper(3.04e-3, 7e-3, 1.00022, 0).impedanceOhms(), 2e-7);
    }

    /** dB per 100 ft by Rs (1/a + 1/b)/(4 pi Z0); the exact form adds Rdc/4, less than 1.2 % here. */
    @ParameterizedTest
    @CsvSource({
        "1.02362e-3, 4.572e-3, 1.384083045, 55e6, 1.277977",
        "1.02362e-3, 4.572e-3, 1.384083045, 211e6, 2.503127",
        "1.02362e-3, 4.572e-3, 1.384083045, 400e6, 3.446447",
        "1.02362e-3, 4.572e-3, 1.384083045, 1e9, 5.449311",
        "2.7686e-3, 11.43e-3, 1.321178491, 55e6, 0.4945614",
        "2.7686e-3, 11.43e-3, 1.321178491, 211e6, 0.9686795",
        "2.7686e-3, 11.43e-3, 1.321178491, 750e6, 1.826289",
        "2.7686e-3, 11.43e-3, 1.321178491, 1e9, 2.108817"
    })
    void conductorLossTendsToTheSkinEffectFormula(double d, double bigD, double er, double frequency, double loss) {
        double model = copper(d, bigD, er, 0).attenuationDecibelPerMetreAt(frequency) * HUNDRED_FEET;
        assertEquals(loss, model, 0.008 * loss);
    }

    @ParameterizedTest
    @CsvSource({"5e6, 0.0032639, 0.04", "400e6, 0.2611136, 0.01", "1e9, 0.6527840, 0.01"})
    void dielectricLossAddsPiRootErTanDelta(double frequency, double loss, double tolerance) {
        double with = copper(1.02362e-3, 4.572e-3, 1.384083045, 2e-4).attenuationDecibelPerMetreAt(frequency);
        double without = copper(1.02362e-3, 4.572e-3, 1.384083045, 0).attenuationDecibelPerMetreAt(frequency);
        assertEquals(loss, (with - without) * HUNDRED_FEET, tolerance * loss);
    }

    /** Exact bipolar form; textbook: Wadell, Transmission Line Design Handbook, sec. 3.2 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.1, 74.679536, 1.003063",
        "0.2, 73.704454, 1.012574",
        "0.3, 72.031462, 1.029597",
        "0.4, 69.580125, 1.056262",
        "0.5, 66.216744, 1.096566",
        "0.6, 61.720978, 1.158294",
        "0.7, 55.710785, 1.258392",
        "0.8, 47.440487, 1.442140",
        "0.9, 35.028974, 1.894547",
        "0.95, 25.328401, 2.573336"
    })
    void offCentreCoreLowersImpedanceAndRaisesLoss(double eccentricity, double impedance, double lossFactor) {
        CoaxSection off = foam75().offCentre(eccentricity);
        assertEquals(impedance, off.impedanceOhms(), 1e-6);
        assertEquals(0.85, off.velocityFraction(), 1e-9);
        CoaxGeometry circles = off.geometry();
        double perCore = 2 / circles.coreDiameterMetres();
        double perShield = 2 / circles.outerDiameterMetres();
        double factor =
                (circles.coreCrowding() * perCore + circles.outerCrowding() * perShield) / (perCore + perShield);
        assertEquals(lossFactor, factor, 1e-6);
        double ratio = resistance(off, 1e11) / resistance(foam75(), 1e11);
        assertEquals(lossFactor, ratio, 0.004 * lossFactor);
    }

    private static double resistance(CoaxSection coax, double frequency) {
        return coax.primaryConstants(new double[1], new double[] {2 * Math.PI * frequency})
                .zRe()[0];
    }

    /** Against a full multipole solution, whose file tells its origin. */
    @Test
    void offCentreCoaxFollowsTheFullFieldSolutionAtAllFrequencies() {
        for (double[] row : ReferenceTable.rows("off-centre-coax.csv")) {
            CoaxSection coax = CoaxSection.solid(
                            1.05e-3, 4.572e-3, Conductor.COPPER, 0.1e-3, Conductor.ALUMINIUM, Dielectric.AIR)
                    .offCentre(row[0]);
            double omega = 2 * Math.PI * row[1];
            PrimaryConstants constants = coax.primaryConstants(new double[1], new double[] {omega});
            double tolerance = row[0] <= 0.2 ? 5e-4 : row[0] <= 0.5 ? 5e-3 : 0.06;
            String where = "e " + row[0] + " at " + row[1] + " Hz";
            assertEquals(row[2], constants.zRe()[0], tolerance * row[2], where);
            assertEquals(row[3], constants.zIm()[0] / omega, tolerance * row[3], where);
        }
    }

    @Test
    void pinchedCoaxIsTheSmallerCircleTouchingTheFarSide() {
        double d = 1.0495321e-3;
        double bigD = 4.572e-3;
        double delta = 0.4 * 0.5 * (bigD - d);
        double pressed = bigD - delta;
        double x = (pressed * pressed + d * d - delta * delta) / (2 * pressed * d);
        double expected = 59.9584915921 * 0.85 * Math.log(x + Math.sqrt(x * x - 1));
        assertEquals(expected, foam75().pinched(0.4).impedanceOhms(), 1e-6);
    }

    @Test
    void pinchLowersImpedanceAllTheWayToContactAndKeepsDcResistance() {
        double last = foam75().impedanceOhms();
        for (double depth = 0.1; depth < 0.95; depth += 0.1) {
            CoaxSection pinched = foam75().pinched(depth);
            assertTrue(pinched.impedanceOhms() < last);
            assertEquals(foam75().loopResistanceOhmsPerMetre(), resistance(pinched, 1e-3), 1e-9);
            last = pinched.impedanceOhms();
        }
        assertTrue(foam75().pinched(0.99999).impedanceOhms() < 0.4);
    }

    @Test
    void pressingTwicePressesTheGapThatIsLeft() {
        CoaxSection once = foam75().offCentre(0.3).pinched(1 - 0.8 * 0.7);
        CoaxSection twice = foam75().pinched(0.2).offCentre(0.3).pinched(0.3);
        assertEquals(once.impedanceOhms(), twice.impedanceOhms(), 1e-9);
    }
}
