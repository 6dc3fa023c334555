// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.paths.LineLeg;
import cablewright.simulator.paths.Scatterer;
import cablewright.simulator.paths.ScatteringTree;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Works out the paths of a wave as a receiver shows them, and whose the bumps of a trace are. */
public final class PathSearch {

    /** Most paths that are listed, unless more are asked for. */
    static final int USUAL_MOST = 600;

    private static final double NOISE_SHARE = 0.2;
    private static final double LEAST_VOLTS = 2e-6;

    private final Instrument instrument;
    private final Settings settings;
    private final ContourGrid grid;
    private final ComplexArray sent;
    private final ScatteringTree tree;
    private final PathProducts products;
    private final PathFinder finder;
    private final Trace quiet;
    private final Waveform reflected;
    private final List<PathEcho> echoes;

    PathSearch(Cable tested, Instrument instrument, Settings settings, int most, BooleanSupplier cancelled) {
        this.instrument = instrument;
        this.settings = settings;
        Measurement measurement = Measurement.at(tested, instrument);
        Reflectometer reflectometer = measurement.reflectometer();
        this.quiet = measurement.withoutNoise(settings);
        double record = quiet.sampleSeconds() * quiet.count() * (1 + Math.max(0, instrument.timebaseErrorFraction()));
        this.grid = ContourGrid.forRecord(record, reflectometer.longestSampleSeconds(settings.stimulus()));
        this.sent = reflectometer.received(grid, settings.stimulus());
        Frequencies points = grid.points().slice(0, sent.count());
        double edge = settings.stimulus().shortestEdgeSeconds();
        this.tree = ScatteringTree.of(tested, instrument.sourceOhms(), ProfileSteps.forEdge(edge), points);
        this.products = new PathProducts(tree);
        double least = Math.max(LEAST_VOLTS, NOISE_SHARE * quiet.noiseVolts());
        this.finder = new PathFinder(tree, sent, grid.dampingPerSecond(), record, least);
        this.reflected = Inversion.invert(grid, sent.times(measurement.port().reflection(grid, sent.count(), edge)));
        this.echoes = finder.find(most, cancelled).stream()
                .map(this::echo)
                .sorted(Comparator.comparingDouble(echo -> echo.path().arrivalSeconds()))
                .toList();
    }

    Attribution attribution(Optional<Trace> measured) {
        double[] sum = new double[reflected.count()];
        for (PathEcho echo : echoes) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += echo.waveform().sample(i);
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
        return new Attribution(
                echoes.stream().map(PathEcho::path).toList(),
                new BumpFinder(instrument, quiet, reflected, echoes).of(measured.orElse(quiet)),
                all == 0 ? 1 : 1 - left / all,
                worst,
                finder.leftOutVolts());
    }

    private PathEcho echo(PathFinder.Way way) {
        Waveform waveform = scaled(Inversion.invert(grid, sent.times(products.of(way))), way.orders());
        double shown = settings.metresThereAndBack(way.seconds() / (1 + instrument.timebaseErrorFraction()));
        return new PathEcho(
                new WavePath(turns(way), way.orders(), legs(way), way.seconds(), shown, peak(waveform)), waveform);
    }

    private static Waveform scaled(Waveform waveform, double factor) {
        if (factor == 1) {
            return waveform;
        }
        double[] values = waveform.copyOfValues();
        for (int i = 0; i < values.length; i++) {
            values[i] *= factor;
        }
        return new Waveform(waveform.sampleSeconds(), values);
    }

    /** The largest value, on the parabola through the largest sample and its neighbours. */
    private static double peak(Waveform waveform) {
        int at = 0;
        for (int i = 1; i < waveform.count(); i++) {
            at = Math.abs(waveform.sample(i)) > Math.abs(waveform.sample(at)) ? i : at;
        }
        double top = waveform.sample(at);
        if (at == 0 || at + 1 == waveform.count()) {
            return top;
        }
        double slope = (waveform.sample(at + 1) - waveform.sample(at - 1)) / 2;
        double bend = 2 * top - waveform.sample(at - 1) - waveform.sample(at + 1);
        return Math.abs(bend) < Math.abs(slope) ? top : top + slope * slope / (2 * bend);
    }

    private List<Turn> turns(PathFinder.Way way) {
        List<Turn> turns = new ArrayList<>();
        for (PathFinder.Stop stop : way.stops()) {
            if (stop.in() == stop.out()) {
                Scatterer place = tree.scatterers().get(stop.scatterer());
                List<String> cameBy = stop.in() == 0
                        ? place.branchIds()
                        : tree.legFrom(stop.scatterer(), stop.in()).branchIds();
                turns.add(new Turn(place.reflector(), place.branchIds(), cameBy));
            }
        }
        return turns;
    }

    private List<PathLeg> legs(PathFinder.Way way) {
        List<PathLeg> legs = new ArrayList<>();
        double seconds = 0;
        for (int i = 0; i + 1 < way.stops().size(); i++) {
            PathFinder.Stop stop = way.stops().get(i);
            LineLeg leg = products.legAfter(stop);
            boolean out = stop.out() > 0;
            double start = seconds
                    + tree.scatterers()
                            .get(stop.scatterer())
                            .passSeconds()
                            .get(stop.out())
                            .get(stop.in());
            seconds = start + leg.seconds();
            legs.add(new PathLeg(
                    leg.branchIds(),
                    out ? leg.startMetres() : leg.endMetres(),
                    out ? leg.endMetres() : leg.startMetres(),
                    start,
                    seconds,
                    way.volts().get(i)));
        }
        return legs;
    }
}
