// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.simulator.instrument.Settings;
import java.util.List;

/**
 * What makes an exercise hard, for one that nobody has answered yet. The weights are ours (common practice, no source) and
 * only a start: answers move it.
 *
 * @param events how many events must be found
 * @param lowestOverNoise height of the lowest of them over the noise, where it shows best
 * @param closestPulses distance of the two that lie closest, in lengths of half a pulse; infinite for one event
 * @param damage how many of them are damage
 */
public record DifficultyFeatures(int events, double lowestOverNoise, double closestPulses, int damage) {

    private static final double PLAIN_OVER_NOISE = 300;
    private static final double LIMIT_OVER_NOISE = 6;
    private static final double PLAIN_PULSES = 12;
    private static final double MOST_EVENTS = 5;
    private static final double HEIGHT_WEIGHT = 0.5;
    private static final double CROWD_WEIGHT = 0.2;
    private static final double NUMBER_WEIGHT = 0.3;
    private static final double LOGITS_PER_DIFFICULTY = 4;

    /**
     * Looks at what an exercise asks for.
     *
     * @param demand what it asks for
     * @return its features
     */
    public static DifficultyFeatures of(AnswerKey demand) {
        List<LineEvent> asked = demand.demanded();
        double lowest = asked.stream()
                .mapToDouble(event -> event.best().contrastVolts()
                        / Math.max(1e-9, event.best().noiseVolts()))
                .min()
                .orElse(PLAIN_OVER_NOISE);
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < asked.size(); i++) {
            Settings best = asked.get(i).best().settings();
            double apart = asked.get(i).trueStartMetres() - asked.get(i - 1).trueEndMetres();
            closest = Math.min(closest, Math.max(0, apart) / best.halfPulseMetres());
        }
        int damage = (int) asked.stream()
                .filter(event -> event.truth() == cablewright.lessons.exercise.Verdict.DAMAGE)
                .count();
        return new DifficultyFeatures(asked.size(), lowest, closest, damage);
    }

    /**
     * Estimates how hard the exercise is.
     *
     * @return 0 (plain) to 1 (near the limit of what can be distinguished)
     */
    public double difficulty() {
        double low =
                1 - share(Math.log(lowestOverNoise / LIMIT_OVER_NOISE) / Math.log(PLAIN_OVER_NOISE / LIMIT_OVER_NOISE));
        double crowded = 1 - share(closestPulses / PLAIN_PULSES);
        double many = share((events - 1) / (MOST_EVENTS - 1));
        return HEIGHT_WEIGHT * low + CROWD_WEIGHT * crowded + NUMBER_WEIGHT * many;
    }

    /**
     * Converts a difficulty to the scale of {@link Elo}. The factor is ours (common practice, no source): from 0 to 1 a trainee
     * in the middle goes from 88 % to 12 % of success.
     *
     * @param difficulty 0 to 1
     * @return difficulty [logits]
     */
    public static double logits(double difficulty) {
        return LOGITS_PER_DIFFICULTY * (difficulty - 0.5);
    }

    private static double share(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
