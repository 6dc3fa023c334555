// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

/**
 * The combinations of modified Bessel functions that round conductors need, at complex argument z with |arg z| up to a
 * quarter turn less a half (the square root of the right half plane), from 0 to any size without overflow.
 *
 * <p>Three methods meet: power series for small |z|, downward recurrence (I) and Steed's continued fraction (K) in
 * between, asymptotic series from |z| = 25. Relative error stays below 1e-13 (tested against 40-digit values).
 *
 * <p>The last result stays in the fields, so that loops over thousands of points create no objects: make one per loop,
 * never share one between threads.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 9.6 and 9.7 (from memory); I. J. Thompson and
 * A. R. Barnett, J. Comput. Phys. 64 (1986) 490-509, for the continued fraction (from memory).
 */
final class RoundBessel {

    private static final double ASYMPTOTIC_FROM = 25;
    private static final double EULER = 0.57721566490153286;
    private static final int TERMS = 12;

    /** Coefficients of I0/I1 in powers of 1/z, even and odd ones apart. */
    private static final double[] RATIO_EVEN = ratioCoefficients(0);

    private static final double[] RATIO_ODD = ratioCoefficients(1);

    /** Coefficients of the decaying series of K of order 0 and 1 in powers of 1/z, even and odd ones apart. */
    private static final double[] K0_EVEN = decayCoefficients(0, 0);

    private static final double[] K0_ODD = decayCoefficients(0, 1);
    private static final double[] K1_EVEN = decayCoefficients(1, 0);
    private static final double[] K1_ODD = decayCoefficients(1, 1);

    /** Result: z I0(z) / (2 I1(z)), which is 1 at z = 0. */
    double halfRe;

    double halfIm;

    /** Result: q = K0(z)/K1(z). */
    double qRe;

    double qIm;

    /** Result: p = I0(z)/I1(z). */
    double pRe;

    double pIm;

    /** Result: w = exp(2 z) K1(z) / (pi I1(z)). */
    double wRe;

    double wIm;

    private double accRe;
    private double accIm;

    /** Puts z I0(z)/(2 I1(z)) into half, where t = z^2/4 and z its root in the right half plane. */
    void half(double tRe, double tIm) {
        double size = Math.hypot(tRe, tIm);
        if (size <= 9) {
            halfBySeries(tRe, tIm, size);
            return;
        }
        double zRe = Math.sqrt(2 * (size + tRe));
        double zIm = 2 * tIm / zRe;
        if (4 * size < ASYMPTOTIC_FROM * ASYMPTOTIC_FROM) {
            halfByRecurrence(zRe, zIm, 2 * Math.sqrt(size));
        } else {
            halfByAsymptotic(zRe, zIm, tRe, tIm, size);
        }
    }

    private void halfBySeries(double tRe, double tIm, double size) {
        int last = size < 0.1 ? 9 : size < 2 ? 15 : 23;
        double nRe = 1;
        double nIm = 0;
        double dRe = 1;
        double dIm = 0;
        for (int k = last; k >= 1; k--) {
            double f0 = 1.0 / ((double) k * k);
            double f1 = 1.0 / ((double) k * (k + 1));
            double re = 1 + f0 * (tRe * nRe - tIm * nIm);
            nIm = f0 * (tRe * nIm + tIm * nRe);
            nRe = re;
            re = 1 + f1 * (tRe * dRe - tIm * dIm);
            dIm = f1 * (tRe * dIm + tIm * dRe);
            dRe = re;
        }
        divide(nRe, nIm, dRe, dIm);
        halfRe = accRe;
        halfIm = accIm;
    }

    /** Miller's downward recurrence: I(n-1) = I(n+1) + (2n/z) I(n), started where I(n) is negligible. */
    private void halfByRecurrence(double zRe, double zIm, double size) {
        divide(2, 0, zRe, zIm);
        double stepRe = accRe;
        double stepIm = accIm;
        double aboveRe = 0;
        double aboveIm = 0;
        double re = 1;
        double im = 0;
        for (int n = (int) (14 + 1.15 * size); n >= 1; n--) {
            double cRe = n * stepRe;
            double cIm = n * stepIm;
            double belowRe = aboveRe + cRe * re - cIm * im;
            double belowIm = aboveIm + cRe * im + cIm * re;
            aboveRe = re;
            aboveIm = im;
            re = belowRe;
            im = belowIm;
        }
        divide(0.5 * re, 0.5 * im, aboveRe, aboveIm);
        halfRe = accRe * zRe - accIm * zIm;
        halfIm = accRe * zIm + accIm * zRe;
    }

    private void halfByAsymptotic(double zRe, double zIm, double tRe, double tIm, double size) {
        double scale = 0.25 / (size * size);
        double uRe = tRe * scale;
        double uIm = -tIm * scale;
        int terms = terms(4 * size);
        poly(RATIO_EVEN, terms, uRe, uIm);
        double evenRe = accRe;
        double evenIm = accIm;
        poly(RATIO_ODD, terms, uRe, uIm);
        halfRe = 0.5 * (zRe * evenRe - zIm * evenIm + accRe);
        halfIm = 0.5 * (zRe * evenIm + zIm * evenRe + accIm);
    }

    /** Puts q alone; the cheap way for a wall that is many skin depths thick. */
    void decayRatio(double zRe, double zIm) {
        double square = zRe * zRe + zIm * zIm;
        if (square < ASYMPTOTIC_FROM * ASYMPTOTIC_FROM) {
            all(zRe, zIm);
            return;
        }
        double iRe = zRe / square;
        double iIm = -zIm / square;
        double uRe = iRe * iRe - iIm * iIm;
        double uIm = 2 * iRe * iIm;
        int terms = terms(square);
        poly(RATIO_EVEN, terms, uRe, uIm);
        double evenRe = accRe;
        double evenIm = accIm;
        poly(RATIO_ODD, terms, uRe, uIm);
        qRe = evenRe - (accRe * iRe - accIm * iIm);
        qIm = evenIm - (accRe * iIm + accIm * iRe);
    }

    /** Puts p, q and w at z. */
    void all(double zRe, double zIm) {
        double square = zRe * zRe + zIm * zIm;
        if (square >= ASYMPTOTIC_FROM * ASYMPTOTIC_FROM) {
            allByAsymptotic(zRe, zIm, square);
            return;
        }
        half(0.25 * (zRe * zRe - zIm * zIm), 0.5 * zRe * zIm);
        divide(2 * halfRe, 2 * halfIm, zRe, zIm);
        pRe = accRe;
        pIm = accIm;
        if (square <= 4) {
            decayBySeries(zRe, zIm, square);
        } else {
            decayByFraction(zRe, zIm);
        }
    }

    private void allByAsymptotic(double zRe, double zIm, double square) {
        double iRe = zRe / square;
        double iIm = -zIm / square;
        double uRe = iRe * iRe - iIm * iIm;
        double uIm = 2 * iRe * iIm;
        int terms = terms(square);
        poly(K0_EVEN, terms, uRe, uIm);
        double e0Re = accRe;
        double e0Im = accIm;
        poly(K0_ODD, terms, uRe, uIm);
        double o0Re = accRe * iRe - accIm * iIm;
        double o0Im = accRe * iIm + accIm * iRe;
        poly(K1_EVEN, terms, uRe, uIm);
        double e1Re = accRe;
        double e1Im = accIm;
        poly(K1_ODD, terms, uRe, uIm);
        double o1Re = accRe * iRe - accIm * iIm;
        double o1Im = accRe * iIm + accIm * iRe;
        double growRe = e1Re - o1Re;
        double growIm = e1Im - o1Im;
        double decayRe = e1Re + o1Re;
        double decayIm = e1Im + o1Im;
        divide(e0Re - o0Re, e0Im - o0Im, growRe, growIm);
        pRe = accRe;
        pIm = accIm;
        divide(e0Re + o0Re, e0Im + o0Im, decayRe, decayIm);
        qRe = accRe;
        qIm = accIm;
        divide(decayRe, decayIm, growRe, growIm);
        wRe = accRe;
        wIm = accIm;
    }

    /** K0 by its logarithmic series, K1 by I0 K1 + I1 K0 = 1/z. */
    private void decayBySeries(double zRe, double zIm, double square) {
        double tRe = 0.25 * (zRe * zRe - zIm * zIm);
        double tIm = 0.5 * zRe * zIm;
        double i0Re = 1;
        double i0Im = 0;
        double sumRe = 0;
        double sumIm = 0;
        double termRe = 1;
        double termIm = 0;
        double harmonic = 0;
        for (int k = 1; k <= 14; k++) {
            double f = 1.0 / ((double) k * k);
            double re = f * (termRe * tRe - termIm * tIm);
            termIm = f * (termRe * tIm + termIm * tRe);
            termRe = re;
            harmonic += 1.0 / k;
            i0Re += termRe;
            i0Im += termIm;
            sumRe += harmonic * termRe;
            sumIm += harmonic * termIm;
        }
        double logRe = 0.5 * Math.log(0.25 * square) + EULER;
        double logIm = Math.atan2(zIm, zRe);
        double k0Re = sumRe - (logRe * i0Re - logIm * i0Im);
        double k0Im = sumIm - (logRe * i0Im + logIm * i0Re);
        divide(i0Re, i0Im, pRe, pIm);
        double i1Re = accRe;
        double i1Im = accIm;
        double restRe = zRe / square - (i1Re * k0Re - i1Im * k0Im);
        double restIm = -zIm / square - (i1Re * k0Im + i1Im * k0Re);
        divide(restRe, restIm, i0Re, i0Im);
        double k1Re = accRe;
        double k1Im = accIm;
        divide(k0Re, k0Im, k1Re, k1Im);
        qRe = accRe;
        qIm = accIm;
        divide(k1Re, k1Im, i1Re, i1Im);
        double growth = Math.exp(2 * zRe) / Math.PI;
        double cos = growth * Math.cos(2 * zIm);
        double sin = growth * Math.sin(2 * zIm);
        wRe = accRe * cos - accIm * sin;
        wIm = accRe * sin + accIm * cos;
    }

    /** Steed's second continued fraction with its sum, order 0. */
    private void decayByFraction(double zRe, double zIm) {
        double bRe = 2 * (1 + zRe);
        double bIm = 2 * zIm;
        divide(1, 0, bRe, bIm);
        double dRe = accRe;
        double dIm = accIm;
        double deltaRe = dRe;
        double deltaIm = dIm;
        double hRe = dRe;
        double hIm = dIm;
        double q1Re = 0;
        double q1Im = 0;
        double q2Re = 1;
        double q2Im = 0;
        double a = -0.25;
        double c = 0.25;
        double bigQRe = 0.25;
        double bigQIm = 0;
        double sRe = 1 + bigQRe * deltaRe;
        double sIm = bigQRe * deltaIm;
        for (int i = 2; i < 500; i++) {
            a -= 2 * (i - 1);
            c = -a * c / i;
            double newRe = (q1Re - (bRe * q2Re - bIm * q2Im)) / a;
            double newIm = (q1Im - (bRe * q2Im + bIm * q2Re)) / a;
            q1Re = q2Re;
            q1Im = q2Im;
            q2Re = newRe;
            q2Im = newIm;
            bigQRe += c * newRe;
            bigQIm += c * newIm;
            bRe += 2;
            divide(1, 0, bRe + a * dRe, bIm + a * dIm);
            dRe = accRe;
            dIm = accIm;
            double fRe = bRe * dRe - bIm * dIm - 1;
            double fIm = bRe * dIm + bIm * dRe;
            double re = fRe * deltaRe - fIm * deltaIm;
            deltaIm = fRe * deltaIm + fIm * deltaRe;
            deltaRe = re;
            hRe += deltaRe;
            hIm += deltaIm;
            double stepRe = bigQRe * deltaRe - bigQIm * deltaIm;
            double stepIm = bigQRe * deltaIm + bigQIm * deltaRe;
            sRe += stepRe;
            sIm += stepIm;
            if (Math.abs(stepRe) + Math.abs(stepIm) < 1e-17 * (Math.abs(sRe) + Math.abs(sIm))) {
                break;
            }
        }
        finishFraction(zRe, zIm, zRe + 0.5 - 0.25 * hRe, zIm - 0.25 * hIm, sRe, sIm);
    }

    /** From g = z K1/K0 and the sum s: q = z/g, w = (g/(z s))^2 (p + q) / 2. */
    private void finishFraction(double zRe, double zIm, double gRe, double gIm, double sRe, double sIm) {
        divide(zRe, zIm, gRe, gIm);
        qRe = accRe;
        qIm = accIm;
        divide(1, 0, qRe * sRe - qIm * sIm, qRe * sIm + qIm * sRe);
        double rRe = accRe * accRe - accIm * accIm;
        double rIm = 2 * accRe * accIm;
        double sumRe = 0.5 * (pRe + qRe);
        double sumIm = 0.5 * (pIm + qIm);
        wRe = rRe * sumRe - rIm * sumIm;
        wIm = rRe * sumIm + rIm * sumRe;
    }

    private void divide(double aRe, double aIm, double bRe, double bIm) {
        double scale = 1 / (bRe * bRe + bIm * bIm);
        accRe = (aRe * bRe + aIm * bIm) * scale;
        accIm = (aIm * bRe - aRe * bIm) * scale;
    }

    private void poly(double[] coefficients, int terms, double uRe, double uIm) {
        double re = coefficients[terms - 1];
        double im = 0;
        for (int k = terms - 2; k >= 0; k--) {
            double next = coefficients[k] + re * uRe - im * uIm;
            im = re * uIm + im * uRe;
            re = next;
        }
        accRe = re;
        accIm = im;
    }

    /** How many even (and odd) terms reach full precision, by |z|^2. */
    private static int terms(double square) {
        return square > 1e8 ? 2 : square > 4e4 ? 4 : square > 4e3 ? 6 : square > 1.2e3 ? 9 : TERMS;
    }

    /** I0/I1 = sum c(n) z^-n from p' = 1 - p^2 + p/z: 2 c(n) = n c(n-1) - sum of c(i) c(n-i). */
    private static double[] ratioCoefficients(int parity) {
        double[] c = new double[2 * TERMS];
        c[0] = 1;
        for (int n = 1; n < c.length; n++) {
            double sum = n * c[n - 1];
            for (int i = 1; i < n; i++) {
                sum -= c[i] * c[n - i];
            }
            c[n] = 0.5 * sum;
        }
        return everySecond(c, parity);
    }

    /** K(order) = sqrt(pi/2z) exp(-z) sum a(k) z^-k, a(k) = a(k-1) (4 order^2 - (2k-1)^2)/(8k). */
    private static double[] decayCoefficients(int order, int parity) {
        double[] a = new double[2 * TERMS];
        a[0] = 1;
        for (int k = 1; k < a.length; k++) {
            double odd = 2.0 * k - 1;
            a[k] = a[k - 1] * (4.0 * order * order - odd * odd) / (8.0 * k);
        }
        return everySecond(a, parity);
    }

    private static double[] everySecond(double[] all, int parity) {
        double[] half = new double[TERMS];
        for (int k = 0; k < TERMS; k++) {
            half[k] = all[2 * k + parity];
        }
        return half;
    }
}
