// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.material.Dielectric;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A set of complex frequencies, with the conductors and dielectrics already worked out on it.
 *
 * <p>Pieces of a cable that differ only in geometry (pinched, off centre, spread, wet) share the values of their metal
 * and plastic. Make one for a grid and hand it to every cross-section; it may be used from several threads, and the
 * values do not depend on the order of asking. It keeps up to 64 functions (16 bytes per point each); further ones are
 * worked out anew each time.
 */
public final class ContourSamples {

    private static final int CAPACITY = 64;

    private final double[] sRe;
    private final double[] sIm;
    private final Samples root;
    private final Map<Object, Samples> known = new ConcurrentHashMap<>();

    /**
     * Starts with nothing worked out.
     *
     * @param sRe real parts of s, rad/s, finite and 0 or more
     * @param sIm imaginary parts of s, rad/s, same length; s = 0 is not allowed
     * @throws IllegalArgumentException if lengths differ or an s is outside the closed right half plane or 0
     */
    public ContourSamples(double[] sRe, double[] sIm) {
        if (sRe.length != sIm.length) {
            throw new IllegalArgumentException(
                    "sIm has " + sIm.length + " values; allowed is as many as sRe, " + sRe.length + ".");
        }
        for (int i = 0; i < sRe.length; i++) {
            boolean allowed = sRe[i] >= 0 && Double.isFinite(sRe[i]) && Double.isFinite(sIm[i]);
            if (!allowed || sRe[i] == 0 && sIm[i] == 0) {
                throw new IllegalArgumentException("s[" + i + "] is " + sRe[i] + " + j " + sIm[i]
                        + " rad/s; allowed is any finite s with a real part of 0 or more, except 0.");
            }
        }
        this.sRe = sRe.clone();
        this.sIm = sIm.clone();
        this.root = new Samples(sRe.length);
        new ComplexBlock(root.re, root.im).setRoot(sRe, sIm);
    }

    public int size() {
        return sRe.length;
    }

    double[] sRe() {
        return sRe;
    }

    double[] sIm() {
        return sIm;
    }

    /** √s, for the skin effect. */
    Samples root() {
        return root;
    }

    Samples of(SurfaceImpedance conductor) {
        return keep(conductor, samples -> conductor.evaluate(sRe, sIm, samples.re, samples.im));
    }

    Samples of(Dielectric dielectric) {
        return keep(dielectric, samples -> dielectric.relativePermittivity(sRe, sIm, samples.re, samples.im));
    }

    private Samples keep(Object key, Consumer<Samples> fill) {
        Function<Object, Samples> make = ignored -> {
            Samples samples = new Samples(sRe.length);
            fill.accept(samples);
            return samples;
        };
        Samples found = known.get(key);
        if (found != null) {
            return found;
        }
        return known.size() < CAPACITY ? known.computeIfAbsent(key, make) : make.apply(key);
    }
}
