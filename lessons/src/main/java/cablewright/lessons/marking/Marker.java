// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Marks attempts. The same exercise and attempt give the same sheet, whatever the order of the flags.
 *
 * <p>What an exercise asks for takes a while to work out; a marker remembers it for each exercise that it met. It can be
 * used from several threads.
 */
public final class Marker {

    private final Map<Exercise, AnswerKey> demands = new ConcurrentHashMap<>();

    /** Makes a marker that remembers nothing yet. */
    public Marker() {}

    /**
     * Returns what an exercise asks for.
     *
     * @param exercise the exercise
     * @return what it asks for
     */
    public AnswerKey demand(Exercise exercise) {
        return demands.computeIfAbsent(exercise, AnswerKey::of);
    }

    /**
     * Returns the most marks that an exercise gives.
     *
     * @param exercise the exercise
     * @return ten for each event that must be found, unless the instructor set others, and ten for a prediction
     */
    public double maximumMarks(Exercise exercise) {
        double prediction = exercise.prediction().isPresent() ? MarkingRules.PREDICTION_MARKS : 0;
        return prediction
                + demand(exercise).demanded().stream()
                        .mapToDouble(event -> event.marks().total())
                        .sum();
    }

    /**
     * Marks an attempt.
     *
     * @param exercise the exercise
     * @param attempt what was handed in
     * @return the sheet
     * @throws IllegalArgumentException if the attempt is one for another exercise
     */
    public MarkSheet mark(Exercise exercise, Attempt attempt) {
        if (!attempt.exerciseId().equals(exercise.id())) {
            throw new IllegalArgumentException("exerciseId of the attempt is \"" + attempt.exerciseId()
                    + "\"; the exercise is \"" + exercise.id() + "\"");
        }
        List<Finding> findings = new ArrayList<>(new FlagMarking(demand(exercise), attempt).findings());
        exercise.prediction().map(asked -> answer(asked, attempt)).ifPresent(findings::add);
        double maximum = maximumMarks(exercise);
        double hints = exercise.hintCostMarks(attempt.hintsTaken());
        double earned = tree(findings).mapToDouble(Finding::marks).sum() - hints;
        return new MarkSheet(
                exercise.id(),
                attempt,
                Math.max(0, Math.min(maximum, earned)),
                maximum,
                hints,
                count(findings, Finding.NeedlessDig.class),
                count(findings, Finding.DamageLeft.class),
                damageMissed(findings),
                findings);
    }

    private static Finding answer(Prediction asked, Attempt attempt) {
        Optional<String> chosen = attempt.predictedChoiceId();
        boolean right = chosen.filter(asked.correctChoiceId()::equals).isPresent();
        Optional<String> reason = attempt.predictedReasonId();
        Optional<String> rightReason = asked.reasons().map(Reasons::correctChoiceId);
        double share = rightReason.isEmpty() || reason.equals(rightReason) ? 1 : MarkingRules.ANSWER_WITHOUT_REASON;
        return new Finding.PredictionResult(
                chosen,
                asked.correctChoiceId(),
                reason,
                rightReason,
                right ? share * MarkingRules.PREDICTION_MARKS : 0);
    }

    private static Stream<Finding> tree(List<Finding> findings) {
        return findings.stream().flatMap(finding -> Stream.concat(Stream.of(finding), tree(finding.children())));
    }

    private static int count(List<Finding> findings, Class<? extends Finding> kind) {
        return (int) tree(findings).filter(kind::isInstance).count();
    }

    private static int damageMissed(List<Finding> findings) {
        return (int) tree(findings)
                .filter(Finding.Missed.class::isInstance)
                .map(finding -> ((Finding.Missed) finding).event())
                .filter(event -> event.standing() == Requirement.DEMANDED && event.truth() == Verdict.DAMAGE)
                .count();
    }
}
