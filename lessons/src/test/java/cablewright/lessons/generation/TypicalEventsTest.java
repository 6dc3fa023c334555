// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TypicalEventsTest {

    private final CableType type = Catalogue.standard().type("drop-6-foam");

    @Test
    void everyEventIsOfTheKindThatWasAskedForAtItsPlace() {
        int made = 0;
        for (EventKind kind : EventKind.values()) {
            Optional<Event> event = TypicalEvents.of("e", kind, type, 40, 0.6);
            if (event.isPresent()) {
                made++;
                assertEquals(kind, event.get().kind());
                assertEquals(40, event.get().startMetres(), 1e-12);
            }
        }
        assertTrue(made >= 15, "made " + made);
    }

    @Test
    void theSameEachTime() {
        assertEquals(
                TypicalEvents.of("e", EventKind.WATER, type, 10, 0.6),
                TypicalEvents.of("e", EventKind.WATER, type, 10, 0.6));
    }
}
