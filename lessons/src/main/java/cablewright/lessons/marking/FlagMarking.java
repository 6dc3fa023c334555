// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Marks the flags of one attempt. Flags are put in an order of their own first, so that the order in which they were set
 * changes nothing.
 */
final class FlagMarking {

    private static final Comparator<Flag> ORDER = Comparator.comparing(Flag::end)
            .thenComparingDouble(Flag::startMetres)
            .thenComparingDouble(flag -> flag.endMetres().orElse(flag.startMetres()))
            .thenComparing(Flag::kind)
            .thenComparing(Flag::verdict)
            .thenComparingDouble(Flag::velocityFraction)
            .thenComparing(Flag::letter);

    private final AnswerKey demand;
    private final PlaceJudge places;
    private final List<Flag> flags;
    private final List<LineEvent> events;
    private final StrayFlags strays;
    private final Map<Integer, List<Pairing>> byEvent = new TreeMap<>();
    private final List<Flag> alone = new ArrayList<>();

    FlagMarking(AnswerKey demand, Attempt attempt) {
        this.demand = demand;
        this.places = new PlaceJudge(demand, attempt.settings().stimulus());
        this.flags = attempt.flags().stream().sorted(ORDER).toList();
        this.events = demand.events();
        this.strays = new StrayFlags(demand, places, attempt);
    }

    /** Findings along the line, then those of flags that stand for no event. */
    List<Finding> findings() {
        assign();
        joinRepeats();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            LineEvent event = events.get(i);
            if (byEvent.containsKey(i)) {
                findings.addAll(new EventMarking(places, event, byEvent.get(i)).findings());
            } else if (event.standing() != Requirement.HIDDEN) {
                findings.add(new Finding.Missed(event));
            }
        }
        alone.forEach(flag -> findings.add(strays.finding(flag, claimed())));
        for (int i = 0; i < events.size(); i++) {
            if (!byEvent.containsKey(i) && events.get(i).standing() == Requirement.HIDDEN) {
                findings.add(new Finding.HiddenEvent(events.get(i)));
            }
        }
        return findings;
    }

    /** The events for which flags stand. */
    private Set<LineEvent> claimed() {
        Set<LineEvent> claimed = new HashSet<>();
        byEvent.keySet().forEach(index -> claimed.add(events.get(index)));
        return claimed;
    }

    private void assign() {
        double[][] worth = new double[flags.size()][events.size()];
        double[] worthAlone = new double[flags.size()];
        for (int f = 0; f < flags.size(); f++) {
            worthAlone[f] = strays.worth(flags.get(f));
            for (int e = 0; e < events.size(); e++) {
                worth[f][e] =
                        pairing(flags.get(f), events.get(e)).map(Pairing::worth).orElse(Double.NaN);
            }
        }
        int[] chosen = Assignment.best(worth, worthAlone);
        for (int f = 0; f < chosen.length; f++) {
            if (chosen[f] < 0) {
                alone.add(flags.get(f));
            } else {
                List<Pairing> first = new ArrayList<>();
                first.add(pairing(flags.get(f), events.get(chosen[f])).orElseThrow());
                byEvent.put(chosen[f], first);
            }
        }
    }

    /** Puts further flags at an event, or at the other edge of a stretch, with the one that stands for it. */
    private void joinRepeats() {
        for (Flag flag : List.copyOf(alone)) {
            for (List<Pairing> held : byEvent.values()) {
                Optional<Pairing> pairing = pairing(flag, held.get(0).event());
                boolean sameClaim = flag.kind() == held.get(0).flag().kind()
                        && flag.verdict() == held.get(0).flag().verdict();
                if (pairing.isPresent()
                        && (pairing.get().isThere() || (sameClaim && isOtherEdge(pairing.get(), held.get(0))))) {
                    held.add(pairing.get());
                    alone.remove(flag);
                    break;
                }
            }
        }
    }

    private static boolean isOtherEdge(Pairing flag, Pairing first) {
        PlaceMark.Edge edge = first.places().get(0).edge();
        return edge != PlaceMark.Edge.ONLY
                && first.places().size() == 1
                && flag.places().size() == 1
                && flag.places().get(0).edge() != edge;
    }

    /** What nobody can see, a flag stands for only where it names the very kind: otherwise it would excuse any dig there. */
    private Optional<Pairing> pairing(Flag flag, LineEvent event) {
        if (event.standing() == Requirement.HIDDEN && flag.kind() != event.kind()) {
            return Optional.empty();
        }
        return places.judge(flag, event)
                .map(found -> new Pairing(
                        flag,
                        event,
                        found,
                        event.marks().kindMarks() * kindShare(flag, event),
                        flag.verdict() == event.truth() ? event.marks().verdictMarks() : 0));
    }

    /** What the instructor accepts, and what no permitted setting could tell from the truth, is right. */
    private double kindShare(Flag flag, LineEvent event) {
        boolean accepted = event.ruling()
                        .filter(ruling -> ruling.acceptedKinds().contains(flag.kind()))
                        .isPresent()
                || MarkingRules.isEnd(
                        flag.kind(), event, demand.exercise().cable().farEnd());
        return accepted || demand.looksTheSame(event, flag.kind())
                ? 1
                : MarkingRules.kindShare(flag.kind(), event.kind());
    }
}
