package cablewright.lessons.exercise;

import java.util.List;
import java.util.Optional;

/**
 * A row of exercises.
 *
 * @param id name of the lesson
 * @param title one line
 * @param introduction what it is about, in Markdown
 * @param worldNote says that its people and places are invented
 * @param passMarkFraction share of the marks from which the lesson is passed, 0 to 1
 * @param exercises 1 to 200 exercises, in order
 */
public record Lesson(
        String id,
        String title,
        @Lines String introduction,
        String worldNote,
        double passMarkFraction,
        List<Exercise> exercises) {

    /** Copies the list and refuses values that can't be. */
    public Lesson {
        Require.id("id", id);
        Require.line("title", title);
        Require.text("introduction", introduction);
        Require.line("worldNote", worldNote);
        Require.between("passMarkFraction", passMarkFraction, 0, 1);
        exercises = Require.list("exercises", exercises, 1, 200);
        Require.distinct("exercises", exercises, Exercise::id);
    }

    /**
     * Finds an exercise by its name.
     *
     * @param exerciseId the exercise's name
     * @return the exercise, if the lesson has it
     */
    public Optional<Exercise> exercise(String exerciseId) {
        return exercises.stream().filter(e -> e.id().equals(exerciseId)).findFirst();
    }
}
