// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.draft.ExerciseDraft;
import cablewright.lessons.exercise.draft.FlagSketch;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Unfinished work survives as it was, and a spoilt file never stands in the way. */
class WorkFolderTest {

    private static final Lesson LESSON = BuiltInLessons.first();

    @TempDir
    Path folder;

    private static ExerciseDraft draft(Exercise exercise, boolean said) {
        FlagSketch flag = new FlagSketch(
                "A",
                LineEnd.NEAR,
                73.4,
                said ? OptionalDouble.of(70.1) : OptionalDouble.empty(),
                said ? Optional.of(EventKind.WATER) : Optional.empty(),
                said ? Optional.of(Verdict.DAMAGE) : Optional.empty(),
                0.85,
                exercise.start().settings().stimulus());
        return new ExerciseDraft(
                LESSON.id(),
                exercise.id(),
                List.of(flag),
                exercise.start().settings(),
                LineEnd.NEAR,
                1,
                Optional.of("up"),
                Optional.empty(),
                Optional.of(Instant.parse("2031-03-01T08:00:00Z")));
    }

    private static UnfinishedWork work(String trainee) {
        Exercise first = LESSON.exercises().get(0);
        Exercise second = LESSON.exercises().get(1);
        return new UnfinishedWork(trainee, LESSON.id(), second.id(), Optional.of("/lessons/harbour.json"), List.of())
                .with(LESSON.id(), second.id(), Optional.empty(), List.of(draft(first, false), draft(second, true)));
    }

    @Test
    void workOfEachTraineeComesBackAsItWas() throws IOException {
        WorkFolder store = WorkFolder.in(folder.resolve("work"));
        for (String name : List.of("Ada", "ada", "Zoë Ström")) {
            store.keep(work(name));
        }
        for (String name : List.of("Ada", "ada", "Zoë Ström")) {
            assertEquals(
                    Optional.of(work(name)),
                    WorkFolder.in(folder.resolve("work")).read(name));
        }
        assertEquals(Optional.empty(), store.read("Nobody"));
    }

    @Test
    void spoiltFileIsPutAsideAndReplacedByTheNextChange() throws IOException {
        WorkFolder store = WorkFolder.in(folder);
        store.keep(work("ada"));
        Path file = folder.resolve("ada.json");
        String whole = Files.readString(file);
        Files.writeString(file, whole.substring(0, whole.length() / 2), StandardCharsets.UTF_8);
        assertEquals(Optional.empty(), store.read("ada"));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(
                    List.of("ada.json.unsound"),
                    left.map(each -> each.getFileName().toString()).toList());
        }
        store.keep(work("ada"));
        assertEquals(Optional.of(work("ada")), store.read("ada"));
    }

    @Test
    void draftsOfOtherLessonsStayAndThoseWithoutWorkAreDropped() {
        UnfinishedWork both = work("ada")
                .with(
                        "other",
                        "one",
                        Optional.empty(),
                        List.of(new ExerciseDraft(
                                "other",
                                "one",
                                List.of(),
                                LESSON.exercises().get(0).start().settings(),
                                LineEnd.NEAR,
                                0,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())));
        assertEquals(work("ada").drafts(), both.drafts());
        assertEquals("other", both.lessonId());
        assertTrue(both.draft(LESSON.id(), LESSON.exercises().get(1).id()).isPresent());
    }

    @Test
    void lessonsOfAFolderAreFoundAndWhatIsNoneIsNamed() throws IOException {
        Files.write(folder.resolve("b.json"), new DocumentWriter().bytes(new Document.OfLesson(LESSON)));
        Files.writeString(folder.resolve("a.json"), "{}");
        Files.writeString(folder.resolve("notes.txt"), "nothing");
        OwnLessons found = OwnLessons.in(folder);
        assertEquals(
                List.of(LESSON.id()),
                found.lessons().stream().map(each -> each.lesson().id()).toList());
        assertEquals(1, found.faults().size());
        assertTrue(found.faults().get(0).startsWith("a.json: "), found.faults().get(0));
        assertEquals(List.of(), OwnLessons.in(folder.resolve("none")).lessons());
    }
}
