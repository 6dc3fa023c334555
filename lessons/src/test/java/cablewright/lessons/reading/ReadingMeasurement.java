// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.reading;

import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.simulator.reading.CandidateEvents;
import cablewright.simulator.solve.PropagationCache;

/**
 * Measures how many events the finder of candidates finds on generated cables, each at settings that its seed chooses among
 * those that its exercise permits. The finder was tuned on seeds 0 to 399; the measurement begins at {@value #FIRST_SEED}.
 */
public final class ReadingMeasurement {

    static final long FIRST_SEED = 1000;

    private ReadingMeasurement() {}

    /**
     * Prints the measurement.
     *
     * @param arguments how many cables; 1000 where none is given
     */
    public static void main(String[] arguments) {
        int cables = arguments.length == 0 ? 1000 : Integer.parseInt(arguments[0]);
        System.out.print(measure(cables).report());
    }

    static ReadScore measure(int cables) {
        ExerciseGenerator generator = new ExerciseGenerator();
        PropagationCache memory = new PropagationCache();
        ReadScore score = new ReadScore();
        for (int i = 0; i < cables; i++) {
            ReadCase read = ReadCase.of(FIRST_SEED + i, generator, memory);
            score.add(read, CandidateEvents.on(read.trace()));
        }
        return score;
    }
}
