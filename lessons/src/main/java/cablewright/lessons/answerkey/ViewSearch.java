// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.solve.PropagationCache;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Seeks the best view of each event among all permitted settings: the highest grade of visibility, and of those the largest
 * contrast. A higher gain changes no noise-free trace and only lowers the level at which the converter clips, so gains above
 * the lowest are tried only for what the lowest does not show clearly.
 */
final class ViewSearch {

    /** Contrasts that differ by less are alike, and the setting with which the exercise opens is preferred. */
    private static final double ALIKE_SHARE = 0.002;

    private final Exercise exercise;
    private final BooleanSupplier cancelled;
    private final PropagationCache memory = new PropagationCache();
    private final Map<String, BestView> best = new HashMap<>();
    private final Set<String> withTwoEdges = new HashSet<>();

    ViewSearch(Exercise exercise, BooleanSupplier cancelled) {
        this.exercise = exercise;
        this.cancelled = cancelled;
    }

    /**
     * Looks at a cable.
     *
     * @param cable the cable
     * @param wanted the events that matter
     * @param views the settings to try, those of the lowest gain first
     * @throws CancellationException if it was cancelled
     */
    void search(Cable cable, Set<String> wanted, List<PermittedSettings.View> views) {
        double lowest = exercise.permitted().gainsDecibels().get(0);
        for (PermittedSettings.View view : views) {
            if (view.settings().gainDecibels() > lowest && wanted.stream().allMatch(this::isClear)) {
                return;
            }
            List<EventVisibility> sights =
                    VisibilityAnalysis.of(cable, exercise.instrument(), view.settings(), view.end(), memory, cancelled);
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("looking for what can be seen was cancelled");
            }
            sights.stream().filter(sight -> wanted.contains(sight.eventId())).forEach(sight -> take(sight, view));
        }
    }

    private boolean isClear(String eventId) {
        return best.containsKey(eventId) && best.get(eventId).visibility() == Visibility.CLEAR;
    }

    private void take(EventVisibility sight, PermittedSettings.View view) {
        if (showsTwoEdges(sight)) {
            withTwoEdges.add(sight.eventId());
        }
        for (PlaceVisibility place : sight.places()) {
            BestView seen = viewOf(place, sight, view);
            BestView before = best.get(sight.eventId());
            if (before == null || isBetter(seen, before)) {
                best.put(sight.eventId(), seen);
            }
        }
    }

    private static boolean showsTwoEdges(EventVisibility sight) {
        return sight.places().size() == 2
                && sight.places().stream().allMatch(place -> place.visibility() != Visibility.HIDDEN);
    }

    private static BestView viewOf(PlaceVisibility place, EventVisibility sight, PermittedSettings.View view) {
        return new BestView(
                place.visibility(),
                place.reason(),
                place.other(),
                view.settings(),
                view.end(),
                place.trueMetres(),
                place.expectedVolts(),
                place.contrastVolts(),
                sight.noiseVolts());
    }

    private static boolean isBetter(BestView seen, BestView before) {
        int order = seen.visibility().compareTo(before.visibility());
        return order < 0 || (order == 0 && seen.contrastVolts() > (1 + ALIKE_SHARE) * before.contrastVolts());
    }

    BestView bestOf(String eventId) {
        return best.get(eventId);
    }

    boolean hasTwoEdges(String eventId) {
        return withTwoEdges.contains(eventId);
    }

    /** Time there and back over a whole cable, from the end that is farther in time. */
    static double secondsThereAndBack(Cable cable) {
        return Math.max(
                LineMap.of(cable, LineEnd.NEAR).endSeconds(),
                LineMap.of(cable, LineEnd.FAR).endSeconds());
    }
}
