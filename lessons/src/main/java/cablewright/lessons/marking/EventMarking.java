// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Marks one event with all the flags at it. The first flag stands for it; one at the other edge of a stretch completes it;
 * of claims that contradict each other the worse counts, so that flagging everything at once does not pay.
 */
final class EventMarking {

    private final PlaceJudge places;
    private final LineEvent event;
    private final Pairing first;
    private final List<Pairing> further;

    EventMarking(PlaceJudge places, LineEvent event, List<Pairing> pairings) {
        this.places = places;
        this.event = event;
        this.first = pairings.get(0);
        this.further = pairings.subList(1, pairings.size());
    }

    List<Finding> findings() {
        List<PlaceMark> marked = new ArrayList<>(first.places());
        otherEdge().flatMap(pairing -> pairing.places().stream().findFirst()).ifPresent(marked::add);
        double kind = first.kindMarks();
        double verdict = first.verdictMarks();
        for (Pairing pairing : further) {
            kind = Math.min(kind, pairing.kindMarks());
            verdict = Math.min(verdict, pairing.verdictMarks());
        }
        double all =
                kind + verdict + marked.stream().mapToDouble(PlaceMark::marks).sum();
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding.Matched(
                first.flag(),
                further.stream().map(Pairing::flag).toList(),
                event,
                marked,
                kind,
                verdict,
                event.standing() == Requirement.HIDDEN ? 0 : all,
                remarks(marked)));
        further.stream()
                .filter(pairing -> !otherEdge().equals(Optional.of(pairing)))
                .forEach(pairing -> findings.add(new Finding.Repeated(pairing.flag(), event, dig(pairing))));
        return findings;
    }

    /** The flag at the edge that the first one left out, if there is one. */
    private Optional<Pairing> otherEdge() {
        boolean lacksOne = first.places().size() == 1 && first.places().get(0).edge() != PlaceMark.Edge.ONLY;
        if (!lacksOne) {
            return Optional.empty();
        }
        return further.stream()
                .filter(pairing -> pairing.places().size() == 1)
                .filter(pairing ->
                        pairing.places().get(0).edge() != first.places().get(0).edge())
                .findFirst();
    }

    private List<Finding> remarks(List<PlaceMark> marked) {
        Flag flag = first.flag();
        List<Finding> remarks = new ArrayList<>(places.remarks(flag, marked));
        if (!first.hasRightKind()) {
            remarks.add(new Finding.WrongKind(
                    flag.kind(), event.kind(), MarkingRules.agreement(flag.kind(), event.kind())));
        }
        if (flag.verdict() == Verdict.BELONGS && event.truth() == Verdict.DAMAGE) {
            remarks.add(new Finding.DamageLeft(flag, event));
        }
        remarks.addAll(dig(first));
        if (event.standing() == Requirement.MARGINAL) {
            remarks.add(new Finding.MarginalFound(event));
        } else if (event.standing() == Requirement.HIDDEN) {
            remarks.add(new Finding.HiddenEvent(event));
        }
        return remarks;
    }

    private List<Finding> dig(Pairing pairing) {
        return pairing.isNeedlessDig()
                ? List.of(new Finding.NeedlessDig(pairing.flag(), Optional.of(event), -MarkingRules.DIG_COST_MARKS))
                : List.of();
    }
}
