// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.kernel.ComplexBlock;

/**
 * All that the reflection needs of a length of line at a block of frequencies.
 *
 * @param impedance Zc [Ω]; only to be read
 * @param roundTrip e^(−2γl); only to be read
 */
record LineTrip(ComplexBlock impedance, ComplexBlock roundTrip) {

    /** The same in arrays of its own. */
    LineTrip copy() {
        int count = impedance.count();
        return new LineTrip(new ComplexBlock(count).set(impedance), new ComplexBlock(count).set(roundTrip));
    }
}
