// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.simulator.cable.EventKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the records of one trainee or a class show when they are put together.
 *
 * @param attempts how many attempts
 * @param meanFraction mean share of the marks, 0 to 1; 0 where there is no attempt
 * @param needlessDigs all needless digs
 * @param damageLeft all damage called something that belongs
 * @param damageMissed all damage that could be seen and was not flagged
 * @param byKind success by kind of event
 * @param takenFor what each kind was taken for: true kind, then flagged kind, how often; right answers are on it too
 * @param missed how often each kind was missed
 * @param placeErrorsMetres distance errors with their sign, in the order of the records [m]
 */
public record ClassSummary(
        int attempts,
        double meanFraction,
        int needlessDigs,
        int damageLeft,
        int damageMissed,
        Map<EventKind, KindProgress> byKind,
        Map<EventKind, Map<EventKind, Integer>> takenFor,
        Map<EventKind, Integer> missed,
        List<PlaceError> placeErrorsMetres) {

    /** Copies what it is given. */
    public ClassSummary {
        byKind = Map.copyOf(byKind);
        takenFor = Map.copyOf(takenFor);
        missed = Map.copyOf(missed);
        placeErrorsMetres = List.copyOf(placeErrorsMetres);
    }

    /**
     * Success at one kind of event.
     *
     * @param asked how often it was asked
     * @param meanSuccess mean share of its marks, 0 to 1
     * @param recentSuccess mean of the last five, 0 to 1
     */
    public record KindProgress(int asked, double meanSuccess, double recentSuccess) {}

    /**
     * One distance error.
     *
     * @param kind the kind of event
     * @param errorMetres flagged less expected [m]
     */
    public record PlaceError(EventKind kind, double errorMetres) {}

    /**
     * Puts records together.
     *
     * @param records the records, oldest first
     * @return what they show
     */
    public static ClassSummary of(List<AttemptRecord> records) {
        Map<EventKind, List<Double>> successes = new EnumMap<>(EventKind.class);
        Map<EventKind, Map<EventKind, Integer>> taken = new EnumMap<>(EventKind.class);
        Map<EventKind, Integer> missed = new EnumMap<>(EventKind.class);
        List<PlaceError> errors = new ArrayList<>();
        for (AttemptRecord record : records) {
            for (Outcome outcome : record.outcomes()) {
                successes
                        .computeIfAbsent(outcome.kind(), kind -> new ArrayList<>())
                        .add(outcome.success());
                if (outcome.flaggedKind().isPresent()) {
                    taken.computeIfAbsent(outcome.kind(), kind -> new EnumMap<>(EventKind.class))
                            .merge(outcome.flaggedKind().get(), 1, Integer::sum);
                } else {
                    missed.merge(outcome.kind(), 1, Integer::sum);
                }
                outcome.placeErrorMetres().ifPresent(error -> errors.add(new PlaceError(outcome.kind(), error)));
            }
        }
        Map<EventKind, KindProgress> byKind = new EnumMap<>(EventKind.class);
        successes.forEach((kind, list) -> byKind.put(kind, progress(list)));
        return new ClassSummary(
                records.size(),
                records.stream().mapToDouble(AttemptRecord::fraction).average().orElse(0),
                records.stream().mapToInt(AttemptRecord::needlessDigs).sum(),
                records.stream().mapToInt(AttemptRecord::damageLeft).sum(),
                records.stream().mapToInt(AttemptRecord::damageMissed).sum(),
                byKind,
                taken,
                missed,
                errors);
    }

    private static KindProgress progress(List<Double> successes) {
        List<Double> recent = successes.subList(Math.max(0, successes.size() - 5), successes.size());
        return new KindProgress(successes.size(), mean(successes), mean(recent));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }
}
