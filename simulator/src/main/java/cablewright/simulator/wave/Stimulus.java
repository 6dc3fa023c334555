// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.wave;

/**
 * The outgoing wave of a reflectometer, of unit height: known exactly in time and on the whole right half of the plane of
 * complex frequencies. Every stimulus is zero up to t = 0.
 */
public sealed interface Stimulus permits HalfSine, RectangularPulse, GaussianPulse, RaisedCosineStep, GaussianStep {

    /**
     * Returns the wave at a time.
     *
     * @param seconds time [s]
     * @return height, 0 to 1
     */
    double at(double seconds);

    /**
     * Computes the Laplace transform F(s) = ∫ f(t) e^(−st) dt.
     *
     * @param sRe real part of s [1/s], above 0
     * @param sIm imaginary part of s [rad/s]
     * @param out receives the real and the imaginary part [s]; length 2
     */
    void transform(double sRe, double sIm, double[] out);

    /**
     * Returns the duration of the steepest edge, from nothing to full height (for a Gaussian, its 10–90 % time).
     *
     * @return duration [s]
     */
    double shortestEdgeSeconds();

    /**
     * Returns the top of the band in use, by which models are judged and cross-sections drawn.
     *
     * @return one over the shortest edge [Hz]
     */
    default double topHertz() {
        return 1 / shortestEdgeSeconds();
    }

    /**
     * Returns when the leading edge is at half height. The distance axis has its zero there.
     *
     * @return time [s]
     */
    double halfHeightSeconds();

    /**
     * Returns when the wave has come to its last value.
     *
     * @return time [s]
     */
    double settledSeconds();

    /**
     * Returns how long the pulse is between its half heights; 0 for a step.
     *
     * @return width [s]
     */
    double widthSeconds();

    /**
     * Distinguishes a step from a pulse.
     *
     * @return whether the wave stays up
     */
    default boolean isStep() {
        return widthSeconds() == 0;
    }

    /**
     * Returns the length of time by which a reader's resolution is limited: the pulse's width, or the step's 10–90 % rise.
     *
     * @return time [s]
     */
    double resolutionSeconds();
}
