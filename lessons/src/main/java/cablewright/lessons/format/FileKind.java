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
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of file, each with its name in the field "format", its field of content and its schema. */
public enum FileKind {
    /** A cable. */
    CABLE("cablewright-cable", "cable", "cable", Cable.class),
    /** An exercise. */
    EXERCISE("cablewright-exercise", "exercise", "exercise", Exercise.class),
    /** A lesson with its exercises. */
    LESSON("cablewright-lesson", "lesson", "lesson", Lesson.class),
    /** Attempts of one person at one lesson. */
    ATTEMPTS("cablewright-attempts", "attempts", "attempts sheet", AttemptSheet.class),
    /** A sealed paper. */
    PAPER("cablewright-paper", "paper", "sealed paper", SealedPaper.class),
    /** The part of a paper that only the examiner opens. */
    EXAMINERS_PART("cablewright-examiners-part", "examinersPart", "examiner's part of a paper", ExaminersPart.class),
    /** Answers to a sealed paper. */
    ANSWERS("cablewright-answers", "answers", "answers to a paper", ExamAnswers.class),
    /** Where a trainee left off. */
    WORK("cablewright-work", "work", "unfinished work", UnfinishedWork.class);

    /** The version that is written; earlier ones, once there are any, stay readable. */
    public static final int VERSION = 1;

    private final String format;
    private final String field;
    private final String word;
    private final Class<?> content;

    FileKind(String format, String field, String word, Class<?> content) {
        this.format = format;
        this.field = field;
        this.word = word;
        this.content = content;
    }

    /**
     * Returns the word of the field "format".
     *
     * @return such as "cablewright-cable"
     */
    public String format() {
        return format;
    }

    /** Returns the name of the field that holds the content. */
    public String field() {
        return field;
    }

    /** Returns the record of the content. */
    public Class<?> content() {
        return content;
    }

    /** Returns whether it may bring cable types along. */
    public boolean holdsCables() {
        return switch (this) {
            case CABLE, EXERCISE, LESSON, EXAMINERS_PART -> true;
            case ATTEMPTS, PAPER, ANSWERS, WORK -> false;
        };
    }

    /** What people call it. */
    String word() {
        return word;
    }

    /**
     * Returns the published JSON Schema (draft 2020-12) of this kind of file.
     *
     * @return the schema's text
     */
    public String schema() {
        return resource(format + ".schema.json");
    }

    /**
     * Returns the definitions that the schemas share; they refer to it by its {@code $id}.
     *
     * @return the schema's text
     */
    public static String sharedSchema() {
        return resource("cablewright-shared.schema.json");
    }

    private static String resource(String name) {
        try (InputStream in = FileKind.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the resource " + name + " is not in the program; build it again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Optional<FileKind> ofFormat(String format) {
        return Arrays.stream(values())
                .filter(kind -> kind.format.equals(format))
                .findFirst();
    }

    static String allFormats() {
        return Arrays.stream(values()).map(FileKind::format).collect(Collectors.joining(", "));
    }
}
