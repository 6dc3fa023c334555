// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exercise.Lesson;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;

/**
 * The part of a paper that only the examiner opens.
 *
 * @param lesson the exercises as they were, with cables, explanations, hints and answers
 * @param keys what each item of the paper stands for
 */
public record ExaminersPart(Lesson lesson, @Entries(least = 1, most = SealedPaper.MOST_ITEMS) List<ItemKey> keys) {

    /** Copies the list and checks that each key has its exercise. */
    public ExaminersPart {
        Require.components(ExaminersPart.class, lesson, keys);
        keys = List.copyOf(keys);
        for (ItemKey key : keys) {
            if (lesson.exercise(key.exerciseId()).isEmpty()) {
                throw new IllegalArgumentException(
                        "keys has \"" + key.exerciseId() + "\"; the lesson has no such exercise");
            }
        }
    }

    /**
     * Finds what an item stands for.
     *
     * @param itemId the item
     * @return its key, if there is one
     */
    public Optional<ItemKey> key(String itemId) {
        return keys.stream().filter(key -> key.itemId().equals(itemId)).findFirst();
    }
}
