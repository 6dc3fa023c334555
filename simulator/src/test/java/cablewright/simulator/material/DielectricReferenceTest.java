// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Causal dielectrics, er 2.3 and tan delta 0.001 at 1 GHz: Djordjevic et al., IEEE Trans. EMC 43 (2001), DOI
 * 10.1109/15.974647, as open libraries implement it, and the power law of constant loss tangent.
 */
class DielectricReferenceTest {

    private static final WidebandLog WIDE = new WidebandLog(2.3, 1e-3, 1e9, 1e3, 1e12);
    private static final WidebandLog NARROW = new WidebandLog(2.3, 1e-3, 1e9, 1e4, 1e11);
    private static final ConstantLossTangent POWER = new ConstantLossTangent(2.3, 1e-3, 1e9);

    @ParameterizedTest
    @CsvSource({
        "1e3, 2.319734136, 4.9606258e-4, 2.316958225, 6.3390566e-5",
        "1e4, 2.316860978, 9.3032607e-4, 2.31645484, 4.9963204e-4",
        "1e5, 2.313494541, 9.8846802e-4, 2.313565099, 9.3702815e-4",
        "1e6, 2.310120959, 9.9561886e-4, 2.31017923, 9.9559375e-4",
        "1e7, 2.306747307, 9.976409e-4, 2.306786177, 1.0027498e-3",
        "1e8, 2.303373653, 9.991021e-4, 2.303393053, 1.004227e-3",
        "1e9, 2.3, 1.0e-3, 2.3, 1.0e-3",
        "1e10, 2.296626419, 9.9572806e-4, 2.296614132, 9.4394421e-4"
    })
    void widebandLogMatches(double f, double wideEr, double wideTan, double narrowEr, double narrowTan) {
        assertEquals(wideEr, WIDE.realPermittivityAt(f), 1e-9);
        assertEquals(wideTan, WIDE.lossTangentAt(f), 1e-9);
        assertEquals(narrowEr, NARROW.realPermittivityAt(f), 1e-8);
        assertEquals(narrowTan, NARROW.lossTangentAt(f), 1e-9);
    }

    @Test
    void widebandLogHasItsPublishedParameters() {
        assertEquals(2.289879038, WIDE.permittivityAtInfinity(), 1e-9);
        assertEquals(0.001465159158, WIDE.slope(), 1e-12);
        assertEquals(2.293213674, NARROW.permittivityAtInfinity(), 1e-9);
        assertEquals(0.001473615875, NARROW.slope(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"1e4, 2.316919442", "1e6, 2.31013678", "1e8, 2.303373975", "1e9, 2.3", "1e10, 2.296630967"})
    void powerLawKeepsItsLossTangent(double f, double er) {
        assertEquals(er, POWER.realPermittivityAt(f), 1e-9);
        assertEquals(1e-3, POWER.lossTangentAt(f), 1e-15);
    }

    @Test
    void bothLawsAgreeWithinTheBand() {
        for (double f = 1e5; f < 2e10; f *= 10) {
            assertEquals(WIDE.realPermittivityAt(f), POWER.realPermittivityAt(f), 4e-5 * 2.3);
        }
    }

    /** (eps - 1)/(eps + 2) is proportional to density: by hand for er 2.25 and 30 kelvin of 4.5e-4 each. */
    @Test
    void warmPolyethyleneIsThinner() {
        double contrast = (1.25 / 4.25) / (1 + 30 * 4.5e-4);
        double expected = (1 + 2 * contrast) / (1 - contrast);
        Dielectric warm = new ConstantLossTangent(2.25, 0, 1e8).atTemperature(50);
        assertEquals(expected, warm.realPermittivityAt(1e8), 1e-12);
        assertTrue(expected < 2.25 && expected > 2.21);
    }

    @Test
    void temperatureIsAbsoluteAndAirHasNone() {
        assertEquals(POWER, POWER.atTemperature(60).atTemperature(20));
        assertSame(Dielectric.AIR, Dielectric.AIR.atTemperature(60));
    }

    @Test
    void impossibleMaterialsAreNamed() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> new ConstantLossTangent(0.9, 0, 1e8));
        assertEquals("relativePermittivity is 0.9; allowed is 1 or more", e.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new ConstantLossTangent(2, 1.2, 1e8));
        assertThrows(IllegalArgumentException.class, () -> new WidebandLog(2, 0.1, 1e9, 1e10, 1e11));
        assertThrows(IllegalArgumentException.class, () -> new DebyePole(-1, 1e-9));
        assertThrows(IllegalArgumentException.class, () -> new Conductor("tin foil", 0, 1, 0.004));
    }
}
