// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.netlist;

import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.RectangularPulse;
import cablewright.simulator.wave.Stimulus;

/**
 * The source's open voltage, twice the outgoing wave, as straight pieces (PWL). With n = {@value #PIECES_PER_EDGE} pieces
 * across a raised-cosine edge the pieces differ from it by at most π²/(16 n²) = 2e-4 of its height; a half-sine has twice as
 * many in all, a Gaussian as many between 10 and 90 %.
 */
final class NetlistSource {

    private static final int PIECES_PER_EDGE = 64;
    private static final int POINTS_PER_LINE = 4;

    private final StringBuilder text;
    private final Stimulus stimulus;
    private final double recordSeconds;
    private int points;

    private NetlistSource(StringBuilder text, Stimulus stimulus, double recordSeconds) {
        this.text = text;
        this.stimulus = stimulus;
        this.recordSeconds = recordSeconds;
    }

    static void append(StringBuilder text, Stimulus stimulus, double recordSeconds) {
        new NetlistSource(text, stimulus, recordSeconds).run();
    }

    private void run() {
        text.append("Vsource emf 0 PWL(0 0");
        double edge = stimulus.shortestEdgeSeconds();
        double settled = stimulus.settledSeconds();
        if (stimulus instanceof RectangularPulse) {
            points(0, edge);
            points(Math.max(edge, settled - edge), settled);
        } else {
            points(0, settled);
        }
        text.append(")\n");
    }

    private void points(double from, double to) {
        boolean gaussian = stimulus instanceof GaussianPulse || stimulus instanceof GaussianStep;
        double step = stimulus.shortestEdgeSeconds() / PIECES_PER_EDGE;
        int pieces = (int) Math.ceil((to - from) / step - 1e-6);
        int first = from == 0 || from == stimulus.shortestEdgeSeconds() ? 1 : 0;
        for (int i = first; i <= pieces; i++) {
            double t = i == pieces ? to : from + i * step;
            // A Gaussian is written over sixteen of its sigmas; beyond them it is negligible.
            boolean nothing = gaussian && i < pieces && stimulus.at(t + step) < 1e-9;
            if (t <= recordSeconds + step && !nothing) {
                text.append(++points % POINTS_PER_LINE == 0 ? "\n+ " : " ");
                text.append(t).append(' ').append(2 * stimulus.at(t));
            }
        }
    }
}
