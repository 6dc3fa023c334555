// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.PowerOfTwo;
import cablewright.simulator.check.Require;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * What a port shows: the reflection coefficient Γ at the complex frequencies s_k = c + j2πk/T, k = 0 … n/2.
 *
 * @param end the end of the line at which the port is
 * @param referenceOhms reference impedance of Γ [Ω], 1 to 10000
 * @param dampingPerSecond c, the real part of every frequency [1/s]
 * @param periodSeconds T [s]
 * @param samples n, a power of two from 16 to {@value #MOST_SAMPLES}
 * @param reflection Γ in Base64 (RFC 4648), in lines: for each frequency real and imaginary part, each as a double of IEEE
 *     754, most significant byte first
 */
public record PortSamples(
        LineEnd end,
        @Between(least = 1, most = 10_000) double referenceOhms,
        @Above(floor = 0, most = 1e15) double dampingPerSecond,
        @Above(floor = 0, most = 1e6) double periodSeconds,
        @PowerOfTwo(least = 16, most = PortSamples.MOST_SAMPLES) int samples,
        @Entries(least = 1) @Base64Lines List<String> reflection) {

    /** Most time samples of a response in a paper. */
    public static final int MOST_SAMPLES = 1 << 19;

    private static final int BYTES_EACH = 2 * Double.BYTES;
    private static final int BYTES_PER_LINE = 3072;

    /** Copies the list and checks the ranges, and that there is a finite Γ for each frequency. */
    public PortSamples {
        Require.components(PortSamples.class, end, referenceOhms, dampingPerSecond, periodSeconds, samples, reflection);
        ContourGrid grid = new ContourGrid(dampingPerSecond, periodSeconds, samples);
        reflection = List.copyOf(reflection);
        requireFinite(decoded(reflection, grid.frequencies()));
    }

    private static void requireFinite(ByteBuffer values) {
        while (values.hasRemaining()) {
            // Γ of a passive line stays near the unit circle; more only says that a file is damaged.
            if (!(Math.abs(values.getDouble()) <= 1e3)) {
                throw new IllegalArgumentException(
                        "reflection has a value beyond 1000 or that is no number; fetch the file again");
            }
        }
    }

    private static ByteBuffer decoded(List<String> lines, int frequencies) {
        ByteBuffer bytes = ByteBuffer.allocate(frequencies * BYTES_EACH);
        for (String line : lines) {
            byte[] some;
            try {
                some = Base64.getDecoder().decode(line);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("reflection has a line that is not Base64; fetch the file again", e);
            }
            if (some.length > bytes.remaining()) {
                throw new IllegalArgumentException(
                        "reflection has more than " + frequencies + " values; it needs samples / 2 + 1 of them");
            }
            bytes.put(some);
        }
        if (bytes.hasRemaining()) {
            throw new IllegalArgumentException(
                    "reflection has fewer than " + frequencies + " values; it needs samples / 2 + 1 of them");
        }
        return bytes.flip();
    }

    /**
     * Takes the samples of a response.
     *
     * @param end the end of the line at which the port is
     * @param referenceOhms reference impedance [Ω]
     * @param grid the grid
     * @param values Γ at each of its frequencies
     * @return the samples
     */
    public static PortSamples of(LineEnd end, double referenceOhms, ContourGrid grid, ComplexArray values) {
        ByteBuffer bytes = ByteBuffer.allocate(values.count() * BYTES_EACH);
        for (int k = 0; k < values.count(); k++) {
            bytes.putDouble(values.re(k)).putDouble(values.im(k));
        }
        List<String> lines = new ArrayList<>();
        for (int from = 0; from < bytes.capacity(); from += BYTES_PER_LINE) {
            byte[] some = new byte[Math.min(BYTES_PER_LINE, bytes.capacity() - from)];
            bytes.get(from, some);
            lines.add(Base64.getEncoder().encodeToString(some));
        }
        return new PortSamples(
                end, referenceOhms, grid.dampingPerSecond(), grid.periodSeconds(), grid.samples(), lines);
    }

    /**
     * Returns the grid.
     *
     * @return its frequencies
     */
    public ContourGrid grid() {
        return new ContourGrid(dampingPerSecond, periodSeconds, samples);
    }

    /**
     * Returns the port that shows this.
     *
     * @return a port that answers for this grid alone
     */
    public SampledPort port() {
        ContourGrid grid = grid();
        ByteBuffer bytes = decoded(reflection, grid.frequencies());
        double[] re = new double[grid.frequencies()];
        double[] im = new double[grid.frequencies()];
        for (int k = 0; k < re.length; k++) {
            re[k] = bytes.getDouble();
            im[k] = bytes.getDouble();
        }
        return new SampledPort(referenceOhms, grid, re, im);
    }
}
