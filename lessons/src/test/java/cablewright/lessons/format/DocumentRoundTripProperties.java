// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class DocumentRoundTripProperties {

    private final DocumentReader reader = new DocumentReader();
    private final DocumentWriter writer = new DocumentWriter();

    @Property(tries = 300)
    void whatIsWrittenIsReadBackAsItWasAndWrittenToTheSameBytes(@ForAll long seed) throws LessonFormatException {
        Cable cable = new AnyCable(new SplittableRandom(seed)).draw();

        requireRoundTrip(new Document.OfCable(cable));
    }

    @Property(tries = 30)
    void exercisesAndLessonsComeBackAsTheyWere(@ForAll long seed) throws LessonFormatException {
        Cable cable = new AnyCable(new SplittableRandom(seed)).draw();
        Exercise exercise = exerciseAbout(cable);

        requireRoundTrip(new Document.OfExercise(exercise));
        requireRoundTrip(new Document.OfLesson(
                new Lesson("lesson", "A lesson", "First line\n\nThird line", "Invented.", 0.6, List.of(exercise))));
        requireRoundTrip(new Document.OfLesson(new Lesson(
                "lesson",
                "A lesson",
                "First line",
                "Invented.",
                0.6,
                List.of(exercise),
                AnyPages.draw(seed),
                AnyPages.plan(seed))));
    }

    @Property(tries = 100)
    void attemptsComeBackAsTheyWere(@ForAll long seed) throws LessonFormatException {
        SplittableRandom random = new SplittableRandom(seed);
        EventKind[] kinds = EventKind.values();
        double metres = 1000 * random.nextDouble();
        Flag flag = new Flag(
                "AB",
                random.nextBoolean() ? LineEnd.NEAR : LineEnd.FAR,
                metres,
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(metres + random.nextDouble()),
                kinds[random.nextInt(kinds.length)],
                random.nextBoolean() ? Verdict.BELONGS : Verdict.DAMAGE,
                0.05 + 0.95 * random.nextDouble());
        Attempt attempt = new Attempt(
                "test",
                "Someone",
                List.of(flag),
                SampleExercises.with().start().settings(),
                random.nextInt(11),
                Optional.of("up"),
                random.nextBoolean() ? Optional.empty() : Optional.of("since"),
                Optional.of(Instant.ofEpochMilli(random.nextLong(4_000_000_000_000L))),
                Optional.empty());

        requireRoundTrip(new Document.OfAttempts(new AttemptSheet("lesson", List.of(attempt))));
    }

    private static Exercise exerciseAbout(Cable cable) {
        AsBuiltRecord record = new AsBuiltRecord(
                OptionalDouble.empty(),
                List.of(),
                new RecordedEnd(RecordedEnd.Kind.NOT_SAID, "not said"),
                "none",
                true);
        return SampleExercises.of(cable, new VelocityRule(0.5, 1, OptionalDouble.empty()), record, false);
    }

    private void requireRoundTrip(Document document) throws LessonFormatException {
        byte[] first = writer.bytes(document);
        Document read = reader.parse("test", first);

        assertEquals(document, read);
        assertArrayEquals(first, writer.bytes(read));
    }
}
