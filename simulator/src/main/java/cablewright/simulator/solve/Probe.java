// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.kernel.ComplexArray;

/**
 * A point on the way of the forward wave at which it is wanted. Each keeps the forward wave that arrives there for 1 V that
 * left the station before it, or the port.
 */
public sealed interface Probe {

    /**
     * Returns what arrives.
     *
     * @return forward wave here, over that which left the station before
     */
    RunningProduct arrival();

    /**
     * A length of line, met at its near end and left at its far end, both on its own impedance.
     *
     * @param arrival what arrives at its near end
     * @param line the line
     * @param element which element of the circuit it is, from 0
     * @param endRe real part of Γ at its far end, on its own impedance
     * @param endIm imaginary part of the same
     */
    record OnLine(RunningProduct arrival, Element.Line line, int element, double[] endRe, double[] endIm)
            implements Probe {}

    /**
     * A place where a branch leaves; the forward wave goes on as it arrived, and the stations after it take account.
     *
     * @param arrival what arrives
     * @param element which element of the circuit it is, from 0
     * @param side forward wave into the branch, over what arrived
     * @param branch the branch with stations of its own
     */
    record AtBranch(RunningProduct arrival, int element, RunningProduct side, TrackedWave branch) implements Probe {}

    /**
     * A stretch shared with a neighbour.
     *
     * @param arrival what arrives
     * @param element which element of the circuit it is, from 0
     * @param field what becomes of it within the stretch and on the neighbour
     */
    record AtSplit(RunningProduct arrival, int element, SplitField field) implements Probe {}

    /**
     * The end of the circuit: the start of a line without end, or a load across which the voltage is wanted.
     *
     * @param arrival what arrives at the end of the circuit
     * @param onward voltage there, the wave on the line without end, over what arrived
     */
    record AtEnd(RunningProduct arrival, ComplexArray onward) implements Probe {}
}
