// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.course.FigureSlider;
import cablewright.lessons.course.InstructorNotes;
import cablewright.lessons.course.LessonPlan;
import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.course.Reference;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.proof.LessonNumbers;
import cablewright.lessons.study.FigureVariation;
import cablewright.simulator.instrument.Trace;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is asked of the built-in lessons as a course. */
class CurriculumTest {

    /** Velocities of the cable types in use, and two that instruments were left at. */
    private static final Set<String> VELOCITIES = Set.of("66", "69", "76", "80", "83", "85", "87");

    private static final Pattern BARE_PER_CENT = Pattern.compile("(\\d+(?:\\.\\d+)?) %");

    static List<Lesson> lessons() {
        return BuiltInLessons.all();
    }

    private static long questions(Lesson lesson) {
        return lesson.exercises().stream()
                        .filter(exercise -> exercise.prediction().isPresent())
                        .count()
                + lesson.pages().stream()
                        .filter(page -> page.prediction().isPresent())
                        .count();
    }

    @Test
    void thereAreTenLessonsAndARoundOverAllOfThem() {
        assertTrue(lessons().size() >= 11);
        assertTrue(lessons().stream().mapToInt(it -> it.exercises().size()).sum() >= 68);
        assertTrue(lessons().stream().mapToLong(CurriculumTest::questions).sum() >= 44);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void theFileIsInCanonicalForm(Lesson lesson) throws IOException, LessonFormatException {
        String file = lesson.id() + ".json";
        try (InputStream in = BuiltInLessons.class.getResourceAsStream(file)) {
            byte[] bytes = in.readAllBytes();
            Document read = new DocumentReader().parse(file, bytes);
            assertArrayEquals(bytes, new DocumentWriter().bytes(read), file);
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void aLessonHasAimPathCardWorkedExampleAndNotes(Lesson lesson) {
        LessonPlan plan = lesson.plan().orElseThrow();
        InstructorNotes notes = plan.instructor().orElseThrow();
        assertTrue(lesson.worldNote().contains("Saltmarsh Point")
                && lesson.worldNote().contains("invented"));
        assertTrue(lesson.exercises().size() >= 6);
        assertTrue(notes.minutes() >= 30 && !notes.misreadings().isEmpty());
        if (!lesson.id().equals("harbour-line")) {
            assertTrue(questions(lesson) >= 4, () -> lesson.id() + " asks " + questions(lesson));
            assertTrue(lesson.pages().stream().anyMatch(page -> page.steps().size() >= 5));
            assertTrue(lesson.figures().size() >= 2);
            LessonPage last = lesson.pages().get(lesson.pages().size() - 1);
            assertEquals(lesson.exercises().size(), last.exercisesBefore());
            assertTrue(last.prediction().isPresent());
        }
    }

    @Test
    void everyPrerequisiteIsALessonThatComesBefore() {
        Set<String> before = new HashSet<>();
        for (Lesson lesson : lessons()) {
            List<String> needed = lesson.plan().orElseThrow().prerequisites().stream()
                    .map(Reference::id)
                    .toList();
            assertTrue(before.containsAll(needed), lesson.id());
            assertEquals(before.isEmpty(), needed.isEmpty(), lesson.id());
            before.add(lesson.id());
        }
    }

    @Test
    void noTwoExercisesOfTheCourseHaveOneName() {
        List<String> ids = lessons().stream()
                .flatMap(lesson -> lesson.exercises().stream().map(Exercise::id))
                .toList();
        assertEquals(ids.size(), new HashSet<>(ids).size());
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyNumberInATextIsWhatItsSourceComesTo(Lesson lesson) {
        List<LessonNumbers.StatedNumber> numbers = LessonNumbers.of(lesson);
        assertFalse(numbers.isEmpty());
        assertEquals(List.of(), numbers.stream().filter(it -> !it.isRight()).toList());
    }

    /** A percentage in an explanation is a velocity, or it is marked with its source. */
    @ParameterizedTest
    @MethodSource("lessons")
    void noExplanationStatesAPercentageWithoutItsSource(Lesson lesson) {
        List<String> bare = new ArrayList<>();
        Stream<String> texts = Stream.concat(
                lesson.exercises().stream().map(Exercise::explanation),
                lesson.pages().stream()
                        .flatMap(page -> Stream.concat(
                                Stream.of(page.text()), page.steps().stream().map(step -> step.answer()))));
        texts.map(text -> text.replaceAll("\\{[^{}]*}", "")).forEach(text -> {
            Matcher found = BARE_PER_CENT.matcher(text);
            while (found.find()) {
                if (!VELOCITIES.contains(found.group(1))) {
                    bare.add(text.substring(Math.max(0, found.start() - 30), found.end()));
                }
            }
        });
        assertEquals(List.of(), bare, lesson.id());
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyFigureIsDrawnWhereverItsSliderStands(Lesson lesson) {
        for (LiveFigure figure : lesson.figures()) {
            FigureVariation variation = new FigureVariation(figure);
            List<Double> values = new ArrayList<>(List.of(variation.opening()));
            figure.slider().ifPresent((FigureSlider slider) -> {
                assertEquals(variation.opening(), slider.at(slider.shareOf(variation.opening())), 1e-9, figure.id());
                values.addAll(List.of(slider.at(0), slider.at(0.5), slider.at(1)));
            });
            for (double value : values) {
                Trace trace = variation.at(value).trace();
                for (int i = 0; i < trace.count(); i++) {
                    assertTrue(Double.isFinite(trace.volts(i)), () -> figure.id() + " at " + value);
                }
            }
        }
    }
}
