// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * What an element does to waves of voltage on both sides: side 1 is joined to what is there already, side 2 becomes its new
 * end. x12 is what leaves at side 1 for a wave of 1 V that arrives at side 2.
 */
public final class TwoPort {

    private final ComplexBlock x11;
    private final ComplexBlock x12;
    private final ComplexBlock x21;
    private final ComplexBlock x22;

    /** Makes one to be filled. */
    public TwoPort(int count) {
        x11 = new ComplexBlock(count);
        x12 = new ComplexBlock(count);
        x21 = new ComplexBlock(count);
        x22 = new ComplexBlock(count);
    }

    /** From a line of one impedance onto another: r = (from − to)/(from + to); −r and r come back, 1 − r and 1 + r go on. */
    public TwoPort step(ComplexBlock from, ComplexBlock to) {
        x22.setDifferenceOverSum(from, to);
        x11.set(x22).times(-1);
        x12.setOnePlus(x22, 1);
        x21.setOneMinus(x22);
        return this;
    }

    /** A part: ±u/(2w + u) comes back, 2w/(2w + u) goes on. */
    TwoPort part(LumpedPart part) {
        x22.set(part.w()).times(2);
        x21.set(x22);
        x22.plus(part.u());
        x21.over(x22);
        x12.set(x21);
        x11.setQuotient(part.u(), x22).times(part.sign());
        x22.set(x11);
        return this;
    }

    /** A part in series with a line. */
    public TwoPort series(Lumped lumped, ComplexBlock reference, BlockWorkspace workspace) {
        LumpedPart part = new LumpedPart(workspace).inSeries(lumped, workspace.s(), reference);
        part(part);
        part.release(workspace);
        return this;
    }

    /** A part across a line. */
    public TwoPort shunt(Lumped lumped, ComplexBlock reference, BlockWorkspace workspace) {
        LumpedPart part = new LumpedPart(workspace).across(lumped, workspace.s(), reference);
        part(part);
        part.release(workspace);
        return this;
    }

    /** Nothing passes: an open sends 1 back to both sides, a contact −1. */
    public TwoPort wall(double reflection) {
        x11.fill(reflection);
        x12.fill(0);
        x21.fill(0);
        x22.fill(reflection);
        return this;
    }

    /** Any two-port. */
    public TwoPort set(ComplexBlock back1, ComplexBlock home, ComplexBlock onward, ComplexBlock back2) {
        x11.set(back1);
        x12.set(home);
        x21.set(onward);
        x22.set(back2);
        return this;
    }

    ComplexBlock x11() {
        return x11;
    }

    ComplexBlock x12() {
        return x12;
    }

    ComplexBlock x21() {
        return x21;
    }

    ComplexBlock x22() {
        return x22;
    }
}
