// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.TouchingConductors;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Represents an open or shorted end as an open or a short in a cable that goes on, so that the question whether it can be seen is
 * that of any event. A terminated end cannot be expressed so, and is never asked for.
 */
record EndAsEvent(Cable cable, String eventId) {

    private static final double GOES_ON_METRES = 1;

    static Optional<EndAsEvent> of(Cable cable) {
        String id = freeId(cable);
        double length = cable.lengthMetres();
        Event end;
        if (cable.farEnd() instanceof FarEnd.Open) {
            end = new BrokenConductor(id, length, OptionalDouble.empty());
        } else if (cable.farEnd() instanceof FarEnd.Short) {
            end = new TouchingConductors(id, length, OptionalDouble.empty());
        } else {
            return Optional.empty();
        }
        Run last = cable.runs().get(cable.runs().size() - 1);
        List<Run> runs = new ArrayList<>(cable.runs());
        runs.add(new Run(last.type(), GOES_ON_METRES));
        List<Event> events = new ArrayList<>(cable.events());
        events.add(end);
        FarEnd beyond = new FarEnd.Endless(last.type());
        Cable longer = new Cable(cable.title(), runs, events, beyond, cable.celsius(), cable.testLead());
        return Optional.of(new EndAsEvent(longer, id));
    }

    private static String freeId(Cable cable) {
        String id = "end";
        while (cable.event(id).isPresent()) {
            id += "-";
        }
        return id;
    }
}
