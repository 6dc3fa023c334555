// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.reading;

import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.reading.CandidateEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a finder of candidates found and what it made up, over many traces.
 *
 * <p>A candidate is at a place if it lies from {@value #WIDTHS} pulse widths before the place's start to as much and half a
 * width more after its end, each moved by {@value #VELOCITY_SHARE} of the distance: the front of a short pulse is faster
 * than the velocity by which a place's time is told. Whatever is no place, no end of the line or of a branch and no ghost is
 * a false alarm.
 */
final class ReadScore {

    static final double WIDTHS = 0.75;
    static final double VELOCITY_SHARE = 0.015;
    private static final double AFTER_WIDTHS = 0.5;

    private final Map<Visibility, int[]> found = new EnumMap<>(Visibility.class);
    private final Map<String, int[]> clearByKind = new TreeMap<>();
    private final List<Double> errorMetres = new ArrayList<>();
    private final List<Double> errorWidths = new ArrayList<>();
    private int withinTwo;
    private int traces;
    private int falseAlarms;
    private int ghosts;

    ReadScore() {
        for (Visibility visibility : Visibility.values()) {
            found.put(visibility, new int[2]);
        }
    }

    void add(ReadCase read, List<CandidateEvent> candidates) {
        traces++;
        double width = read.trace().settings().stimulus().resolutionSeconds();
        List<CandidateEvent> left = new ArrayList<>(candidates);
        for (ReadCase.Place place : read.places()) {
            CandidateEvent nearest = null;
            for (CandidateEvent candidate : candidates) {
                if (!isAt(candidate, place.fromSeconds(), place.toSeconds(), width)) {
                    continue;
                }
                left.remove(candidate);
                nearest = nearest == null || off(candidate, place) < off(nearest, place) ? candidate : nearest;
            }
            count(found.get(place.visibility()), nearest != null);
            if (place.visibility() == Visibility.CLEAR) {
                count(clearByKind.computeIfAbsent(place.what(), kind -> new int[2]), nearest != null);
                addError(read, place, nearest, width);
            }
        }
        left.removeIf(candidate ->
                read.others().stream().anyMatch(echo -> isAt(candidate, echo.seconds(), echo.seconds(), width)));
        int before = left.size();
        left.removeIf(candidate ->
                read.ghosts().stream().anyMatch(echo -> isAt(candidate, echo.seconds(), echo.seconds(), width)));
        ghosts += before - left.size();
        falseAlarms += left.size();
    }

    private static double off(CandidateEvent candidate, ReadCase.Place place) {
        return Math.abs(candidate.seconds().value() - place.fromSeconds());
    }

    private static boolean isAt(CandidateEvent candidate, double from, double to, double width) {
        double seconds = candidate.seconds().value();
        return seconds > from * (1 - VELOCITY_SHARE) - WIDTHS * width
                && seconds < to * (1 + VELOCITY_SHARE) + (WIDTHS + AFTER_WIDTHS) * width;
    }

    private static void count(int[] counts, boolean hit) {
        counts[0] += hit ? 1 : 0;
        counts[1]++;
    }

    /** A place that is spread out has no one distance to err by. */
    private void addError(ReadCase read, ReadCase.Place place, CandidateEvent nearest, double width) {
        if (nearest == null || place.toSeconds() - place.fromSeconds() > width) {
            return;
        }
        double seconds = off(nearest, place);
        double metres = read.trace().settings().metresThereAndBack(seconds);
        errorMetres.add(metres);
        errorWidths.add(seconds / width);
        withinTwo += metres <= 2 * nearest.metres().uncertainty() ? 1 : 0;
    }

    double recall(Visibility visibility) {
        int[] counts = found.get(visibility);
        return (double) counts[0] / counts[1];
    }

    double falseAlarmsPerTrace() {
        return (double) falseAlarms / traces;
    }

    double shareWithinTwoUncertainties() {
        return (double) withinTwo / errorMetres.size();
    }

    double errorWidths(double share) {
        return percentile(errorWidths, share);
    }

    private static double percentile(List<Double> values, double share) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1.0, share * sorted.size()));
    }

    /** The whole measurement in lines. */
    String report() {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%d traces%n", traces));
        found.forEach((visibility, counts) -> text.append(String.format(
                Locale.ROOT,
                "found of places that are %-9s %5d of %5d  %.3f%n",
                visibility.name().toLowerCase(Locale.ROOT),
                counts[0],
                counts[1],
                (double) counts[0] / counts[1])));
        clearByKind.forEach((kind, counts) -> text.append(String.format(
                Locale.ROOT,
                "  clear, %-16s %5d of %5d  %.3f%n",
                kind,
                counts[0],
                counts[1],
                (double) counts[0] / counts[1])));
        text.append(String.format(
                Locale.ROOT,
                "false alarms a trace %.3f, ghosts told as events %.3f%n",
                falseAlarmsPerTrace(),
                (double) ghosts / traces));
        text.append(String.format(
                Locale.ROOT,
                "distance error of clear places: half within %.2f m (%.2f widths), 9 of 10 within %.2f m (%.2f), "
                        + "19 of 20 within %.2f m (%.2f)%n",
                percentile(errorMetres, 0.5),
                errorWidths(0.5),
                percentile(errorMetres, 0.9),
                errorWidths(0.9),
                percentile(errorMetres, 0.95),
                errorWidths(0.95)));
        text.append(String.format(
                Locale.ROOT, "within twice the stated uncertainty: %.3f%n", shareWithinTwoUncertainties()));
        return text.toString();
    }
}
