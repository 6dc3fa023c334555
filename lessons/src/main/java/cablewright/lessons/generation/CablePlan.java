// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.wave.HalfSine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * One draw of a cable: family, type, length, end, pulse, and events far enough apart for the difficulty.
 *
 * @param family the family
 * @param type the type of cable
 * @param cable the cable
 * @param pulse the pulse at which its events are meant to be seen
 * @param endsTerminated whether its end is meant to reflect nothing
 */
record CablePlan(ExerciseFamily family, CableType type, Cable cable, HalfSine pulse, boolean endsTerminated) {

    private static final double LADDER_LENGTH_SHARE = 0.55;

    static CablePlan draw(SeededRandom dice, GenerationRequest request, GenerationTexts texts) {
        List<ExerciseFamily> able = request.families().stream()
                .filter(request.contrast()::isKnownTo)
                .filter(family ->
                        request.damage().isEmpty() || request.damage().stream().anyMatch(family.damage()::contains))
                .toList();
        ExerciseFamily family = dice.of(able);
        String typeId = dice.of(family.types());
        CableType type = Catalogue.standard().type(typeId);
        boolean ladder = request.contrast() == Contrast.LADDER_OF_WIDTHS;
        double shortest = ladder ? LADDER_LENGTH_SHARE * family.longestMetres() : family.shortestMetres();
        double metres = Math.rint(dice.logBetween(shortest, family.longestMetres()));
        double[] pulses = family.pulseSeconds();
        HalfSine pulse = new HalfSine(ladder ? pulses[pulses.length - 1] : pulse(dice, family, metres));
        double halfPulse = pulse.widthSeconds()
                * type.section().velocityFraction()
                * PhysicalConstants.LIGHT_METRES_PER_SECOND
                / 2;
        EventDraft draft = new EventDraft(dice, type, request.difficulty(), halfPulse, texts.say("branch.title"));
        List<Event> events =
                switch (request.contrast()) {
                    case GHOST_AND_EVENT -> ghostly(dice, family, type, metres, halfPulse, texts);
                    case BOTH_ENDS -> betweenEnds(dice, family, metres, halfPulse, draft);
                    case LADDER_OF_WIDTHS -> nearAndFar(dice, family, type, metres, draft);
                    default ->
                        place(dice, metres, request.difficulty(), halfPulse, kinds(dice, family, request), draft);
                };
        boolean terminated = family.isTerminatedInUse() && dice.chance(0.6);
        FarEnd end = terminated ? FarEnd.Terminated.byOhms(type.nominalImpedanceOhms()) : new FarEnd.Open();
        Cable cable = new Cable(texts.say("cable.title", dice.upTo(89)), List.of(new Run(type, metres)), events, end);
        return new CablePlan(family, type, cable, pulse, terminated);
    }

    /** The shortest pulse on short lines, a longer one on long lines. */
    private static double pulse(SeededRandom dice, ExerciseFamily family, double metres) {
        double[] pulses = family.pulseSeconds();
        double share =
                Math.log(metres / family.shortestMetres()) / Math.log(family.longestMetres() / family.shortestMetres());
        int index = (int) Math.floor(share * (pulses.length - 1) + dice.between(0, 0.999));
        return pulses[Math.max(0, Math.min(pulses.length - 2, index))];
    }

    private static List<EventKind> kinds(SeededRandom dice, ExerciseFamily family, GenerationRequest request) {
        List<EventKind> kinds = new ArrayList<>();
        List<EventKind> damage = request.damage().isEmpty()
                ? family.damage()
                : family.damage().stream().filter(request.damage()::contains).toList();
        boolean sound = request.damage().isEmpty() && !family.hardware().isEmpty() && dice.chance(0.12);
        int faults = sound ? 0 : 1 + (dice.chance(0.15 + 0.25 * request.difficulty()) ? 1 : 0);
        for (int i = 0; i < faults; i++) {
            kinds.add(dice.of(damage));
        }
        if (request.contrast() == Contrast.SPLICE_AND_CONNECTOR) {
            kinds.add(EventKind.SPLICE);
            kinds.add(EventKind.CONNECTOR);
            return kinds;
        }
        int most = 1 + (int) Math.round(3 * request.difficulty());
        for (int i = family.hardware().isEmpty() ? 0 : 1 + dice.upTo(most); i > 0; i--) {
            EventKind kind = dice.of(family.hardware());
            // A loop with several branches left joined is rare: one on plain lines, two on hard ones.
            boolean oneMore = kind != EventKind.BRIDGED_TAP
                    || Collections.frequency(kinds, kind) < (request.difficulty() < 0.5 ? 1 : 2);
            kinds.add(oneMore ? kind : EventKind.SPLICE);
        }
        // A full open or short hides what lies beyond: at most one, and it is put last.
        boolean full = false;
        List<EventKind> kept = new ArrayList<>();
        for (EventKind kind : kinds) {
            boolean isFull = kind == EventKind.OPEN || kind == EventKind.SHORT;
            if (!isFull || !full) {
                kept.add(kind);
            }
            full |= isFull;
        }
        return kept;
    }

    private static List<Event> place(
            SeededRandom dice,
            double metres,
            double difficulty,
            double halfPulse,
            List<EventKind> kinds,
            EventDraft draft) {
        List<Event> events = new ArrayList<>();
        List<EventKind> ordered = new ArrayList<>(kinds);
        ordered.sort(Comparator.comparing(kind -> kind != EventKind.OPEN && kind != EventKind.SHORT));
        double gap = halfPulse * (4 - 2.4 * difficulty);
        double last = metres - gap;
        int n = 0;
        for (EventKind kind : ordered) {
            double stretch =
                    kind == EventKind.OFF_CENTRE ? tenths(metres * dice.between(0.2, 0.5)) : draft.stretchMetres(kind);
            boolean full = kind == EventKind.OPEN || kind == EventKind.SHORT;
            double least = full ? 0.5 * metres : 2 * gap;
            for (int attempt = 0; attempt < 20; attempt++) {
                double at = tenths(dice.between(least, Math.max(least, last - stretch)));
                if (at + stretch < last && fits(events, at, at + stretch, gap)) {
                    events.add(draft.draw("e" + ++n, kind, at, stretch));
                    last = full ? at - gap : last;
                    break;
                }
            }
        }
        return events;
    }

    /** Two strong events with their ghost behind them and before the end, and one thing that belongs. */
    private static List<Event> ghostly(
            SeededRandom dice,
            ExerciseFamily family,
            CableType type,
            double metres,
            double halfPulse,
            GenerationTexts texts) {
        double near = tenths(metres * dice.between(0.12, 0.35));
        double far = tenths(near + (metres - near) * dice.between(0.22, 0.42));
        EventKind series =
                family.damage().contains(EventKind.CORRODED_JOINT) ? EventKind.CORRODED_JOINT : EventKind.PARTIAL_OPEN;
        boolean shortFirst = dice.chance(0.5);
        EventDraft draft = new EventDraft(dice, type, 0.3, halfPulse, texts.say("branch.title"));
        List<Event> events = new ArrayList<>();
        events.add(draft.strong("e1", shortFirst ? EventKind.PARTIAL_SHORT : series, near));
        events.add(draft.strong("e2", shortFirst ? series : EventKind.PARTIAL_SHORT, far));
        double gap = 3 * halfPulse;
        EventKind kind = dice.of(family.hardware());
        double at = tenths(dice.between(gap, metres - gap));
        if (fits(events, at, at, gap)) {
            events.add(draft.draw("e3", kind, at, 0));
        }
        return events;
    }

    /** A full break or contact, and one thing that belongs. */
    private static List<Event> betweenEnds(
            SeededRandom dice, ExerciseFamily family, double metres, double halfPulse, EventDraft draft) {
        List<Event> events = new ArrayList<>();
        EventKind fault = dice.of(List.of(EventKind.OPEN, EventKind.SHORT));
        events.add(draft.draw("e1", fault, tenths(metres * dice.between(0.25, 0.75)), 0));
        EventKind kind = dice.of(family.hardware());
        double gap = 4 * halfPulse;
        double at = tenths(dice.between(gap, metres - gap));
        if (kind != EventKind.BRIDGED_TAP && fits(events, at, at, gap)) {
            events.add(draft.draw("e2", kind, at, 0));
        }
        return events;
    }

    /** A branch close to the near end, and a fault far away. */
    private static List<Event> nearAndFar(
            SeededRandom dice, ExerciseFamily family, CableType type, double metres, EventDraft draft) {
        double shortPulse = family.pulseSeconds()[0]
                * type.section().velocityFraction()
                * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        EventKind fault = dice.of(List.of(EventKind.PARTIAL_OPEN, EventKind.PARTIAL_SHORT));
        return List.of(
                draft.draw("e1", EventKind.BRIDGED_TAP, tenths(shortPulse * dice.between(3, 6)), 0),
                draft.strong("e2", fault, tenths(metres * dice.between(0.6, 0.85))));
    }

    private static double tenths(double metres) {
        return Math.rint(metres * 10) / 10;
    }

    private static boolean fits(List<Event> events, double from, double to, double gap) {
        return events.stream().allMatch(event -> to + gap < event.startMetres() || from - gap > event.endMetres());
    }
}
