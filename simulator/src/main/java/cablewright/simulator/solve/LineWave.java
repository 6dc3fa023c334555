// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.crosssection.ContourSamples;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.PrimaryConstants;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.kernel.Exponential;
import cablewright.simulator.line.Frequencies;

/**
 * The wave on a uniform line at a block of frequencies: γ = √z √y and Zc = √z/√y.
 *
 * <p>z and y are positive real functions, so both lie in the right half plane: their principal roots lose no digits, and the
 * product of the roots is the wave that decays. (√(z y) itself would need a choice of branch.)
 */
public final class LineWave {

    private final Scratch scratch;
    private final Exponential exponential;
    private final ComplexBlock propagation;
    private final ComplexBlock impedance;
    private final ComplexBlock roundTrip;
    private CrossSection section;
    private double roundTripMetres = Double.NaN;

    /** What several waves may share while they are worked out, one after the other. */
    static final class Scratch {
        private final PrimaryConstants constants;
        private final ComplexBlock rootOfImpedance;
        private final ComplexBlock rootOfAdmittance;

        Scratch(int count) {
            constants = new PrimaryConstants(count);
            rootOfImpedance = new ComplexBlock(count);
            rootOfAdmittance = new ComplexBlock(count);
        }
    }

    LineWave(Scratch scratch, Exponential exponential) {
        int count = scratch.rootOfImpedance.count();
        this.scratch = scratch;
        this.exponential = exponential;
        this.propagation = new ComplexBlock(count);
        this.impedance = new ComplexBlock(count);
        this.roundTrip = new ComplexBlock(count);
    }

    /**
     * Returns the wave on a line.
     *
     * @param section the line's cross-section
     * @param frequencies the frequencies
     * @return the wave
     */
    public static LineWave on(CrossSection section, Frequencies frequencies) {
        int count = frequencies.count();
        LineWave wave = new LineWave(new Scratch(count), new Exponential(count));
        wave.compute(section, new ContourSamples(frequencies.real(), frequencies.imaginary()));
        return wave;
    }

    /** Works out another cross-section in the same arrays. */
    void compute(CrossSection another, ContourSamples samples) {
        section = another;
        roundTripMetres = Double.NaN;
        PrimaryConstants constants = scratch.constants;
        another.primaryConstants(samples, constants);
        scratch.rootOfImpedance.setRoot(constants.zRe(), constants.zIm());
        scratch.rootOfAdmittance.setRoot(constants.yRe(), constants.yIm());
        propagation.setProduct(scratch.rootOfImpedance, scratch.rootOfAdmittance);
        impedance.setQuotient(scratch.rootOfImpedance, scratch.rootOfAdmittance);
    }

    /** Belongs to no line any more. */
    void forget() {
        section = null;
    }

    CrossSection section() {
        return section;
    }

    /**
     * Returns γ.
     *
     * @return γ [1/m], real part 0 or more; only to be read
     */
    public ComplexBlock propagation() {
        return propagation;
    }

    /**
     * Returns Zc.
     *
     * @return Zc [Ω]; only to be read
     */
    public ComplexBlock impedance() {
        return impedance;
    }

    /**
     * Computes what is left of a wave after a length.
     *
     * @param metres the length [m], 0 or more
     * @param out receives e^(−γl)
     * @return out
     */
    public ComplexBlock decay(double metres, ComplexBlock out) {
        return exponential.decay(propagation, metres, out);
    }

    /** What is left after a length, as a block of its own. */
    public ComplexBlock decay(double metres) {
        return decay(metres, new ComplexBlock(propagation.count()));
    }

    /** e^(−2γl), remembered for the length last asked for; only to be read. */
    ComplexBlock roundTrip(double metres) {
        if (metres != roundTripMetres) {
            decay(2 * metres, roundTrip);
            roundTripMetres = metres;
        }
        return roundTrip;
    }
}
