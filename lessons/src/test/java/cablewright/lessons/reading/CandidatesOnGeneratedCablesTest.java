// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.reading;

import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.explanation.visibility.Visibility;
import org.junit.jupiter.api.Test;

/** A small part of the measurement that DEVELOPERS.md names, held to limits that it keeps with a margin. */
class CandidatesOnGeneratedCablesTest {

    @Test
    void clearEventsAreFoundAndLittleElse() {
        ReadScore score = ReadingMeasurement.measure(120);
        String report = score.report();
        assertTrue(score.recall(Visibility.CLEAR) >= 0.92, report);
        assertTrue(score.recall(Visibility.CLEAR) > score.recall(Visibility.MARGINAL), report);
        assertTrue(score.recall(Visibility.MARGINAL) > score.recall(Visibility.HIDDEN), report);
        assertTrue(score.falseAlarmsPerTrace() <= 0.4, report);
        assertTrue(score.errorWidths(0.5) <= 0.25, report);
        assertTrue(score.shareWithinTwoUncertainties() >= 0.85, report);
    }
}
