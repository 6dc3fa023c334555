// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * Gives each flag at most one event and each event at most one flag, so that the sum of what the pairs are worth is the
 * largest: minimum-cost assignment (Kuhn and Munkres), with a stand-in for every flag and every event left alone.
 */
final class Assignment {

    private static final double IMPOSSIBLE = 1e9;

    private Assignment() {}

    /**
     * Assigns.
     *
     * @param worth what each pair is worth; one row for each flag, one column for each event; NaN where it can't be
     * @param alone what each flag is worth when it stands for no event
     * @return for each flag the event, or −1
     */
    static int[] best(double[][] worth, double[] alone) {
        int flags = worth.length;
        int events = flags == 0 ? 0 : worth[0].length;
        int size = flags + events;
        int[] chosen = new int[flags];
        if (flags == 0) {
            return chosen;
        }
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<Integer> left = new LinkedHashSet<>();
        Set<Integer> right = new LinkedHashSet<>();
        for (int i = 0; i < size; i++) {
            graph.addVertex(i);
            graph.addVertex(size + i);
            left.add(i);
            right.add(size + i);
        }
        double top = largest(worth, alone);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                graph.setEdgeWeight(graph.addEdge(i, size + j), cost(worth, alone, i, j, top));
            }
        }
        Arrays.fill(chosen, -1);
        for (DefaultWeightedEdge edge :
                new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, left, right).getMatching()) {
            int flag = graph.getEdgeSource(edge);
            int event = graph.getEdgeTarget(edge) - size;
            if (flag < flags && event < events) {
                chosen[flag] = event;
            }
        }
        return chosen;
    }

    /** Rows beyond the flags and columns beyond the events are stand-ins for being left alone. */
    private static double cost(double[][] worth, double[] alone, int i, int j, double top) {
        boolean isFlag = i < worth.length;
        boolean isEvent = j < worth[0].length;
        if (isFlag && isEvent) {
            return Double.isNaN(worth[i][j]) ? IMPOSSIBLE : top - worth[i][j];
        }
        return isFlag ? top - alone[i] : 0;
    }

    private static double largest(double[][] worth, double[] alone) {
        double top = 0;
        for (int i = 0; i < worth.length; i++) {
            top = Math.max(top, alone[i]);
            for (double value : worth[i]) {
                top = Double.isNaN(value) ? top : Math.max(top, value);
            }
        }
        return top;
    }
}
