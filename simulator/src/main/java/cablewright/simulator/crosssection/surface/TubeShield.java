// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.Conductor;

/**
 * Tube whose current returns inside it, the shield of a coax:
 * {@code Zaa = eta/(2 pi a D) [I0(x) K1(y) + K0(x) I1(y)]}, {@code D = I1(y) K1(x) - I1(x) K1(y)}.
 *
 * <p>a inner and b outer radius, {@code g = sqrt(s mu sigma)}, {@code eta = g/sigma}, {@code x = g a}, {@code y = g b}.
 * It is worked out as {@code eta/(2 pi a) (q + p T)/(1 - T)} with {@code p = I0(x)/I1(x)}, {@code q = K0(x)/K1(x)} and
 * {@code T = I1(x) K1(y)/(I1(y) K1(x))}, which falls as exp(-2 g (b-a)), so nothing overflows.
 *
 * <p>Limits: {@code 1/(pi sigma (b^2 - a^2))} at DC, {@code (1 + j) Rs/(2 pi a)} high up. The resistance dips a little
 * below Rs/(2 pi a) where the wall is 1.5 to 2 skin depths: a true effect.
 *
 * <p>Validity: closed tube, even around. A braid or a foil with overlap enters as a tube of lower apparent
 * conductivity; leakage through its openings is not in it.
 *
 * <p>Source: S. A. Schelkunoff, Bell System Technical Journal 13 (1934) 532-579, eqs. 75 and 82 (numbers from memory).
 *
 * @param innerRadiusMetres a
 * @param wallMetres b - a, less than a
 * @param conductor the metal
 */
public record TubeShield(
        @Above(floor = 0) double innerRadiusMetres, @Above(floor = 0) double wallMetres, Conductor conductor)
        implements SurfaceImpedance {

    private static final double THICK = 20;

    // Checks the ranges.
    public TubeShield {
        Require.components(TubeShield.class, innerRadiusMetres, wallMetres, conductor);
        Require.above("wallMetres", wallMetres, 0, innerRadiusMetres);
    }

    /**
     * The tube that stands for a braid: its metal's apparent conductivity gives the loss at radio frequency, its wall
     * the resistance at DC.
     *
     * @param innerRadiusMetres a
     * @param dcResistanceOhmsPerMetre resistance of the braid at DC
     * @param apparent metal with the conductivity it seems to have at radio frequency
     * @return the tube
     */
    public static TubeShield forBraid(double innerRadiusMetres, double dcResistanceOhmsPerMetre, Conductor apparent) {
        Require.above("dcResistanceOhmsPerMetre", dcResistanceOhmsPerMetre, 0);
        double area = 1 / (Math.PI * dcResistanceOhmsPerMetre * apparent.conductivitySiemensPerMetre());
        double a = innerRadiusMetres;
        return new TubeShield(a, area / (a + Math.sqrt(a * a + area)), apparent);
    }

    @Override
    public void evaluate(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        RoundBessel bessel = new RoundBessel();
        double sigma = conductor.conductivitySiemensPerMetre();
        double muSigma = conductor.permeability() * sigma;
        double a = innerRadiusMetres;
        double scale = 1 / (2 * Math.PI * a * sigma);
        for (int i = 0; i < sRe.length; i++) {
            double tRe = muSigma * sRe[i];
            double tIm = muSigma * sIm[i];
            double gRe = Math.sqrt(0.5 * (Math.hypot(tRe, tIm) + tRe));
            double gIm = 0.5 * tIm / gRe;
            if (gRe * wallMetres > THICK) {
                bessel.decayRatio(gRe * a, gIm * a);
                outRe[i] = scale * (gRe * bessel.qRe - gIm * bessel.qIm);
                outIm[i] = scale * (gRe * bessel.qIm + gIm * bessel.qRe);
            } else {
                onePoint(bessel, gRe, gIm, scale, i, outRe, outIm);
            }
        }
    }

    private void onePoint(
            RoundBessel bessel, double gRe, double gIm, double scale, int i, double[] outRe, double[] outIm) {
        double a = innerRadiusMetres;
        double b = a + wallMetres;
        bessel.all(gRe * b, gIm * b);
        double farRe = bessel.wRe;
        double farIm = bessel.wIm;
        bessel.all(gRe * a, gIm * a);
        double decay = Math.exp(-2 * gRe * wallMetres) / (bessel.wRe * bessel.wRe + bessel.wIm * bessel.wIm);
        double quotientRe = decay * (farRe * bessel.wRe + farIm * bessel.wIm);
        double quotientIm = decay * (farIm * bessel.wRe - farRe * bessel.wIm);
        double cos = Math.cos(2 * gIm * wallMetres);
        double sin = -Math.sin(2 * gIm * wallMetres);
        double roundRe = quotientRe * cos - quotientIm * sin;
        double roundIm = quotientRe * sin + quotientIm * cos;
        double numRe = bessel.qRe + bessel.pRe * roundRe - bessel.pIm * roundIm;
        double numIm = bessel.qIm + bessel.pRe * roundIm + bessel.pIm * roundRe;
        double denRe = 1 - roundRe;
        double square = denRe * denRe + roundIm * roundIm;
        double ratioRe = (numRe * denRe - numIm * roundIm) / square;
        double ratioIm = (numIm * denRe + numRe * roundIm) / square;
        outRe[i] = scale * (gRe * ratioRe - gIm * ratioIm);
        outIm[i] = scale * (gRe * ratioIm + gIm * ratioRe);
    }

    @Override
    public double dcResistanceOhmsPerMetre() {
        double area = Math.PI * wallMetres * (2 * innerRadiusMetres + wallMetres);
        return 1 / (area * conductor.conductivitySiemensPerMetre());
    }

    @Override
    public double dcInductanceHenriesPerMetre() {
        double a2 = innerRadiusMetres * innerRadiusMetres;
        double difference = wallMetres * (2 * innerRadiusMetres + wallMetres);
        double b2 = a2 + difference;
        double log = 0.5 * Math.log1p(difference / a2);
        double shape = b2 * b2 * log / (difference * difference) - (3 * b2 - a2) / (4 * difference);
        return conductor.permeability() / (2 * Math.PI) * shape;
    }

    @Override
    public TubeShield atTemperature(double celsius) {
        return new TubeShield(innerRadiusMetres, wallMetres, conductor.atTemperature(celsius));
    }
}
