// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

/** Says at which elements of a circuit the forward wave is wanted. */
public interface ProbeFilter {

    /** Wants nothing but the waves that leave on lines without end. */
    ProbeFilter ENDS_ONLY = new ProbeFilter() {
        @Override
        public boolean onLine(int element) {
            return false;
        }

        @Override
        public ProbeFilter onBranch(int element) {
            return this;
        }
    };

    /** Returns whether the wave is wanted on the line that is a given element. */
    boolean onLine(int element);

    /** Returns what is wanted on the branch that leaves at a given element; null for nothing. */
    ProbeFilter onBranch(int element);

    /** Returns whether the voltage across the end of the circuit is wanted, whatever it ends in. */
    default boolean atEnd() {
        return false;
    }
}
