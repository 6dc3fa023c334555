// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.making.PaperMaker;
import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.simulator.instrument.Settings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A short exam on two lines of the built-in lesson, with few settings, so that it is made quickly. */
public final class ExamSamples {

    public static final ExaminerKey KEY = ExaminerKey.make();
    public static final Lesson LESSON = lesson();

    private ExamSamples() {}

    private static Lesson lesson() {
        List<Exercise> exercises = BuiltInLessons.find("harbour-line").orElseThrow().exercises().stream()
                .filter(exercise -> exercise.prediction().isEmpty())
                .limit(2)
                .map(ExamSamples::plain)
                .toList();
        return new Lesson("exam", "Exam", "Two lines.", "Saltmarsh Point is invented.", 0.5, exercises);
    }

    private static Exercise plain(Exercise it) {
        Settings settings = it.start().settings();
        Permitted all = it.permitted();
        double velocity = all.velocity().statedFraction().orElse(settings.velocityFraction());
        Settings start = settings.withVelocityFraction(velocity);
        Permitted few = new Permitted(
                List.of(settings.stimulus()),
                VelocityRule.fixed(velocity),
                List.of(settings.rangeMetres()),
                List.of(settings.gainDecibels()),
                all.averages(),
                List.of(it.start().end()));
        return new Exercise(
                it.id(),
                it.title(),
                it.brief(),
                it.cautions(),
                it.cable(),
                it.record(),
                it.instrument(),
                new Start(start, it.start().end()),
                few,
                it.toleranceMetres(),
                it.hints(),
                it.explanation(),
                it.prediction(),
                it.noiseSeed(),
                it.endIsGiven());
    }

    /** A fresh paper of the sample lesson, as bytes of its file. */
    public static byte[] paper() {
        PaperMaker.Terms terms = new PaperMaker.Terms("Harbour exam", "Ten marks for each event.", 60, 0.5);
        return PaperFile.bytes(new PaperMaker().make(LESSON, terms, KEY.publicKey()));
    }

    /** Answers to some paper: the right ones, to the first line of the sample lesson. */
    public static ExamAnswers answers() {
        Instant nine = Instant.parse("2031-05-04T09:00:00Z");
        return new ExamAnswers(
                "0".repeat(64),
                "Ada",
                "s-1",
                nine,
                nine.plusSeconds(60),
                Optional.empty(),
                60,
                1,
                0,
                List.of(KeyedAnswer.of(LESSON.exercises().get(0))));
    }
}
