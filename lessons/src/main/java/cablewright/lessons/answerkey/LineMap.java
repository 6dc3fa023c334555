// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.compile.CableProfile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * When the wave comes back from each place of a line, seen from one end.
 *
 * @param events each event's two ends
 * @param joints where runs of different types meet
 * @param endSeconds time there and back to the other end [s]
 * @param lengthMetres length of the line [m]
 */
public record LineMap(Map<String, Stretch> events, List<Place> joints, double endSeconds, double lengthMetres) {

    /** Finest step of profiles that places need: an edge of 1 ns. */
    private static final double TOP_HERTZ = 1e9;

    public LineMap {
        events = Map.copyOf(events);
        joints = List.copyOf(joints);
    }

    /**
     * A place.
     *
     * @param seconds time there and back [s]
     * @param metres where it is, from the end tested [m]
     */
    public record Place(double seconds, double metres) {}

    /**
     * The two ends of an event, the one that is met first coming first.
     *
     * @param nearer the first
     * @param farther the second; the same for a thing at one place
     */
    public record Stretch(Place nearer, Place farther) {

        public Place middle() {
            return new Place((nearer.seconds() + farther.seconds()) / 2, (nearer.metres() + farther.metres()) / 2);
        }
    }

    static LineMap of(Cable cable, LineEnd end) {
        Cable tested = cable.seenFrom(end);
        CableProfile profile = CableProfile.of(tested, TOP_HERTZ);
        Map<String, Stretch> events = new HashMap<>();
        for (Event event : tested.events()) {
            events.put(event.id(), new Stretch(place(profile, event.startMetres()), place(profile, event.endMetres())));
        }
        return new LineMap(
                events, joints(tested, profile), 2 * profile.secondsTo(tested.lengthMetres()), tested.lengthMetres());
    }

    private static List<Place> joints(Cable tested, CableProfile profile) {
        List<Place> joints = new ArrayList<>();
        double metres = 0;
        Run before = tested.runs().get(0);
        for (Run run : tested.runs()) {
            if (!run.type().equals(before.type())) {
                joints.add(place(profile, metres));
            }
            metres += run.lengthMetres();
            before = run;
        }
        return joints;
    }

    private static Place place(CableProfile profile, double metres) {
        return new Place(2 * profile.secondsTo(metres), metres);
    }
}
