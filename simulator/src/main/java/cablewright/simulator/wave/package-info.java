/**
 * What is sent into a line, and what comes back as a function of time.
 *
 * <p>{@link cablewright.simulator.wave.Inversion} goes from the damped contour s = c + jω to time: period T twice the record, cT = 24,
 * cos² taper over the upper half of the band, inverse FFT, times e^(ct). The outgoing wave stays analytic; only ΓF is inverted.
 *
 * <p>Decision: <b>numerical Laplace inversion on a damped contour, not an FFT of a sweep as it would be measured</b>. It needs no
 * extrapolation to DC, and its wrap-around is known: e^(−24). Measured errors, held by the tests: staircases of matched and
 * mismatched lines within 1e-7 of the incident wave; shunt C and series L under a Gaussian edge within 1e-8; a ringing line of high
 * Q within 1e-5 over 26 trips; the inversion of the erfc law within 1e-6; a line cut in two equals the whole within 1e-9. A half-sine
 * has kinks: within a few samples of one the error is about the slope times a tenth of a sample.
 */
package cablewright.simulator.wave;
