// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import java.util.List;

/**
 * The attempts of one person at one lesson.
 *
 * @param lessonId the lesson
 * @param attempts the attempts in the order in which they were handed in, at most 2000
 */
public record AttemptSheet(String lessonId, List<Attempt> attempts) {

    /** Copies the list and refuses values that can't be. */
    public AttemptSheet {
        Require.id("lessonId", lessonId);
        attempts = Require.list("attempts", attempts, 0, 2000);
    }
}
