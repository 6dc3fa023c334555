// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.marking.Finding;
import java.util.List;
import java.util.Optional;

/**
 * One finding with the facts that explain it.
 *
 * @param finding the finding
 * @param velocityFraction velocity factor used to convert time to distance, over that of light
 * @param claims the facts, in the order in which they are stated
 * @param lookHere where to look
 * @param comparison what the kind that was flagged could have shown; empty where the kind was right, or can't be on this
 *     cable
 */
public record FindingReasons(
        Finding finding,
        double velocityFraction,
        List<Claim> claims,
        List<LookHere> lookHere,
        Optional<KindComparison> comparison) {

    /** Copies the lists. */
    public FindingReasons {
        claims = List.copyOf(claims);
        lookHere = List.copyOf(lookHere);
    }
}
