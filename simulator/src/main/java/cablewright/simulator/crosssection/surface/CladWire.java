// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.Conductor;

/**
 * Round wire of two metals, such as copper-clad steel: a core of radius r1 and a skin out to r2.
 *
 * <p>In the skin {@code E = A I0(g r) + B K0(g r)}, {@code H = (sigma/g)(A I1(g r) - B K1(g r))}; E and H meet those
 * of the core at r1. With {@code r = (sigma2/g2) E/H} of the core at r1, p and q as in {@link TubeShield} at
 * {@code x = g2 r1}, {@code rho = (r - p)/(r + q)}, T the way through the skin and p', q' at {@code y = g2 r2}:
 * {@code Z = g2/(2 pi r2 sigma2) (p' + rho T q')/(1 - rho T)}.
 *
 * <p>Limits: both metals in parallel at DC; the skin alone where it is several skin depths thick. Near one skin depth
 * the loss is slightly below that of solid copper: a true effect.
 *
 * <p>Validity: even around; permeability of the core constant (an assumption for steel).
 *
 * <p>Source: Maxwell's equations in the two layers, as S. A. Schelkunoff, Bell System Technical Journal 13 (1934), does
 * for laminated conductors (from memory).
 *
 * @param coreRadiusMetres r1
 * @param radiusMetres r2, more than r1
 * @param core inner metal
 * @param cladding outer metal
 */
public record CladWire(
        @Above(floor = 0) double coreRadiusMetres,
        @Above(floor = 0) double radiusMetres,
        Conductor core,
        Conductor cladding)
        implements SurfaceImpedance {

    private static final double THICK = 20;

    // Checks the ranges.
    public CladWire {
        Require.components(CladWire.class, coreRadiusMetres, radiusMetres, core, cladding);
        Require.above("radiusMetres", radiusMetres, coreRadiusMetres);
    }

    @Override
    public void evaluate(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        RoundBessel bessel = new RoundBessel();
        double[] reflected = new double[2];
        double sigma = cladding.conductivitySiemensPerMetre();
        double muSigma = cladding.permeability() * sigma;
        double scale = 1 / (2 * Math.PI * radiusMetres * sigma);
        double wall = radiusMetres - coreRadiusMetres;
        for (int i = 0; i < sRe.length; i++) {
            double tRe = muSigma * sRe[i];
            double tIm = muSigma * sIm[i];
            double gRe = Math.sqrt(0.5 * (Math.hypot(tRe, tIm) + tRe));
            double gIm = 0.5 * tIm / gRe;
            if (gRe * wall > THICK) {
                double quarter = 0.25 * radiusMetres * radiusMetres;
                bessel.half(quarter * tRe, quarter * tIm);
                outRe[i] = 2 * scale / radiusMetres * bessel.halfRe;
                outIm[i] = 2 * scale / radiusMetres * bessel.halfIm;
                continue;
            }
            reflect(bessel, sRe[i], sIm[i], gRe, gIm, reflected);
            double rRe = reflected[0];
            double rIm = reflected[1];
            double numRe = bessel.pRe + rRe * bessel.qRe - rIm * bessel.qIm;
            double numIm = bessel.pIm + rRe * bessel.qIm + rIm * bessel.qRe;
            double denRe = 1 - rRe;
            double square = denRe * denRe + rIm * rIm;
            double ratioRe = (numRe * denRe - numIm * rIm) / square;
            double ratioIm = (numIm * denRe + numRe * rIm) / square;
            outRe[i] = scale * (gRe * ratioRe - gIm * ratioIm);
            outIm[i] = scale * (gRe * ratioIm + gIm * ratioRe);
        }
    }

    /** Puts rho T into the result and leaves p', q' of the outside in the Bessel object. */
    private void reflect(RoundBessel bessel, double sRe, double sIm, double gRe, double gIm, double[] result) {
        double r1 = coreRadiusMetres;
        double sigma1 = core.conductivitySiemensPerMetre();
        double quarter = 0.25 * core.permeability() * sigma1 * r1 * r1;
        bessel.half(quarter * sRe, quarter * sIm);
        double load = 2 * cladding.conductivitySiemensPerMetre() / (sigma1 * r1) / (gRe * gRe + gIm * gIm);
        double loadRe = load * (bessel.halfRe * gRe + bessel.halfIm * gIm);
        double loadIm = load * (bessel.halfIm * gRe - bessel.halfRe * gIm);
        bessel.all(gRe * r1, gIm * r1);
        double aRe = loadRe - bessel.pRe;
        double aIm = loadIm - bessel.pIm;
        double sumRe = loadRe + bessel.qRe;
        double sumIm = loadIm + bessel.qIm;
        double bRe = sumRe * bessel.wRe - sumIm * bessel.wIm;
        double bIm = sumRe * bessel.wIm + sumIm * bessel.wRe;
        bessel.all(gRe * radiusMetres, gIm * radiusMetres);
        double cRe = aRe * bessel.wRe - aIm * bessel.wIm;
        double cIm = aRe * bessel.wIm + aIm * bessel.wRe;
        double wall = radiusMetres - r1;
        double decay = Math.exp(-2 * gRe * wall) / (bRe * bRe + bIm * bIm);
        double cos = decay * Math.cos(2 * gIm * wall);
        double sin = -decay * Math.sin(2 * gIm * wall);
        double quotientRe = cRe * bRe + cIm * bIm;
        double quotientIm = cIm * bRe - cRe * bIm;
        result[0] = quotientRe * cos - quotientIm * sin;
        result[1] = quotientRe * sin + quotientIm * cos;
    }

    @Override
    public double dcResistanceOhmsPerMetre() {
        return 1 / (coreConductance() + claddingConductance());
    }

    private double coreConductance() {
        return Math.PI * coreRadiusMetres * coreRadiusMetres * core.conductivitySiemensPerMetre();
    }

    private double claddingConductance() {
        double area = Math.PI * (radiusMetres - coreRadiusMetres) * (radiusMetres + coreRadiusMetres);
        return area * cladding.conductivitySiemensPerMetre();
    }

    /** That of the cladding alone: far up no current reaches the core. */
    @Override
    public double skinSlopeSquared() {
        double around = 2 * Math.PI * radiusMetres;
        return cladding.permeability() / (cladding.conductivitySiemensPerMetre() * around * around);
    }

    @Override
    public double dcInductanceHenriesPerMetre() {
        double r1 = coreRadiusMetres * coreRadiusMetres;
        double r2 = radiusMetres * radiusMetres;
        double share = coreConductance() * dcResistanceOhmsPerMetre();
        double slope = (1 - share) / (r2 - r1);
        double start = share - slope * r1;
        double skin = 0.5 * start * start * Math.log(r2 / r1)
                + start * slope * (r2 - r1)
                + 0.25 * slope * slope * (r2 * r2 - r1 * r1);
        return core.permeability() * share * share / (8 * Math.PI) + cladding.permeability() * skin / (2 * Math.PI);
    }

    @Override
    public CladWire atTemperature(double celsius) {
        return new CladWire(
                coreRadiusMetres, radiusMetres, core.atTemperature(celsius), cladding.atTemperature(celsius));
    }
}
