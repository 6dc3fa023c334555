// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.feedback.Claim;
import cablewright.lessons.feedback.KindComparison;
import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.LineEffect;
import cablewright.simulator.explanation.visibility.FartherEdge;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.paths.Reflector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Works every claim out again from exact traces, with none of the code that made it: traces of the cable with and without
 * events, times from the profile, and brute force over sizes, lengths and places of look-alikes. Returns what is false.
 */
final class ClaimChecker implements Claim.Visitor<Optional<String>> {

    private static final double LIGHT = 299_792_458;
    private static final double CLOSE = 0.02;

    private final Exercise exercise;
    private final ExactTraces exact;

    ClaimChecker(Exercise exercise, ExactTraces exact) {
        this.exercise = exercise;
        this.exact = exact;
    }

    private static Optional<String> unless(boolean holds, String problem) {
        return holds ? Optional.empty() : Optional.of(problem);
    }

    private static boolean close(double a, double b) {
        return Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b)) + 1e-7;
    }

    @Override
    public Optional<String> traceGoes(Claim.TraceGoes claim) {
        Trace with = exact.with(claim.settings(), claim.end());
        Trace base = base(claim);
        double back = exact.seconds(claim.trueMetres(), claim.end());
        double pulse = claim.settings().stimulus().settledSeconds();
        double first = back - claim.settings().stimulus().shortestEdgeSeconds();
        double receiver = 1 / exercise.instrument().bandwidthHertz();
        double last = exact.lastOf(claim.eventId(), claim.end(), back) + 4 * pulse + receiver + 6 * late(claim);
        double sign = Math.signum(claim.firstVolts());
        boolean top = false;
        double against = 0;
        boolean swing = false;
        for (int i = 1; i + 1 < with.count() && with.seconds(i) <= last; i++) {
            if (with.seconds(i) < first) {
                continue;
            }
            double change = with.volts(i) - base.volts(i);
            boolean turn = Math.abs(change) >= Math.abs(with.volts(i - 1) - base.volts(i - 1))
                    && Math.abs(change) >= Math.abs(with.volts(i + 1) - base.volts(i + 1));
            if (!top && change * sign > 0 && turn && close(change, claim.firstVolts())) {
                top = true;
            } else if (!top) {
                against = Math.max(against, -change * sign);
            } else {
                swing |= turn
                        && change * sign < 0
                        && close(change, claim.secondVolts().orElse(0));
            }
        }
        if (!top || against > Math.abs(claim.firstVolts()) / 2) {
            return Optional.of("it does not first go by " + claim.firstVolts() + "; against " + against);
        }
        if (claim.secondVolts().isPresent() && !swing) {
            return Optional.of("it does not swing back by that");
        }
        double shown = claim.settings().metresThereAndBack(back);
        return unless(Math.abs(shown - claim.shownMetres()) < 0.01, "it shows at " + shown);
    }

    /** Of the farther of two edges, only what it sends back itself. */
    private Trace base(Claim.TraceGoes claim) {
        Event event = exercise.cable().event(claim.eventId()).orElseThrow();
        double from = exact.fromEnd(claim.trueMetres(), claim.end());
        Event seen = exact.tested(claim.end()).event(event.id()).orElseThrow();
        boolean farther = event instanceof LineCondition
                && seen.endMetres() - seen.startMetres() > 1e-9
                && Math.abs(from - seen.endMetres()) < 1e-6;
        Optional<Cable> goesOn =
                farther ? FartherEdge.takenFrom(exact.tested(claim.end()), event.id()) : Optional.empty();
        return goesOn.map(cable -> exact.trace(cable, claim.settings()))
                .orElseGet(() -> exact.without(claim.eventId(), claim.settings(), claim.end()));
    }

    private double late(Claim.TraceGoes claim) {
        double clean = exact.cleanSeconds(claim.trueMetres(), claim.settings(), claim.end());
        return Math.max(0, clean - exact.seconds(claim.trueMetres(), claim.end()));
    }

    @Override
    public Optional<String> lineIs(Claim.LineIs claim) {
        Event event = exercise.cable().event(claim.eventId()).orElseThrow();
        LineEffect effect = claim.effect();
        return switch (effect) {
            case OPEN, SHORT -> unless(nothingPasses(claim), "waves get past it");
            case SERIES_RESISTANCE -> unless(sharpEdge(event, claim.end()) > 0, "a series resistance sends back up");
            case SHUNT_RESISTANCE -> unless(sharpEdge(event, claim.end()) < 0, "a shunt sends back down");
            case BRANCH -> unless(event.kind() == EventKind.BRIDGED_TAP, "no branch");
            case LOWER_HERE, LOWER_FROM_HERE -> unless(sharpEdge(event, claim.end()) < 0, "not lower");
            case HIGHER_HERE, HIGHER_FROM_HERE -> unless(sharpEdge(event, claim.end()) > 0, "not higher");
            case BACK_FROM_HERE -> unless(event instanceof LineCondition, "no stretch");
        };
    }

    private boolean nothingPasses(Claim.LineIs claim) {
        Cable tested = exact.tested(claim.end());
        Event event = tested.event(claim.eventId()).orElseThrow();
        List<Event> before = tested.events().stream()
                .filter(other -> other.startMetres() <= event.startMetres())
                .toList();
        Settings settings = exercise.start().settings();
        Trace all = exact.trace(tested, settings);
        Trace cut = exact.trace(tested.withEvents(before), settings);
        double most = 0;
        for (int i = 0; i < all.count(); i++) {
            most = Math.max(most, Math.abs(all.volts(i) - cut.volts(i)));
        }
        return most < 1e-6;
    }

    /** What the event alone on the bare line first sends back of the shortest permitted pulse. */
    private double sharpEdge(Event event, LineEnd end) {
        Cable alone = exact.tested(end)
                .withEvents(List.of(exact.tested(end).event(event.id()).orElseThrow()));
        Settings settings = exercise.start()
                .settings()
                .withStimulus(exercise.permitted().narrowestStimulus())
                .withRangeMetres(exercise.permitted().rangesMetres().get(0));
        Trace with = exact.trace(alone, settings);
        Trace without = exact.trace(alone.withEvents(List.of()), settings);
        double most = 0;
        for (int i = 0; i < with.count(); i++) {
            most = Math.max(most, Math.abs(with.volts(i) - without.volts(i)));
        }
        for (int i = 0; i < with.count(); i++) {
            double change = with.volts(i) - without.volts(i);
            if (Math.abs(change) > most / 4) {
                return change;
            }
        }
        return 0;
    }

    @Override
    public Optional<String> waveIsBack(Claim.WaveIsBack claim) {
        double back = exact.seconds(claim.trueMetres(), claim.end());
        boolean right =
                close(back, claim.seconds()) && close(back * claim.velocityFraction() * LIGHT / 2, claim.shownMetres());
        return unless(right, "the wave is back after " + back);
    }

    @Override
    public Optional<String> traceReads(Claim.TraceReads claim) {
        Trace quiet = exact.with(claim.settings(), claim.end());
        Trace seen = new Reflectometer(exercise.instrument())
                .measure(exact.port(claim.end()), claim.settings(), exercise.noiseSeed());
        int at = quiet.indexNear(claim.metres());
        return unless(
                Math.abs(seen.volts(at) - claim.seenVolts()) < 1e-9
                        && Math.abs(quiet.volts(at) - claim.withoutNoiseVolts()) < 1e-9,
                "it reads " + seen.volts(at) + " and " + quiet.volts(at));
    }

    @Override
    public Optional<String> notClear(Claim.NotClear claim) {
        Trace with = exact.with(claim.settings(), claim.end());
        Trace without = exact.without(claim.eventId(), claim.settings(), claim.end());
        double noise = exercise.instrument().noiseVoltsAfter(claim.settings().averages());
        if (!close(noise, claim.noiseVolts())) {
            return Optional.of("the noise is " + noise);
        }
        double back = exact.seconds(claim.trueMetres(), claim.end());
        double most = 0;
        for (int i = 0; i < with.count(); i++) {
            most = Math.max(most, Math.abs(with.volts(i) - without.volts(i)));
        }
        if (claim.contrastVolts() > 1.001 * most + 1e-9) {
            return Optional.of("it changes the trace by " + most + " at most");
        }
        return switch (claim.reason()) {
            case BELOW_NOISE -> unless(claim.contrastVolts() < 6.001 * noise, "it stands above six times the noise");
            case MERGED -> unless(edgeWithinHalfPulse(claim, back), "no edge of it lies within half a pulse");
            case OVERSHADOWED ->
                unless(claim.contrastVolts() < swing(without, back, claim), "nothing is so large there");
            case BEYOND_FULL_REFLECTION ->
                unless(
                        exact.tested(claim.end()).events().stream()
                                .anyMatch(event -> (event.kind() == EventKind.OPEN || event.kind() == EventKind.SHORT)
                                        && event.startMetres() < exact.fromEnd(claim.trueMetres(), claim.end())),
                        "nothing hides it");
            case BEYOND_RANGE -> unless(back > with.seconds(with.count() - 1), "it lies within the range");
            case BLIND_ZONE ->
                unless(back < 12 * claim.settings().stimulus().settledSeconds() + 200e-9, "the pulse is long past");
            default -> Optional.empty();
        };
    }

    /** The name of a single event; empty for several that touch and for all else. */
    private static Optional<String> only(Reflector reflector) {
        return reflector instanceof Reflector.Events events && events.ids().size() == 1
                ? Optional.of(events.ids().get(0))
                : Optional.empty();
    }

    private boolean edgeWithinHalfPulse(Claim.NotClear claim, double back) {
        Cable tested = exact.tested(claim.end());
        CableProfile profile = CableProfile.of(tested);
        List<Double> edges = new ArrayList<>();
        if (claim.other().isEmpty()) {
            return false;
        }
        only(claim.other().get())
                .flatMap(tested::event)
                .ifPresentOrElse(
                        other -> {
                            edges.add(other.startMetres());
                            edges.add(other.endMetres());
                            edges.add((other.startMetres() + other.endMetres()) / 2);
                        },
                        () -> edges.add(tested.lengthMetres()));
        return edges.stream()
                .anyMatch(metres -> Math.abs(2 * profile.secondsTo(metres) - back)
                        <= claim.settings().stimulus().resolutionSeconds() * 1.0001);
    }

    /** How far the trace without the event swings about its place. */
    private double swing(Trace without, double back, Claim.NotClear claim) {
        double pulse = claim.settings().stimulus().settledSeconds();
        Trace with = exact.with(claim.settings(), claim.end());
        double last = exact.lastOf(claim.eventId(), claim.end(), back) + 4 * pulse;
        // The contrast that is claimed may lie on a larger echo a little behind.
        for (int i = 0; i < with.count() && with.seconds(i) < last + 8 * pulse; i++) {
            if (with.seconds(i) > last && close(Math.abs(with.volts(i) - without.volts(i)), claim.contrastVolts())) {
                last = with.seconds(i) + pulse;
            }
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < without.count(); i++) {
            if (without.seconds(i) >= back - pulse && without.seconds(i) <= last) {
                low = Math.min(low, without.volts(i));
                high = Math.max(high, without.volts(i));
            }
        }
        return high - low;
    }

    @Override
    public Optional<String> beyondRange(Claim.BeyondRange claim) {
        Event event = exact.tested(claim.end()).event(claim.eventId()).orElseThrow();
        Trace with = exact.with(claim.settings(), claim.end());
        double back = 2 * CableProfile.of(exact.tested(claim.end())).secondsTo(event.startMetres());
        return unless(
                back
                        > with.seconds(with.count() - 1)
                                - claim.settings().stimulus().settledSeconds(),
                "it lies within the range");
    }

    @Override
    public Optional<String> otherWay(Claim.OtherWay claim) {
        Trace without = exact.without(claim.eventId(), claim.settings(), claim.end());
        double truth = firstLobe(exact.with(claim.settings(), claim.end()), without, claim);
        if (truth * claim.firstVolts() >= 0) {
            return Optional.of("the true event goes the same way");
        }
        for (Event other : LookAlikeCandidates.of(exercise.cable(), claim.eventId(), claim.kind(), claim.settings())) {
            Optional<Trace> trace = exact.instead(claim.eventId(), other, claim.settings(), claim.end());
            if (trace.isPresent() && firstLobe(trace.get(), without, claim) * truth > 0) {
                return Optional.of(other + " goes the same way");
            }
        }
        return Optional.empty();
    }

    /** What first happens about the event's own place; what it does to later echoes counts for nothing. */
    private double firstLobe(Trace with, Trace without, Claim.OtherWay claim) {
        Event event = exercise.cable().event(claim.eventId()).orElseThrow();
        double back = Math.max(
                exact.seconds(event.startMetres(), claim.end()), exact.seconds(event.endMetres(), claim.end()));
        double last = back
                + 1.5 * claim.settings().stimulus().settledSeconds()
                + 1 / exercise.instrument().bandwidthHertz();
        double most = 0;
        for (int i = 0; i < with.count() && with.seconds(i) <= last; i++) {
            most = Math.max(most, Math.abs(with.volts(i) - without.volts(i)));
        }
        for (int i = 0; i < with.count() && with.seconds(i) <= last; i++) {
            double change = with.volts(i) - without.volts(i);
            if (Math.abs(change) >= most / 2) {
                return change;
            }
        }
        return 0;
    }

    private double left(Trace one, Trace other) {
        double most = 0;
        for (int i = 0; i < one.count(); i++) {
            most = Math.max(most, Math.abs(one.volts(i) - other.volts(i)));
        }
        return most;
    }

    @Override
    public Optional<String> looksAlike(Claim.LooksAlike claim) {
        KindComparison said = claim.comparison();
        Trace with = exact.with(claim.settings(), claim.end());
        double left = exact.instead(claim.eventId(), said.nearest().event(), claim.settings(), claim.end())
                .map(trace -> left(with, trace))
                .orElse(1.0);
        double noise = exercise.instrument().noiseVoltsAfter(claim.settings().averages());
        return unless(close(left, said.nearest().leftVolts()) && left < 3 * noise, "it is off by " + left);
    }

    @Override
    public Optional<String> stillOff(Claim.StillOff claim) {
        KindComparison said = claim.comparison();
        Trace with = exact.with(claim.settings(), claim.end());
        double claimed = said.nearest().leftVolts();
        EventKind kind = said.nearest().kind();
        for (Event other : LookAlikeCandidates.of(exercise.cable(), claim.eventId(), kind, claim.settings())) {
            double left = exact.instead(claim.eventId(), other, claim.settings(), claim.end())
                    .map(trace -> left(with, trace))
                    .orElse(1.0);
            if (left < 0.9 * claimed) {
                return Optional.of(other + " is off by " + left + " only, not " + claimed);
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<String> placeShows(Claim.PlaceShows claim) {
        PlaceMark place = claim.place();
        Event event = exact.tested(claim.end()).event(claim.eventId()).orElseThrow();
        boolean there =
                place.trueMetres() >= event.startMetres() - 1e-6 && place.trueMetres() <= event.endMetres() + 1e-6;
        double set = claim.settings().velocityFraction();
        double readSeconds = place.readMetres() / (set * LIGHT / 2);
        double back = exact.seconds(
                claim.end() == LineEnd.NEAR
                        ? place.trueMetres()
                        : exercise.cable().lengthMetres() - place.trueMetres(),
                claim.end());
        double reach = 2 * claim.settings().stimulus().settledSeconds()
                + 2
                        * Math.max(
                                0,
                                exact.cleanSeconds(
                                                claim.end() == LineEnd.NEAR
                                                        ? place.trueMetres()
                                                        : exercise.cable().lengthMetres() - place.trueMetres(),
                                                claim.settings(),
                                                claim.end())
                                        - back)
                + CableProfile.of(exact.tested(claim.end())).secondsTo(event.endMetres()) * 2
                - CableProfile.of(exact.tested(claim.end())).secondsTo(event.startMetres()) * 2;
        if (!there || Math.abs(readSeconds - back) > reach) {
            return Optional.of("the place is " + event.startMetres() + " to " + event.endMetres() + ", read after "
                    + readSeconds + ", back after " + back);
        }
        Trace with = exact.with(claim.settings(), claim.end());
        int at = with.indexNear(place.readMetres());
        double slope = with.volts(Math.min(with.count() - 1, at + 2)) - with.volts(Math.max(0, at - 2));
        Trace without = exact.without(claim.eventId(), claim.settings(), claim.end());
        double own = slope - without.volts(Math.min(with.count() - 1, at + 2)) + without.volts(Math.max(0, at - 2));
        boolean direction = claim.goesUp() ? slope > 0 || own > 0 : slope < 0 || own < 0;
        return unless(direction, "the edge goes the other way");
    }

    @Override
    public Optional<String> atTop(Claim.AtTop claim) {
        Trace with = exact.with(claim.settings(), claim.end());
        Trace without = exact.without(claim.eventId(), claim.settings(), claim.end());
        int at = with.indexNear(claim.topMetres());
        double there = Math.abs(with.volts(at) - without.volts(at));
        double beside = 0;
        for (int i = Math.max(1, at - 2); i <= Math.min(with.count() - 2, at + 2); i++) {
            beside = Math.max(beside, Math.abs(with.volts(i) - without.volts(i)));
        }
        return unless(there >= 0.98 * beside, "no top is there");
    }
}
