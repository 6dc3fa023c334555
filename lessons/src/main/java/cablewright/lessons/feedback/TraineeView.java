// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.EventEchoes;
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

/** The trace that a trainee had before the eyes, and what each event does to it. */
final class TraineeView {

    private static final double STRETCH_HALF_PULSES = 4;

    private final Exercise exercise;
    private final LineEnd end;
    private final Trace measured;
    private final EventEchoes echoes;
    private final List<EventVisibility> sights;
    private final Map<String, List<EchoFacts>> known = new HashMap<>();

    TraineeView(Exercise exercise, Settings settings, LineEnd end, PropagationCache memory) {
        this.exercise = exercise;
        this.end = end;
        Cable cable = exercise.cable();
        this.measured =
                Measurement.at(end, cable, exercise.instrument(), memory).trace(settings, exercise.noiseSeed());
        this.echoes = new EventEchoes(cable, exercise.instrument(), settings, end, memory);
        this.sights = VisibilityAnalysis.of(cable, exercise.instrument(), settings, end, memory, () -> false);
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
                place.otherId());
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

    /** What a kind would have shown in place of an event, at the place nearest to the flag. */
    Optional<KindComparison> comparison(Flag flag, Event event, List<EchoFacts> facts) {
        List<EventEcho> shows = facts.stream().map(EchoFacts::echo).toList();
        Optional<EventEcho> nearest = shows.stream()
                .min(Comparator.comparingDouble(echo -> Math.abs(echo.shownMetres() - flag.startMetres())));
        return nearest.flatMap(
                echo -> new KindFit(echoes, event.id(), shows).fit(flag.kind(), place(flag, event, echo.trueMetres())));
    }

    private KindAtPlace place(Flag flag, Event event, double trueMetres) {
        double own = event.endMetres() - event.startMetres();
        double flagged = flag.endMetres().orElse(flag.startMetres()) - flag.startMetres();
        double usual = STRETCH_HALF_PULSES * halfPulseMetres();
        double length = own > halfPulseMetres() ? own : flagged > 0 ? flagged : usual;
        boolean stretch = own > halfPulseMetres() && isLong(flag.kind());
        return new KindAtPlace(exercise.cable(), stretch ? event.startMetres() : trueMetres, length);
    }

    private static boolean isLong(EventKind kind) {
        return switch (kind) {
            case WATER, OFF_CENTRE, GRADUAL_DAMAGE, SPREAD_PAIR, SPLIT, UNEVENNESS, HEAT -> true;
            default -> false;
        };
    }
}
