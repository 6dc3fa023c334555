// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import cablewright.simulator.instrument.Trace;
import java.util.OptionalDouble;

/**
 * Reads the place of an edge as it is taught: half-way between the foot of the edge and its top, on the straight line between
 * samples (common practice, no source). The foot is the lowest point before the top.
 */
final class EdgeReader {

    /** Ripple smaller than this share of the edge does not end it. */
    private static final double RIPPLE_SHARE = 0.02;

    private final double pulseSeconds;

    /** A top lies no farther than this from where it is sought: the length of the outgoing pulse. */
    EdgeReader(double pulseSeconds) {
        this.pulseSeconds = pulseSeconds;
    }

    /**
     * Reads the edge that leads to a top.
     *
     * @param trace the trace, without noise
     * @param first the first sample that may be the edge's foot
     * @param near a sample near the top
     * @param sign 1 where the edge goes up, −1 where it goes down
     * @return time since the outgoing edge was at half height [s]; empty where the trace has no such top nearby
     */
    OptionalDouble halfWaySeconds(Trace trace, int first, int near, double sign) {
        int reach = (int) Math.ceil(pulseSeconds / trace.sampleSeconds());
        int top = top(trace, near, sign);
        if (Math.abs(top - near) > reach) {
            return OptionalDouble.empty();
        }
        int foot = foot(trace, top, sign, Math.max(0, first));
        double half = (trace.volts(foot) + trace.volts(top)) / 2;
        for (int i = top; i > foot; i--) {
            double after = sign * (trace.volts(i) - half);
            double before = sign * (trace.volts(i - 1) - half);
            if (before <= 0 && after > 0) {
                return OptionalDouble.of(trace.seconds(i - 1) - before / (after - before) * trace.sampleSeconds());
            }
        }
        return OptionalDouble.empty();
    }

    private static int top(Trace trace, int near, double sign) {
        int top = near;
        while (top + 1 < trace.count() && sign * trace.volts(top + 1) > sign * trace.volts(top)) {
            top++;
        }
        while (top > 0 && sign * trace.volts(top - 1) > sign * trace.volts(top)) {
            top--;
        }
        return top;
    }

    private static int foot(Trace trace, int top, double sign, int first) {
        int foot = top;
        for (int i = top - 1; i >= first; i--) {
            double depth = sign * (trace.volts(top) - trace.volts(foot));
            double back = sign * (trace.volts(i) - trace.volts(foot));
            if (back > RIPPLE_SHARE * depth && depth > 0) {
                break;
            }
            foot = back < 0 ? i : foot;
        }
        return foot;
    }
}
