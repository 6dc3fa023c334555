// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.benchmark;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.field.LineField;
import cablewright.simulator.field.LinePlaces;
import cablewright.simulator.field.WaveFrames;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.Stimulus;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The travelling wave on a cable of 30 events at 600 places: working out all frames, and showing one. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WaveBenchmark {

    private static final double SECONDS = 1.4e-6;

    private final Cable cable = StreetOfTaps.withLastEventAt(120);
    private final Stimulus stimulus = new HalfSine(5e-9);
    private final WaveFrames prepared = allFrames();
    private int next;

    /** Works out every frame. @return the frames */
    @Benchmark
    public WaveFrames allFrames() {
        LineField field = new LineField(cable, 75, LinePlaces.evenly(cable, 600));
        return WaveFrames.of(field, stimulus, SECONDS, WaveFrames.usualCount(stimulus, SECONDS));
    }

    /** Looks one frame up. @return voltage at 600 places */
    @Benchmark
    public double[] oneFrame() {
        next = (next + 1) % prepared.count();
        return prepared.copyOfVolts(0, next);
    }
}
