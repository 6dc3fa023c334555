// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.EventExtent;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.LineMap;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Says how near a flag is to an event. Places are compared where the trace shows them at the velocity that the brief states,
 * or else at the one that the trainee set: a velocity that nobody was told can't be marked wrong.
 */
final class PlaceJudge {

    private final AnswerKey demand;
    private final Exercise exercise;

    PlaceJudge(AnswerKey demand) {
        this.demand = demand;
        this.exercise = demand.exercise();
    }

    /**
     * Judges a flag as one for an event.
     *
     * @param flag the flag
     * @param event the event
     * @return its places; empty where the flag is too far away to stand for the event
     */
    Optional<List<PlaceMark>> judge(Flag flag, LineEvent event) {
        return demand.stretch(event.eventId(), flag.end())
                .map(stretch -> places(flag, stretch, demand.extentOf(event.eventId())))
                .filter(places -> !places.isEmpty());
    }

    private List<PlaceMark> places(Flag flag, LineMap.Stretch stretch, EventExtent extent) {
        if (extent == EventExtent.EDGES) {
            return edges(flag, stretch);
        }
        LineMap.Place middle = stretch.middle();
        PlaceMark first = extent == EventExtent.POINT
                ? mark(flag, flag.startMetres(), middle, PlaceMark.Edge.ONLY, MarkingRules.PLACE_MARKS)
                : within(flag, flag.startMetres(), stretch);
        if (flag.endMetres().isEmpty()) {
            return near(first) ? List.of(first) : List.of();
        }
        double end = flag.endMetres().getAsDouble();
        PlaceMark second = extent == EventExtent.POINT
                ? mark(flag, end, middle, PlaceMark.Edge.ONLY, MarkingRules.PLACE_MARKS)
                : within(flag, end, stretch);
        PlaceMark worse = second.errorMetres() > first.errorMetres() ? second : first;
        return near(worse) ? List.of(worse) : List.of();
    }

    private List<PlaceMark> edges(Flag flag, LineMap.Stretch stretch) {
        if (flag.endMetres().isEmpty()) {
            return oneEdge(flag, stretch);
        }
        double half = MarkingRules.PLACE_MARKS / 2;
        double end = flag.endMetres().getAsDouble();
        PlaceMark nearer = mark(flag, flag.startMetres(), stretch.nearer(), PlaceMark.Edge.NEARER, half);
        PlaceMark farther = mark(flag, end, stretch.farther(), PlaceMark.Edge.FARTHER, half);
        boolean inside = isInside(flag, flag.startMetres(), stretch) && isInside(flag, end, stretch);
        return near(nearer) || near(farther) || inside ? List.of(nearer, farther) : List.of();
    }

    private List<PlaceMark> oneEdge(Flag flag, LineMap.Stretch stretch) {
        PlaceMark nearer = edge(flag, stretch, PlaceMark.Edge.NEARER);
        PlaceMark farther = edge(flag, stretch, PlaceMark.Edge.FARTHER);
        PlaceMark closer = farther.errorMetres() < nearer.errorMetres() ? farther : nearer;
        return near(closer) || isInside(flag, flag.startMetres(), stretch) ? List.of(closer) : List.of();
    }

    /** Judges a one-place flag as one for a given edge, whether or not it is near. */
    private PlaceMark edge(Flag flag, LineMap.Stretch stretch, PlaceMark.Edge edge) {
        LineMap.Place place = edge == PlaceMark.Edge.NEARER ? stretch.nearer() : stretch.farther();
        return mark(flag, flag.startMetres(), place, edge, MarkingRules.PLACE_MARKS / 2);
    }

    private PlaceMark within(Flag flag, double flagged, LineMap.Stretch stretch) {
        double velocity = referenceFraction(flag);
        double from = MarkingRules.metresThereAndBack(stretch.nearer().seconds(), velocity);
        double to = MarkingRules.metresThereAndBack(stretch.farther().seconds(), velocity);
        double share = to > from ? Math.max(0, Math.min(1, (flagged - from) / (to - from))) : 0;
        LineMap.Place nearest = new LineMap.Place(
                between(stretch.nearer().seconds(), stretch.farther().seconds(), share),
                between(stretch.nearer().metres(), stretch.farther().metres(), share));
        return mark(flag, flagged, nearest, PlaceMark.Edge.ONLY, MarkingRules.PLACE_MARKS);
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    private boolean isInside(Flag flag, double flagged, LineMap.Stretch stretch) {
        double velocity = referenceFraction(flag);
        return flagged >= MarkingRules.metresThereAndBack(stretch.nearer().seconds(), velocity)
                && flagged <= MarkingRules.metresThereAndBack(stretch.farther().seconds(), velocity);
    }

    private PlaceMark mark(Flag flag, double flagged, LineMap.Place place, PlaceMark.Edge edge, double outOf) {
        double expected = MarkingRules.metresThereAndBack(place.seconds(), referenceFraction(flag));
        double read = MarkingRules.metresThereAndBack(place.seconds(), flag.velocityFraction());
        double tolerance = MarkingRules.toleranceMetres(exercise, referenceFraction(flag), expected);
        double marks = outOf * MarkingRules.placeShare(Math.abs(flagged - expected), tolerance);
        return new PlaceMark(edge, flagged, expected, read, place.metres(), tolerance, marks, outOf);
    }

    private double referenceFraction(Flag flag) {
        return statedFraction().orElse(flag.velocityFraction());
    }

    private OptionalDouble statedFraction() {
        return exercise.permitted().velocity().statedFraction();
    }

    private static boolean near(PlaceMark place) {
        return place.errorMetres() <= MarkingRules.NO_MATCH_TOLERANCES * place.toleranceMetres();
    }

    /** Whether a flag lies at one of the places that are not events: the given end, or a joint of two types. */
    Optional<Double> shownAt(Flag flag, LineMap.Place place) {
        PlaceMark mark = mark(flag, flag.startMetres(), place, PlaceMark.Edge.ONLY, 0);
        return near(mark) ? Optional.of(mark.readMetres()) : Optional.empty();
    }

    /** Whether a flag lies within one tolerance of what comes back at a time; where the trace shows that, if so. */
    Optional<Double> shownWithinTolerance(Flag flag, double seconds) {
        PlaceMark mark = mark(flag, flag.startMetres(), new LineMap.Place(seconds, 0), PlaceMark.Edge.ONLY, 0);
        return mark.errorMetres() <= mark.toleranceMetres() ? Optional.of(mark.readMetres()) : Optional.empty();
    }

    /** What is wrong with a place, if it is off by more than the tolerance. */
    List<Finding> remarks(Flag flag, List<PlaceMark> places) {
        List<Finding> remarks = new ArrayList<>();
        for (PlaceMark place : places) {
            boolean offTruth = Math.abs(place.flaggedMetres() - place.trueMetres()) > place.toleranceMetres();
            boolean readWell = Math.abs(place.flaggedMetres() - place.readMetres()) <= place.toleranceMetres();
            boolean off = place.errorMetres() > place.toleranceMetres();
            if (readWell && (off || (offTruth && statedFraction().isEmpty()))) {
                remarks.add(new Finding.WrongPlaceByVelocity(
                        place,
                        flag.velocityFraction(),
                        rightFraction(flag, place),
                        statedFraction().isPresent()));
            } else if (off) {
                remarks.add(new Finding.WrongPlace(place));
            }
        }
        return remarks;
    }

    private double rightFraction(Flag flag, PlaceMark place) {
        return statedFraction().orElse(flag.velocityFraction() * place.trueMetres() / place.readMetres());
    }

    static boolean isDamage(Flag flag) {
        return flag.verdict() == Verdict.DAMAGE;
    }
}
