// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.material.Water;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** A line by its constants against the same formula in a general-purpose library's complex numbers. */
class ConstantsSectionTest {

    private static final ConstantsSection LINE = new ConstantsSection(
            0.17, 4.8e-7, 2.6e-4, 1e-9, 5e-11, List.of(new DebyeTerm(2e-12, 3e-8), new DebyeTerm(1e-12, 1e-6)));

    @Test
    void isTakenAtItsWordToDoublePrecision() {
        double[] sRe = {0, 1e3, 2e6, 5e7, 0};
        double[] sIm = {1e-3, 0, 3e5, -7e8, 6e10};
        PrimaryConstants at = LINE.primaryConstants(sRe, sIm);
        for (int i = 0; i < sRe.length; i++) {
            Complex s = new Complex(sRe[i], sIm[i]);
            Complex z = s.multiply(4.8e-7).add(s.sqrt().multiply(2.6e-4)).add(0.17);
            Complex y = s.multiply(5e-11)
                    .add(1e-9)
                    .add(s.multiply(2e-12).divide(s.multiply(3e-8).add(1)))
                    .add(s.multiply(1e-12).divide(s.multiply(1e-6).add(1)));
            assertEquals(z.getReal(), at.zRe()[i], 1e-14 * z.abs());
            assertEquals(z.getImaginary(), at.zIm()[i], 1e-14 * z.abs());
            assertEquals(y.getReal(), at.yRe()[i], 1e-14 * y.abs());
            assertEquals(y.getImaginary(), at.yIm()[i], 1e-14 * y.abs());
        }
    }

    @Test
    void losslessLineHasItsImpedanceAndVelocity() {
        ConstantsSection line = ConstantsSection.lossless(75, 0.85);
        assertEquals(75, line.impedanceOhms(), 1e-12);
        assertEquals(0.85, line.velocityFraction(), 1e-15);
        assertEquals(0, line.attenuationDecibelPerMetreAt(1e8), 1e-15);
    }

    @Test
    void unevennessChangesImpedanceButNotVelocity() {
        ConstantsSection uneven = LINE.scaled(1.1);
        assertEquals(1.1 * LINE.impedanceOhms(), uneven.impedanceOhms(), 1e-12 * LINE.impedanceOhms());
        assertEquals(LINE.velocityFraction(), uneven.velocityFraction(), 1e-14);
        assertEquals(LINE.loopResistanceOhmsPerMetre(), uneven.loopResistanceOhmsPerMetre());
    }

    @Test
    void refusesWhatNeedsAGeometryAndSaysWhatToDo() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> LINE.pinched(0.2));
        assertTrue(e.getMessage().contains("0.2") && e.getMessage().contains("data sheet"), e.getMessage());
        assertThrows(IllegalArgumentException.class, () -> LINE.offCentre(0.2));
        assertThrows(IllegalArgumentException.class, () -> LINE.spread(2));
        assertThrows(IllegalArgumentException.class, () -> LINE.atTemperature(40));
        assertThrows(IllegalArgumentException.class, () -> LINE.wet(WaterDistribution.CRIM, 0.1, new Water(20, 0)));
        assertThrows(IllegalArgumentException.class, () -> new ConstantsSection(-1, 1e-7, 0, 0, 1e-11, List.of()));
        assertThrows(IllegalArgumentException.class, () -> LINE.primaryConstants(new double[1], new double[1]));
    }
}
