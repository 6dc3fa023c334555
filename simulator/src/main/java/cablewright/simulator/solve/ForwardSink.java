// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * Hears from the recursion what becomes of the forward wave at each element, from the load back to the port. Factors are what
 * goes on behind the element over what comes to it, both on their lines' impedances.
 */
interface ForwardSink {

    /** Nobody wants to know. */
    ForwardSink NONE = new ForwardSink() {};

    /** Whether the factors are wanted at all. */
    default boolean isWanted() {
        return false;
    }

    /** The wave goes on as n/d of itself; nothing goes on where n is zero. */
    default void pass(ComplexBlock n, ComplexBlock d) {}

    /** The wave goes on as a real share of itself. */
    default void pass(double share) {}

    /** The end of the circuit, with Γ there. */
    default void end(boolean endless, ComplexBlock reflection) {}

    /** A length of line, with Γ at its far end. */
    default void line(int element, Element.Line line, LineWave wave, ComplexBlock reflection) {}

    /** Who hears of a branch that leaves at an element. */
    default ForwardSink onBranch(int element) {
        return this;
    }

    /** A branch left, into which n/d of the wave goes. */
    default void branch(int element, ForwardSink there, ComplexBlock n, ComplexBlock d) {}

    /** Whether the lines within a split are wanted. */
    default boolean wantsLinesOf(int element) {
        return false;
    }

    /** A stretch shared with a neighbour. */
    default void split(int element, EvenOddSection section) {}
}
