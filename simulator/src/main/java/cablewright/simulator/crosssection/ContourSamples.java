// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.material.Dielectric;
import cablewright.simulator.material.PhysicalConstants;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

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

    /** How many of the functions last asked for are found again by the object itself, without comparing contents. */
    private static final int RECENT = 8;

    private final double[] sRe;
    private final double[] sIm;
    private final ComplexBlock s;
    private final Samples root;
    private final Map<Key, Object> known = new ConcurrentHashMap<>();
    private final Recent[] recent = new Recent[RECENT];
    private int nextRecent;

    /** What is worked out of what. */
    private record Key(Class<?> kind, Object of) {}

    /** A function with the object for which it was found; immutable, so threads may see any of them. */
    private record Recent(Class<?> kind, Object of, Object value) {}

    /** A wire's impedance Zi and s/Zi, of which all that crowding adds is made. */
    record Wire(Samples impedance, Samples sOverImpedance) {}

    /** A tube's impedance Zaa, and Zaa s/(s + s1) and Zaa s/(s + 2 s1) with s1 = 4π Rdc/μ0. */
    record Tube(Samples impedance, Samples firstMode, Samples secondMode) {}

    /** s times a relative permittivity. */
    record Susceptance(Samples values) {}

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
        this.s = new ComplexBlock(this.sRe, this.sIm);
        this.root = new Samples(sRe.length);
        root.block().setRoot(sRe, sIm);
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

    Wire wire(SurfaceImpedance conductor) {
        return remembered(Wire.class, conductor, () -> {
            Samples impedance = evaluated(conductor);
            Samples quotient = new Samples(sRe.length);
            quotient.block().setQuotient(s, impedance.block());
            return new Wire(impedance, quotient);
        });
    }

    Tube tube(SurfaceImpedance conductor) {
        return remembered(Tube.class, conductor, () -> {
            Samples impedance = evaluated(conductor);
            double corner = 4 * Math.PI * conductor.dcResistanceOhmsPerMetre() / PhysicalConstants.MU_0;
            return new Tube(impedance, above(corner, impedance), above(2 * corner, impedance));
        });
    }

    /** Z s/(s + s1). */
    private Samples above(double corner, Samples impedance) {
        Samples mode = new Samples(sRe.length);
        ComplexBlock sum = new ComplexBlock(sRe.length).set(s).plus(corner);
        mode.block().setProduct(impedance.block(), s).over(sum);
        return mode;
    }

    private Samples evaluated(SurfaceImpedance conductor) {
        Samples samples = new Samples(sRe.length);
        conductor.evaluate(sRe, sIm, samples.re, samples.im);
        return samples;
    }

    Samples of(Dielectric dielectric) {
        return remembered(Samples.class, dielectric, () -> {
            Samples samples = new Samples(sRe.length);
            dielectric.relativePermittivity(sRe, sIm, samples.re, samples.im);
            return samples;
        });
    }

    Samples susceptance(Dielectric dielectric) {
        return remembered(Susceptance.class, dielectric, () -> {
                    Samples product = new Samples(sRe.length);
                    product.block().setProduct(s, of(dielectric).block());
                    return new Susceptance(product);
                })
                .values();
    }

    private <T> T remembered(Class<T> kind, Object of, Supplier<T> make) {
        for (Recent one : recent) {
            if (one != null && one.of() == of && one.kind() == kind) {
                return kind.cast(one.value());
            }
        }
        Key key = new Key(kind, of);
        Object found = known.get(key);
        if (found == null) {
            T made = make.get();
            found = known.size() < CAPACITY ? Objects.requireNonNullElse(known.putIfAbsent(key, made), made) : made;
        }
        recent[(nextRecent++ & 0x7fffffff) % RECENT] = new Recent(kind, of, found);
        return kind.cast(found);
    }
}
