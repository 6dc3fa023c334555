package cablewright.simulator.network;

import cablewright.simulator.cable.Lumped;

/**
 * Impedance of a lumped element as a fraction n/d, both finite at every frequency but zero: an open has d = 0, a short
 * n = 0. Holds the value of the frequency last asked for.
 */
final class ImpedanceFraction {

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

    ImpedanceFraction(Lumped part) {
        series = part.joined() == Lumped.Joined.SERIES;
        hasResistance = part.resistanceOhms().isPresent();
        hasInductance = part.inductanceHenries().isPresent();
        hasCapacitance = part.capacitanceFarads().isPresent();
        resistance = part.resistanceOhms().orElse(0);
        inductance = part.inductanceHenries().orElse(0);
        capacitance = part.capacitanceFarads().orElse(0);
    }

    void at(double sRe, double sIm) {
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

    double numeratorRe() {
        return nRe;
    }

    double numeratorIm() {
        return nIm;
    }

    double denominatorRe() {
        return dRe;
    }

    double denominatorIm() {
        return dIm;
    }
}
