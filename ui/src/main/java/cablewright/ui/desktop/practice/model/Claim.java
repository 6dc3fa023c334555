// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.Finding;
import java.util.Optional;

/**
 * A flag that named something else than what is there: worth seeing what the named thing would have shown.
 *
 * @param flag the flag
 * @param insteadOf the event that is there instead; empty where there is none
 */
public record Claim(Flag flag, Optional<String> insteadOf) {

    /**
     * Finds the claim in a finding.
     *
     * @param finding what marking found
     * @return the claim; empty where the flag was right, or no flag is meant
     */
    public static Optional<Claim> in(Finding finding) {
        if (finding instanceof Finding.Matched matched) {
            boolean right = matched.flag().kind() == matched.event().kind();
            return right
                    ? Optional.empty()
                    : Optional.of(new Claim(matched.flag(), matched.event().eventId()));
        }
        if (finding instanceof Finding.NothingThere there) {
            return Optional.of(new Claim(there.flag(), Optional.empty()));
        }
        if (finding instanceof Finding.GhostTakenForEvent event) {
            return Optional.of(new Claim(event.flag(), Optional.empty()));
        }
        return Optional.empty();
    }
}
