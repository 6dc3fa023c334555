// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * A point on the way of the forward wave at which it is wanted. Each keeps the forward wave that arrives there for 1 V that
 * left the probe before it, or the port.
 */
public sealed interface Probe {

    /**
     * Returns what arrives.
     *
     * @return forward wave here, over that which left the probe before
     */
    ComplexBlock arrival();

    /**
     * A length of line, met at its near end and left at its far end, both on its own impedance.
     *
     * @param arrival what arrives at its near end
     * @param line the line
     * @param element which element of the circuit it is, from 0
     * @param end Γ at its far end, on its own impedance
     */
    record OnLine(ComplexBlock arrival, Element.Line line, int element, ComplexBlock end) implements Probe {}

    /**
     * A place where a branch leaves; the forward wave goes on as it arrived, and the probes after it take account.
     *
     * @param arrival what arrives
     * @param element which element of the circuit it is, from 0
     * @param side forward wave into the branch, over what arrived
     * @param branch the branch with probes of its own
     */
    record AtBranch(ComplexBlock arrival, int element, ComplexBlock side, ForwardWave branch) implements Probe {}

    /**
     * A stretch shared with a neighbour.
     *
     * @param arrival what arrives
     * @param element which element of the circuit it is, from 0
     * @param field what becomes of it within the stretch and on the neighbour
     */
    record AtSplit(ComplexBlock arrival, int element, EvenOddField field) implements Probe {}

    /**
     * The end of the circuit: the start of a line without end, or a load across which the voltage is wanted.
     *
     * @param arrival what arrives at the end of the circuit
     * @param onward voltage there, the wave on the line without end, over what arrived
     */
    record AtEnd(ComplexBlock arrival, ComplexBlock onward) implements Probe {}
}
