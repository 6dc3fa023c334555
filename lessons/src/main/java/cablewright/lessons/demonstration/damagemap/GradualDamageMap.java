// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import cablewright.lessons.demonstration.RoundTrip;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.explanation.visibility.BlindZone;
import cablewright.simulator.explanation.visibility.DispersionDelay;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.Waveform;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Which gradual damage a trace shows: severity against distance, each cell judged as {@link
 * cablewright.simulator.explanation.visibility.VisibilityAnalysis} judges an event of a cable, by the trace with it and without it.
 *
 * <p>Damage without edges reflects less the longer it is against the pulse: to first order a change spread over L reflects
 * a share min(1, w v/(2L)) of what it would at once (Pozar, Microwave Engineering, 4th ed., sec. 5.8, from memory).
 */
public final class GradualDamageMap {

    private static final int COARSE_STRIDE = 4;

    private final DamageMapSettings wanted;
    private final Reflectometer reflectometer;
    private final DamageEchoes echoes;
    private final Trace without;
    private final BlindZone blindZone;
    private final double promptSeconds;
    private final double lateHertz;
    private final double nepersPerMetre;
    private final AtomicReferenceArray<ComplexArray> severities;
    private final AtomicReferenceArray<ComplexArray> distances;

    private final SeverityTable table;

    private GradualDamageMap(DamageMapSettings wanted, BooleanSupplier cancelled) {
        this.wanted = wanted;
        this.reflectometer = new Reflectometer(wanted.instrument());
        Settings settings = wanted.settings();
        double there = 2
                * wanted.damageMetres()
                / (wanted.type().section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
        this.promptSeconds = there
                + settings.stimulus().settledSeconds()
                + 0.8 / wanted.instrument().bandwidthHertz();
        this.lateHertz = 0.35 / settings.stimulus().shortestEdgeSeconds();
        this.nepersPerMetre = new RoundTrip(wanted.type(), lateHertz).attenuation(lateHertz);
        this.echoes = new DamageEchoes(wanted, windowSeconds(wanted.farthestMetres()));
        this.table = new SeverityTable(echoes, wanted.mildestChange(), wanted.worstChange(), cancelled);
        Cable sound = new Cable(
                "Sound cable",
                List.of(new Run(wanted.type(), settings.rangeMetres())),
                List.of(),
                new FarEnd.Endless(wanted.type()));
        this.without = Measurement.at(sound, wanted.instrument()).withoutNoise(settings);
        this.blindZone = BlindZone.of(reflectometer, settings);
        this.severities = new AtomicReferenceArray<>(wanted.rows());
        this.distances = new AtomicReferenceArray<>(wanted.columns());
    }

    /**
     * Computes a map.
     *
     * @param wanted which
     * @param listener hears of progress, and gets a coarse map first
     * @param cancelled asked before each cell; once true, the work stops, and it must stay true
     * @return the map; empty if it was cancelled
     */
    public static Optional<DamageMap> compute(
            DamageMapSettings wanted, MapListener listener, BooleanSupplier cancelled) {
        return new GradualDamageMap(wanted, cancelled).run(listener, cancelled);
    }

    private Optional<DamageMap> run(MapListener listener, BooleanSupplier cancelled) {
        DamageMap map = new DamageMap(wanted, 1, without.noiseVolts());
        AtomicInteger done = new AtomicInteger();
        pass(map, COARSE_STRIDE, done, listener, cancelled);
        if (cancelled.getAsBoolean()) {
            return Optional.empty();
        }
        listener.coarse(map.copy(COARSE_STRIDE));
        pass(map, 1, done, listener, cancelled);
        return cancelled.getAsBoolean() ? Optional.empty() : Optional.of(map);
    }

    /** Computes the middle cell of each square of a stride, where it is not yet there. */
    private void pass(DamageMap map, int stride, AtomicInteger done, MapListener listener, BooleanSupplier cancelled) {
        IntStream.range(0, (wanted.rows() + stride - 1) / stride).parallel().forEach(index -> {
            int row = middle(index, stride, wanted.rows());
            int added = 0;
            for (int place = 0; place * stride < wanted.columns() && !cancelled.getAsBoolean(); place++) {
                int column = middle(place, stride, wanted.columns());
                if (!map.has(row, column)) {
                    judge(map, row, column);
                    added++;
                }
            }
            listener.progress(done.addAndGet(added), wanted.rows() * wanted.columns());
        });
    }

    private static int middle(int index, int stride, int count) {
        return Math.min(count - 1, index * stride + stride / 2);
    }

    private void judge(DamageMap map, int row, int column) {
        double metres = wanted.metresAt(column);
        Waveform echo = echoes.echo(severity(row), distance(column), metres);
        double start = 2 * metres * echoes.slowness();
        double shift = start - echoes.startSeconds(metres);
        double clip = without.clipVolts();
        double contrast = 0;
        double peak = start;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double recorded = (without.count() - 1) * without.sampleSeconds() - start;
        double window = shift + Math.min(recorded, windowSeconds(metres));
        int last = (int) Math.min(echo.count() - 1.0, Math.ceil(window / echo.sampleSeconds()));
        for (int i = (int) (shift / echo.sampleSeconds()); i <= last; i++) {
            double seconds = start - shift + echo.time(i);
            double plain = without.voltsAt(wanted.settings().metresThereAndBack(seconds - without.zeroSeconds()));
            double before = Math.max(-clip, Math.min(clip, plain));
            double change = Math.abs(Math.max(-clip, Math.min(clip, plain + echo.sample(i))) - before);
            low = Math.min(low, before);
            high = Math.max(high, before);
            if (change > contrast) {
                contrast = change;
                peak = seconds;
            }
        }
        map.put(row, column, contrast, VisibilityRules.judge(evidence(contrast, high - low, peak)));
    }

    /** How long an echo is looked for: there and back through the damage, the pulse, and what loss makes it late. */
    private double windowSeconds(double metres) {
        double nepers = 2 * nepersPerMetre * (metres + wanted.damageMetres());
        return promptSeconds + DispersionDelay.seconds(nepers, lateHertz);
    }

    private VisibilityRules.Evidence evidence(double contrast, double clutter, double peakSeconds) {
        double blindEnd = blindZone.endSeconds(contrast);
        return new VisibilityRules.Evidence(
                contrast,
                without.noiseVolts(),
                reflectometer
                        .instrument()
                        .stepVoltsAfter(
                                wanted.settings().gainDecibels(),
                                wanted.settings().averages()),
                clutter,
                blindEnd <= 0 ? Double.POSITIVE_INFINITY : peakSeconds / blindEnd,
                Double.POSITIVE_INFINITY);
    }

    private ComplexArray severity(int row) {
        ComplexArray known = severities.get(row);
        if (known == null) {
            known = table.ofSeverity(wanted.changeAt(row));
            severities.set(row, known);
        }
        return known;
    }

    private ComplexArray distance(int column) {
        ComplexArray known = distances.get(column);
        if (known == null) {
            known = echoes.toDistance(wanted.metresAt(column));
            distances.set(column, known);
        }
        return known;
    }
}
