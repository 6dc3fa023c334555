// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Require;
import java.util.Optional;

/**
 * One thing on a line as its two ends show it.
 *
 * @param near what the near end shows; empty where it shows nothing there
 * @param far what the far end shows; empty where it shows nothing there
 * @param nearSeconds time there and back from the near end, from whichever ends show it [s]
 * @param hidden whether it lies behind the strongest echo of the end that does not show it, and that echo is strong enough
 *     to hide it: an open or a short, most likely. What is not hidden and is shown by one end alone is too small for the
 *     other, or a ghost
 */
public record MergedEvent(
        Optional<CandidateEvent> near, Optional<CandidateEvent> far, Measured nearSeconds, boolean hidden) {

    /** Refuses a thing that neither end shows. */
    public MergedEvent {
        Require.components(MergedEvent.class, near, far, nearSeconds, hidden);
        if (near.isEmpty() && far.isEmpty()) {
            throw new IllegalArgumentException("near and far are empty; at least one end must show the event");
        }
    }

    /**
     * Returns whether both ends show it.
     *
     * @return whether they do
     */
    public boolean isSeenFromBoth() {
        return near.isPresent() && far.isPresent();
    }
}
