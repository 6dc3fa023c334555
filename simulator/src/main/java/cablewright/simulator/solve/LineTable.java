// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.crosssection.ContourSamples;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.PrimaryConstants;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What uniform lines do at a list of frequencies: γ = √(z y) and Zc = √(z/y) of each cross-section, and e^(−2γl) of each
 * length of it. Kept while memory allows, so that a cable of which one event changed costs little more than that event.
 *
 * <p>z and y are positive real functions, so their arguments lie within ±90° and the principal root of z y is the wave
 * that decays. For one thread at a time.
 */
public final class LineTable {

    private final Frequencies frequencies;
    private final long mostKept;
    private final double[] sRe;
    private final double[] sIm;
    private final ContourSamples samples;
    private final Map<CrossSection, Wave> waves = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<Length, ComplexArray> roundTrips = new LinkedHashMap<>(16, 0.75f, true);

    /**
     * Makes an empty table.
     *
     * @param frequencies the frequencies for which it holds
     * @param mostKept most numbers to keep of each sort, 8 bytes each; what was not asked for longest goes first
     */
    public LineTable(Frequencies frequencies, long mostKept) {
        this.frequencies = frequencies;
        this.mostKept = mostKept;
        this.sRe = frequencies.real();
        this.sIm = frequencies.imaginary();
        this.samples = new ContourSamples(sRe, sIm);
    }

    /**
     * The wave on a uniform line.
     *
     * @param propagation γ at each frequency [1/m], real part 0 or more
     * @param impedance Zc at each frequency [Ω]
     */
    public record Wave(ComplexArray propagation, ComplexArray impedance) {}

    private record Length(CrossSection section, double metres) {}

    /**
     * Returns the frequencies for which the table holds.
     *
     * @return the frequencies
     */
    public Frequencies frequencies() {
        return frequencies;
    }

    public double sRe(int k) {
        return sRe[k];
    }

    public double sIm(int k) {
        return sIm[k];
    }

    /**
     * Returns the wave on a line of a cross-section.
     *
     * @param section the cross-section
     * @return γ and Zc
     */
    public Wave wave(CrossSection section) {
        Wave known = waves.get(section);
        if (known != null) {
            return known;
        }
        Wave computed = compute(section);
        waves.put(section, computed);
        trim(waves, 4L * frequencies.count());
        return computed;
    }

    /**
     * Returns what is left of a wave that went to the end of a line and back.
     *
     * @param section the line's cross-section
     * @param metres the line's length [m]
     * @return e^(−2γl)
     */
    public ComplexArray roundTrip(CrossSection section, double metres) {
        Length key = new Length(section, metres);
        ComplexArray known = roundTrips.get(key);
        if (known != null) {
            return known;
        }
        ComplexArray computed = decay(wave(section).propagation(), 2 * metres);
        roundTrips.put(key, computed);
        trim(roundTrips, 2L * frequencies.count());
        return computed;
    }

    private void trim(Map<?, ?> kept, long numbersEach) {
        Iterator<?> oldest = kept.keySet().iterator();
        while (kept.size() > 4 && kept.size() * numbersEach > mostKept) {
            oldest.next();
            oldest.remove();
        }
    }

    /** Computes e^(−γl) for a length at every frequency. */
    public static ComplexArray decay(ComplexArray propagation, double metres) {
        int n = propagation.count();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int k = 0; k < n; k++) {
            double size = Math.exp(-metres * propagation.re(k));
            double angle = -metres * propagation.im(k);
            re[k] = size * Math.cos(angle);
            im[k] = size * Math.sin(angle);
        }
        return ComplexArray.takingOver(re, im);
    }

    private Wave compute(CrossSection section) {
        PrimaryConstants constants = section.primaryConstants(samples);
        int n = sRe.length;
        double[] gRe = new double[n];
        double[] gIm = new double[n];
        double[] cRe = new double[n];
        double[] cIm = new double[n];
        for (int k = 0; k < n; k++) {
            double zRe = constants.zRe()[k];
            double zIm = constants.zIm()[k];
            double yRe = constants.yRe()[k];
            double yIm = constants.yIm()[k];
            rootOfProduct(zRe, zIm, yRe, yIm, k, gRe, gIm);
            double size = gRe[k] * gRe[k] + gIm[k] * gIm[k];
            cRe[k] = (zRe * gRe[k] + zIm * gIm[k]) / size;
            cIm[k] = (zIm * gRe[k] - zRe * gIm[k]) / size;
        }
        return new Wave(ComplexArray.takingOver(gRe, gIm), ComplexArray.takingOver(cRe, cIm));
    }

    /** Principal root of (a + jb)(c + jd) into place k; the larger part first, so that neither loses digits. */
    private static void rootOfProduct(double a, double b, double c, double d, int k, double[] rootRe, double[] rootIm) {
        double re = a * c - b * d;
        double im = a * d + b * c;
        double size = Math.sqrt(Math.sqrt(a * a + b * b) * Math.sqrt(c * c + d * d));
        // Of w = p + jq: p² = (|w| + re)/2, q² = (|w| − re)/2, with |w| = size².
        double whole = size * size;
        if (re >= 0) {
            double p = Math.sqrt((whole + re) / 2);
            rootRe[k] = p;
            rootIm[k] = im / (2 * p);
        } else {
            double q = Math.copySign(Math.sqrt((whole - re) / 2), im);
            rootRe[k] = im / (2 * q);
            rootIm[k] = q;
        }
    }
}
