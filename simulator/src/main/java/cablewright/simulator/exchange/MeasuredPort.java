// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.ContourGrid;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The port of a measured line: one port of a sweep, made fit for the instrument. Works wherever a simulated port does, on the
 * grid that the sweep supports.
 *
 * <p>The sweep is brought onto the multiples of its step from 0 Hz up ({@link SweepReport} says what was added), with the
 * resistance of the source, Γ' = (Γ − r)/(1 − rΓ) with r = (R' − R)/(R' + R), and turned into a causal impulse response,
 * from which Γ(s) = Σ h_n e^(−s t_n) follows on the damped contour.
 *
 * <p>Validity: Γ is as measured up to half of the sweep's top and tapers off above, and what comes back later than one over
 * the step folds back. Accuracy, by sweeps of simulated lines held against the lines themselves: a step with a rise (10 to
 * 90 %) of 3.6 over the top or more comes out within 1e-3 of the outgoing wave if the sweep's points are so close that what
 * comes back is over in an eighth of one over the step, within 2e-3 if it takes half, and within 5e-3 if moreover the
 * frequencies are no multiples of one step. Steeper steps come out rounded.
 */
public final class MeasuredPort implements PortResponse {

    private final double referenceOhms;
    private final SweepReport report;
    private final ContourGrid grid;
    private final ComplexArray response;

    private MeasuredPort(double referenceOhms, SweepReport report, ContourGrid grid, ComplexArray response) {
        this.referenceOhms = referenceOhms;
        this.report = report;
        this.grid = grid;
        this.response = response;
    }

    /**
     * Makes a port of a sweep, with the sweep's own reference, with the reflection at 0 Hz estimated.
     *
     * @param sweep the sweep
     * @param port number of the port, from 1
     * @return the port
     * @throws IllegalArgumentException if the sweep has too few points to see a line through it, or too many
     */
    public static MeasuredPort of(ScatteringSweep sweep, int port) {
        return of(sweep, port, sweep.ports().get(port - 1).referenceOhms(), OptionalDouble.empty());
    }

    /**
     * Makes a port of a sweep.
     *
     * @param sweep the sweep
     * @param port number of the port, from 1
     * @param sourceOhms resistance of the source that is to drive the port [Ω], 0.1 to 1e5
     * @param dcReflection reflection coefficient at 0 Hz on the sweep's reference, −1 to 1, where it is known better than
     *     the lowest points tell
     * @return the port
     * @throws IllegalArgumentException if the sweep has too few points to see a line through it, or too many
     */
    public static MeasuredPort of(ScatteringSweep sweep, int port, double sourceOhms, OptionalDouble dcReflection) {
        return of(
                sweep.copyOfHertz(),
                sweep.reflection(port),
                sweep.ports().get(port - 1).referenceOhms(),
                sourceOhms,
                dcReflection);
    }

    /**
     * Makes a port of a reflection coefficient against frequency.
     *
     * @param hertz frequencies [Hz], rising
     * @param reflection Γ at each
     * @param measuredOhms reference resistance [Ω]
     * @param sourceOhms resistance of the source that is to drive the port [Ω], 0.1 to 1e5
     * @param dcReflection reflection coefficient at 0 Hz on the measured resistance, if it is known
     * @return the port
     * @throws IllegalArgumentException if there are too few points to see a line through them, or too many
     */
    public static MeasuredPort of(
            double[] hertz,
            ComplexArray reflection,
            double measuredOhms,
            double sourceOhms,
            OptionalDouble dcReflection) {
        PortResponse.requireSource("sourceOhms", sourceOhms);
        if (dcReflection.isPresent() && !(Math.abs(dcReflection.getAsDouble()) <= 1)) {
            throw new IllegalArgumentException(
                    "dcReflection is " + dcReflection.getAsDouble() + "; allowed is -1 to 1");
        }
        EvenSweep even = EvenSweep.of(hertz, reflection);
        double doubt = settle(even, dcReflection);
        double dc = even.re()[0];
        refer(even, (sourceOhms - measuredOhms) / (sourceOhms + measuredOhms));
        ImpulseResponse impulse = ImpulseResponse.of(even);
        SweepReport report = report(hertz, reflection, even, dc, doubt, impulse.shareBeforeZero());
        return new MeasuredPort(sourceOhms, report, impulse.grid(), impulse.onGrid());
    }

    private static double settle(EvenSweep even, OptionalDouble dcReflection) {
        if (dcReflection.isPresent()) {
            even.re()[0] = dcReflection.getAsDouble();
            even.im()[0] = 0;
            return 0;
        }
        return ImpulseResponse.settleAdded(even);
    }

    private static void refer(EvenSweep even, double r) {
        ComplexBlock reflection = new ComplexBlock(even.re(), even.im());
        ComplexBlock shifted =
                new ComplexBlock(reflection.count()).set(reflection).plus(-r);
        reflection.setQuotient(shifted, reflection.times(-r).plus(1));
    }

    private static SweepReport report(
            double[] hertz, ComplexArray measured, EvenSweep even, double dc, double doubt, double shareBeforeZero) {
        int largest = 0;
        int above = 0;
        for (int k = 0; k < hertz.length; k++) {
            largest = measured.magnitude(k) > measured.magnitude(largest) ? k : largest;
            above += measured.magnitude(k) > 1 ? 1 : 0;
        }
        return new SweepReport(
                hertz.length,
                hertz[0],
                hertz[hertz.length - 1],
                even.stepHertz(),
                even.resampled(),
                even.added(),
                dc,
                doubt,
                measured.magnitude(largest),
                hertz[largest],
                above,
                shareBeforeZero);
    }

    public SweepReport report() {
        return report;
    }

    @Override
    public double referenceOhms() {
        return referenceOhms;
    }

    @Override
    public Optional<ContourGrid> nativeGrid() {
        return Optional.of(grid);
    }

    @Override
    public ComplexArray reflection(ContourGrid wanted, int count) {
        if (!wanted.equals(grid) || count < 1 || count > grid.frequencies()) {
            throw new IllegalArgumentException("the grid is " + wanted + " with " + count
                    + " frequencies; a measured port has only its own, " + grid);
        }
        return ComplexArray.takingOver(
                Arrays.copyOf(response.copyOfReal(), count), Arrays.copyOf(response.copyOfImaginary(), count));
    }
}
