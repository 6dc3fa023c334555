// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.simulator.instrument.Trace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reads a noise-free trace as it is taught, from the trace alone: every stretch between two turns of the trace is an edge,
 * and its place is half-way up or down. Shares nothing with the code under test.
 */
final class PerfectReader {

    /**
     * An edge.
     *
     * @param metres where the trace is half-way [m]
     * @param rise by how much it goes up, negative where it goes down [V]
     */
    record Edge(double metres, double rise) {}

    /** What rises, rests and rises again is two edges. */
    private static final double LONGEST_IN_PULSES = 2;

    private PerfectReader() {}

    /**
     * The edge of an event whose first lobe is known: of its direction, between half and twice its height, within half a pulse
     * of where a clean edge from its place shows.
     */
    static Optional<Edge> near(Trace trace, double cleanMetres, double firstVolts) {
        double least = Math.abs(firstVolts) / 2;
        return edges(trace, least).stream()
                .filter(edge -> edge.rise() * firstVolts > 0 && Math.abs(edge.rise()) <= 5 * least)
                .filter(edge -> Math.abs(edge.metres() - cleanMetres)
                        <= trace.settings().halfPulseMetres())
                .min(Comparator.comparingDouble(edge -> Math.abs(edge.metres() - cleanMetres)));
    }

    /** Where the clean edge of a line cut open shows: half-way up the first rise at least a tenth of the tallest, from a place on. */
    static double openEnd(Trace cutOpen, double fromMetres) {
        double tallest = 0;
        for (int i = cutOpen.indexNear(fromMetres); i < cutOpen.count(); i++) {
            tallest = Math.max(tallest, cutOpen.volts(i));
        }
        return edges(cutOpen, tallest / 2).stream()
                .filter(edge -> edge.rise() > 0 && edge.metres() >= fromMetres)
                .mapToDouble(Edge::metres)
                .min()
                .orElse(fromMetres);
    }

    static List<Edge> edges(Trace trace, double leastVolts) {
        List<Integer> turns = new ArrayList<>();
        turns.add(0);
        int high = 0;
        int low = 0;
        int going = 0;
        for (int i = 1; i < trace.count(); i++) {
            high = trace.volts(i) > trace.volts(high) ? i : high;
            low = trace.volts(i) < trace.volts(low) ? i : low;
            if (going >= 0 && trace.volts(high) - trace.volts(i) > leastVolts / 2) {
                turns.add(high);
                going = -1;
                low = i;
                high = i;
            } else if (going <= 0 && trace.volts(i) - trace.volts(low) > leastVolts / 2) {
                turns.add(low);
                going = 1;
                high = i;
                low = i;
            }
        }
        turns.add(going > 0 ? high : low);
        List<Edge> edges = new ArrayList<>();
        int longest = (int)
                Math.ceil(LONGEST_IN_PULSES * trace.settings().stimulus().resolutionSeconds() / trace.sampleSeconds());
        for (int k = 1; k < turns.size(); k++) {
            for (int top = turns.get(k); top > turns.get(k - 1); top -= longest) {
                int foot = Math.max(turns.get(k - 1), top - longest);
                double rise = trace.volts(top) - trace.volts(foot);
                if (Math.abs(rise) >= leastVolts) {
                    edges.add(new Edge(halfWay(trace, foot, top), rise));
                }
            }
        }
        return edges;
    }

    private static double halfWay(Trace trace, int foot, int top) {
        double half = (trace.volts(foot) + trace.volts(top)) / 2;
        double way = Math.signum(trace.volts(top) - trace.volts(foot));
        int i = top;
        while (i > foot + 1 && way * (trace.volts(i - 1) - half) > 0) {
            i--;
        }
        double share = (half - trace.volts(i - 1)) / (trace.volts(i) - trace.volts(i - 1));
        return trace.metres(i - 1) + share * (trace.metres(i) - trace.metres(i - 1));
    }
}
