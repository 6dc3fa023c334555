// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.kernel.ComplexExp;

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
        void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion) {
            ComplexBlock difference = copy(inclusion).minus(host);
            ComplexBlock sum = copy(inclusion).plus(2, host).plus(-f, difference);
            host.times(difference.over(sum).times(3 * f).plus(1));
        }
    },
    /**
     * Drops and plastic on equal terms, which join up from a third on:
     * {@code [b + sqrt(b^2 + 8 eh ei)]/4, b = (3f-1)ei + (2-3f)eh}.
     */
    BRUGGEMAN {
        @Override
        void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion) {
            ComplexBlock product = copy(host).times(inclusion);
            ComplexBlock b = host.times(2 - 3 * f).plus(3 * f - 1, inclusion);
            ComplexBlock square = copy(b).times(b).plus(8, product);
            double[] root = new double[2];
            for (int k = 0; k < host.count(); k++) {
                root(square.re(k), square.im(k), root);
                choose(0.25 * b.re(k), 0.25 * b.im(k), 0.25 * root[0], 0.25 * root[1], s.re(k), s.im(k), root);
                settle(root, 0.5 * b.re(k) - root[0], 0.5 * b.im(k) - root[1], product.re(k), product.im(k));
                host.put(k, root[0], root[1]);
            }
        }
    },
    /** Cube roots add: {@code (f ei^(1/3) + (1-f) eh^(1/3))^3}. Joined wet space of low contrast. */
    LOOYENGA {
        @Override
        void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion) {
            blend(f, cubeRoot(host), cubeRoot(copy(inclusion)));
            host.times(copy(host).times(host));
        }
    },
    /** Complex refractive indices add: {@code (f ei^(1/2) + (1-f) eh^(1/2))^2}. Wave crosses layer after layer. */
    CRIM {
        @Override
        void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion) {
            ComplexBlock root = new ComplexBlock(host.count()).setRoot(host.real(), host.imaginary());
            ComplexBlock other = new ComplexBlock(host.count()).setRoot(inclusion.real(), inclusion.imaginary());
            blend(f, root, other);
            host.setProduct(root, root);
        }
    },
    /** Layers across the field: {@code 1/(f/ei + (1-f)/eh)}. Nothing wets less. */
    SERIES_BOUND {
        @Override
        void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion) {
            ComplexBlock across = copy(host).times(f).plus(1 - f, inclusion);
            host.times(inclusion).over(across);
        }
    },
    /** Layers along the field: {@code f ei + (1-f) eh}. Nothing wets more. */
    PARALLEL_BOUND {
        @Override
        void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion) {
            blend(f, host, inclusion);
        }
    };

    /** Mixes at every s; the result replaces the host, and the inclusion stays as it is. */
    abstract void mix(double f, ComplexBlock s, ComplexBlock host, ComplexBlock inclusion);

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
        mix(
                fraction,
                new ComplexBlock(sRe, sIm),
                new ComplexBlock(hostRe, hostIm),
                new ComplexBlock(inclusionRe, inclusionIm));
    }

    private static ComplexBlock copy(ComplexBlock values) {
        return new ComplexBlock(values.count()).set(values);
    }

    /** The result replaces the host. */
    private static void blend(double f, ComplexBlock host, ComplexBlock inclusion) {
        host.times(1 - f).plus(f, inclusion);
    }

    private static ComplexBlock cubeRoot(ComplexBlock values) {
        for (int k = 0; k < values.count(); k++) {
            double re = values.re(k);
            double im = values.im(k);
            double size = Math.cbrt(Math.sqrt(re * re + im * im));
            double angle = Math.atan2(im, re) / 3;
            values.put(k, size * Math.cos(angle), size * Math.sin(angle));
        }
        return values;
    }

    /** A root of any number, without loss of digits. */
    private static void root(double re, double im, double[] out) {
        double larger = Math.sqrt(0.5 * (Math.sqrt(re * re + im * im) + Math.abs(re)));
        double smaller = larger == 0 ? 0 : 0.5 * im / larger;
        out[0] = re < 0 ? Math.abs(smaller) : larger;
        out[1] = re < 0 ? Math.copySign(larger, im) : smaller;
    }

    /**
     * Of centre plus or minus root takes the passive one. A passive permittivity lies between the positive real axis
     * and the direction of 1/s, so turned by half the angle of s it lies within a quarter turn about the real axis;
     * the other root does not.
     */
    private static void choose(
            double centreRe, double centreIm, double rootRe, double rootIm, double sRe, double sIm, double[] out) {
        double size = Math.sqrt(sRe * sRe + sIm * sIm);
        double cos = Math.sqrt(0.5 * (size + sRe) / size);
        double sin = 0.5 * sIm / (size * cos);
        double plusRe = centreRe + rootRe;
        double plusIm = centreIm + rootIm;
        double minusRe = centreRe - rootRe;
        double minusIm = centreIm - rootIm;
        double plus = (plusRe * cos - plusIm * sin) / Math.sqrt(plusRe * plusRe + plusIm * plusIm);
        double minus = (minusRe * cos - minusIm * sin) / Math.sqrt(minusRe * minusRe + minusIm * minusIm);
        out[0] = minus > plus ? minusRe : plusRe;
        out[1] = minus > plus ? minusIm : plusIm;
    }

    /** Where the chosen root is the smaller one it comes from the product -eh ei/2 of both, free of cancellation. */
    private static void settle(double[] chosen, double otherRe, double otherIm, double productRe, double productIm) {
        double other = otherRe * otherRe + otherIm * otherIm;
        if (chosen[0] * chosen[0] + chosen[1] * chosen[1] < other) {
            ComplexExp.divide(-0.5 * productRe, -0.5 * productIm, otherRe, otherIm, chosen);
        }
    }
}
