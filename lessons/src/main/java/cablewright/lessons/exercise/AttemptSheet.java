// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import java.util.List;

/**
 * The attempts of one person at one lesson.
 *
 * @param lessonId the lesson
 * @param attempts the attempts in the order in which they were handed in, at most 2000
 */
public record AttemptSheet(@Id String lessonId, @Entries(most = 2000) List<Attempt> attempts) {

    /** Copies the list and checks the ranges. */
    public AttemptSheet {
        Require.components(AttemptSheet.class, lessonId, attempts);
        attempts = List.copyOf(attempts);
    }
}
