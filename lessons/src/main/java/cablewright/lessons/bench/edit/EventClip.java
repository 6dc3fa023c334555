// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Copied events. As text they are a cable file that holds only them, so that they can be carried from one window to another.
 *
 * @param cable a cable with no other events than the copied ones
 */
public record EventClip(Cable cable) {

    /**
     * Copies events.
     *
     * @param from the cable
     * @param ids names of the events
     * @return the clip; empty where no event has such a name
     */
    public static Optional<EventClip> of(Cable from, Collection<String> ids) {
        List<Event> events =
                from.events().stream().filter(event -> ids.contains(event.id())).toList();
        return events.isEmpty() ? Optional.empty() : Optional.of(new EventClip(from.withEvents(events)));
    }

    /**
     * Writes the clip as text.
     *
     * @return a cable file
     */
    public String text() {
        return new String(new DocumentWriter().bytes(new Document.OfCable(cable)), StandardCharsets.UTF_8);
    }

    /**
     * Reads a clip from text.
     *
     * @param text what {@link #text} wrote, or any cable file
     * @return the clip; empty where the text is none
     */
    public static Optional<EventClip> ofText(String text) {
        try {
            Document document = new DocumentReader().parse("clipboard", text.getBytes(StandardCharsets.UTF_8));
            return document instanceof Document.OfCable oc
                    ? Optional.of(new EventClip(oc.cable()))
                            .filter(clip -> !clip.cable().events().isEmpty())
                    : Optional.empty();
        } catch (LessonFormatException e) {
            return Optional.empty();
        }
    }

    /**
     * What pasting gives.
     *
     * @param cable the cable with the pasted events
     * @param ids their names on it, in order
     */
    public record Pasted(Cable cable, List<String> ids) {
        /** Copies the list. */
        public Pasted {
            ids = List.copyOf(ids);
        }
    }

    /**
     * Pastes the events, the first of them at a place and the others as far from it as they were. An event that would reach
     * beyond the cable is moved back onto it; a name that is taken gets a number.
     *
     * @param onto the cable
     * @param metres where the first of them begins [m]
     * @return the cable with them
     * @throws IllegalArgumentException if such an event can't be on that cable
     */
    public Pasted paste(Cable onto, double metres) {
        double first = cable.events().stream()
                .min(Comparator.comparingDouble(Event::startMetres))
                .orElseThrow()
                .startMetres();
        List<String> taken =
                new ArrayList<>(onto.events().stream().map(Event::id).toList());
        List<String> ids = new ArrayList<>();
        Cable pasted = onto;
        for (Event event : cable.events()) {
            String id = FreshNames.free(event.id(), taken);
            taken.add(id);
            ids.add(id);
            Event named = Copies.with(event, "id", id);
            double at = CableEdits.kept(onto, named, metres + event.startMetres() - first);
            pasted = CableEdits.added(pasted, named.movedTo(at));
        }
        return new Pasted(pasted, ids);
    }
}
