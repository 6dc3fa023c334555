// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Trace;

/**
 * Two cursors on one trace, and what lies between them.
 *
 * @param trace the trace
 * @param firstMetres where the first stands, at the set velocity [m]
 * @param secondMetres where the second stands, at the set velocity [m]
 */
public record CursorPair(Trace trace, @Between double firstMetres, @Between double secondMetres) {

    /** Refuses a missing trace and places that are not numbers. */
    public CursorPair {
        Require.components(CursorPair.class, trace, firstMetres, secondMetres);
    }

    /**
     * Returns what the trace says at the first cursor.
     *
     * @return the first cursor
     */
    public Cursor first() {
        return Cursor.on(trace, firstMetres);
    }

    /**
     * Returns what the trace says at the second cursor.
     *
     * @return the second cursor
     */
    public Cursor second() {
        return Cursor.on(trace, secondMetres);
    }

    /**
     * Returns how far apart the cursors are.
     *
     * @return second less first, at the set velocity [m]
     */
    public double metresBetween() {
        return secondMetres - firstMetres;
    }

    /**
     * Returns the time there and back between the cursors.
     *
     * @return second less first [s]
     */
    public double secondsBetween() {
        return trace.settings().secondsThereAndBack(metresBetween());
    }

    /**
     * Returns the difference of the two readings.
     *
     * @return second less first [V]
     */
    public double voltsBetween() {
        return second().volts() - first().volts();
    }

    /**
     * Finds what stands out most between the cursors from the straight line that joins the two readings.
     *
     * @return the sample that departs most from that line, with its departure as its voltage; the first cursor with 0 V
     *     where no sample lies between
     */
    public Cursor largestBetween() {
        double near = Math.min(firstMetres, secondMetres);
        double far = Math.max(firstMetres, secondMetres);
        double nearVolts = trace.voltsAt(near);
        double slope = far > near ? (trace.voltsAt(far) - nearVolts) / (far - near) : 0;
        Cursor largest = new Cursor(firstMetres, first().seconds(), 0);
        for (int i = trace.indexNear(near); i <= trace.indexNear(far); i++) {
            double metres = trace.metres(i);
            double departure = trace.volts(i) - nearVolts - slope * (metres - near);
            if (metres > near && metres < far && Math.abs(departure) > Math.abs(largest.volts())) {
                largest = new Cursor(metres, trace.seconds(i), departure);
            }
        }
        return largest;
    }

    /**
     * Returns the return loss of the event between the cursors.
     *
     * @param thereAndBackDecibels loss of the cable from the port to the event and back, where it is known [dB], 0 or
     *     more; 0 corrects for nothing
     * @return the return loss
     */
    public EventReturnLoss returnLoss(double thereAndBackDecibels) {
        return new EventReturnLoss(largestBetween(), trace.noiseVolts(), thereAndBackDecibels);
    }
}
