// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.condition.LineCondition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Edits of a cable: each gives another cable, or throws with a sentence that says what can't be and what is allowed.
 * Events keep their order in the list, which decides what is met first of two at one place.
 */
public final class CableEdits {

    private static final double SHORTEST_PIECE_METRES = 1e-3;

    private CableEdits() {}

    /**
     * Finds a name for a new event.
     *
     * @param cable the cable
     * @param stem what it begins with, such as "splice"
     * @return the stem with the first number that no event has
     */
    public static String freshId(Cable cable, String stem) {
        return FreshNames.numbered(stem, cable.events().stream().map(Event::id).toList());
    }

    /**
     * Adds an event.
     *
     * @param cable the cable
     * @param event the event
     * @return the cable with it
     */
    public static Cable added(Cable cable, Event event) {
        requireFit(cable, event);
        List<Event> events = new ArrayList<>(cable.events());
        events.add(event);
        return cable.withEvents(events);
    }

    /**
     * Puts a changed event in the place of the one of its name.
     *
     * @param cable the cable
     * @param event the event
     * @return the cable with it
     */
    public static Cable changed(Cable cable, Event event) {
        requireFit(cable, event);
        return cable.withEvents(cable.events().stream()
                .map(before -> before.id().equals(event.id()) ? event : before)
                .toList());
    }

    /**
     * Takes events away.
     *
     * @param cable the cable
     * @param ids their names
     * @return the cable without them
     */
    public static Cable without(Cable cable, Set<String> ids) {
        return cable.withEvents(cable.events().stream()
                .filter(event -> !ids.contains(event.id()))
                .toList());
    }

    /**
     * Moves an event as far as the cable allows.
     *
     * @param cable the cable
     * @param id its name
     * @param metres where it is to begin [m]
     * @return the cable with the event there, or at the end of the cable that is nearest to there
     */
    public static Cable moved(Cable cable, String id, double metres) {
        Event event = find(cable, id);
        return changed(cable, event.movedTo(kept(cable, event, metres)));
    }

    /** The nearest start at which an event lies on the cable. */
    static double kept(Cable cable, Event event, double metres) {
        double room = cable.lengthMetres() - (event.endMetres() - event.startMetres());
        return Math.max(0, Math.min(room, metres));
    }

    /**
     * Gives an event another name.
     *
     * @param cable the cable
     * @param id its name
     * @param name its name to be
     * @return the cable
     */
    public static Cable renamed(Cable cable, String id, String name) {
        Event event = find(cable, id);
        Event renamed = Copies.with(event, "id", name);
        return cable.withEvents(cable.events().stream()
                .map(before -> before.id().equals(id) ? renamed : before)
                .toList());
    }

    /**
     * Finds an event that must be there.
     *
     * @param cable the cable
     * @param id its name
     * @return the event
     */
    static Event find(Cable cable, String id) {
        return cable.event(id)
                .orElseThrow(() -> new IllegalArgumentException("there is no event \"" + id + "\"; choose one of "
                        + cable.events().stream().map(Event::id).toList()));
    }

    /**
     * Refuses a condition that can't be done to the cable on which it lies, such as a spread pair on coax.
     *
     * @param cable the cable
     * @param event the event
     */
    static void requireFit(Cable cable, Event event) {
        if (event instanceof LineCondition condition) {
            double from = 0;
            for (Run run : cable.runs()) {
                double to = from + run.lengthMetres();
                if (condition.startMetres() < to && condition.endMetres() > from) {
                    condition.applyTo(run.type().section(), deepest(condition));
                }
                from = to;
            }
        }
    }

    private static double deepest(LineCondition condition) {
        return condition.depthAt(0.5);
    }

    /**
     * Changes a run.
     *
     * @param cable the cable
     * @param index which run, from 0
     * @param run the run in its place
     * @return the cable; its events stay where they are
     */
    public static Cable withRun(Cable cable, int index, Run run) {
        List<Run> runs = new ArrayList<>(cable.runs());
        runs.set(index, run);
        return withRuns(cable, runs);
    }

    /**
     * Adds a run behind another.
     *
     * @param cable the cable
     * @param index behind which run, from 0
     * @param run the run
     * @return the cable; events beyond stay as far from the near end as they were
     */
    public static Cable withRunAfter(Cable cable, int index, Run run) {
        List<Run> runs = new ArrayList<>(cable.runs());
        runs.add(index + 1, run);
        return withRuns(cable, runs);
    }

    /**
     * Takes a run away.
     *
     * @param cable the cable
     * @param index which, from 0
     * @return the cable
     */
    public static Cable withoutRun(Cable cable, int index) {
        List<Run> runs = new ArrayList<>(cable.runs());
        runs.remove(index);
        return withRuns(cable, runs);
    }

    /**
     * Cuts the run at a place in two of the same type, so that one of them can be changed.
     *
     * @param cable the cable
     * @param metres where [m]
     * @return the cable
     */
    public static Cable cutAt(Cable cable, double metres) {
        List<Run> runs = new ArrayList<>();
        double from = 0;
        for (Run run : cable.runs()) {
            double to = from + run.lengthMetres();
            boolean here = metres > from + SHORTEST_PIECE_METRES && metres < to - SHORTEST_PIECE_METRES;
            if (here) {
                runs.add(new Run(run.type(), metres - from));
                runs.add(new Run(run.type(), to - metres));
            } else {
                runs.add(run);
            }
            from = to;
        }
        if (runs.size() == cable.runs().size()) {
            throw new IllegalArgumentException(
                    "a run can't be cut at " + metres + " m; choose a place within a run, at least 1 mm from its ends");
        }
        return withRuns(cable, runs);
    }

    private static Cable withRuns(Cable cable, List<Run> runs) {
        Cable changed = Copies.with(cable, "runs", runs);
        changed.events().forEach(event -> requireFit(changed, event));
        return changed;
    }

    /**
     * Changes the title.
     *
     * @param cable the cable
     * @param title what people call it
     * @return the cable
     */
    public static Cable withTitle(Cable cable, String title) {
        return Copies.with(cable, "title", title);
    }

    /**
     * Changes what the line ends in.
     *
     * @param cable the cable
     * @param end the end
     * @return the cable
     */
    public static Cable withFarEnd(Cable cable, FarEnd end) {
        return Copies.with(cable, "farEnd", end);
    }

    /**
     * Changes the temperature of the whole cable.
     *
     * @param cable the cable
     * @param celsius temperature [°C]
     * @return the cable
     */
    public static Cable withCelsius(Cable cable, double celsius) {
        return Copies.with(cable, "celsius", celsius);
    }

    /**
     * Changes the lead between instrument and cable.
     *
     * @param cable the cable
     * @param lead the lead; empty for none
     * @return the cable
     */
    public static Cable withTestLead(Cable cable, Optional<TestLead> lead) {
        return Copies.with(cable, "testLead", lead);
    }
}
