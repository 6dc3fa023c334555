// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.cable.Lumped;

/**
 * Impedance of a lumped element as a fraction n/d, both finite at every frequency but zero: an open has d = 0, a short
 * n = 0. Holds the value of the frequency last asked for.
 */
public final class ImpedanceFraction {

    private final boolean series;
    private final boolean hasResistance;
    private final boolean hasInductance;
    private final boolean hasCapacitance;
    private final double resistance;
    private final double inductance;
    private final double capacitance;
    private double nRe;
    private double nIm;
    private double dRe;
    private double dIm;

    /**
     * Takes an element.
     *
     * @param part the element
     */
    public ImpedanceFraction(Lumped part) {
        series = part.joined() == Lumped.Joined.SERIES;
        hasResistance = part.resistanceOhms().isPresent();
        hasInductance = part.inductanceHenries().isPresent();
        hasCapacitance = part.capacitanceFarads().isPresent();
        resistance = part.resistanceOhms().orElse(0);
        inductance = part.inductanceHenries().orElse(0);
        capacitance = part.capacitanceFarads().orElse(0);
    }

    /**
     * Works out the fraction at a complex frequency.
     *
     * @param sRe real part of s [rad/s]
     * @param sIm imaginary part of s [rad/s]
     */
    public void at(double sRe, double sIm) {
        if (series) {
            inSeries(sRe, sIm);
        } else {
            inParallel(sRe, sIm);
        }
    }

    /** (R + sL) + 1/(sC), times sC above and below where there is a C. */
    private void inSeries(double sRe, double sIm) {
        double aRe = resistance + sRe * inductance;
        double aIm = sIm * inductance;
        if (!hasCapacitance) {
            set(aRe, aIm, 1, 0);
            return;
        }
        double cRe = sRe * capacitance;
        double cIm = sIm * capacitance;
        set(aRe * cRe - aIm * cIm + 1, aRe * cIm + aIm * cRe, cRe, cIm);
    }

    /** 1/(1/R + 1/(sL) + sC), times R and sL above and below where there are an R and an L. */
    private void inParallel(double sRe, double sIm) {
        double topRe = hasResistance ? resistance : 1;
        double topIm = 0;
        double downRe = (hasResistance ? 1 : 0) + topRe * sRe * capacitance;
        double downIm = topRe * sIm * capacitance;
        if (!hasInductance) {
            set(topRe, topIm, downRe, downIm);
            return;
        }
        double lRe = sRe * inductance;
        double lIm = sIm * inductance;
        set(topRe * lRe, topRe * lIm, downRe * lRe - downIm * lIm + topRe, downRe * lIm + downIm * lRe);
    }

    private void set(double numeratorRe, double numeratorIm, double denominatorRe, double denominatorIm) {
        nRe = numeratorRe;
        nIm = numeratorIm;
        dRe = denominatorRe;
        dIm = denominatorIm;
    }

    /**
     * Returns the real part of n.
     *
     * @return real part of n [Ω, or as d demands]
     */
    public double numeratorRe() {
        return nRe;
    }

    /**
     * Returns the imaginary part of n.
     *
     * @return imaginary part of n [Ω, or as d demands]
     */
    public double numeratorIm() {
        return nIm;
    }

    /**
     * Returns the real part of d.
     *
     * @return real part of d [Ω, or as d demands]
     */
    public double denominatorRe() {
        return dRe;
    }

    /**
     * Returns the imaginary part of d.
     *
     * @return imaginary part of d [Ω, or as d demands]
     */
    public double denominatorIm() {
        return dIm;
    }
}
