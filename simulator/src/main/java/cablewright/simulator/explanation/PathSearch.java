package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.network.ProfileSteps;
import cablewright.simulator.network.Scatterer;
import cablewright.simulator.network.ScatteringChain;
import cablewright.simulator.network.SimulatedPort;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Finds the paths of a wave, best first. A path grows by two turns at a time: back at a scatterer nearer to the port, and
 * away again at one behind it. Its strength is bounded by e^(ct) Σ|P F|/Σ|F| over the damped band, with t the arrival of its
 * front; no further turn can raise it by much, so what falls below the threshold is left out for good.
 */
final class PathSearch {

    private static final int MOST_PATHS = 400;
    private static final int MOST_TRIES = 20_000;
    private static final double NOISE_SHARE = 0.2;
    private static final double LEAST_VOLTS = 2e-6;
    private static final double SHARE_OF_BUMP = 0.05;
    private static final double SIGMAS = 3;

    private final Settings settings;
    private final BooleanSupplier cancelled;
    private final ContourGrid grid;
    private final ComplexArray sent;
    private final ScatteringChain chain;
    private final List<Scatterer> scatterers;
    private final double[] weight;
    private final double threshold;
    private final Trace trace;
    private final Waveform reflected;
    private int tries;

    PathSearch(Cable tested, Instrument instrument, Settings settings, BooleanSupplier cancelled) {
        this.settings = settings;
        this.cancelled = cancelled;
        Reflectometer reflectometer = new Reflectometer(instrument);
        SimulatedPort port = new SimulatedPort(tested, instrument.sourceOhms());
        this.trace = reflectometer.withoutNoise(port, settings);
        double record = trace.sampleSeconds() * trace.count();
        this.grid = ContourGrid.forRecord(record, reflectometer.longestSampleSeconds(settings.stimulus()));
        this.sent = reflectometer.received(grid, settings.stimulus());
        Frequencies points = grid.points().slice(0, sent.count());
        ProfileSteps steps = ProfileSteps.forEdge(settings.stimulus().shortestEdgeSeconds());
        this.chain = ScatteringChain.of(tested, instrument.sourceOhms(), steps, points);
        this.scatterers = chain.scatterers();
        this.weight = weights();
        this.threshold = Math.max(LEAST_VOLTS, NOISE_SHARE * trace.noiseVolts());
        ComplexArray back =
                port.reflection(grid, sent.count(), settings.stimulus().shortestEdgeSeconds());
        this.reflected = Inversion.invert(grid, sent.times(back));
    }

    /** How much each frequency counts in the height of a path: |F|, to a sum of 1. */
    private double[] weights() {
        double[] w = new double[sent.count()];
        double sum = 0;
        for (int k = 0; k < w.length; k++) {
            w[k] = sent.magnitude(k);
            sum += w[k];
        }
        for (int k = 0; k < w.length; k++) {
            w[k] /= sum;
        }
        return w;
    }

    /** A path up to its last turn away from the port. */
    private record Branch(List<Integer> turns, ComplexArray product, double seconds, double bound) {}

    private record Found(WavePath path, Waveform waveform) {}

    Attribution attribution() {
        List<Found> found = search();
        double[] sum = new double[reflected.count()];
        for (Found one : found) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += one.waveform().sample(i);
            }
        }
        double from = settings.stimulus().settledSeconds();
        double all = 0;
        double left = 0;
        double worst = 0;
        for (int i = 0; i < sum.length; i++) {
            double error = reflected.sample(i) - sum[i];
            worst = Math.max(worst, Math.abs(error));
            if (reflected.time(i) >= from) {
                all += reflected.sample(i) * reflected.sample(i);
                left += error * error;
            }
        }
        List<WavePath> paths = found.stream()
                .map(Found::path)
                .sorted(Comparator.comparingDouble(WavePath::arrivalSeconds))
                .toList();
        return new Attribution(paths, bumps(found), all == 0 ? 1 : 1 - left / all, worst);
    }

    private List<Found> search() {
        PriorityQueue<Branch> open = new PriorityQueue<>(
                Comparator.comparingDouble(Branch::bound).reversed().thenComparing(b -> b.turns()
                        .toString()));
        extend(new Branch(List.of(), null, 0, 1), -1, open);
        List<Found> found = new ArrayList<>();
        while (!open.isEmpty() && found.size() < MOST_PATHS && tries < MOST_TRIES && !cancelled.getAsBoolean()) {
            Branch best = open.remove();
            Waveform waveform = Inversion.invert(grid, sent.times(best.product()));
            found.add(new Found(told(best, waveform), waveform));
            for (int j = best.turns().get(best.turns().size() - 1) - 1; j >= 0; j--) {
                extend(best, j, open);
            }
        }
        return found;
    }

    /** Turns back at scatterer j (or starts at the port, j = −1) and away again at each scatterer behind it. */
    private void extend(Branch from, int j, PriorityQueue<Branch> open) {
        ComplexArray running = from.product();
        if (j >= 0) {
            running = running.times(scatterers.get(j).far());
            if (bound(running, from.seconds()) < threshold) {
                return;
            }
        }
        for (int k = j + 1; k < scatterers.size(); k++) {
            if (k > 0) {
                running = k - 1 == j
                        ? running
                        : times(running, scatterers.get(k - 1).thereAndBack());
                running = times(running, chain.leg(k - 1));
            }
            double seconds = from.seconds()
                    + scatterers.get(k).thereAndBackSeconds()
                    - (j < 0 ? 0 : scatterers.get(j).thereAndBackSeconds());
            if (running != null && bound(running, seconds) < threshold) {
                return;
            }
            ComplexArray product = times(running, scatterers.get(k).near());
            tries++;
            double bound = bound(product, seconds);
            if (bound >= threshold && seconds < reflected.count() * reflected.sampleSeconds()) {
                List<Integer> turns = new ArrayList<>(from.turns());
                if (j >= 0) {
                    turns.add(j);
                }
                turns.add(k);
                open.add(new Branch(List.copyOf(turns), product, seconds, bound));
            }
        }
    }

    private static ComplexArray times(ComplexArray running, ComplexArray factor) {
        return running == null ? factor : running.times(factor);
    }

    private double bound(ComplexArray product, double seconds) {
        double sum = 0;
        for (int k = 0; k < weight.length; k++) {
            sum += weight[k] * product.magnitude(k);
        }
        return sum * Math.exp(grid.dampingPerSecond() * seconds);
    }

    private WavePath told(Branch branch, Waveform waveform) {
        double peak = 0;
        for (int i = 0; i < waveform.count(); i++) {
            peak = Math.abs(waveform.sample(i)) > Math.abs(peak) ? waveform.sample(i) : peak;
        }
        List<String> names = branch.turns().stream().map(this::name).toList();
        return new WavePath(names, branch.seconds(), settings.metresThereAndBack(branch.seconds()), peak);
    }

    private String name(int index) {
        Scatterer scatterer = scatterers.get(index);
        switch (scatterer.role()) {
            case PORT:
                return Attribution.PORT;
            case CABLE_CHANGE:
                return Attribution.CABLE_CHANGE;
            case END:
                return scatterer.events().isEmpty() ? Sightings.END_OF_LINE : String.join("+", scatterer.events());
            default:
                return String.join("+", scatterer.events());
        }
    }

    private List<Bump> bumps(List<Found> found) {
        double floor = SIGMAS * trace.noiseVolts();
        double from = settings.stimulus().settledSeconds();
        List<Bump> bumps = new ArrayList<>();
        for (int i = 1; i + 1 < reflected.count(); i++) {
            double v = reflected.sample(i);
            boolean top = v > reflected.sample(i - 1) && v >= reflected.sample(i + 1) && v > 0;
            boolean bottom = v < reflected.sample(i - 1) && v <= reflected.sample(i + 1) && v < 0;
            if (reflected.time(i) >= from && Math.abs(v) >= floor && (top || bottom)) {
                bumps.add(bump(found, i, v));
            }
        }
        return bumps;
    }

    private Bump bump(List<Found> found, int index, double volts) {
        List<Bump.Share> shares = found.stream()
                .map(one -> new Bump.Share(one.path(), one.waveform().sample(index)))
                .filter(share -> Math.abs(share.volts()) >= SHARE_OF_BUMP * Math.abs(volts))
                .sorted(Comparator.comparingDouble(share -> -Math.abs(share.volts())))
                .toList();
        double zero = trace.zeroSeconds();
        return new Bump(settings.metresThereAndBack(reflected.time(index) - zero), volts, shares);
    }
}
