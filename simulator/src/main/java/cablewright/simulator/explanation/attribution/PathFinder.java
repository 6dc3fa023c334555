// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.paths.LineLeg;
import cablewright.simulator.paths.Scatterer;
import cablewright.simulator.paths.ScatteringTree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Finds the ways of a wave through a tree of scatterers, best first.
 *
 * <p>What a way can still bring to the port is bounded by e^(ct) Σ|P F H|/Σ|F| over the damped band: P is the product of
 * what it met so far, H that of the best it can meet on the shortest way home, t the time when it could be there. All
 * scatterers being passive, no further turn can raise it by much, so what falls below the least height is left out for
 * good. A few frequencies, spread over those that the stimulus has, serve for the bound.
 *
 * <p>Ways that meet the same in another order, forward or backward (all scatterers being reciprocal), bring the same at the
 * same time. They count as one path here, with the height of all of them, in the order that was found first. They are known by two sums of 64-bit random numbers, one pair for each kind
 * of passing; that two different ways have the same is a chance of about 1e-28.
 */
final class PathFinder {

    private static final int POINTS = 48;
    private static final int MOST_STATES = 150_000;
    private static final double RANKS = 1e7;

    private final ScatteringTree tree;
    private final double damping;
    private final double lastSeconds;
    private final double leastVolts;
    private final int[] places;
    private final double[] weight;
    private final double[][] homeShare;
    private final double[][] bestInward;
    private final double[][] bestOutward;
    private final double[] homeSeconds;
    private final LineLeg[][] outward;
    private final long[][][][] marks;
    private final PriorityQueue<State> open = new PriorityQueue<>(Comparator.comparingLong(State::rank)
            .thenComparingDouble(State::seconds)
            .thenComparingLong(State::number));
    private final Map<Met, State> waiting = new HashMap<>();
    private long states;

    /**
     * Prepares a search.
     *
     * @param tree the scatterers
     * @param sent spectrum of the outgoing wave as it is received, at the tree's frequencies
     * @param dampingPerSecond real part of the frequencies
     * @param lastSeconds ways that arrive later are left out
     * @param leastVolts ways that can't be as high are left out
     */
    PathFinder(ScatteringTree tree, ComplexArray sent, double dampingPerSecond, double lastSeconds, double leastVolts) {
        this.tree = tree;
        this.damping = dampingPerSecond;
        this.lastSeconds = lastSeconds;
        this.leastVolts = leastVolts;
        this.places = places(sent);
        this.weight = weights(sent);
        int count = tree.scatterers().size();
        this.homeShare = new double[count][];
        this.bestInward = new double[count][];
        this.bestOutward = new double[count][];
        this.homeSeconds = new double[count];
        this.outward = new LineLeg[count][];
        this.marks = new long[count][][][];
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < count; i++) {
            prepare(i);
            int ports = tree.scatterers().get(i).ports();
            marks[i] = new long[ports][ports][2];
            for (int in = 0; in < ports; in++) {
                for (int out = 0; out <= in; out++) {
                    long[] mark = {random.nextLong(), random.nextLong()};
                    marks[i][in][out] = mark;
                    marks[i][out][in] = mark;
                }
            }
        }
    }

    /** A way by its stops: which scatterer, met at which port, left at which. */
    record Stop(int scatterer, int in, int out) {}

    /**
     * A way home.
     *
     * @param stops where it went, the port first and last
     * @param orders in how many orders a wave can meet the same
     * @param volts how high the wave still was, without sign, when it arrived at each stop but the first
     * @param seconds when its front is home
     */
    record Way(List<Stop> stops, double orders, List<Double> volts, double seconds) {}

    /** What a wave met so far, in any order, and where it arrives. */
    private record Met(long one, long other, int scatterer, int port) {}

    /** A wave that arrives at a scatterer, or one that is home (scatterer −1). */
    private record State(
            State before,
            int left,
            Met met,
            double orders,
            double[] re,
            double[] im,
            double seconds,
            double volts,
            double bound,
            long number) {

        int scatterer() {
            return met.scatterer();
        }

        int port() {
            return met.port();
        }

        /** Bounds that differ only by rounding are one; of those the wave that is there first goes on first. */
        long rank() {
            return -Math.round(Math.log(bound) * RANKS);
        }

        /** Both together, by the way that was found first. */
        State with(State other) {
            double[] sumRe = re.clone();
            double[] sumIm = im.clone();
            for (int k = 0; k < sumRe.length; k++) {
                sumRe[k] += other.re[k];
                sumIm[k] += other.im[k];
            }
            return new State(
                    before,
                    left,
                    met,
                    orders + other.orders,
                    sumRe,
                    sumIm,
                    seconds,
                    volts + other.volts,
                    bound + other.bound,
                    number);
        }
    }

    /** Evenly spread over the frequencies below the one up to which 99.9 % of the spectrum lie. */
    private static int[] places(ComplexArray sent) {
        double all = 0;
        for (int k = 0; k < sent.count(); k++) {
            all += sent.magnitude(k);
        }
        double sum = 0;
        int top = 0;
        while (top < sent.count() - 1 && sum < 0.999 * all) {
            sum += sent.magnitude(top++);
        }
        int count = Math.min(POINTS, top + 1);
        int[] places = new int[count];
        for (int i = 0; i < count; i++) {
            places[i] = count == 1 ? 0 : (int) ((long) i * top / (count - 1));
        }
        return places;
    }

    private double[] weights(ComplexArray sent) {
        double[] w = new double[places.length];
        double sum = 0;
        for (int k = 0; k < w.length; k++) {
            w[k] = sent.magnitude(places[k]);
            sum += w[k];
        }
        for (int k = 0; k < w.length; k++) {
            w[k] /= sum;
        }
        return w;
    }

    /** What is left on the way home from a scatterer, and the best it can do to what arrives. */
    private void prepare(int index) {
        Scatterer scatterer = tree.scatterers().get(index);
        outward[index] = new LineLeg[scatterer.ports()];
        for (int port = 1; port < scatterer.ports(); port++) {
            outward[index][port] = tree.legFrom(index, port);
        }
        homeShare[index] = new double[places.length];
        Arrays.fill(homeShare[index], 1);
        tree.legTo(index).ifPresent(leg -> {
            homeSeconds[index] = leg.seconds() + homeSeconds[leg.near()] + pass(leg.near(), 0, leg.nearPort());
            for (int k = 0; k < places.length; k++) {
                homeShare[index][k] = leg.decay().magnitude(places[k]) * bestInward[leg.near()][k];
            }
        });
        bestInward[index] = new double[places.length];
        bestOutward[index] = new double[places.length];
        for (int k = 0; k < places.length; k++) {
            double inward = 0;
            for (int port = 1; port < scatterer.ports(); port++) {
                inward = Math.max(inward, scatterer.wave(0, port).magnitude(places[k]));
            }
            double outward = Math.max(inward, scatterer.wave(0, 0).magnitude(places[k]));
            bestInward[index][k] = inward * homeShare[index][k];
            bestOutward[index][k] = outward * homeShare[index][k];
        }
    }

    private double pass(int scatterer, int out, int in) {
        return tree.scatterers().get(scatterer).passSeconds().get(out).get(in);
    }

    /**
     * Searches.
     *
     * @param most most ways to find
     * @param cancelled asked now and then; once true, the search ends
     * @return the ways, the best first
     */
    List<Way> find(int most, BooleanSupplier cancelled) {
        double[] ones = new double[places.length];
        Arrays.fill(ones, 1);
        add(new State(null, 0, new Met(0, 0, 0, 0), 1, ones, new double[places.length], 0, 1, 1, states++));
        List<Way> found = new ArrayList<>();
        while (!open.isEmpty() && found.size() < most && states < MOST_STATES && !cancelled.getAsBoolean()) {
            State best = open.remove();
            if (!waiting.remove(best.met(), best)) {
                continue;
            }
            if (best.scatterer() < 0) {
                found.add(way(best));
            } else {
                spread(best);
            }
        }
        return found;
    }

    /**
     * Returns how high a way that was left out may be.
     *
     * @return the bound of the best way not yet followed; the least height if all were [V]
     */
    double leftOutVolts() {
        return open.isEmpty() ? leastVolts : Math.max(leastVolts, open.peek().bound());
    }

    private void add(State state) {
        State known = waiting.get(state.met());
        State all = known == null ? state : known.with(state);
        waiting.put(all.met(), all);
        open.add(all);
    }

    private void spread(State state) {
        int here = state.scatterer();
        Scatterer scatterer = tree.scatterers().get(here);
        for (int out = 0; out < scatterer.ports(); out++) {
            ComplexArray wave = scatterer.wave(out, state.port());
            double seconds = state.seconds() + pass(here, out, state.port());
            if (out > 0) {
                LineLeg leg = outward[here][out];
                add(state, out, leg.far(), 0, wave, leg, seconds);
            } else if (here > 0) {
                LineLeg leg = tree.legTo(here).orElseThrow();
                add(state, out, leg.near(), leg.nearPort(), wave, leg, seconds);
            } else {
                add(state, out, -1, 0, wave, null, seconds);
            }
        }
    }

    private void add(State from, int left, int to, int port, ComplexArray wave, LineLeg leg, double leftSeconds) {
        double seconds = leg == null ? leftSeconds : leftSeconds + leg.seconds();
        double home = to < 0 ? seconds : seconds + homeSeconds[to] + (port == 0 ? 0 : pass(to, 0, port));
        if (home >= lastSeconds) {
            return;
        }
        double[] re = new double[places.length];
        double[] im = new double[places.length];
        double[] best = to < 0 ? null : port == 0 ? bestOutward[to] : bestInward[to];
        double sum = 0;
        double reach = 0;
        for (int k = 0; k < places.length; k++) {
            double wRe = wave.re(places[k]);
            double wIm = wave.im(places[k]);
            re[k] = from.re()[k] * wRe - from.im()[k] * wIm;
            im[k] = from.re()[k] * wIm + from.im()[k] * wRe;
            if (leg != null) {
                double dRe = leg.decay().re(places[k]);
                double dIm = leg.decay().im(places[k]);
                double was = re[k];
                re[k] = was * dRe - im[k] * dIm;
                im[k] = was * dIm + im[k] * dRe;
            }
            double size = weight[k] * Math.hypot(re[k], im[k]);
            sum += size;
            reach += best == null ? size : size * best[k];
        }
        double bound = reach * Math.exp(damping * home);
        if (bound >= leastVolts) {
            long[] mark = marks[from.scatterer()][from.port()][left];
            Met met = new Met(from.met().one() + mark[0], from.met().other() + mark[1], to, port);
            double volts = sum * Math.exp(damping * seconds);
            add(new State(from, left, met, from.orders(), re, im, seconds, volts, bound, states++));
        }
    }

    private static Way way(State home) {
        Deque<Stop> stops = new ArrayDeque<>();
        Deque<Double> volts = new ArrayDeque<>();
        for (State state = home; state.before() != null; state = state.before()) {
            stops.addFirst(new Stop(state.before().scatterer(), state.before().port(), state.left()));
            if (state.scatterer() >= 0) {
                volts.addFirst(state.volts());
            }
        }
        return new Way(List.copyOf(stops), home.orders(), List.copyOf(volts), home.seconds());
    }
}
