// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise.draft;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a trainee left off, and all exercises that were begun and not handed in.
 *
 * @param trainee who, free text of one line
 * @param lessonId the lesson that was open
 * @param exerciseId the exercise that was open
 * @param lessonFile path of the lesson's file on the trainee's machine; absent for a lesson that comes with the program
 * @param drafts what was begun, at most one for each exercise, the latest last, at most 500
 */
public record UnfinishedWork(
        @Text String trainee,
        @Id String lessonId,
        @Id String exerciseId,
        @Text Optional<String> lessonFile,
        @Entries(most = UnfinishedWork.MOST_DRAFTS) List<ExerciseDraft> drafts) {

    static final int MOST_DRAFTS = 500;

    /** Copies the list and checks the ranges. */
    public UnfinishedWork {
        Require.components(UnfinishedWork.class, trainee, lessonId, exerciseId, lessonFile, drafts);
        drafts = List.copyOf(drafts);
        Require.distinct("drafts", drafts, draft -> draft.lessonId() + "/" + draft.exerciseId());
    }

    /**
     * Puts the drafts of one lesson in place of those that were kept of it. The oldest are dropped where there are too many.
     *
     * @param lesson the lesson
     * @param exercise the exercise that is open
     * @param file path of the lesson's file, if it has one
     * @param now drafts of that lesson; those not worth keeping are left out
     * @return the work with them
     */
    public UnfinishedWork with(String lesson, String exercise, Optional<String> file, List<ExerciseDraft> now) {
        List<ExerciseDraft> all = new ArrayList<>(drafts);
        all.removeIf(draft -> draft.lessonId().equals(lesson));
        now.stream().filter(ExerciseDraft::isWorthKeeping).forEach(all::add);
        return new UnfinishedWork(
                trainee, lesson, exercise, file, all.subList(Math.max(0, all.size() - MOST_DRAFTS), all.size()));
    }

    /**
     * Finds what was begun of an exercise.
     *
     * @param lesson the lesson's name
     * @param exercise the exercise's name
     * @return the draft, if there is one
     */
    public Optional<ExerciseDraft> draft(String lesson, String exercise) {
        return drafts.stream().filter(draft -> draft.isOf(lesson, exercise)).findFirst();
    }
}
