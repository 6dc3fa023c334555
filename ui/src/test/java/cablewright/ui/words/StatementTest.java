// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A small part of the measurement of false sentences that DEVELOPERS.md names. */
class StatementTest {

    @Test
    void noSentenceIsFalse() {
        StatementMeasurement measured = StatementMeasurement.measure(4, 1);
        assertEquals(List.of(), measured.wrong());
        assertTrue(measured.sentences() >= 100, measured::report);
    }
}
