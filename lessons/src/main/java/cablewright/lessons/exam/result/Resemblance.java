// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.MarkSheet;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.PoissonDistribution;

/**
 * Two people whose answers resemble each other more than chance explains. It says nothing of why: the same teacher, or the same
 * misreading that others share, explains much.
 *
 * <p>Counted are rare flags: those which at most a quarter of the others set alike (same exercise, end, kind and verdict, places
 * within {@value #SAME_METRES} m or {@value #SAME_SHARE} of the distance). How likely a flag is by chance is the share of
 * the others who set it, (k + ½)/(n + 1). Were the two independent, the number that both set would be close to a Poisson
 * number of mean Σp. The pair is named where at least {@value #LEAST_SHARED} are shared and a number as high is less likely
 * than {@value #MOST_PROBABILITY} over all pairs of the class (Bonferroni). The thresholds are ours (common practice, no
 * source).
 *
 * @param first one of them
 * @param second the other
 * @param shared how many rare flags both set
 * @param expected how many chance would give
 * @param probability how likely so many are by chance, for this pair
 */
public record Resemblance(String first, String second, int shared, double expected, double probability) {

    private static final double SAME_METRES = 0.1;
    private static final double SAME_SHARE = 0.002;
    private static final double RARE_SHARE = 0.25;
    private static final int LEAST_SHARED = 3;
    private static final int LEAST_PEOPLE = 5;
    private static final double MOST_PROBABILITY = 0.01;

    /** Looks at every pair; empty in classes too small to say what is rare. */
    static List<Resemblance> among(List<PersonResult> people) {
        List<Resemblance> found = new ArrayList<>();
        int pairs = people.size() * (people.size() - 1) / 2;
        for (int i = 0; i < people.size() && people.size() >= LEAST_PEOPLE; i++) {
            for (int j = i + 1; j < people.size(); j++) {
                Resemblance one = of(people, i, j);
                Resemblance other = of(people, j, i);
                Resemblance weaker = one.probability() >= other.probability() ? one : other;
                if (weaker.shared() >= LEAST_SHARED && weaker.probability() * pairs < MOST_PROBABILITY) {
                    found.add(weaker);
                }
            }
        }
        return found;
    }

    private static Resemblance of(List<PersonResult> people, int i, int j) {
        double expected = 0;
        int shared = 0;
        for (MarkSheet sheet : people.get(i).sheets()) {
            for (Flag flag : sheet.attempt().flags()) {
                int others = 0;
                for (int k = 0; k < people.size(); k++) {
                    others += k != i && k != j && has(people.get(k), sheet.exerciseId(), flag) ? 1 : 0;
                }
                double chance = (others + 0.5) / (people.size() - 2 + 1);
                if (chance <= RARE_SHARE) {
                    expected += chance;
                    shared += has(people.get(j), sheet.exerciseId(), flag) ? 1 : 0;
                }
            }
        }
        double probability = shared == 0 ? 1 : 1 - new PoissonDistribution(expected).cumulativeProbability(shared - 1);
        return new Resemblance(people.get(i).name(), people.get(j).name(), shared, expected, probability);
    }

    private static boolean has(PersonResult person, String exerciseId, Flag wanted) {
        return person.sheets().stream()
                .filter(sheet -> sheet.exerciseId().equals(exerciseId))
                .map(MarkSheet::attempt)
                .map(Attempt::flags)
                .flatMap(List::stream)
                .anyMatch(flag -> alike(flag, wanted));
    }

    private static boolean alike(Flag flag, Flag wanted) {
        double near = Math.max(SAME_METRES, SAME_SHARE * wanted.startMetres());
        return flag.end() == wanted.end()
                && flag.kind() == wanted.kind()
                && flag.verdict() == wanted.verdict()
                && flag.endMetres().isPresent() == wanted.endMetres().isPresent()
                && Math.abs(flag.startMetres() - wanted.startMetres()) <= near;
    }
}
