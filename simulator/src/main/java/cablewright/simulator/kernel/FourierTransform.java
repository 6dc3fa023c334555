// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.jtransforms.fft.DoubleFFT_1D;
import org.jtransforms.utils.CommonUtils;

/**
 * Discrete Fourier transforms of one length, by JTransforms (split radix). It serves any number of threads, each of which
 * does its own work, so that the bytes do not depend on their number.
 */
public final class FourierTransform {

    /** Tables of sines by length; they are the same for whoever asks, and take longer to make than a transform. */
    private static final ConcurrentMap<Integer, FourierTransform> BY_LENGTH = new ConcurrentHashMap<>();

    private final int length;
    private final DoubleFFT_1D transform;

    private FourierTransform(int length) {
        CommonUtils.setThreadsBeginN_1D_FFT_2Threads(Integer.MAX_VALUE);
        CommonUtils.setThreadsBeginN_1D_FFT_4Threads(Integer.MAX_VALUE);
        this.length = length;
        this.transform = new DoubleFFT_1D(length);
    }

    /**
     * Returns the transform of a length.
     *
     * @param length number of samples, a power of two, at least 2
     * @return the transform
     */
    public static FourierTransform ofLength(int length) {
        if (length < 2 || Integer.bitCount(length) != 1) {
            throw new IllegalArgumentException(
                    "length is " + length + "; it must be a power of two that is at least 2");
        }
        return BY_LENGTH.computeIfAbsent(length, FourierTransform::new);
    }

    /**
     * Computes the real samples that belong to a spectrum: x_m = (1/n) Σ X_k e^(2πjkm/n) over all n values of k, of which
     * those above n/2 are the conjugates of those below.
     *
     * @param lowerHalf X_k from k = 0, at most n/2 + 1 values; those that are left out count as zero, and so do the imaginary
     *     parts of the first and of the one at n/2
     * @return n samples
     */
    public double[] realSamples(ComplexArray lowerHalf) {
        double[] data = new double[length];
        int half = length / 2;
        for (int k = 0; k < Math.min(lowerHalf.count(), half); k++) {
            data[2 * k] = lowerHalf.re(k);
            data[2 * k + 1] = lowerHalf.im(k);
        }
        data[1] = lowerHalf.count() > half ? lowerHalf.re(half) : 0;
        transform.realInverse(data, true);
        return data;
    }

    /**
     * Computes the spectrum of real samples: X_k = Σ x_m e^(−2πjkm/n).
     *
     * @param samples n samples
     * @return X_k from k = 0 to n/2
     */
    public ComplexArray spectrum(double[] samples) {
        double[] data = samples.clone();
        transform.realForward(data);
        int half = length / 2;
        double[] re = new double[half + 1];
        double[] im = new double[half + 1];
        for (int k = 0; k < half; k++) {
            re[k] = data[2 * k];
            im[k] = data[2 * k + 1];
        }
        im[0] = 0;
        re[half] = data[1];
        return ComplexArray.takingOver(re, im);
    }

    /**
     * Computes the complex samples that belong to a whole spectrum, with the same sum as {@link #realSamples}.
     *
     * @param interleaved X_k, real part before imaginary part, 2n numbers; x_m in their place afterwards
     */
    public void invert(double[] interleaved) {
        transform.complexInverse(interleaved, true);
    }
}
