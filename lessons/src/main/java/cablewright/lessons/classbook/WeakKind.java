// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.simulator.cable.EventKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A kind of event that was answered badly of late.
 *
 * @param kind the kind
 * @param missed how many of the recent answers earned less than seven tenths of their marks, above 0
 * @param recent how many answers were looked at: the last {@value #MOST_RECENT}, or all there are
 */
public record WeakKind(EventKind kind, int missed, int recent) {

    /** How many answers are recent. */
    public static final int MOST_RECENT = 6;

    /** Share of the marks from which an answer is right, as for reviews. */
    private static final double RIGHT = 0.7;

    /** Checks the counts. */
    public WeakKind {
        if (missed < 1 || recent < missed || recent > MOST_RECENT) {
            throw new IllegalArgumentException("missed is " + missed + " of " + recent
                    + "; allowed is 1 to all of at most " + MOST_RECENT + " recent answers");
        }
    }

    /**
     * Ranks what to teach next. The chance of another miss is estimated by Laplace's rule of succession, (missed + 1) / (recent
     * + 2), so that one miss of one does not stand above four of five.
     *
     * @param records records of one trainee or a class, oldest first
     * @return kinds that were missed of late, the weakest first; of equals the one missed more often
     */
    public static List<WeakKind> ranked(List<AttemptRecord> records) {
        Map<EventKind, List<Double>> answers = new EnumMap<>(EventKind.class);
        records.forEach(record -> record.outcomes()
                .forEach(outcome -> answers.computeIfAbsent(outcome.kind(), kind -> new ArrayList<>())
                        .add(outcome.success())));
        List<WeakKind> weak = new ArrayList<>();
        answers.forEach((kind, all) -> {
            List<Double> recent = all.subList(Math.max(0, all.size() - MOST_RECENT), all.size());
            int missed =
                    (int) recent.stream().filter(success -> success < RIGHT).count();
            if (missed > 0) {
                weak.add(new WeakKind(kind, missed, recent.size()));
            }
        });
        weak.sort(Comparator.comparingDouble(WeakKind::chanceOfAnother)
                .thenComparing(WeakKind::missed)
                .reversed()
                .thenComparing(WeakKind::kind));
        return List.copyOf(weak);
    }

    private double chanceOfAnother() {
        return (missed + 1.0) / (recent + 2);
    }
}
