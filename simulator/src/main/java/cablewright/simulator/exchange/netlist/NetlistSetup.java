// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.netlist;

import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.wave.Stimulus;
import java.util.OptionalDouble;

/**
 * What a netlist is to simulate beside the line itself.
 *
 * @param title its first line, one line of text
 * @param sourceOhms resistance of the source, 0.1 to 1e5 [Ω]
 * @param stimulus the outgoing wave of 1 V, which on a line of the source's own resistance is half of its open voltage
 * @param recordSeconds how long to simulate, above 0 [s]
 * @param longestStepSeconds longest step of time that the simulator may take, above 0 [s]; absent for a 200th of the
 *     stimulus' shortest edge, or a 60th where a lossy line makes the work rise with the square of the steps. A general
 *     simulator's own default is far longer, and its larger error
 */
public record NetlistSetup(
        String title, double sourceOhms, Stimulus stimulus, double recordSeconds, OptionalDouble longestStepSeconds) {

    private static final int STEPS_PER_EDGE = 200;
    private static final int STEPS_PER_EDGE_ON_LOSSY_LINES = 60;

    // Refuses values that can't be simulated.
    public NetlistSetup {
        if (title == null || title.lines().count() > 1) {
            throw new IllegalArgumentException("title is \"" + title + "\"; it must be one line of text");
        }
        if (stimulus == null) {
            throw new IllegalArgumentException("stimulus is missing; it must be given");
        }
        PortResponse.requireSource("sourceOhms", sourceOhms);
        if (!(recordSeconds > 0 && recordSeconds < 1e3)) {
            throw new IllegalArgumentException(
                    "recordSeconds is " + recordSeconds + "; it must be greater than 0 and below 1000");
        }
        if (longestStepSeconds.isPresent() && !(longestStepSeconds.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    "longestStepSeconds is " + longestStepSeconds.getAsDouble() + "; it must be greater than 0");
        }
    }

    /**
     * Makes a setup that leaves the step of time to us.
     *
     * @param title its first line
     * @param sourceOhms resistance of the source [Ω]
     * @param stimulus the outgoing wave
     * @param recordSeconds how long to simulate [s]
     */
    public NetlistSetup(String title, double sourceOhms, Stimulus stimulus, double recordSeconds) {
        this(title, sourceOhms, stimulus, recordSeconds, OptionalDouble.empty());
    }

    double stepSeconds(boolean lossy) {
        int steps = lossy ? STEPS_PER_EDGE_ON_LOSSY_LINES : STEPS_PER_EDGE;
        return longestStepSeconds.orElse(stimulus.shortestEdgeSeconds() / steps);
    }
}
