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
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.LineEffect;
import cablewright.simulator.explanation.visibility.FartherEdge;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Works every claim out again from exact traces, with none of the code that made it: traces of the cable with and without
 * events, times from the profile, and brute force over sizes, lengths and places of look-alikes. Returns what is false.
 */
final class ClaimChecker implements Claim.Visitor<Optional<String>> {

    private static final double LIGHT = 299_792_458;
    private static final double CLOSE = 0.02;

    private final Exercise exercise;
    private final PropagationCache memory = new PropagationCache();
    private final Map<String, Trace> traces = new HashMap<>();

    ClaimChecker(Exercise exercise) {
        this.exercise = exercise;
    }

    Trace trace(Cable tested, Settings settings) {
        return new Reflectometer(exercise.instrument())
                .withoutNoise(new SimulatedPort(tested, exercise.instrument().sourceOhms(), memory), settings);
    }

    Trace with(Settings settings, LineEnd end) {
        return traces.computeIfAbsent("with " + end + settings, key -> trace(tested(end), settings));
    }

    Trace without(String eventId, Settings settings, LineEnd end) {
        return traces.computeIfAbsent(
                eventId + end + settings, key -> trace(tested(end).withoutEvent(eventId), settings));
    }

    private Cable tested(LineEnd end) {
        return exercise.cable().seenFrom(end);
    }

    private double fromEnd(double trueMetres, LineEnd end) {
        return end == LineEnd.NEAR ? trueMetres : exercise.cable().lengthMetres() - trueMetres;
    }

    double seconds(double trueMetres, LineEnd end) {
        return 2 * CableProfile.of(tested(end)).secondsTo(fromEnd(trueMetres, end));
    }

    private static Optional<String> unless(boolean holds, String problem) {
        return holds ? Optional.empty() : Optional.of(problem);
    }

    private static boolean close(double a, double b) {
        return Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b)) + 1e-7;
    }

    @Override
    public Optional<String> traceGoes(Claim.TraceGoes claim) {
        Trace with = with(claim.settings(), claim.end());
        Trace base = base(claim);
        double back = seconds(claim.trueMetres(), claim.end());
        double pulse = claim.settings().stimulus().settledSeconds();
        double first = back - claim.settings().stimulus().shortestEdgeSeconds();
        double receiver = 1 / exercise.instrument().bandwidthHertz();
        double last = lastOf(claim.eventId(), claim.end(), back) + 4 * pulse + receiver + 6 * late(claim);
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
        double from = fromEnd(claim.trueMetres(), claim.end());
        Event seen = tested(claim.end()).event(event.id()).orElseThrow();
        boolean farther = event instanceof LineCondition
                && seen.endMetres() - seen.startMetres() > 1e-9
                && Math.abs(from - seen.endMetres()) < 1e-6;
        Optional<Cable> goesOn = farther ? FartherEdge.takenFrom(tested(claim.end()), event.id()) : Optional.empty();
        return goesOn.map(cable -> trace(cable, claim.settings()))
                .orElseGet(() -> without(claim.eventId(), claim.settings(), claim.end()));
    }

    private double lastOf(String eventId, LineEnd end, double back) {
        Event event = tested(end).event(eventId).orElseThrow();
        double branch = event instanceof BridgedTap tap
                ? 2 * CableProfile.of(tap.branch()).secondsTo(tap.branch().lengthMetres())
                : 0;
        return branch + Math.max(back, 2 * CableProfile.of(tested(end)).secondsTo(event.endMetres()));
    }

    private double late(Claim.TraceGoes claim) {
        double clean = cleanSeconds(claim.trueMetres(), claim.settings(), claim.end());
        return Math.max(0, clean - seconds(claim.trueMetres(), claim.end()));
    }

    /** When half of the edge is back that an open at a place would show. */
    private double cleanSeconds(double trueMetres, Settings settings, LineEnd end) {
        double metres = fromEnd(trueMetres, end);
        List<Event> before = new ArrayList<>();
        tested(end).events().stream()
                .filter(event ->
                        event.endMetres() < metres && event.kind() != EventKind.OPEN && event.kind() != EventKind.SHORT)
                .forEach(before::add);
        before.add(new BrokenConductor("cut", metres, OptionalDouble.empty()));
        Trace open = trace(tested(end).withEvents(before), settings);
        double back = seconds(trueMetres, end);
        int from = open.indexNear(settings.metresThereAndBack(back));
        int top = from;
        for (int i = from;
                i < open.count()
                        && open.seconds(i) < back + 2 * settings.stimulus().settledSeconds();
                i++) {
            top = open.volts(i) > open.volts(top) ? i : top;
        }
        int i = top;
        int start = Math.max(1, from - (int) (settings.stimulus().shortestEdgeSeconds() / open.sampleSeconds()));
        double half = (open.volts(top) + open.volts(start)) / 2;
        while (i > start && open.volts(i) > half) {
            i--;
        }
        return open.seconds(i);
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
        Cable tested = tested(claim.end());
        Event event = tested.event(claim.eventId()).orElseThrow();
        List<Event> before = tested.events().stream()
                .filter(other -> other.startMetres() <= event.startMetres())
                .toList();
        Settings settings = exercise.start().settings();
        Trace all = trace(tested, settings);
        Trace cut = trace(tested.withEvents(before), settings);
        double most = 0;
        for (int i = 0; i < all.count(); i++) {
            most = Math.max(most, Math.abs(all.volts(i) - cut.volts(i)));
        }
        return most < 1e-6;
    }

    /** What the event alone on the bare line first sends back of the shortest permitted pulse. */
    private double sharpEdge(Event event, LineEnd end) {
        Cable alone =
                tested(end).withEvents(List.of(tested(end).event(event.id()).orElseThrow()));
        Settings settings = exercise.start()
                .settings()
                .withStimulus(exercise.permitted().narrowestStimulus())
                .withRangeMetres(exercise.permitted().rangesMetres().get(0));
        Trace with = trace(alone, settings);
        Trace without = trace(alone.withEvents(List.of()), settings);
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
        double back = seconds(claim.trueMetres(), claim.end());
        boolean right =
                close(back, claim.seconds()) && close(back * claim.velocityFraction() * LIGHT / 2, claim.shownMetres());
        return unless(right, "the wave is back after " + back);
    }

    @Override
    public Optional<String> traceReads(Claim.TraceReads claim) {
        Trace quiet = with(claim.settings(), claim.end());
        Trace seen = new Reflectometer(exercise.instrument())
                .measure(
                        new SimulatedPort(
                                tested(claim.end()), exercise.instrument().sourceOhms(), memory),
                        claim.settings(),
                        exercise.noiseSeed());
        int at = quiet.indexNear(claim.metres());
        return unless(
                Math.abs(seen.volts(at) - claim.seenVolts()) < 1e-9
                        && Math.abs(quiet.volts(at) - claim.withoutNoiseVolts()) < 1e-9,
                "it reads " + seen.volts(at) + " and " + quiet.volts(at));
    }

    @Override
    public Optional<String> notClear(Claim.NotClear claim) {
        Trace with = with(claim.settings(), claim.end());
        Trace without = without(claim.eventId(), claim.settings(), claim.end());
        double noise = exercise.instrument().noiseVoltsAfter(claim.settings().averages());
        if (!close(noise, claim.noiseVolts())) {
            return Optional.of("the noise is " + noise);
        }
        double back = seconds(claim.trueMetres(), claim.end());
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
                        tested(claim.end()).events().stream()
                                .anyMatch(event -> (event.kind() == EventKind.OPEN || event.kind() == EventKind.SHORT)
                                        && event.startMetres() < fromEnd(claim.trueMetres(), claim.end())),
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
        Cable tested = tested(claim.end());
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
        Trace with = with(claim.settings(), claim.end());
        double last = lastOf(claim.eventId(), claim.end(), back) + 4 * pulse;
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
        Event event = tested(claim.end()).event(claim.eventId()).orElseThrow();
        Trace with = with(claim.settings(), claim.end());
        double back = 2 * CableProfile.of(tested(claim.end())).secondsTo(event.startMetres());
        return unless(
                back
                        > with.seconds(with.count() - 1)
                                - claim.settings().stimulus().settledSeconds(),
                "it lies within the range");
    }

    @Override
    public Optional<String> otherWay(Claim.OtherWay claim) {
        Trace without = without(claim.eventId(), claim.settings(), claim.end());
        double truth = firstLobe(with(claim.settings(), claim.end()), without, claim);
        if (truth * claim.firstVolts() >= 0) {
            return Optional.of("the true event goes the same way");
        }
        for (Event other : LookAlikeCandidates.of(exercise.cable(), claim.eventId(), claim.kind(), claim.settings())) {
            Optional<Trace> trace = instead(claim.eventId(), other, claim.settings(), claim.end());
            if (trace.isPresent() && firstLobe(trace.get(), without, claim) * truth > 0) {
                return Optional.of(other + " goes the same way");
            }
        }
        return Optional.empty();
    }

    private Optional<Trace> instead(String eventId, Event other, Settings settings, LineEnd end) {
        try {
            List<Event> events =
                    new ArrayList<>(exercise.cable().withoutEvent(eventId).events());
            events.add(other);
            return Optional.of(trace(exercise.cable().withEvents(events).seenFrom(end), settings));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** What first happens about the event's own place; what it does to later echoes counts for nothing. */
    private double firstLobe(Trace with, Trace without, Claim.OtherWay claim) {
        Event event = exercise.cable().event(claim.eventId()).orElseThrow();
        double back = Math.max(seconds(event.startMetres(), claim.end()), seconds(event.endMetres(), claim.end()));
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
        Trace with = with(claim.settings(), claim.end());
        double left = instead(claim.eventId(), said.nearest().event(), claim.settings(), claim.end())
                .map(trace -> left(with, trace))
                .orElse(1.0);
        double noise = exercise.instrument().noiseVoltsAfter(claim.settings().averages());
        return unless(close(left, said.nearest().leftVolts()) && left < 3 * noise, "it is off by " + left);
    }

    @Override
    public Optional<String> stillOff(Claim.StillOff claim) {
        KindComparison said = claim.comparison();
        Trace with = with(claim.settings(), claim.end());
        double claimed = said.nearest().leftVolts();
        EventKind kind = said.nearest().kind();
        for (Event other : LookAlikeCandidates.of(exercise.cable(), claim.eventId(), kind, claim.settings())) {
            double left = instead(claim.eventId(), other, claim.settings(), claim.end())
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
        Event event = tested(claim.end()).event(claim.eventId()).orElseThrow();
        boolean there =
                place.trueMetres() >= event.startMetres() - 1e-6 && place.trueMetres() <= event.endMetres() + 1e-6;
        double set = claim.settings().velocityFraction();
        double readSeconds = place.readMetres() / (set * LIGHT / 2);
        double back = seconds(
                claim.end() == LineEnd.NEAR
                        ? place.trueMetres()
                        : exercise.cable().lengthMetres() - place.trueMetres(),
                claim.end());
        double reach = 2 * claim.settings().stimulus().settledSeconds()
                + 2
                        * Math.max(
                                0,
                                cleanSeconds(
                                                claim.end() == LineEnd.NEAR
                                                        ? place.trueMetres()
                                                        : exercise.cable().lengthMetres() - place.trueMetres(),
                                                claim.settings(),
                                                claim.end())
                                        - back)
                + CableProfile.of(tested(claim.end())).secondsTo(event.endMetres()) * 2
                - CableProfile.of(tested(claim.end())).secondsTo(event.startMetres()) * 2;
        if (!there || Math.abs(readSeconds - back) > reach) {
            return Optional.of("the place is " + event.startMetres() + " to " + event.endMetres() + ", read after "
                    + readSeconds + ", back after " + back);
        }
        Trace with = with(claim.settings(), claim.end());
        int at = with.indexNear(place.readMetres());
        double slope = with.volts(Math.min(with.count() - 1, at + 2)) - with.volts(Math.max(0, at - 2));
        Trace without = without(claim.eventId(), claim.settings(), claim.end());
        double own = slope - without.volts(Math.min(with.count() - 1, at + 2)) + without.volts(Math.max(0, at - 2));
        boolean direction = claim.goesUp() ? slope > 0 || own > 0 : slope < 0 || own < 0;
        return unless(direction, "the edge goes the other way");
    }

    @Override
    public Optional<String> atTop(Claim.AtTop claim) {
        Trace with = with(claim.settings(), claim.end());
        Trace without = without(claim.eventId(), claim.settings(), claim.end());
        int at = with.indexNear(claim.topMetres());
        double there = Math.abs(with.volts(at) - without.volts(at));
        double beside = 0;
        for (int i = Math.max(1, at - 2); i <= Math.min(with.count() - 2, at + 2); i++) {
            beside = Math.max(beside, Math.abs(with.volts(i) - without.volts(i)));
        }
        return unless(there >= 0.98 * beside, "no top is there");
    }
}
