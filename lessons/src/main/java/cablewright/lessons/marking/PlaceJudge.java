// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.EdgeTimes;
import cablewright.lessons.answerkey.EventExtent;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.LineMap;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.marking.RightPlace.Span;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Says how near a flag is to an event. A flag is a point of the trace: it hits an edge whatever the velocity; its metres are
 * where somebody would dig, so the place counts in full only where they are right too.
 */
final class PlaceJudge {

    private final AnswerKey demand;
    private final Exercise exercise;
    private final Stimulus attempted;

    /** Judges flags read with an outgoing wave, unless they say another. */
    PlaceJudge(AnswerKey demand, Stimulus attempted) {
        this.demand = demand;
        this.exercise = demand.exercise();
        this.attempted = attempted;
    }

    /**
     * Judges a flag as one for an event.
     *
     * @param flag the flag
     * @param event the event
     * @return its places; empty where the flag is too far away to stand for the event
     */
    Optional<List<PlaceMark>> judge(Flag flag, LineEvent event) {
        return demand.stretch(event, flag.end())
                .map(stretch -> places(flag, event, stretch))
                .filter(places -> !places.isEmpty());
    }

    private List<PlaceMark> places(Flag flag, LineEvent event, LineMap.Stretch stretch) {
        if (demand.extentOf(event) == EventExtent.EDGES) {
            return edges(flag, event, stretch);
        }
        RightPlace right = right(flag, event, stretch.nearer(), stretch.farther());
        double outOf = event.marks().placeMarks();
        PlaceMark first = mark(flag, flag.startMetres(), event, right, PlaceMark.Edge.ONLY, outOf);
        PlaceMark worse = first;
        if (flag.endMetres().isPresent()) {
            PlaceMark second = mark(flag, flag.endMetres().getAsDouble(), event, right, PlaceMark.Edge.ONLY, outOf);
            worse = second.errorMetres() > first.errorMetres() ? second : first;
        }
        return worse.isNear() ? List.of(worse) : List.of();
    }

    private List<PlaceMark> edges(Flag flag, LineEvent event, LineMap.Stretch stretch) {
        double half = event.marks().placeMarks() / 2;
        RightPlace near = right(flag, event, stretch.nearer(), stretch.nearer());
        RightPlace far = right(flag, event, stretch.farther(), stretch.farther());
        double end = flag.endMetres().orElse(flag.startMetres());
        PlaceMark nearer = mark(flag, flag.startMetres(), event, near, PlaceMark.Edge.NEARER, half);
        PlaceMark farther = mark(flag, end, event, far, PlaceMark.Edge.FARTHER, half);
        Span within = new Span(
                near.shown(flag.velocityFraction()).from(),
                far.shown(flag.velocityFraction()).to());
        boolean inside = within.distance(flag.startMetres()) == 0 && within.distance(end) == 0;
        boolean covers = span(flag).overlap(within) >= MarkingRules.LEAST_OVERLAP;
        if (!nearer.isNear() && !farther.isNear() && !inside && !covers) {
            return List.of();
        }
        if (flag.endMetres().isPresent()) {
            return List.of(nearer, farther);
        }
        return List.of(farther.errorMetres() < nearer.errorMetres() ? farther : nearer);
    }

    /** From the flag's place, or the nearer of its two, to the farther. */
    private static Span span(Flag flag) {
        return new Span(flag.startMetres(), flag.endMetres().orElse(flag.startMetres()));
    }

    private RightPlace right(Flag flag, LineEvent event, LineMap.Place nearer, LineMap.Place farther) {
        double middle = (nearer.metres() + farther.metres()) / 2;
        return event.eventId()
                .flatMap(id -> edgeTimes(flag).edge(id, middle))
                .filter(edge -> isOf(edge, nearer, farther))
                .map(edge -> new RightPlace(
                        nearer, farther, List.of(edge.seconds(), edge.fromArrivalSeconds()), edge.lastSeconds()))
                .orElse(new RightPlace(nearer, farther, List.of(), farther.seconds()));
    }

    /** Where a stretch shows as one, its only edge is that of its nearer end. */
    private static boolean isOf(EdgeTimes.Edge edge, LineMap.Place nearer, LineMap.Place farther) {
        return edge.metres() >= nearer.metres() - 1e-6
                && (edge.metres() <= farther.metres() + 1e-6 || edge.seconds() >= nearer.seconds());
    }

    private EdgeTimes edgeTimes(Flag flag) {
        Stimulus set = flag.stimulus().orElse(attempted);
        boolean permitted = exercise.permitted().stimuli().contains(set);
        return demand.edges(
                flag.end(), permitted ? set : exercise.start().settings().stimulus());
    }

    private PlaceMark mark(
            Flag flag, double flagged, LineEvent event, RightPlace right, PlaceMark.Edge edge, double outOf) {
        OptionalDouble tolerance =
                event.ruling().isPresent() ? event.ruling().get().toleranceMetres() : OptionalDouble.empty();
        return mark(flag, flagged, right, edge, outOf, tolerance);
    }

    private PlaceMark mark(
            Flag flag, double flagged, RightPlace right, PlaceMark.Edge edge, double outOf, OptionalDouble ruled) {
        double set = flag.velocityFraction();
        double reference = exercise.permitted().velocity().statedFraction().orElse(right.rightFraction(set));
        Span span = right.right(reference);
        double distance = (right.nearer().metres() + right.farther().metres()) / 2;
        double tolerance = ruled.orElse(MarkingRules.toleranceMetres(exercise, reference, distance));
        double readError = right.shown(set).distance(flagged);
        double share = Math.max(
                MarkingRules.placeShare(span.distance(flagged), tolerance),
                MarkingRules.RIGHT_EDGE_SHARE * MarkingRules.placeShare(readError, tolerance));
        double nearest =
                Math.max(right.nearer().metres(), Math.min(right.farther().metres(), flagged));
        return new PlaceMark(
                edge,
                flagged,
                span.from(),
                span.to(),
                right.readMetres(set),
                nearest,
                MarkingRules.metresThereAndBack(right.lateSeconds(), reference),
                readError,
                reference,
                tolerance,
                outOf * share,
                outOf);
    }

    /** Whether a flag lies on an event, on its echo, or within three tolerances of it. */
    boolean reaches(Flag flag, LineEvent event) {
        return demand.stretch(event, flag.end())
                .filter(stretch -> reaches(flag, event, stretch))
                .isPresent();
    }

    private boolean reaches(Flag flag, LineEvent event, LineMap.Stretch stretch) {
        RightPlace near = right(flag, event, stretch.nearer(), stretch.nearer());
        RightPlace far = right(flag, event, stretch.farther(), stretch.farther());
        double set = flag.velocityFraction();
        double tolerance = mark(flag, flag.startMetres(), event, far, PlaceMark.Edge.ONLY, 0)
                .toleranceMetres();
        Span shown = near.shown(set).with(far.shown(set).to());
        double last = MarkingRules.metresThereAndBack(Math.max(near.lastSeconds(), far.lastSeconds()), set);
        Span reach = shown.widened(MarkingRules.NO_MATCH_TOLERANCES * tolerance).with(last);
        Span truth = new Span(stretch.nearer().metres(), stretch.farther().metres());
        return span(flag).meets(reach) || span(flag).meets(truth.widened(tolerance));
    }

    /** Whether a flag lies at one of the places that are not events: the given end, or a joint of two types. */
    Optional<Double> shownAt(Flag flag, LineMap.Place place) {
        PlaceMark mark = bare(flag, place);
        return mark.isNear() ? Optional.of(mark.readMetres()) : Optional.empty();
    }

    /** Whether a flag lies within one tolerance of what comes back at a time; where the trace shows that, if so. */
    Optional<Double> shownWithinTolerance(Flag flag, double seconds) {
        PlaceMark mark = bare(flag, new LineMap.Place(seconds, flag.startMetres()));
        return mark.readErrorMetres() <= mark.toleranceMetres() ? Optional.of(mark.readMetres()) : Optional.empty();
    }

    private PlaceMark bare(Flag flag, LineMap.Place place) {
        return mark(flag, flag.startMetres(), RightPlace.at(place), PlaceMark.Edge.ONLY, 0, OptionalDouble.empty());
    }

    /** What is wrong with a place, if it is off by more than the tolerance. */
    List<Finding> remarks(Flag flag, List<PlaceMark> places) {
        List<Finding> remarks = new ArrayList<>();
        for (PlaceMark place : places) {
            if (place.errorMetres() <= place.toleranceMetres()) {
                continue;
            }
            boolean otherVelocity =
                    Math.abs(flag.velocityFraction() / place.rightFraction() - 1) > MarkingRules.SAME_VELOCITY_SHARE;
            boolean readWell = otherVelocity && place.readErrorMetres() <= place.toleranceMetres();
            remarks.add(
                    readWell
                            ? new Finding.WrongPlaceByVelocity(
                                    place, flag.velocityFraction(), place.rightFraction(), isStated())
                            : new Finding.WrongPlace(place));
        }
        return remarks;
    }

    private boolean isStated() {
        return exercise.permitted().velocity().statedFraction().isPresent();
    }

    static boolean isDamage(Flag flag) {
        return flag.verdict() == Verdict.DAMAGE;
    }
}
