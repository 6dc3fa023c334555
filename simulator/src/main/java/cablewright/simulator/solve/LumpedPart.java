// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.ImpedanceFraction;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * A part in series with a line of impedance Zr, or across it, as the fraction u/w of the line's own impedance or admittance:
 * z = Z/Zr = u/w in series, y = Zr/Z = u/w across. Neither u nor w is ever divided by, so an open and a short are exact; where
 * w = 0 the part decides by itself.
 */
final class LumpedPart {

    /** Sign of what a great u sends back: 1 in series, −1 across. */
    private int sign;

    private final ComplexBlock u;
    private final ComplexBlock w;

    LumpedPart(BlockWorkspace workspace) {
        u = workspace.take();
        w = workspace.take();
    }

    void release(BlockWorkspace workspace) {
        workspace.give(u, w);
    }

    /** Z in series, n/(d Zr). */
    LumpedPart inSeries(Lumped part, ComplexBlock s, ComplexBlock reference) {
        sign = 1;
        ImpedanceFraction.of(part, s, u, w);
        w.times(reference);
        return this;
    }

    /** Z across, d Zr/n. */
    LumpedPart across(Lumped part, ComplexBlock s, ComplexBlock reference) {
        sign = -1;
        ImpedanceFraction.of(part, s, w, u);
        u.times(reference);
        return this;
    }

    /** What reflects Γb on Zb, across: (1 − Γb) Zr over (1 + Γb) Zb. */
    LumpedPart across(ComplexBlock reflection, ComplexBlock ofReflection, ComplexBlock reference) {
        sign = -1;
        u.setOneMinus(reflection).times(reference);
        w.setOnePlus(reflection, 1).times(ofReflection);
        return this;
    }

    int sign() {
        return sign;
    }

    ComplexBlock u() {
        return u;
    }

    ComplexBlock w() {
        return w;
    }
}
