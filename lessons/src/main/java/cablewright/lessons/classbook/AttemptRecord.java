// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.check.VisibleText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One marked attempt as a log keeps it.
 *
 * @param trainee who
 * @param lessonId the lesson, or {@code practice} where exercises were made as they went
 * @param exerciseId the exercise
 * @param committedAt when it was handed in
 * @param secondsTaken time from opening to handing in [s]; absent where it was not taken
 * @param marks marks earned
 * @param maximum most that could be earned
 * @param hintsTaken how many hints
 * @param needlessDigs how many flags would open the ground for nothing
 * @param damageLeft how many pieces of damage were called something that belongs
 * @param damageMissed how many pieces of damage that could be seen were not flagged
 * @param outcomes how each event that could be asked for was answered
 * @param strayKinds what was flagged where nothing is
 * @param made the request of which the exercise was made; empty for an exercise of a lesson
 * @param exerciseTitle title of the exercise, for people; absent in older records
 */
public record AttemptRecord(
        String trainee,
        String lessonId,
        String exerciseId,
        Instant committedAt,
        OptionalDouble secondsTaken,
        double marks,
        double maximum,
        int hintsTaken,
        int needlessDigs,
        int damageLeft,
        int damageMissed,
        List<Outcome> outcomes,
        List<EventKind> strayKinds,
        Optional<GenerationRequest> made,
        Optional<String> exerciseTitle) {

    static final int MOST_TEXT = 200;

    /** Copies the lists and checks names and numbers. */
    public AttemptRecord {
        requireText("trainee", trainee);
        requireText("lessonId", lessonId);
        requireText("exerciseId", exerciseId);
        exerciseTitle.ifPresent(title -> requireText("exerciseTitle", title));
        outcomes = List.copyOf(outcomes);
        strayKinds = List.copyOf(strayKinds);
        if (!(maximum >= 0) || !(marks >= 0 && marks <= maximum)) {
            throw new IllegalArgumentException(
                    "marks is " + marks + " of " + maximum + "; marks lie between 0 and the maximum");
        }
        if (hintsTaken < 0 || needlessDigs < 0 || damageLeft < 0 || damageMissed < 0) {
            throw new IllegalArgumentException("hintsTaken is " + hintsTaken + ", needlessDigs " + needlessDigs
                    + ", damageLeft " + damageLeft + ", damageMissed " + damageMissed + "; each must be 0 or more");
        }
    }

    /**
     * Makes a record without the title of its exercise.
     *
     * @param trainee who
     * @param lessonId the lesson
     * @param exerciseId the exercise
     * @param committedAt when it was handed in
     * @param secondsTaken time from opening to handing in [s]
     * @param marks marks earned
     * @param maximum most that could be earned
     * @param hintsTaken how many hints
     * @param needlessDigs how many flags would open the ground for nothing
     * @param damageLeft how many pieces of damage were called something that belongs
     * @param damageMissed how many pieces of damage that could be seen were not flagged
     * @param outcomes how each event that could be asked for was answered
     * @param strayKinds what was flagged where nothing is
     * @param made the request of which the exercise was made
     */
    public AttemptRecord(
            String trainee,
            String lessonId,
            String exerciseId,
            Instant committedAt,
            OptionalDouble secondsTaken,
            double marks,
            double maximum,
            int hintsTaken,
            int needlessDigs,
            int damageLeft,
            int damageMissed,
            List<Outcome> outcomes,
            List<EventKind> strayKinds,
            Optional<GenerationRequest> made) {
        this(
                trainee,
                lessonId,
                exerciseId,
                committedAt,
                secondsTaken,
                marks,
                maximum,
                hintsTaken,
                needlessDigs,
                damageLeft,
                damageMissed,
                outcomes,
                strayKinds,
                made,
                Optional.empty());
    }

    /** What could not be read back from a log is refused before it is written to one. */
    private static void requireText(String field, String value) {
        if (value.length() > MOST_TEXT || !VisibleText.line(value).equals(value)) {
            throw new IllegalArgumentException(field + " is \"" + VisibleText.line(value) + "\"; it may have "
                    + MOST_TEXT + " characters, none of them a control character");
        }
    }

    /**
     * Makes the record of a marked attempt at an exercise of a lesson, with the exercise's title.
     *
     * @param sheet the marks
     * @param lesson the lesson
     * @param now when it was handed in, where the attempt itself does not say
     * @return the record
     */
    public static AttemptRecord of(MarkSheet sheet, Lesson lesson, Instant now) {
        return of(sheet, lesson.id(), now)
                .titled(lesson.exercise(sheet.exerciseId()).map(Exercise::title));
    }

    /**
     * Makes the record of a marked attempt.
     *
     * @param sheet the marks
     * @param lessonId the lesson
     * @param now when it was handed in, where the attempt itself does not say
     * @return the record
     */
    public static AttemptRecord of(MarkSheet sheet, String lessonId, Instant now) {
        Attempt attempt = sheet.attempt();
        Instant committed = attempt.committedAt().orElse(now);
        List<Outcome> outcomes = new ArrayList<>();
        List<EventKind> strays = new ArrayList<>();
        for (Finding finding : sheet.findings()) {
            if (finding instanceof Finding.Matched matched) {
                matched(matched).ifPresent(outcomes::add);
            } else if (finding instanceof Finding.Missed missed) {
                missed(missed).ifPresent(outcomes::add);
            } else if (finding instanceof Finding.NothingThere there) {
                strays.add(there.flag().kind());
            } else if (finding instanceof Finding.GhostTakenForEvent event) {
                strays.add(event.flag().kind());
            }
        }
        return new AttemptRecord(
                attempt.trainee(),
                lessonId,
                sheet.exerciseId(),
                committed,
                seconds(attempt, committed),
                sheet.marks(),
                sheet.maximum(),
                attempt.hintsTaken(),
                sheet.needlessDigs(),
                sheet.damageLeft(),
                sheet.damageMissed(),
                outcomes,
                strays,
                Optional.empty());
    }

    /**
     * Adds the request of which the exercise was made.
     *
     * @param request the request
     * @return a record alike but for it
     */
    public AttemptRecord madeOf(GenerationRequest request) {
        return with(trainee, Optional.of(request), exerciseTitle);
    }

    /**
     * Puts another name on the record.
     *
     * @param name who
     * @return a record alike but for it
     */
    public AttemptRecord by(String name) {
        return with(name, made, exerciseTitle);
    }

    private AttemptRecord titled(Optional<String> title) {
        return with(trainee, made, title.map(VisibleText::line));
    }

    private AttemptRecord with(String name, Optional<GenerationRequest> request, Optional<String> title) {
        return new AttemptRecord(
                name,
                lessonId,
                exerciseId,
                committedAt,
                secondsTaken,
                marks,
                maximum,
                hintsTaken,
                needlessDigs,
                damageLeft,
                damageMissed,
                outcomes,
                strayKinds,
                request,
                title);
    }

    private static OptionalDouble seconds(Attempt attempt, Instant committed) {
        return attempt.startedAt()
                .map(start -> Duration.between(start, committed).toMillis() / 1000.0)
                .filter(seconds -> seconds >= 0)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static Optional<Outcome> matched(Finding.Matched found) {
        if (found.event().standing() == Requirement.HIDDEN) {
            return Optional.empty();
        }
        PlaceMark place = found.places().isEmpty() ? null : found.places().get(0);
        return Optional.of(new Outcome(
                found.event().kind(),
                found.event().truth(),
                Optional.of(found.flag().kind()),
                Optional.of(found.flag().verdict()),
                place == null ? OptionalDouble.empty() : OptionalDouble.of(place.signedErrorMetres()),
                Math.max(0, found.marks())));
    }

    private static Optional<Outcome> missed(Finding.Missed missed) {
        if (missed.event().standing() != Requirement.DEMANDED) {
            return Optional.empty();
        }
        return Optional.of(new Outcome(
                missed.event().kind(),
                missed.event().truth(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                0));
    }

    /**
     * Returns the share of the marks that was earned.
     *
     * @return 0 to 1; where there was nothing to earn, 1 where no flag was needless and 0 else
     */
    public double fraction() {
        if (maximum > 0) {
            return marks / maximum;
        }
        return needlessDigs == 0 && strayKinds.isEmpty() ? 1 : 0;
    }
}
