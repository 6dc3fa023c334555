// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.ui.print.PaperSize;
import cablewright.ui.print.Printout;
import cablewright.ui.print.SheetMaker;
import cablewright.ui.words.Words;

/** What a lesson can be handed out as. */
public enum HandOut {
    /** Worksheets to fill in, as PDF. */
    WORKSHEETS("pdf") {
        @Override
        public byte[] bytes(Lesson lesson, Words words) {
            return sheets(lesson, words, false);
        }
    },
    /** The answers to them, as PDF. */
    ANSWERS("pdf") {
        @Override
        public byte[] bytes(Lesson lesson, Words words) {
            return sheets(lesson, words, true);
        }
    },
    /** Questions as Moodle XML. */
    MOODLE("xml") {
        @Override
        public byte[] bytes(Lesson lesson, Words words) {
            return new MoodleQuestions(lesson, words).bytes();
        }
    },
    /** Questions as a QTI 3.0 package. */
    QTI("zip") {
        @Override
        public byte[] bytes(Lesson lesson, Words words) {
            return new QtiPackage(lesson, words).bytes();
        }
    };

    private final String ending;

    HandOut(String ending) {
        this.ending = ending;
    }

    private static byte[] sheets(Lesson lesson, Words words, boolean answers) {
        Printout all = new Printout(lesson.title(), PaperSize.A4, java.util.List.of());
        for (Exercise exercise : lesson.exercises()) {
            SheetMaker maker = new SheetMaker(exercise, PaperSize.A4, words);
            all = all.then(answers ? maker.answerSheet() : maker.worksheet());
        }
        return all.pdf();
    }

    /**
     * Makes the file.
     *
     * @param lesson the lesson
     * @param words the words, in the unit of length in which it is to be read
     * @return the bytes of the file
     */
    public abstract byte[] bytes(Lesson lesson, Words words);

    /**
     * Returns how names of such files end.
     *
     * @return without a dot
     */
    public String ending() {
        return ending;
    }
}
