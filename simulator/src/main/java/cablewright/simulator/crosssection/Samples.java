// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.kernel.ComplexBlock;

/**
 * Values of one function on one set of complex frequencies, shared: nobody writes to the arrays once they are filled.
 */
final class Samples {

    final double[] re;
    final double[] im;
    private final ComplexBlock block;

    Samples(int size) {
        re = new double[size];
        im = new double[size];
        block = new ComplexBlock(re, im);
    }

    /** The same arrays, for arithmetic. */
    ComplexBlock block() {
        return block;
    }
}
