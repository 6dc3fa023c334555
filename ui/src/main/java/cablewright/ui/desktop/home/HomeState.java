// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.practice.LessonProgress;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the lesson home shows of a trainee.
 *
 * @param entries lessons in the order in which they are offered
 * @param goOn where to go on; empty where every lesson is passed
 * @param weak kinds that were missed of late, the weakest first
 * @param reviewsDue how many mistakes are due for review
 * @param faults a sentence for each lesson file that can't be used
 */
public record HomeState(
        List<Entry> entries, Optional<GoOn> goOn, List<WeakKind> weak, int reviewsDue, List<String> faults) {

    /** Copies the lists. */
    public HomeState {
        entries = List.copyOf(entries);
        weak = List.copyOf(weak);
        faults = List.copyOf(faults);
    }

    /**
     * A lesson on offer.
     *
     * @param progress how far the trainee is in it
     * @param file its file; empty for one that comes with the program
     */
    public record Entry(LessonProgress progress, Optional<Path> file) {}

    /**
     * Where to go on.
     *
     * @param entry the lesson
     * @param exercise the exercise
     * @param flags how many flags are placed in it
     * @param begun whether something was left unfinished, or the lesson is only the next one
     */
    public record GoOn(Entry entry, Exercise exercise, int flags, boolean begun) {

        /**
         * Returns the exercise's place in its lesson.
         *
         * @return its number, from 1
         */
        public int number() {
            return entry.progress().lesson().exercises().indexOf(exercise) + 1;
        }
    }
}
