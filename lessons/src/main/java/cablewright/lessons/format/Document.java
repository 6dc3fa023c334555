// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.simulator.cable.Cable;

/** What a file holds. */
public sealed interface Document {

    /**
     * Returns which kind of file holds it.
     *
     * @return the kind
     */
    FileKind kind();

    /**
     * Returns what stands in the field of content.
     *
     * @return the cable, exercise, lesson or sheet
     */
    Object content();

    /**
     * A cable.
     *
     * @param cable the cable
     */
    record OfCable(Cable cable) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.CABLE;
        }

        @Override
        public Object content() {
            return cable;
        }
    }

    /**
     * An exercise.
     *
     * @param exercise the exercise
     */
    record OfExercise(Exercise exercise) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.EXERCISE;
        }

        @Override
        public Object content() {
            return exercise;
        }
    }

    /**
     * A lesson.
     *
     * @param lesson the lesson
     */
    record OfLesson(Lesson lesson) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.LESSON;
        }

        @Override
        public Object content() {
            return lesson;
        }
    }

    /**
     * Attempts of one person at one lesson.
     *
     * @param sheet the attempts
     */
    record OfAttempts(AttemptSheet sheet) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.ATTEMPTS;
        }

        @Override
        public Object content() {
            return sheet;
        }
    }

    /**
     * A sealed paper.
     *
     * @param paper the content
     */
    record OfPaper(SealedPaper paper) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.PAPER;
        }

        @Override
        public Object content() {
            return paper;
        }
    }

    /**
     * The part of a paper that only the examiner opens.
     *
     * @param part the content
     */
    record OfExaminersPart(ExaminersPart part) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.EXAMINERS_PART;
        }

        @Override
        public Object content() {
            return part;
        }
    }

    /**
     * Answers to a sealed paper.
     *
     * @param answers the content
     */
    record OfAnswers(ExamAnswers answers) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.ANSWERS;
        }

        @Override
        public Object content() {
            return answers;
        }
    }

    /**
     * Where a trainee left off.
     *
     * @param work the content
     */
    record OfWork(UnfinishedWork work) implements Document {
        @Override
        public FileKind kind() {
            return FileKind.WORK;
        }

        @Override
        public Object content() {
            return work;
        }
    }
}
