// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

/**
 * One thing that differs between two versions of a document.
 *
 * @param what what became of it
 * @param exerciseTitle title of the exercise; of the lesson where the lesson itself is meant
 * @param subject name of the event, run or item; empty where the whole is meant
 */
public record DocumentChange(What what, String exerciseTitle, String subject) {

    /** What can become of the parts of a document. */
    public enum What {
        /** Title, introduction, note, pass mark or pages of the lesson changed. */
        LESSON_TEXTS,
        /** The exercises stand in another order. */
        ORDER,
        /** An exercise came. */
        EXERCISE_ADDED,
        /** An exercise went. */
        EXERCISE_REMOVED,
        /** An event came. */
        EVENT_ADDED,
        /** An event went. */
        EVENT_REMOVED,
        /** An event is elsewhere. */
        EVENT_MOVED,
        /** An event is otherwise. */
        EVENT_CHANGED,
        /** Title, runs, end, lead or temperature of the cable changed. */
        CABLE_CHANGED,
        /** The record changed. */
        RECORD_CHANGED,
        /** Title, brief or cautions changed. */
        BRIEF_CHANGED,
        /** What may be set, what is set at the start, tolerance, or what is given changed. */
        RULES_CHANGED,
        /** Hints changed. */
        HINTS_CHANGED,
        /** The explanation changed. */
        EXPLANATION_CHANGED,
        /** The question before the trace changed. */
        PREDICTION_CHANGED
    }
}
