// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.course.FigureSlider;
import cablewright.lessons.course.InstructorNotes;
import cablewright.lessons.course.LessonPlan;
import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.course.Misreading;
import cablewright.lessons.course.Reference;
import cablewright.lessons.course.WorkedStep;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.Picture;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.HalfSine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Draws the pages of a lesson of one exercise. */
final class AnyPages {

    /** The head of a picture of 7 by 5 pixels. */
    private static final byte[] PNG = {
        (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R', 0, 0, 0, 7, 0, 0, 0, 5
    };

    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xc0, 0, 11, 8, 0, 5, 0, 7, 1};

    private AnyPages() {}

    static List<LessonPage> draw(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<LessonPage> pages = new ArrayList<>();
        int place = 0;
        for (int i = random.nextInt(4); i > 0; i--) {
            place = Math.max(place, random.nextInt(2));
            pages.add(new LessonPage(
                    "page" + i,
                    place,
                    "Page é " + i,
                    "One line\n\n- another 😀",
                    pictures(random),
                    random.nextBoolean() ? Optional.empty() : Optional.of(prediction(random)),
                    random.nextBoolean() ? List.of() : List.of(figure("figure" + i, random)),
                    random.nextBoolean() ? List.of() : List.of(new WorkedStep("Which way?", "Up.\n\nSo it is."))));
        }
        return pages;
    }

    private static LiveFigure figure(String id, SplittableRandom random) {
        Settings settings = new Settings(new HalfSine(10e-9), 0.85, 130, 0, 16);
        boolean byFactors = random.nextBoolean();
        return new LiveFigure(
                id,
                "A line",
                SampleExercises.with().cable(),
                random.nextBoolean() ? Optional.empty() : Optional.of(Instrument.usual(75)),
                settings,
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new FigureSlider("Pulse", "pulse_s", 1e-9, 1e-7, byFactors)));
    }

    /** Draws where the lesson stands in a course. */
    static Optional<LessonPlan> plan(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Optional<InstructorNotes> notes = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new InstructorNotes(
                        1 + random.nextInt(200),
                        "Ask.\nWait.",
                        List.of(new Misreading("It is up.", "It looks so.", "Ask why.")),
                        List.of(new Reference("ghost-paths"))));
        return random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new LessonPlan("To read.", List.of(new Reference("first")), "Up is open.", notes));
    }

    private static List<Picture> pictures(SplittableRandom random) {
        List<Picture> pictures = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            byte[] signature = random.nextBoolean() ? PNG : JPEG;
            byte[] file = new byte[signature.length + random.nextInt(40)];
            random.nextBytes(file);
            System.arraycopy(signature, 0, file, 0, signature.length);
            pictures.add(Picture.of("Picture " + i, file));
        }
        return pictures;
    }

    private static Prediction prediction(SplittableRandom random) {
        List<Choice> choices = List.of(new Choice("a", "Up", "No."), new Choice("b", "Down", "Yes."));
        Optional<Reasons> reasons = random.nextBoolean() ? Optional.empty() : Optional.of(new Reasons(choices, "b"));
        return new Prediction("Up or down?", choices, "b", reasons, "It falls.");
    }
}
