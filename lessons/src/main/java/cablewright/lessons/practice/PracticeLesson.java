// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import java.util.List;

/** The lesson that stands for a practice session, whose exercises are made as it goes. */
public final class PracticeLesson {

    /** Its name, under which records of practice are kept. */
    public static final String ID = "practice";

    private static final double PASS_MARK = 0.7;

    private PracticeLesson() {}

    /**
     * Makes it.
     *
     * @param title title
     * @param introduction what is said before the first exercise
     * @param world what is said of the world in which it plays
     * @param first its first exercise
     * @return the lesson
     */
    public static Lesson of(String title, String introduction, String world, Exercise first) {
        return new Lesson(ID, title, introduction, world, PASS_MARK, List.of(first));
    }
}
