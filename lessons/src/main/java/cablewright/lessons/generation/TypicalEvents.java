// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.line.CableType;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * An event of usual size for each kind that is generated: to show what a kind would look like where somebody claims it.
 * The sizes are those of plain generated exercises (common practice, no source), the same each time.
 */
public final class TypicalEvents {

    private static final Set<EventKind> KINDS = EnumSet.of(
            EventKind.SPLICE,
            EventKind.CONNECTOR,
            EventKind.TAP,
            EventKind.BRIDGED_TAP,
            EventKind.PINCH,
            EventKind.WATER,
            EventKind.OFF_CENTRE,
            EventKind.SPREAD_PAIR,
            EventKind.SPLIT,
            EventKind.GRADUAL_DAMAGE,
            EventKind.CORRODED_JOINT,
            EventKind.PARTIAL_OPEN,
            EventKind.PARTIAL_SHORT,
            EventKind.ONE_SIDE_OPEN,
            EventKind.ONE_SIDE_EARTHED,
            EventKind.CROSS,
            EventKind.OPEN,
            EventKind.SHORT);

    private static final long SEED = 1;
    private static final double PLAIN = 0.4;

    private TypicalEvents() {}

    /**
     * Makes an event of usual size.
     *
     * @param id its name
     * @param kind its kind
     * @param type the cable in which it lies
     * @param metres where it begins [m]
     * @param halfPulseMetres half of the length of the pulse in use [m]: stretches are made long enough to show two edges
     * @return the event; empty for a kind that has no usual size
     */
    public static Optional<Event> of(String id, EventKind kind, CableType type, double metres, double halfPulseMetres) {
        if (!KINDS.contains(kind)) {
            return Optional.empty();
        }
        EventDraft draft = new EventDraft(new SeededRandom(SEED, 0), type, PLAIN, halfPulseMetres, id);
        return Optional.of(draft.draw(id, kind, metres, draft.stretchMetres(kind)));
    }
}
