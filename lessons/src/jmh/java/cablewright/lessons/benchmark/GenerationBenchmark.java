// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.benchmark;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
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

/** How many exercises are made, with all that they must pass, and how long the marker thinks about a new one. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.SECONDS)
@BenchmarkMode(Mode.Throughput)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class GenerationBenchmark {

    private static final int DIFFICULTIES = 11;

    private final ExerciseGenerator generator = new ExerciseGenerator();
    private final Exercise exercise = generator.generate(GenerationRequest.anything(1, 0.5));
    private long seed;

    /** Another exercise of any family each time, from plain to hard. @return the exercise */
    @Benchmark
    public Exercise make() {
        seed++;
        return generator.generate(GenerationRequest.anything(seed, (seed % DIFFICULTIES) / 10.0));
    }

    /** What an exercise asks for. @return the demand */
    @Benchmark
    public AnswerKey demand() {
        return AnswerKey.of(exercise);
    }
}
