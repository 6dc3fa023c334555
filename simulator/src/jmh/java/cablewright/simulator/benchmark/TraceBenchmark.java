// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.benchmark;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
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

/** What a person waits for: a trace while one of 30 events is dragged, a first trace, and who can be seen on it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TraceBenchmark {

    private final Instrument instrument = Instrument.usual(75);
    private final Settings settings = new Settings(new HalfSine(5e-9), 0.85, 150, 20, 64);
    private final Reflectometer reflectometer = new Reflectometer(instrument);
    private final PropagationCache memory = new PropagationCache();
    private int moves;

    /** Another place of the last event each time, other lines remembered. @return the trace */
    @Benchmark
    public Trace whileDragging() {
        double place = 119.5 + (moves++ % 100) * 0.05;
        return reflectometer.measure(new SimulatedPort(StreetOfTaps.withLastEventAt(place), 75, memory), settings, 1);
    }

    /** Nothing remembered. @return the trace */
    @Benchmark
    public Trace fromNothing() {
        return reflectometer.measure(new SimulatedPort(StreetOfTaps.withLastEventAt(120), 75), settings, 1);
    }

    /** Visibility of all 30 events. @return how each shows */
    @Benchmark
    public List<EventVisibility> whoCanBeSeen() {
        return VisibilityAnalysis.of(StreetOfTaps.withLastEventAt(120), instrument, settings, LineEnd.NEAR);
    }
}
