// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.content;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * The lessons that come with the program. A new one is a file beside this class in the format of lessons, named here; the
 * tests then hold it to what is asked of built-in content.
 */
public final class BuiltInLessons {

    private static final List<String> FILES = List.of(
            "pulses.json",
            "sign-and-size.json",
            "events-are-not-faults.json",
            "pressed-and-broken.json",
            "water.json",
            "pairs.json",
            "width.json",
            "ghosts.json",
            "what-a-trace-cannot-tell.json",
            "mixed-calls.json",
            "harbour-line.json");
    private static final List<Lesson> ALL =
            FILES.stream().map(BuiltInLessons::read).toList();

    private BuiltInLessons() {}

    /**
     * Returns all of them, in the order in which they are offered.
     *
     * @return the lessons
     */
    public static List<Lesson> all() {
        return ALL;
    }

    /**
     * Returns the one that opens first.
     *
     * @return the lesson
     */
    public static Lesson first() {
        return ALL.get(0);
    }

    /**
     * Finds one by its name.
     *
     * @param id the lesson's name
     * @return the lesson, if there is one
     */
    public static Optional<Lesson> find(String id) {
        return ALL.stream().filter(lesson -> lesson.id().equals(id)).findFirst();
    }

    private static Lesson read(String file) {
        try (InputStream in = BuiltInLessons.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the lesson " + file + " is not in the program; build it again");
            }
            return ((Document.OfLesson) new DocumentReader().parse(file, in.readAllBytes())).lesson();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (LessonFormatException e) {
            throw new IllegalStateException("a built-in lesson is spoilt; build the program again", e);
        }
    }
}
