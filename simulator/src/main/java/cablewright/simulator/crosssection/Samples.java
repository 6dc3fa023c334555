// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

/**
 * Values of one function on one set of complex frequencies, shared: nobody writes to the arrays once they are filled.
 */
final class Samples {

    final double[] re;
    final double[] im;

    Samples(int size) {
        re = new double[size];
        im = new double[size];
    }
}
