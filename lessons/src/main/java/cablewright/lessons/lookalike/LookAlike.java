// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.lookalike;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.instrument.Trace;

/**
 * The event of another kind that comes nearest to what a trace shows, with its size, length and place free.
 *
 * @param kind its kind
 * @param event the event, with distances from the cable's near end
 * @param trace the trace with it in place of the true one, without noise
 * @param goesOtherWay whether that kind, in whatever size, first goes the other way than the true event
 * @param firstVolts top of the first lobe by which it changes the trace, with its sign [V]
 * @param leftVolts largest difference that is left between its trace and the true one, both without noise [V]
 * @param leftAtMetres where on the trace that difference lies [m]
 */
public record LookAlike(
        EventKind kind,
        Event event,
        Trace trace,
        boolean goesOtherWay,
        double firstVolts,
        double leftVolts,
        double leftAtMetres) {}
