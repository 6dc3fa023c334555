// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.junit.jupiter.api.Test;

/** Against the transforms of Apache Commons Math 3.6.1, another library. */
class FourierTransformProperties {

    private static final FastFourierTransformer REFEREE = new FastFourierTransformer(DftNormalization.STANDARD);

    private static double[] random(long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        return random.doubles(count, -1, 1).toArray();
    }

    @Property(tries = 100)
    void spectraAgreeWithAnotherLibrary(@ForAll long seed, @ForAll @IntRange(min = 1, max = 14) int power) {
        int n = 1 << power;
        double[] samples = random(seed, n);
        ComplexArray ours = FourierTransform.ofLength(n).spectrum(samples);
        Complex[] referee = REFEREE.transform(samples, TransformType.FORWARD);
        assertEquals(n / 2 + 1, ours.count());
        for (int k = 0; k < ours.count(); k++) {
            assertEquals(referee[k].getReal(), ours.re(k), 1e-12 * Math.sqrt(n));
            assertEquals(referee[k].getImaginary(), ours.im(k), 1e-12 * Math.sqrt(n));
        }
    }

    @Property(tries = 100)
    void samplesComeBackFromTheirSpectrum(@ForAll long seed, @ForAll @IntRange(min = 1, max = 14) int power) {
        int n = 1 << power;
        double[] samples = random(seed, n);
        FourierTransform transform = FourierTransform.ofLength(n);
        assertArrayEquals(samples, transform.realSamples(transform.spectrum(samples)), 1e-13);
    }

    @Property(tries = 100)
    void complexInversesAgreeWithAnotherLibrary(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int power) {
        int n = 1 << power;
        double[] interleaved = random(seed, 2 * n);
        Complex[] spectrum = new Complex[n];
        for (int k = 0; k < n; k++) {
            spectrum[k] = new Complex(interleaved[2 * k], interleaved[2 * k + 1]);
        }
        Complex[] referee = REFEREE.transform(spectrum, TransformType.INVERSE);
        FourierTransform.ofLength(n).invert(interleaved);
        for (int m = 0; m < n; m++) {
            assertEquals(referee[m].getReal(), interleaved[2 * m], 1e-13);
            assertEquals(referee[m].getImaginary(), interleaved[2 * m + 1], 1e-13);
        }
    }

    @Test
    void theSameBytesComeFromManyThreads() {
        double[] samples = random(1, 1 << 16);
        double[] alone = FourierTransform.ofLength(1 << 16)
                .realSamples(FourierTransform.ofLength(1 << 16).spectrum(samples));
        IntStream.range(0, 16).parallel().forEach(i -> {
            FourierTransform transform = FourierTransform.ofLength(1 << 16);
            assertArrayEquals(alone, transform.realSamples(transform.spectrum(samples)), 0);
        });
    }

    @Test
    void otherLengthsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> FourierTransform.ofLength(0));
        assertThrows(IllegalArgumentException.class, () -> FourierTransform.ofLength(12));
    }
}
