// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.LineMap;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Says what a flag that stands for no event is: one on the given end, at a joint of two types, at a ghost, or at nothing. */
final class StrayFlags {

    private final AnswerKey demand;
    private final PlaceJudge places;
    private final Attempt attempt;
    private final Map<LineEnd, Ghosts> ghosts = new EnumMap<>(LineEnd.class);

    StrayFlags(AnswerKey demand, PlaceJudge places, Attempt attempt) {
        this.demand = demand;
        this.places = places;
        this.attempt = attempt;
    }

    /** What such a flag is worth to the assignment: never more than standing for an event. */
    double worth(Flag flag) {
        if (endShown(flag).isPresent()) {
            return 0;
        }
        return -(PlaceJudge.isDamage(flag) ? MarkingRules.DIG_COST_MARKS : MarkingRules.STRAY_COST_MARKS);
    }

    Finding finding(Flag flag, Set<LineEvent> claimed) {
        Optional<Double> end = endShown(flag);
        if (end.isPresent()) {
            return new Finding.EndFlagged(flag, end.get());
        }
        Optional<LineEvent> beside = beside(flag, claimed);
        if (beside.isPresent()) {
            return beside(flag, beside.get(), claimed.contains(beside.get()));
        }
        Optional<Double> joint = jointShown(flag);
        if (joint.isPresent()) {
            return new Finding.JointFlagged(flag, joint.get(), dig(flag));
        }
        return reReflection(flag).orElseGet(() -> new Finding.NothingThere(flag, strayCost(flag), dig(flag)));
    }

    /** Of several events that a flag reaches, one that shows; of those, one for which no flag stands. */
    private Optional<LineEvent> beside(Flag flag, Set<LineEvent> claimed) {
        return demand.events().stream()
                .filter(event -> places.reaches(flag, event))
                .min(Comparator.comparing((LineEvent event) -> event.standing() == Requirement.HIDDEN)
                        .thenComparing(event -> claimed.contains(event)));
    }

    private static Finding beside(Flag flag, LineEvent event, boolean taken) {
        boolean hidden = event.standing() == Requirement.HIDDEN;
        boolean dig = hidden && PlaceJudge.isDamage(flag) && event.truth() == Verdict.BELONGS;
        double cost = !dig && (taken || hidden) ? -MarkingRules.STRAY_COST_MARKS : 0;
        List<Finding> children = dig
                ? List.of(new Finding.NeedlessDig(flag, Optional.of(event), -MarkingRules.DIG_COST_MARKS))
                : List.of();
        return new Finding.Beside(flag, event, taken, cost, children);
    }

    private Optional<Double> endShown(Flag flag) {
        if (flag.end() == LineEnd.NEAR && demand.endIsAsked()) {
            return Optional.empty();
        }
        LineMap map = demand.map(flag.end());
        return places.shownAt(flag, new LineMap.Place(map.endSeconds(), map.lengthMetres()));
    }

    private Optional<Double> jointShown(Flag flag) {
        return demand.map(flag.end()).joints().stream()
                .flatMap(joint -> places.shownAt(flag, joint).stream())
                .findFirst();
    }

    private Optional<Finding> reReflection(Flag flag) {
        double noise = demand.exercise()
                .instrument()
                .noiseVoltsAfter(attempt.settings().averages());
        Ghosts known = ghosts.computeIfAbsent(flag.end(), end -> Ghosts.of(demand, end, attempt.settings()));
        for (Ghost ghost : known.above(VisibilityRules.MARGINAL_OVER_NOISE * noise)) {
            Optional<Double> shown = places.shownWithinTolerance(flag, ghost.seconds());
            if (shown.isPresent()) {
                return Optional.of(finding(flag, ghost, shown.get()));
            }
        }
        return Optional.empty();
    }

    private Finding finding(Flag flag, Ghost ghost, double shownMetres) {
        if (ghost.branch().isPresent()) {
            Ghost.BranchEnd end = ghost.branch().get();
            return new Finding.BranchFlagged(
                    flag, end.tapId(), end.alongMetres(), shownMetres, ghost.heightVolts(), dig(flag));
        }
        return new Finding.GhostTakenForEvent(
                flag, ghost.path(), shownMetres, ghost.heightVolts(), strayCost(flag), dig(flag));
    }

    private static double strayCost(Flag flag) {
        return PlaceJudge.isDamage(flag) ? 0 : -MarkingRules.STRAY_COST_MARKS;
    }

    private static List<Finding> dig(Flag flag) {
        return PlaceJudge.isDamage(flag)
                ? List.of(new Finding.NeedlessDig(flag, Optional.empty(), -MarkingRules.DIG_COST_MARKS))
                : List.of();
    }
}
