// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.cable.EventKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How one event shows at given settings: at its one place, or at the two ends of a stretch that is longer than half the
 * pulse.
 *
 * @param eventId the event's name
 * @param kind what the trade calls it
 * @param places its places, nearest to the tested end first
 * @param noiseVolts noise after averaging, root mean square [V]
 */
public record EventVisibility(String eventId, EventKind kind, List<PlaceVisibility> places, double noiseVolts) {

    /** Copies the list. */
    public EventVisibility {
        places = List.copyOf(places);
    }

    /**
     * Returns the place at which the event shows best; of equals, the one that the wave meets first.
     *
     * @return the best place
     */
    public PlaceVisibility best() {
        return places.stream()
                .min(Comparator.comparing(PlaceVisibility::visibility))
                .orElseThrow();
    }

    /**
     * Returns whether the event can be seen.
     *
     * @return the visibility of its best place
     */
    public Visibility visibility() {
        return best().visibility();
    }

    /**
     * Returns why the event is not clear.
     *
     * @return the reason; empty where it is clear
     */
    public Optional<HiddenReason> reason() {
        return best().reason();
    }
}
