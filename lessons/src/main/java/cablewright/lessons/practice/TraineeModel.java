// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.simulator.cable.EventKind;
import java.util.EnumMap;
import java.util.Map;

/**
 * What is known of a trainee: one ability for each kind of event. Immutable; an answer makes another.
 *
 * @param abilities abilities by kind; a kind that was never asked is not in it
 */
public record TraineeModel(Map<EventKind, Rating> abilities) {

    /** Copies the map. */
    public TraineeModel {
        abilities = Map.copyOf(abilities);
    }

    /**
     * A trainee of whom nothing is known.
     *
     * @return the model
     */
    public static TraineeModel unknown() {
        return new TraineeModel(Map.of());
    }

    /**
     * Returns the ability for a kind of event.
     *
     * @param kind the kind
     * @return the ability; for a kind that was never asked, the mean of those that were, resting on no answer
     */
    public Rating ability(EventKind kind) {
        Rating known = abilities.get(kind);
        if (known != null) {
            return known;
        }
        double mean = abilities.values().stream()
                .mapToDouble(Rating::logits)
                .average()
                .orElse(0);
        return new Rating(mean, 0);
    }

    /**
     * Learns from an answer.
     *
     * @param kind the kind that was asked
     * @param difficulty difficulty of what was asked [logits]
     * @param success how well it was answered, 0 to 1
     * @return what is known now
     */
    public TraineeModel after(EventKind kind, double difficulty, double success) {
        requireSuccess(success);
        Rating before = ability(kind);
        Map<EventKind, Rating> next = new EnumMap<>(EventKind.class);
        next.putAll(abilities);
        next.put(kind, before.moved(success - Elo.chance(before.logits(), difficulty)));
        return new TraineeModel(next);
    }

    static void requireSuccess(double success) {
        if (!(success >= 0 && success <= 1)) {
            throw new IllegalArgumentException("success is " + success + "; allowed is 0 to 1");
        }
    }
}
