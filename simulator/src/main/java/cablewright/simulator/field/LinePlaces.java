// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splitter;
import java.util.ArrayList;
import java.util.List;

/**
 * Places along one cable: the line itself or one of its branches.
 *
 * <p>A place lies just before whatever is put in the line there. Below zero lies the test lead, its port at minus its
 * length; the first place of a branch is just after the joint.
 *
 * @param branchIds names of the events by which branches leave, from the line outwards; empty for the line itself
 * @param metres the places, each counted from the start of its own cable [m], rising
 */
public record LinePlaces(List<String> branchIds, List<Double> metres) {

    /** Most places on all tracks together. */
    public static final int MOST_PLACES = 8192;

    /** Copies the lists and refuses places out of order. */
    public LinePlaces {
        branchIds = List.copyOf(branchIds);
        metres = List.copyOf(metres);
        if (metres.isEmpty() || metres.size() > MOST_PLACES) {
            throw new IllegalArgumentException(
                    "metres has " + metres.size() + " entries; a track has 1 to " + MOST_PLACES + " places");
        }
        for (int i = 1; i < metres.size(); i++) {
            if (!(metres.get(i) > metres.get(i - 1))) {
                throw new IllegalArgumentException("metres has " + metres.get(i) + " after " + metres.get(i - 1)
                        + "; places must rise along the track");
            }
        }
    }

    /**
     * Lays evenly spaced places along a whole cable and all its branches.
     *
     * @param cable the cable
     * @param count how many places the line itself gets, test lead included, at least 2; branches get theirs at the same
     *     spacing, at least 2
     * @return the line's own track, then those of the branches in the order in which they leave
     */
    public static List<LinePlaces> evenly(Cable cable, int count) {
        if (count < 2 || count > MOST_PLACES) {
            throw new IllegalArgumentException("count is " + count + "; allowed is 2 to " + MOST_PLACES);
        }
        double start = -cable.testLead().map(TestLead::lengthMetres).orElse(0.0);
        double spacing = (cable.lengthMetres() - start) / (count - 1);
        List<LinePlaces> tracks = new ArrayList<>();
        addEvenly(tracks, List.of(), cable, start, spacing);
        return tracks;
    }

    private static void addEvenly(
            List<LinePlaces> tracks, List<String> ids, Cable cable, double start, double spacing) {
        double length = cable.lengthMetres() - start;
        int steps = (int) Math.max(1, Math.min(MOST_PLACES - 1, Math.round(length / spacing)));
        List<Double> metres = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            metres.add(i == steps ? cable.lengthMetres() : start + length * i / steps);
        }
        tracks.add(new LinePlaces(ids, metres));
        List<Event> events = new ArrayList<>(cable.events());
        events.sort((a, b) -> Double.compare(a.startMetres(), b.startMetres()));
        for (Event event : events) {
            List<String> further = new ArrayList<>(ids);
            further.add(event.id());
            if (event instanceof BridgedTap tap) {
                addEvenly(tracks, further, tap.branch(), 0, spacing);
            } else if (event instanceof Splitter splitter) {
                addEvenly(tracks, further, splitter.leg(), 0, spacing);
            }
        }
    }
}
