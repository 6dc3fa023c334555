// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A small part of the measurement of fairness that DEVELOPERS.md names. */
class FairnessTest {

    @Test
    void aPerfectReaderIsNeverMarkedDownAndGuessingEverywhereEarnsLittle() {
        FairnessMeasurement measured = FairnessMeasurement.measure(8, 1);
        assertEquals(List.of(), measured.unfair());
        assertTrue(measured.places() >= 80, measured::report);
        assertTrue(measured.unread() <= 0.15 * measured.places(), measured::report);
        assertTrue(measured.mostGuessed() <= 0.2, measured::report);
    }
}
