// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import java.util.List;

/**
 * What the instructor of a lesson should know. It stays out of trainees' screens and of exam papers.
 *
 * @param minutes how long the lesson takes in class [min]
 * @param text timing, what to ask the room and what to listen for, in Markdown
 * @param misreadings how trainees go wrong, and why that tempts them
 * @param demonstrations ids of the demonstrations to run, in order
 */
public record InstructorNotes(
        @Between(least = 1, most = 1_000) int minutes,
        @Lines String text,
        @Entries(most = 20) List<Misreading> misreadings,
        @Entries(most = 20, distinct = true) List<Reference> demonstrations) {

    /** Copies the lists and checks the ranges. */
    public InstructorNotes {
        Require.components(InstructorNotes.class, minutes, text, misreadings, demonstrations);
        misreadings = List.copyOf(misreadings);
        demonstrations = List.copyOf(demonstrations);
    }
}
