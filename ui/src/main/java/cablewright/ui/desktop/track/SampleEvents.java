// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.bench.edit.Insertable;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** An event of each kind in its usual size, for its symbol. */
public final class SampleEvents {

    private static final double METRES = 100;

    private SampleEvents() {}

    /**
     * Makes one.
     *
     * @param what what it is
     * @return an event on a cable that can carry it
     */
    public static Optional<Event> of(Insertable what) {
        return Catalogue.standard().types().stream()
                .filter(type -> Insertable.on(type).contains(what))
                .findFirst()
                .map(type -> of(what, type));
    }

    private static Event of(Insertable what, CableType type) {
        Cable plain = new Cable("sample", List.of(new Run(type, METRES)), List.of(), new FarEnd.Open());
        List<Event> events = what.putOn(plain, METRES / 2, 1).events();
        return events.get(events.size() - 1);
    }

    /**
     * Makes one of a kind.
     *
     * @param kind the kind
     * @return an event; empty for what is no event on a cable, such as its end
     */
    public static Optional<Event> of(EventKind kind) {
        return Arrays.stream(Insertable.values())
                .filter(what -> what.kind() == kind)
                .findFirst()
                .flatMap(SampleEvents::of);
    }
}
