// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.marking.Finding;
import java.util.List;
import java.util.Optional;

/**
 * One finding with the facts that explain it.
 *
 * @param finding the finding
 * @param velocityFraction velocity at which its distances are told, over that of light
 * @param echoes the event at its places on the trainee's trace, nearest to the tested end first; none for what is no event,
 *     or for one that no place within the range shows
 * @param lookHere where to look
 * @param comparison what the kind that was flagged would have shown; empty where the kind was right, or can't be on this
 *     cable
 * @param places what explains places that are off
 */
public record FindingReasons(
        Finding finding,
        double velocityFraction,
        List<EchoFacts> echoes,
        List<LookHere> lookHere,
        Optional<KindComparison> comparison,
        List<PlaceReason> places) {

    /** Copies the lists. */
    public FindingReasons {
        echoes = List.copyOf(echoes);
        lookHere = List.copyOf(lookHere);
        places = List.copyOf(places);
    }
}
