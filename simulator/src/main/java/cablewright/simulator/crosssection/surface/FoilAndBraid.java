// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * Shield of a drop coax: a thin foil with a braid over it, side by side: {@code 1/Z = 1/Zfoil + 1/(R + s L)}.
 *
 * <p>Zfoil is the {@link TubeShield} of the foil, R the braid's resistance at DC, L the inductance of the gap between
 * foil and braid (plastic film and the braid's waves; some nH/m). At DC both share the current, from about 1 MHz the
 * braid is left out and the loss is that of the foil, thinner than the skin depth until some tens of MHz: why drop
 * cable loses more at 5 MHz than a solid tube would.
 *
 * <p>Validity: leakage through the shield is not in it. Causal and passive as a parallel circuit of such.
 *
 * <p>Source: circuit derived here; foil by S. A. Schelkunoff, Bell System Technical Journal 13 (1934) 532-579.
 *
 * @param foil the foil
 * @param braidResistanceOhmsPerMetre R at 20 degrees Celsius, above 0
 * @param gapInductanceHenriesPerMetre L, 0 or more
 */
public record FoilAndBraid(
        TubeShield foil,
        @Above(floor = 0) double braidResistanceOhmsPerMetre,
        @Between(least = 0) double gapInductanceHenriesPerMetre)
        implements SurfaceImpedance {

    // Checks the ranges.
    public FoilAndBraid {
        Require.components(FoilAndBraid.class, foil, braidResistanceOhmsPerMetre, gapInductanceHenriesPerMetre);
    }

    @Override
    public void evaluate(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        foil.evaluate(sRe, sIm, outRe, outIm);
        ComplexBlock shield = new ComplexBlock(outRe, outIm);
        ComplexBlock braid = new ComplexBlock(sRe.length)
                .setScaled(new ComplexBlock(sRe, sIm), gapInductanceHenriesPerMetre)
                .plus(braidResistanceOhmsPerMetre);
        ComplexBlock product = new ComplexBlock(sRe.length).setProduct(shield, braid);
        shield.setQuotient(product, braid.plus(shield));
    }

    private double braidShare() {
        double foilResistance = foil.dcResistanceOhmsPerMetre();
        return foilResistance / (foilResistance + braidResistanceOhmsPerMetre);
    }

    @Override
    public double dcResistanceOhmsPerMetre() {
        return braidShare() * braidResistanceOhmsPerMetre;
    }

    @Override
    public double dcInductanceHenriesPerMetre() {
        double share = braidShare();
        return share * share * gapInductanceHenriesPerMetre
                + (1 - share) * (1 - share) * foil.dcInductanceHenriesPerMetre();
    }

    @Override
    public FoilAndBraid atTemperature(double celsius) {
        TubeShield warm = foil.atTemperature(celsius);
        double growth = foil.conductor().conductivitySiemensPerMetre()
                / warm.conductor().conductivitySiemensPerMetre();
        return new FoilAndBraid(warm, braidResistanceOhmsPerMetre * growth, gapInductanceHenriesPerMetre);
    }
}
