// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.crosssection.ContourSamples;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.Frequencies;

/** Some neighbouring frequencies, with what metals and plastics do at them: that is dear, and few cables differ in it. */
final class FrequencyBlock {

    private final ComplexBlock s;
    private final ContourSamples samples;

    FrequencyBlock(Frequencies frequencies) {
        this.s = new ComplexBlock(frequencies.real(), frequencies.imaginary());
        this.samples = new ContourSamples(s.real(), s.imaginary());
    }

    ComplexBlock s() {
        return s;
    }

    ContourSamples samples() {
        return samples;
    }

    int count() {
        return s.count();
    }
}
