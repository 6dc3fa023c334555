// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.solve.LineWave;

/** What a way there and back through a cable leaves of a wave, with the delay that all of it has taken out. */
public final class RoundTrip {

    private final CableType type;
    private final double slownessAhead;

    /** For waves whose spectrum ends at a top frequency. */
    public RoundTrip(CableType type, double topHertz) {
        this.type = type;
        this.slownessAhead = slownessOfTheFirst(topHertz);
    }

    /**
     * Time per metre that nothing overtakes. Near the top of the band a conductor's inner reactance is as large as its
     * resistance, so (Im γ − Re γ)/ω lies below the slowness of every part of the wave.
     */
    private double slownessOfTheFirst(double topHertz) {
        double omega = 2 * Math.PI * topHertz;
        ComplexBlock gamma = propagation(Frequencies.ofSweep(topHertz));
        return Math.min(slowness(), (gamma.im(0) - gamma.re(0)) / omega);
    }

    private ComplexBlock propagation(Frequencies frequencies) {
        return LineWave.on(type.section(), frequencies).propagation();
    }

    /** Time per metre by which distances are counted [s/m]. */
    public double slowness() {
        return 1 / (type.section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
    }

    /** When the very first of a wave may be back from a distance [s]. */
    public double firstSeconds(double metres) {
        return 2 * metres * slownessAhead;
    }

    /** γ at the first frequencies of a grid. */
    public ComplexBlock propagation(ContourGrid grid, int count) {
        return propagation(grid.points().slice(0, count));
    }

    /** e^(−2(γ − s·slownessAhead)d) at the first frequencies of a grid. */
    public ComplexArray decay(ContourGrid grid, ComplexBlock propagation, double metres) {
        int n = propagation.count();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int k = 0; k < n; k++) {
            double loss = propagation.re(k) - grid.dampingPerSecond() * slownessAhead;
            double turn = propagation.im(k) - k * grid.spacingRadiansPerSecond() * slownessAhead;
            double size = Math.exp(-2 * metres * loss);
            re[k] = size * Math.cos(2 * metres * turn);
            im[k] = -size * Math.sin(2 * metres * turn);
        }
        return ComplexArray.takingOver(re, im);
    }

    /** Attenuation [Np/m]. */
    public double attenuation(double hertz) {
        return propagation(Frequencies.ofSweep(hertz)).re(0);
    }
}
