// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.paths.LineLeg;
import cablewright.simulator.paths.ScatteringTree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Products of what a wave meets on a way, at all frequencies; the straight ways out and home are kept. */
final class PathProducts {

    private final ScatteringTree tree;
    private final Map<Integer, ComplexArray> out = new HashMap<>();
    private final Map<Integer, ComplexArray> home = new HashMap<>();

    PathProducts(ScatteringTree tree) {
        this.tree = tree;
    }

    /** What comes home by a way, for 1 V that went out. */
    ComplexArray of(PathFinder.Way way) {
        List<PathFinder.Stop> stops = way.stops();
        int first = 0;
        while (stops.get(first).in() == 0 && stops.get(first).out() > 0) {
            first++;
        }
        int last = stops.size() - 1;
        while (last > first && stops.get(last - 1).out() == 0) {
            last--;
        }
        ComplexArray product = straightOut(stops.get(first).scatterer());
        for (int i = first; i <= last; i++) {
            PathFinder.Stop stop = stops.get(i);
            product = times(product, tree.scatterers().get(stop.scatterer()).wave(stop.out(), stop.in()));
            if (i < last) {
                product = product.times(legAfter(stop).decay());
            }
        }
        ComplexArray rest = straightHome(stops.get(last).scatterer());
        return rest == null ? product : product.times(rest);
    }

    LineLeg legAfter(PathFinder.Stop stop) {
        return stop.out() > 0
                ? tree.legFrom(stop.scatterer(), stop.out())
                : tree.legTo(stop.scatterer()).orElseThrow();
    }

    /** What arrives at a scatterer that is met on the straight way out; null for 1. */
    private ComplexArray straightOut(int scatterer) {
        if (scatterer == 0) {
            return null;
        }
        ComplexArray known = out.get(scatterer);
        if (known == null) {
            LineLeg leg = tree.legTo(scatterer).orElseThrow();
            ComplexArray passed = tree.scatterers().get(leg.near()).wave(leg.nearPort(), 0);
            known = times(straightOut(leg.near()), passed).times(leg.decay());
            out.put(scatterer, known);
        }
        return known;
    }

    /** What comes home straight of a wave that leaves a scatterer towards the port; null for 1. */
    private ComplexArray straightHome(int scatterer) {
        if (scatterer == 0) {
            return null;
        }
        ComplexArray known = home.get(scatterer);
        if (known == null) {
            LineLeg leg = tree.legTo(scatterer).orElseThrow();
            ComplexArray passed = tree.scatterers().get(leg.near()).wave(0, leg.nearPort());
            known = times(straightHome(leg.near()), passed).times(leg.decay());
            home.put(scatterer, known);
        }
        return known;
    }

    private static ComplexArray times(ComplexArray running, ComplexArray factor) {
        return running == null ? factor : running.times(factor);
    }
}
