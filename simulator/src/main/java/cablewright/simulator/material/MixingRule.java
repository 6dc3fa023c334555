// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Require;

/**
 * Named laws for the permittivity of a mixture of inclusions (water) in a host (the cable's dielectric), each applied
 * to the complex permittivities at every s.
 *
 * <p>f: volume fraction of inclusions; eh, ei: permittivity of host and inclusion. The branch of every root is the one
 * that is analytic in the right half plane and real on its axis, so mixtures of causal passive materials stay so.
 *
 * <p>Validity: grains small against the wavelength. The same fraction gives very different results by shape of the
 * wet space, so say which rule was meant: the two bounds enclose all shapes.
 *
 * <p>Source: A. Sihvola, Electromagnetic Mixing Formulas and Applications, IEE 1999 (from memory); the bounds are O.
 * Wiener's (1912).
 */
public enum MixingRule {
    /**
     * Separate round drops in a matrix: {@code eh + 3 f eh (ei-eh)/(ei+2eh-f(ei-eh))}. Lowest of all isotropic
     * mixtures.
     */
    MAXWELL_GARNETT {
        @Override
        void mixOne(double f, double[] p) {
            double dRe = p[EI] - p[EH];
            double dIm = p[EI + 1] - p[EH + 1];
            double denRe = p[EI] + 2 * p[EH] - f * dRe;
            double denIm = p[EI + 1] + 2 * p[EH + 1] - f * dIm;
            double square = denRe * denRe + denIm * denIm;
            double qRe = 3 * f * (dRe * denRe + dIm * denIm) / square;
            double qIm = 3 * f * (dIm * denRe - dRe * denIm) / square;
            p[OUT] = p[EH] + qRe * p[EH] - qIm * p[EH + 1];
            p[OUT + 1] = p[EH + 1] + qRe * p[EH + 1] + qIm * p[EH];
        }
    },
    /**
     * Drops and plastic on equal terms, which join up from a third on:
     * {@code [b + sqrt(b^2 + 8 eh ei)]/4, b = (3f-1)ei + (2-3f)eh}.
     */
    BRUGGEMAN {
        @Override
        void mixOne(double f, double[] p) {
            double bRe = (3 * f - 1) * p[EI] + (2 - 3 * f) * p[EH];
            double bIm = (3 * f - 1) * p[EI + 1] + (2 - 3 * f) * p[EH + 1];
            double rRe = bRe * bRe - bIm * bIm + 8 * (p[EH] * p[EI] - p[EH + 1] * p[EI + 1]);
            double rIm = 2 * bRe * bIm + 8 * (p[EH] * p[EI + 1] + p[EH + 1] * p[EI]);
            double magnitude = Math.sqrt(rRe * rRe + rIm * rIm);
            double rootRe = Math.sqrt(0.5 * (magnitude + Math.abs(rRe)));
            double rootIm = rootRe == 0 ? 0 : 0.5 * rIm / rootRe;
            if (rRe < 0) {
                double swap = rootRe;
                rootRe = Math.abs(rootIm);
                rootIm = Math.copySign(swap, rIm);
            }
            chooseRoot(0.25 * bRe, 0.25 * bIm, 0.25 * rootRe, 0.25 * rootIm, p);
        }
    },
    /** Cube roots add: {@code (f ei^(1/3) + (1-f) eh^(1/3))^3}. Joined wet space of low contrast. */
    LOOYENGA {
        @Override
        void mixOne(double f, double[] p) {
            cubeRoot(p, EI);
            cubeRoot(p, EH);
            blend(f, p);
            double squareRe = p[OUT] * p[OUT] - p[OUT + 1] * p[OUT + 1];
            double squareIm = 2 * p[OUT] * p[OUT + 1];
            double re = squareRe * p[OUT] - squareIm * p[OUT + 1];
            p[OUT + 1] = squareRe * p[OUT + 1] + squareIm * p[OUT];
            p[OUT] = re;
        }
    },
    /** Complex refractive indices add: {@code (f ei^(1/2) + (1-f) eh^(1/2))^2}. Wave crosses layer after layer. */
    CRIM {
        @Override
        void mixOne(double f, double[] p) {
            root(p, EI);
            root(p, EH);
            blend(f, p);
            double re = p[OUT] * p[OUT] - p[OUT + 1] * p[OUT + 1];
            p[OUT + 1] = 2 * p[OUT] * p[OUT + 1];
            p[OUT] = re;
        }
    },
    /** Layers across the field: {@code 1/(f/ei + (1-f)/eh)}. Nothing wets less. */
    SERIES_BOUND {
        @Override
        void mixOne(double f, double[] p) {
            double si = f / (p[EI] * p[EI] + p[EI + 1] * p[EI + 1]);
            double sh = (1 - f) / (p[EH] * p[EH] + p[EH + 1] * p[EH + 1]);
            double re = si * p[EI] + sh * p[EH];
            double im = -si * p[EI + 1] - sh * p[EH + 1];
            double square = re * re + im * im;
            p[OUT] = re / square;
            p[OUT + 1] = -im / square;
        }
    },
    /** Layers along the field: {@code f ei + (1-f) eh}. Nothing wets more. */
    PARALLEL_BOUND {
        @Override
        void mixOne(double f, double[] p) {
            blend(f, p);
        }
    };

    private static final int EH = 0;
    private static final int EI = 2;
    private static final int OUT = 4;
    private static final int S = 6;

    /**
     * Mixes at one point: host in p[0..1], inclusion in p[2..3] (both may be spoilt), result to p[4..5], s in
     * p[6..7].
     */
    abstract void mixOne(double f, double[] p);

    /**
     * Mixes at every frequency; the result replaces the host.
     *
     * @param fraction volume fraction of the inclusion, 0 to 1
     * @param sRe real parts of s
     * @param sIm imaginary parts of s
     * @param hostRe host permittivity in, mixture out, real parts
     * @param hostIm the same, imaginary parts
     * @param inclusionRe permittivity of the inclusion, real parts
     * @param inclusionIm the same, imaginary parts
     * @throws IllegalArgumentException if the fraction is outside 0 to 1
     */
    public void mix(
            double fraction,
            double[] sRe,
            double[] sIm,
            double[] hostRe,
            double[] hostIm,
            double[] inclusionRe,
            double[] inclusionIm) {
        Require.between("fraction", fraction, 0, 1);
        double[] p = new double[8];
        for (int i = 0; i < hostRe.length; i++) {
            p[EH] = hostRe[i];
            p[EH + 1] = hostIm[i];
            p[EI] = inclusionRe[i];
            p[EI + 1] = inclusionIm[i];
            p[S] = sRe[i];
            p[S + 1] = sIm[i];
            mixOne(fraction, p);
            hostRe[i] = p[OUT];
            hostIm[i] = p[OUT + 1];
        }
    }

    private static void blend(double f, double[] p) {
        p[OUT] = f * p[EI] + (1 - f) * p[EH];
        p[OUT + 1] = f * p[EI + 1] + (1 - f) * p[EH + 1];
    }

    /** Root in the right half plane of a number that lies there. */
    private static void root(double[] p, int at) {
        double size = Math.sqrt(p[at] * p[at] + p[at + 1] * p[at + 1]);
        double re = Math.sqrt(0.5 * (size + p[at]));
        p[at + 1] = 0.5 * p[at + 1] / re;
        p[at] = re;
    }

    private static void cubeRoot(double[] p, int at) {
        double size = Math.cbrt(Math.sqrt(p[at] * p[at] + p[at + 1] * p[at + 1]));
        double angle = Math.atan2(p[at + 1], p[at]) / 3;
        p[at] = size * Math.cos(angle);
        p[at + 1] = size * Math.sin(angle);
    }

    /**
     * Of centre plus or minus root takes the passive one. A passive permittivity lies between the positive real axis
     * and the direction of 1/s, so turned by half the angle of s it lies within a quarter turn about the real axis;
     * the other root does not.
     */
    private static void chooseRoot(double centreRe, double centreIm, double rootRe, double rootIm, double[] p) {
        double size = Math.sqrt(p[S] * p[S] + p[S + 1] * p[S + 1]);
        double cos = Math.sqrt(0.5 * (size + p[S]) / size);
        double sin = 0.5 * p[S + 1] / (size * cos);
        double plusRe = centreRe + rootRe;
        double plusIm = centreIm + rootIm;
        double minusRe = centreRe - rootRe;
        double minusIm = centreIm - rootIm;
        double plus = (plusRe * cos - plusIm * sin) / Math.sqrt(plusRe * plusRe + plusIm * plusIm);
        double minus = (minusRe * cos - minusIm * sin) / Math.sqrt(minusRe * minusRe + minusIm * minusIm);
        if (minus > plus) {
            settle(minusRe, minusIm, plusRe, plusIm, p);
        } else {
            settle(plusRe, plusIm, minusRe, minusIm, p);
        }
    }

    /**
     * Puts the chosen root; where it is the smaller one it comes from the product -eh ei/2 of both, free of
     * cancellation.
     */
    private static void settle(double re, double im, double otherRe, double otherIm, double[] p) {
        double other = otherRe * otherRe + otherIm * otherIm;
        if (re * re + im * im >= other) {
            p[OUT] = re;
            p[OUT + 1] = im;
            return;
        }
        double productRe = -0.5 * (p[EH] * p[EI] - p[EH + 1] * p[EI + 1]);
        double productIm = -0.5 * (p[EH] * p[EI + 1] + p[EH + 1] * p[EI]);
        p[OUT] = (productRe * otherRe + productIm * otherIm) / other;
        p[OUT + 1] = (productIm * otherRe - productRe * otherIm) / other;
    }
}
