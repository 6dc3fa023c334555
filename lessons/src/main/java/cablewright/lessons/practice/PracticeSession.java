// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.marking.MarkSheet;
import cablewright.simulator.cable.EventKind;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * A sitting of practice: without end, against the clock, or a review of mistakes that are due. An exercise can be
 * made on one thread while another waits to learn from an answer.
 */
public final class PracticeSession {

    /** How a sitting goes. */
    public enum Mode {
        /** One exercise after the other as long as the trainee likes. */
        UNTIMED,
        /** New exercises until the time is up; one that is open then may be finished. */
        TIMED,
        /** What was answered badly and is due again. */
        REVIEW,
        /** A number of exercises that were planned, what is due for review first. */
        ROUND
    }

    /** Most reviews with which a round begins. */
    private static final int MOST_REVIEWS_OF_ROUND = 3;

    private final AdaptivePractice practice;
    private final Mode mode;
    private final Clock clock;
    private final Optional<Instant> endsAt;
    private final Deque<String> due = new ArrayDeque<>();
    private final Deque<EventKind> planned = new ArrayDeque<>();
    private int answered;
    private double earned;
    private double possible;

    private PracticeSession(AdaptivePractice practice, Mode mode, Clock clock, Optional<Duration> limit) {
        this.practice = practice;
        this.mode = mode;
        this.clock = clock;
        this.endsAt = limit.map(clock.instant()::plus);
        if (mode == Mode.REVIEW) {
            due.addAll(practice.due(clock.instant()));
        }
    }

    /**
     * Starts a sitting without end.
     *
     * @param practice what is known of the trainee
     * @param clock gives the time
     * @return the sitting
     */
    public static PracticeSession untimed(AdaptivePractice practice, Clock clock) {
        return new PracticeSession(practice, Mode.UNTIMED, clock, Optional.empty());
    }

    /**
     * Starts a round against the clock.
     *
     * @param practice what is known of the trainee
     * @param clock gives the time
     * @param limit how long it lasts, above 0
     * @return the sitting
     */
    public static PracticeSession timed(AdaptivePractice practice, Clock clock, Duration limit) {
        if (limit.isZero() || limit.isNegative()) {
            throw new IllegalArgumentException("limit is " + limit + "; it must be above 0");
        }
        return new PracticeSession(practice, Mode.TIMED, clock, Optional.of(limit));
    }

    /**
     * Starts a review of the mistakes that are due now.
     *
     * @param practice what is known of the trainee
     * @param clock gives the time
     * @return the sitting; it has no exercise where nothing is due
     */
    public static PracticeSession review(AdaptivePractice practice, Clock clock) {
        return new PracticeSession(practice, Mode.REVIEW, clock, Optional.empty());
    }

    /**
     * Starts a round that is planned: up to three mistakes that are due now stand in place of as many of the planned
     * exercises, and come first.
     *
     * @param practice what is known of the trainee
     * @param clock gives the time
     * @param plan what the exercises are about
     * @param limit after what time no new exercise comes; empty for no limit
     * @return the sitting
     */
    public static PracticeSession round(
            AdaptivePractice practice, Clock clock, RoundPlan plan, Optional<Duration> limit) {
        PracticeSession session = new PracticeSession(practice, Mode.ROUND, clock, limit);
        practice.due(clock.instant()).stream().limit(MOST_REVIEWS_OF_ROUND).forEach(session.due::add);
        List<EventKind> kinds = plan.kinds();
        session.planned.addAll(kinds.subList(0, Math.max(0, kinds.size() - session.due.size())));
        return session;
    }

    /**
     * Makes the next exercise.
     *
     * @return the exercise; empty where the time is up or nothing more is due
     */
    public synchronized Optional<Exercise> next() {
        if (isOver()) {
            return Optional.empty();
        }
        if (mode == Mode.UNTIMED || mode == Mode.TIMED) {
            return Optional.of(practice.next());
        }
        while (!due.isEmpty()) {
            Optional<Exercise> again = practice.again(due.removeFirst());
            if (again.isPresent()) {
                return again;
            }
        }
        return Optional.ofNullable(planned.pollFirst()).map(practice::next);
    }

    /**
     * Makes the record of a marked attempt of this sitting.
     *
     * @param sheet the marks
     * @param now when it was handed in, where the attempt itself does not say
     * @return the record, with the request where the exercise was made
     */
    public synchronized AttemptRecord record(MarkSheet sheet, Instant now) {
        AttemptRecord record = AttemptRecord.of(sheet, PracticeLesson.ID, now);
        return practice.requestOf(record.exerciseId()).map(record::madeOf).orElse(record);
    }

    /**
     * Learns from a marked attempt of this sitting.
     *
     * @param record its record
     */
    public synchronized void learn(AttemptRecord record) {
        practice.learn(record);
        answered++;
        earned += record.marks();
        possible += record.maximum();
    }

    /**
     * Returns whether no new exercise comes.
     *
     * @return whether the time is up or all that was due has been asked
     */
    public synchronized boolean isOver() {
        boolean ends = mode == Mode.REVIEW || mode == Mode.ROUND;
        return ends && due.isEmpty() && planned.isEmpty()
                || left().map(Duration::isZero).orElse(false);
    }

    /**
     * Returns how much time is left.
     *
     * @return the time, never below zero; empty where there is no limit
     */
    public Optional<Duration> left() {
        return endsAt.map(end -> Duration.between(clock.instant(), end))
                .map(left -> left.isNegative() ? Duration.ZERO : left);
    }

    public Mode mode() {
        return mode;
    }

    /**
     * Returns how many exercises were handed in.
     *
     * @return their number
     */
    public synchronized int answered() {
        return answered;
    }

    /**
     * Returns the share of the marks that was earned.
     *
     * @return 0 to 1; 0 before there is anything to earn
     */
    public synchronized double fraction() {
        return possible > 0 ? earned / possible : 0;
    }
}
