// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.lookalike.LookAlikeSearch;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.EventEchoes;
import cablewright.simulator.explanation.FullEcho;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The trace that a trainee had before the eyes, and what each event does to it. */
final class TraineeView {

    private final Exercise exercise;
    private final LineEnd end;
    private final Trace measured;
    private final EventEchoes echoes;
    private final PropagationCache memory;
    private final List<EventVisibility> sights;
    private final Map<String, List<EchoFacts>> known = new HashMap<>();

    TraineeView(Exercise exercise, Settings settings, LineEnd end, PropagationCache memory) {
        this.exercise = exercise;
        this.end = end;
        this.memory = memory;
        Cable cable = exercise.cable();
        this.measured =
                Measurement.at(end, cable, exercise.instrument(), memory).trace(settings, exercise.noiseSeed());
        this.echoes = new EventEchoes(cable, exercise.instrument(), settings, end, memory);
        this.sights = VisibilityAnalysis.of(cable, exercise.instrument(), settings, end, memory, () -> false);
    }

    Settings settings() {
        return measured.settings();
    }

    LineEnd end() {
        return end;
    }

    /** The end of an event that the wave meets first, from the near end [m]. */
    double firstMetMetres(String eventId) {
        Event event = exercise.cable().event(eventId).orElseThrow();
        return end == LineEnd.NEAR ? event.startMetres() : event.endMetres();
    }

    /** Whether an open at a place would be late by at least half as much. */
    boolean isLateByLoss(EventEcho echo, double lateMetres) {
        OptionalDouble late = new FullEcho(exercise.instrument(), measured.settings())
                .lateSeconds(exercise.cable(), end, echo.trueMetres());
        return late.isPresent() && measured.settings().metresThereAndBack(late.getAsDouble()) >= lateMetres / 2;
    }

    double halfPulseMetres() {
        return measured.settings().halfPulseMetres();
    }

    List<EchoFacts> echoes(String eventId) {
        return known.computeIfAbsent(eventId, this::worked);
    }

    private List<EchoFacts> worked(String eventId) {
        Optional<EventVisibility> sight =
                sights.stream().filter(one -> one.eventId().equals(eventId)).findFirst();
        List<EchoFacts> facts = new ArrayList<>();
        for (EventEcho echo : echoes.of(eventId)) {
            sight.flatMap(one -> placeOf(one, echo)).ifPresent(place -> facts.add(fact(echo, place)));
        }
        return facts;
    }

    private static Optional<PlaceVisibility> placeOf(EventVisibility sight, EventEcho echo) {
        return sight.places().stream()
                .min(Comparator.comparingDouble(
                        place -> Math.abs(place.thereAndBackSeconds() - echo.thereAndBackSeconds())));
    }

    private EchoFacts fact(EventEcho echo, PlaceVisibility place) {
        return new EchoFacts(
                echo,
                measured.voltsAt(echo.firstTopMetres()),
                echoes.trace().voltsAt(echo.firstTopMetres()),
                place.contrastVolts(),
                measured.noiseVolts(),
                place.visibility(),
                place.reason(),
                place.other());
    }

    /** Where an event shows, at each of its places. */
    List<LookHere> lookHere(List<EchoFacts> facts) {
        return facts.stream()
                .map(fact -> new LookHere(
                        end, fact.echo().showsFromMetres(), fact.echo().showsToMetres()))
                .toList();
    }

    /** A pulse's length about a place where there is no event. */
    LookHere about(double metres) {
        return new LookHere(end, metres - halfPulseMetres(), metres + halfPulseMetres());
    }

    /** What a kind could have shown in place of an event; empty where it can't be on this cable or shows nothing. */
    Optional<KindComparison> comparison(EventKind kind, Event event) {
        LookAlikeSearch search = new LookAlikeSearch(
                exercise.cable(), event.id(), exercise.instrument(), measured.settings(), end, memory);
        return search.nearest(kind).flatMap(nearest -> echoes.would(nearest.event(), event.id()).echoes().stream()
                .findFirst()
                .map(echo -> new KindComparison(nearest, echo, measured.noiseVolts())));
    }
}
