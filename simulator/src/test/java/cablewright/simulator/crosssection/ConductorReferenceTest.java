// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.crosssection.surface.CladWire;
import cablewright.simulator.crosssection.surface.FittedSurface;
import cablewright.simulator.crosssection.surface.FoilAndBraid;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.crosssection.surface.TubeShield;
import cablewright.simulator.material.Conductor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Impedance of round conductors. Values worked out at 25 to 50 digits from the formulas of Ramo, Whinnery, Van Duzer (round
 * wire) and S. A. Schelkunoff, Bell System Technical Journal 13 (1934) 532-579 (tube), equation numbers from memory.
 */
class ConductorReferenceTest {

    private static final RoundWire WIRE = new RoundWire(0.51181e-3, Conductor.COPPER);

    private static double[] at(SurfaceImpedance conductor, double frequency) {
        double[] re = new double[1];
        double[] im = new double[1];
        conductor.evaluate(new double[1], new double[] {2 * Math.PI * frequency}, re, im);
        return new double[] {re[0], im[0]};
    }

    private static void assertRelative(double expected, double actual, double tolerance) {
        assertEquals(expected, actual, tolerance * Math.abs(expected));
    }

    @ParameterizedTest
    @CsvSource({
        "1e3, 0.0209525626, 3.14147493e-4",
        "1e5, 0.0309804639, 0.0242351569",
        "1e6, 0.0866171409, 0.0808401688",
        "1e7, 0.261870936, 0.25646952",
        "1e8, 0.816555186, 0.811266388"
    })
    void solidWireMatchesTheBesselForm(double frequency, double resistance, double reactance) {
        double[] z = at(WIRE, frequency);
        assertRelative(resistance, z[0], 3e-9);
        assertRelative(reactance, z[1], 3e-9);
    }

    @Test
    void solidWireHasItsDcResistanceAndFiftyNanohenryPerMetre() {
        assertRelative(0.0209509924, WIRE.dcResistanceOhmsPerMetre(), 2e-9);
        assertEquals(50.0e-9, WIRE.dcInductanceHenriesPerMetre(), 1e-16);
        double[] z = at(WIRE, 1);
        assertRelative(WIRE.dcInductanceHenriesPerMetre(), z[1] / (2 * Math.PI), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "2.286e-3, 50e-6, 3.5e7, 1e6, 0.039773415, 0.0091337743",
        "2.286e-3, 50e-6, 3.5e7, 1e7, 0.068651598, 0.07283926",
        "2.286e-3, 50e-6, 3.5e7, 1e8, 0.23338975, 0.23382894",
        "5.715e-3, 635e-6, 3.5e7, 1e5, 0.0028365881, 0.0030090032",
        "5.715e-3, 635e-6, 3.5e7, 1e6, 0.0092837499, 0.0093525828",
        "2.286e-3, 100e-6, 5.8e7, 1e6, 0.016419245, 0.016306787"
    })
    void tubeMatchesSchelkunoff(double inner, double wall, double sigma, double frequency, double r, double x) {
        double[] z = at(new TubeShield(inner, wall, new Conductor("metal", sigma, 1, 0.004)), frequency);
        assertRelative(r, z[0], 3e-8);
        assertRelative(x, z[1], 3e-8);
    }

    @ParameterizedTest
    @CsvSource({
        "2.286e-3, 50e-6, 3.5e7, 0.0393533889",
        "5.715e-3, 635e-6, 3.5e7, 0.00118708285",
        "2.286e-3, 100e-6, 5.8e7, 0.0117467926"
    })
    void tubeHasItsDcResistance(double inner, double wall, double sigma, double resistance) {
        TubeShield tube = new TubeShield(inner, wall, new Conductor("metal", sigma, 1, 0.004));
        assertRelative(resistance, tube.dcResistanceOhmsPerMetre(), 5e-9);
        double[] z = at(tube, 1);
        assertRelative(resistance, z[0], 1e-8);
        assertRelative(tube.dcInductanceHenriesPerMetre(), z[1] / (2 * Math.PI), 1e-6);
    }

    /** Steel core 0.48 mm of 5.8e6 S/m and mu_r 100, copper to 0.51181 mm: two-layer solution at high precision. */
    @ParameterizedTest
    @CsvSource({
        "1e4, 0.12629653",
        "1e5, 0.15716629",
        "1e6, 0.17014817",
        "5e6, 0.19296818",
        "1e7, 0.24207275",
        "1e8, 0.81643671"
    })
    void copperCladSteelMatchesTheTwoLayerSolution(double frequency, double resistance) {
        CladWire wire = new CladWire(0.48e-3, 0.51181e-3, Conductor.STEEL, Conductor.COPPER);
        assertRelative(resistance, at(wire, frequency)[0], 3e-8);
    }

    @Test
    void copperCladSteelHasItsDcLimits() {
        CladWire wire = new CladWire(0.48e-3, 0.51181e-3, Conductor.STEEL, Conductor.COPPER);
        assertRelative(0.10053406, wire.dcResistanceOhmsPerMetre(), 5e-8);
        double[] z = at(wire, 0.1);
        assertRelative(wire.dcInductanceHenriesPerMetre(), z[1] / (2 * Math.PI * 0.1), 1e-6);
    }

    @Test
    void cladWireOfOneMetalIsASolidWire() {
        CladWire clad = new CladWire(0.3e-3, 0.51181e-3, Conductor.COPPER, Conductor.COPPER);
        for (double f : new double[] {10, 1e4, 1e6, 1e8, 1e10}) {
            double[] expected = at(WIRE, f);
            assertRelative(expected[0], at(clad, f)[0], 1e-11);
            assertRelative(expected[1], at(clad, f)[1], 1e-9);
        }
    }

    @Test
    void skinEffectTakesOverWithoutOverflowAtTenGigahertzAndAbove() {
        for (double f : new double[] {1e10, 1e12, 1e14}) {
            double limit = Conductor.COPPER.surfaceResistanceOhms(f) / (2 * Math.PI * 0.51181e-3);
            assertRelative(limit + WIRE.dcResistanceOhmsPerMetre() / 4, at(WIRE, f)[0], 1e-5);
        }
        double tubeLimit = Conductor.ALUMINIUM.surfaceResistanceOhms(1e12) / (2 * Math.PI * 5.715e-3);
        assertRelative(tubeLimit, at(new TubeShield(5.715e-3, 635e-6, Conductor.ALUMINIUM), 1e12)[0], 1e-4);
    }

    /** Rs and skin depth of copper, 5.8e7 S/m. */
    @ParameterizedTest
    @CsvSource({
        "1e6, 2.6089507e-4, 66.085493e-6",
        "55e6, 1.9348496e-3, 8.9109661e-6",
        "1e8, 2.6089507e-3, 6.6085493e-6",
        "1e9, 8.2502265e-3, 2.0898068e-6"
    })
    void copperHasItsSurfaceResistanceAndSkinDepth(double frequency, double resistance, double depth) {
        assertRelative(resistance, Conductor.COPPER.surfaceResistanceOhms(frequency), 3e-8);
        assertRelative(depth, Conductor.COPPER.skinDepthMetres(frequency), 3e-8);
    }

    @Test
    void fittedSurfaceStaysNearTheWireWhoseLimitsItHas() {
        double k = Math.sqrt(Conductor.COPPER.permeability() / 5.8e7) / (2 * Math.PI * 0.51181e-3);
        FittedSurface fitted = new FittedSurface(WIRE.dcResistanceOhmsPerMetre(), k, 0.00393);
        assertRelative(WIRE.dcInductanceHenriesPerMetre(), fitted.dcInductanceHenriesPerMetre(), 1e-12);
        for (double f = 10; f < 1e9; f *= 1.5) {
            double[] wire = at(WIRE, f);
            double[] near = at(fitted, f);
            double error = Math.hypot(near[0] - wire[0], near[1] - wire[1]) / Math.hypot(wire[0], wire[1]);
            assertTrue(error < 0.1, "at " + f + " Hz: " + error);
        }
    }

    @Test
    void braidTubeHasTheResistanceItWasMadeFor() {
        TubeShield braid = TubeShield.forBraid(1.5e-3, 0.012, Conductor.COPPER.withConductivityFactor(0.1));
        assertRelative(0.012, braid.dcResistanceOhmsPerMetre(), 1e-12);
    }

    @Test
    void foilAndBraidShareDirectCurrentAndTheFoilTakesTheRest() {
        TubeShield foil = new TubeShield(2.2e-3, 15e-6, Conductor.ALUMINIUM);
        FoilAndBraid shield = new FoilAndBraid(foil, 0.04, 10e-9);
        double parallel = 1 / (1 / 0.04 + 1 / foil.dcResistanceOhmsPerMetre());
        assertRelative(parallel, shield.dcResistanceOhmsPerMetre(), 1e-12);
        assertRelative(parallel, at(shield, 1)[0], 1e-6);
        assertRelative(shield.dcInductanceHenriesPerMetre(), at(shield, 1)[1] / (2 * Math.PI), 1e-6);
        assertRelative(at(foil, 1e9)[0], at(shield, 1e9)[0], 0.03);
    }
}
