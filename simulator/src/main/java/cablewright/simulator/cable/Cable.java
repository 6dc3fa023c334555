// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Readable;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import cablewright.simulator.check.Usual;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A cable as it lies in the ground: runs of cable one after the other, events along them, and how it ends.
 *
 * <p>Positions are metres along the true cable from its near end. What a record claims, what a wrong velocity shows and
 * what a test lead adds are other things and never part of a position.
 *
 * @param title what people call the cable
 * @param runs the runs in order from the near end; a change of type is where two meet
 * @param events the events, in any order, each with a name of its own
 * @param farEnd what the line ends in
 * @param celsius temperature of the whole cable [°C], −60 to 150
 * @param testLead the lead between instrument and cable, if there is one
 */
public record Cable(
        @Text String title,
        @Entries(least = 1, most = Cable.MOST_RUNS) List<Run> runs,
        @Entries(most = Cable.MOST_EVENTS) List<Event> events,
        FarEnd farEnd,
        @Between(least = -60, most = 150) @Usual(from = -40, to = 60) double celsius,
        Optional<TestLead> testLead) {

    /** Longest cable [m]. */
    public static final double MOST_METRES = 100_000;

    /** Most runs in one cable. */
    public static final int MOST_RUNS = 10_000;

    /** Most events on one cable. */
    public static final int MOST_EVENTS = 10_000;

    /** Deepest nesting of branches of branches. */
    public static final int MOST_BRANCH_DEPTH = 4;

    /** Reference temperature of cable types [°C]. */
    public static final double BASE_CELSIUS = 20;

    private static final double SLACK = 1e-9;

    /** Copies the lists and checks the ranges. */
    public Cable {
        Require.components(Cable.class, title, runs, events, farEnd, celsius, testLead);
        runs = List.copyOf(runs);
        events = List.copyOf(events);
        double length = Require.above("the length of all runs", lengthOf(runs), 0, MOST_METRES);
        requireEventsWithin(events, length);
        if (branchDepth(events) > MOST_BRANCH_DEPTH) {
            throw new IllegalArgumentException("events nest branches " + branchDepth(events)
                    + " deep; branches of branches may go " + MOST_BRANCH_DEPTH + " deep");
        }
    }

    /**
     * Makes a cable at 20 °C with no test lead.
     *
     * @param title what people call it
     * @param runs its runs
     * @param events its events
     * @param farEnd what it ends in
     */
    public Cable(String title, List<Run> runs, List<Event> events, FarEnd farEnd) {
        this(title, runs, events, farEnd, BASE_CELSIUS, Optional.empty());
    }

    private static void requireEventsWithin(List<Event> events, double length) {
        Set<String> ids = new HashSet<>();
        for (Event event : events) {
            if (!ids.add(event.id())) {
                throw new IllegalArgumentException(
                        "id \"" + event.id() + "\" is used by two events; each event needs a name of its own");
            }
            if (event.startMetres() > length * (1 + SLACK) || event.endMetres() > length * (1 + SLACK)) {
                throw new IllegalArgumentException(
                        "event \"" + event.id() + "\" reaches " + Readable.number(event.endMetres(), length)
                                + " m; the cable is only " + Readable.number(length, event.endMetres()) + " m long");
            }
        }
        events.forEach(event -> event.requireRoom(length, events));
    }

    private static int branchDepth(List<Event> events) {
        int deepest = 0;
        for (Event event : events) {
            Optional<Cable> branch = event.branchCable();
            if (branch.isPresent()) {
                deepest = Math.max(deepest, 1 + branchDepth(branch.get().events()));
            }
        }
        return deepest;
    }

    private static double lengthOf(List<Run> runs) {
        return runs.stream().mapToDouble(Run::lengthMetres).sum();
    }

    /**
     * Returns the length of all runs.
     *
     * @return length [m]
     */
    public double lengthMetres() {
        return lengthOf(runs);
    }

    /**
     * Finds an event by its name.
     *
     * @param id the event's name
     * @return the event, if the cable has it
     */
    public Optional<Event> event(String id) {
        return events.stream().filter(event -> event.id().equals(id)).findFirst();
    }

    /**
     * Returns the run in which a place lies.
     *
     * @param positionMetres distance from the near end [m]
     * @return the run; at a place where two meet, the one that begins there
     */
    public Run runAt(double positionMetres) {
        double end = 0;
        for (Run run : runs) {
            end += run.lengthMetres();
            if (positionMetres < end) {
                return run;
            }
        }
        return runs.get(runs.size() - 1);
    }

    /**
     * Puts other events on the cable.
     *
     * @param others the events
     * @return a cable alike but for them
     */
    public Cable withEvents(List<Event> others) {
        return new Cable(title, runs, others, farEnd, celsius, testLead);
    }

    /**
     * Takes one event away: a condition undone, an element bridged, a break replaced by the cable that goes on.
     *
     * @param id the event's name
     * @return a cable alike but for it
     */
    public Cable withoutEvent(String id) {
        return withEvents(
                events.stream().filter(event -> !event.id().equals(id)).toList());
    }

    /**
     * Returns the cable as it is seen from one of its ends.
     *
     * @param end the end
     * @return this cable, or for the far end the mirrored one
     */
    public Cable seenFrom(LineEnd end) {
        return end == LineEnd.NEAR ? this : seenFromFarEnd();
    }

    /**
     * Returns the cable as seen from its far end. What it ended in is gone, since the instrument takes its place; the
     * near end is left as the instrument leaves it: open.
     *
     * @return the mirrored cable
     */
    public Cable seenFromFarEnd() {
        return seenFromFarEnd(new FarEnd.Open());
    }

    /**
     * Returns the cable as seen from its far end.
     *
     * @param nearEndLeft what closes the near end meanwhile
     * @return the mirrored cable
     */
    public Cable seenFromFarEnd(FarEnd nearEndLeft) {
        List<Run> turned = new ArrayList<>(runs);
        Collections.reverse(turned);
        double length = lengthMetres();
        List<Event> mirrored = new ArrayList<>();
        events.forEach(event -> mirrored.add(event.mirrored(length)));
        // Of things at one place the wave now meets the last one first.
        Collections.reverse(mirrored);
        return new Cable(title, turned, mirrored, nearEndLeft, celsius, testLead);
    }
}
