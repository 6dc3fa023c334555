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
 * Seeks the best view of each event among the permitted settings. It ends as soon as every event is clear, so the settings
 * that it names are the first good ones, not the best of all.
 */
final class ViewSearch {

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
     * @param views the settings to try, in order
     * @throws CancellationException if it was cancelled
     */
    void search(Cable cable, Set<String> wanted, List<PermittedSettings.View> views) {
        for (PermittedSettings.View view : views) {
            if (wanted.stream().allMatch(this::isClear)) {
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
        BestView seen = told(sight, view);
        BestView before = best.get(sight.eventId());
        if (before == null || isBetter(seen, before)) {
            best.put(sight.eventId(), seen);
        }
    }

    private static boolean showsTwoEdges(EventVisibility sight) {
        return sight.places().size() == 2
                && sight.places().stream().allMatch(place -> place.visibility() != Visibility.HIDDEN);
    }

    private static BestView told(EventVisibility sight, PermittedSettings.View view) {
        PlaceVisibility place = sight.best();
        return new BestView(
                place.visibility(),
                place.reason(),
                place.otherId(),
                view.settings(),
                view.end(),
                place.expectedVolts(),
                place.contrastVolts(),
                sight.noiseVolts());
    }

    /** The first clear view stands, so that the end and the pulse with which the exercise opens are preferred. */
    private static boolean isBetter(BestView seen, BestView before) {
        int order = seen.visibility().compareTo(before.visibility());
        boolean bothUnclear = before.visibility() != Visibility.CLEAR;
        return order < 0 || (order == 0 && bothUnclear && seen.contrastVolts() > before.contrastVolts());
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
