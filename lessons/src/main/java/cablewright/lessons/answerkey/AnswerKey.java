// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.lookalike.LookAlike;
import cablewright.lessons.lookalike.LookAlikeSearch;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Signature;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * What an exercise asks for: each event of its cable with the best view that its permitted settings give. It depends on the
 * exercise alone and takes a while to work out, so it is made once and kept.
 */
public final class AnswerKey {

    private final Exercise exercise;
    private final List<LineEvent> events;
    private final Map<String, EventExtent> extents;
    private final Map<LineEnd, LineMap> maps;
    private final Map<PermittedSettings.View, EdgeTimes> edges = new ConcurrentHashMap<>();
    private final Map<String, Boolean> sameLooks = new ConcurrentHashMap<>();
    private final List<PermittedSettings.View> views;
    private final PropagationCache memory = new PropagationCache();

    private AnswerKey(
            Exercise exercise,
            List<LineEvent> events,
            Map<String, EventExtent> extents,
            Map<LineEnd, LineMap> maps,
            List<PermittedSettings.View> views) {
        this.views = views.stream()
                .filter(view -> view.settings().gainDecibels()
                        == views.get(0).settings().gainDecibels())
                .toList();
        this.exercise = exercise;
        this.events = List.copyOf(events);
        this.extents = Map.copyOf(extents);
        this.maps = Map.copyOf(maps);
    }

    /**
     * Works out what an exercise asks for.
     *
     * @param exercise the exercise
     * @return what it asks for
     */
    public static AnswerKey of(Exercise exercise) {
        return of(exercise, () -> false);
    }

    /**
     * Works out what must be found in an exercise, and can be stopped.
     *
     * @param exercise the exercise
     * @param cancelled asked now and then; once true the work ends
     * @return what it asks for
     * @throws CancellationException if it was cancelled
     */
    public static AnswerKey of(Exercise exercise, BooleanSupplier cancelled) {
        Cable cable = exercise.cable();
        ViewSearch search = new ViewSearch(exercise, cancelled);
        List<PermittedSettings.View> views = PermittedSettings.of(exercise, ViewSearch.secondsThereAndBack(cable));
        Set<String> ids = cable.events().stream().map(Event::id).collect(Collectors.toSet());
        search.search(cable, ids, views);
        List<LineEvent> events = new ArrayList<>();
        Map<String, EventExtent> extents = new HashMap<>();
        for (Event event : cable.events()) {
            events.add(judged(event, exercise, search.bestOf(event.id())));
            extents.put(event.id(), extent(event, search));
        }
        askedEnd(exercise, search, views).ifPresent(events::add);
        events.sort(Comparator.comparingDouble(LineEvent::trueStartMetres)
                .thenComparing(event -> event.eventId().isEmpty())
                .thenComparing(event -> event.eventId().orElse("")));
        Map<LineEnd, LineMap> maps = new EnumMap<>(LineEnd.class);
        for (LineEnd end : LineEnd.values()) {
            maps.put(end, LineMap.of(cable, end));
        }
        return new AnswerKey(exercise, events, extents, maps, views);
    }

    private static LineEvent judged(Event event, Exercise exercise, BestView best) {
        return new LineEvent(
                Optional.of(event.id()),
                event.kind(),
                TrueVerdict.of(event, exercise),
                standing(best.visibility()),
                event.startMetres(),
                event.endMetres(),
                best,
                exercise.ruling(event.id()));
    }

    private static Requirement standing(Visibility visibility) {
        if (visibility == Visibility.CLEAR) {
            return Requirement.DEMANDED;
        }
        return visibility == Visibility.MARGINAL ? Requirement.MARGINAL : Requirement.HIDDEN;
    }

    private static EventExtent extent(Event event, ViewSearch search) {
        boolean stretch =
                event instanceof LineCondition && event.kind().signature().extent() == Signature.Extent.LONG;
        if (!stretch) {
            return EventExtent.POINT;
        }
        return search.hasTwoEdges(event.id()) ? EventExtent.EDGES : EventExtent.WITHIN;
    }

    private static Optional<LineEvent> askedEnd(
            Exercise exercise, ViewSearch search, List<PermittedSettings.View> views) {
        Optional<EndAsEvent> end = exercise.endIsGiven() ? Optional.empty() : EndAsEvent.of(exercise.cable());
        if (end.isEmpty()) {
            return Optional.empty();
        }
        List<PermittedSettings.View> fromNear =
                views.stream().filter(view -> view.end() == LineEnd.NEAR).toList();
        String id = end.get().eventId();
        search.search(end.get().cable(), Set.of(id), fromNear);
        BestView best = search.bestOf(id);
        if (best == null) {
            return Optional.empty();
        }
        double length = exercise.cable().lengthMetres();
        return Optional.of(new LineEvent(
                Optional.empty(),
                EventKind.END,
                Verdict.BELONGS,
                standing(best.visibility()),
                length,
                length,
                best,
                Optional.empty()));
    }

    /**
     * Returns every event with its standing, in the order in which they lie along the cable.
     *
     * @return the events; the end of the line is among them where the exercise asks for it
     */
    public List<LineEvent> events() {
        return events;
    }

    /**
     * Returns the events that must be found.
     *
     * @return those that some permitted setting shows clearly
     */
    public List<LineEvent> demanded() {
        return events.stream()
                .filter(event -> event.standing() == Requirement.DEMANDED)
                .toList();
    }

    /**
     * Returns the exercise.
     *
     * @return the exercise
     */
    public Exercise exercise() {
        return exercise;
    }

    public EventExtent extentOf(LineEvent event) {
        return event.eventId().map(extents::get).orElse(EventExtent.POINT);
    }

    public LineMap map(LineEnd end) {
        return maps.get(end);
    }

    /**
     * Returns whether no permitted setting can tell an event from one of another kind: with size, length and place of the
     * other free, the two traces differ by less than three times the noise at every one of them.
     *
     * @param event the event
     * @param kind the other kind
     * @return whether they look the same; worked out once
     */
    public boolean looksTheSame(LineEvent event, EventKind kind) {
        if (event.kind() == kind) {
            return true;
        }
        return event.eventId()
                .filter(id -> sameLooks.computeIfAbsent(id + " " + kind, key -> isSame(id, event.best(), kind)))
                .isPresent();
    }

    private boolean isSame(String eventId, BestView best, EventKind kind) {
        LookAlikeSearch search = new LookAlikeSearch(
                exercise.cable(), eventId, exercise.instrument(), best.settings(), best.end(), memory);
        return search.nearest(kind)
                .filter(found ->
                        !found.goesOtherWay() && views.stream().allMatch(view -> cannotBeTold(eventId, found, view)))
                .isPresent();
    }

    private boolean cannotBeTold(String eventId, LookAlike other, PermittedSettings.View view) {
        Cable cable = exercise.cable();
        List<Event> events = new ArrayList<>(cable.withoutEvent(eventId).events());
        events.add(other.event());
        Trace truth = trace(cable, view);
        Trace instead = trace(cable.withEvents(events), view);
        double most = 0;
        for (int i = 0; i < truth.count(); i++) {
            most = Math.max(most, Math.abs(truth.volts(i) - instead.volts(i)));
        }
        return most < VisibilityRules.MARGINAL_OVER_NOISE * truth.noiseVolts();
    }

    private Trace trace(Cable cable, PermittedSettings.View view) {
        return Measurement.at(view.end(), cable, exercise.instrument(), memory).withoutNoise(view.settings());
    }

    /**
     * Returns when a perfect reader sees the edges of the events.
     *
     * @param end the end tested
     * @param stimulus the outgoing wave
     * @return the times; worked out once
     */
    public EdgeTimes edges(LineEnd end, Stimulus stimulus) {
        Settings settings = PermittedSettings.base(exercise, ViewSearch.secondsThereAndBack(exercise.cable()))
                .withStimulus(stimulus);
        PermittedSettings.View view = new PermittedSettings.View(settings, end);
        return edges.computeIfAbsent(view, key -> new EdgeTimes(exercise, settings, end, memory));
    }

    /** Where an event is as seen from an end; empty where it cannot be seen from there. */
    public Optional<LineMap.Stretch> stretch(LineEvent event, LineEnd end) {
        if (event.eventId().isPresent()) {
            return event.eventId().map(map(end).events()::get);
        }
        LineMap.Place there = new LineMap.Place(map(end).endSeconds(), map(end).lengthMetres());
        return end == LineEnd.NEAR ? Optional.of(new LineMap.Stretch(there, there)) : Optional.empty();
    }

    public boolean endIsAsked() {
        return events.stream().anyMatch(event -> event.eventId().isEmpty());
    }
}
