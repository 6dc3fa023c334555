// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineMap;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

    /** What such a flag is worth: nothing, or the cost of a needless dig. */
    double worth(Flag flag) {
        return PlaceJudge.isDamage(flag) && endShown(flag).isEmpty() ? -MarkingRules.DIG_COST_MARKS : 0;
    }

    Finding finding(Flag flag) {
        Optional<Double> end = endShown(flag);
        if (end.isPresent()) {
            return new Finding.EndFlagged(flag, end.get());
        }
        Optional<Double> joint = jointShown(flag);
        if (joint.isPresent()) {
            return new Finding.JointFlagged(flag, joint.get(), dig(flag));
        }
        Optional<Finding> ghost = ghost(flag);
        return ghost.orElseGet(() -> new Finding.NothingThere(flag, dig(flag)));
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

    private Optional<Finding> ghost(Flag flag) {
        double noise = demand.exercise()
                .instrument()
                .noiseVoltsAfter(attempt.settings().averages());
        Ghosts known = ghosts.computeIfAbsent(flag.end(), end -> Ghosts.of(demand, end, attempt.settings()));
        for (Ghost ghost : known.above(VisibilityRules.MARGINAL_OVER_NOISE * noise)) {
            Optional<Double> shown = places.shownWithinTolerance(flag, ghost.seconds());
            if (shown.isPresent()) {
                return Optional.of(new Finding.GhostTakenForEvent(
                        flag, ghost.path(), shown.get(), ghost.heightVolts(), dig(flag)));
            }
        }
        return Optional.empty();
    }

    private static List<Finding> dig(Flag flag) {
        return PlaceJudge.isDamage(flag)
                ? List.of(new Finding.NeedlessDig(flag, Optional.empty(), -MarkingRules.DIG_COST_MARKS))
                : List.of();
    }
}
