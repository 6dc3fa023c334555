// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The lattice diagram of a lossless line with a few places that reflect: each place splits what meets it into ρ back and
 * 1 + ρ on, as a part across the conductors does on a line of one impedance (L. V. Bewley's lattice; from memory).
 */
final class BounceLattice {

    private static final int MOST_RAYS = 4000;

    private final double[] places;
    private final double[] reflections;
    private final double metresPerSecond;

    /** Places from the port outward; the last one is the end of the line, past which nothing goes. The port absorbs. */
    BounceLattice(double[] places, double[] reflections, double metresPerSecond) {
        this.places = places.clone();
        this.reflections = reflections.clone();
        this.metresPerSecond = metresPerSecond;
    }

    /** All rays of at least a height that start before a time, in the order in which they are found. */
    List<BounceRay> rays(double lastSeconds, double leastAmplitude) {
        List<BounceRay> rays = new ArrayList<>();
        Deque<BounceRay> waiting = new ArrayDeque<>();
        waiting.add(ray(-1, 0, 0, 1, 0));
        while (!waiting.isEmpty() && rays.size() < MOST_RAYS) {
            BounceRay ray = waiting.remove();
            if (Math.abs(ray.amplitude()) < leastAmplitude || ray.fromSeconds() > lastSeconds) {
                continue;
            }
            rays.add(ray);
            split(ray, waiting);
        }
        return rays;
    }

    private double place(int index) {
        return index < 0 ? 0 : places[index];
    }

    private BounceRay ray(int from, int to, double seconds, double amplitude, int bounces) {
        double later = seconds + Math.abs(place(to) - place(from)) / metresPerSecond;
        return new BounceRay(place(from), seconds, place(to), later, amplitude, bounces);
    }

    private void split(BounceRay ray, Deque<BounceRay> waiting) {
        if (ray.toMetres() == 0) {
            return;
        }
        int at = indexOf(ray.toMetres());
        boolean outward = ray.toMetres() > ray.fromMetres();
        double rho = reflections[at];
        int back = outward ? at - 1 : at + 1;
        waiting.add(ray(at, back, ray.toSeconds(), rho * ray.amplitude(), ray.bounces() + 1));
        boolean ends = at == places.length - 1;
        if (!ends) {
            int on = outward ? at + 1 : at - 1;
            waiting.add(ray(at, on, ray.toSeconds(), (1 + rho) * ray.amplitude(), ray.bounces()));
        }
    }

    private int indexOf(double metres) {
        for (int i = 0; i < places.length; i++) {
            if (places[i] == metres) {
                return i;
            }
        }
        throw new IllegalStateException("no place at " + metres + " m");
    }
}
