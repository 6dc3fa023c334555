// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.EventEchoes;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When a perfect reader of the noise-free trace sees each edge of each event, at one stimulus and from one end. */
public final class EdgeTimes {

    /**
     * One edge on the trace.
     *
     * @param metres the place that it stands for, from the end tested [m]
     * @param seconds when the trace passes half-way up or down it, from the last turn before it [s]
     * @param fromArrivalSeconds the same from the level at which the wave from there is back [s]
     * @param lastSeconds when the echo has passed [s]
     */
    public record Edge(double metres, double seconds, double fromArrivalSeconds, double lastSeconds) {}

    private final Map<String, List<Edge>> edges = new HashMap<>();

    EdgeTimes(Exercise exercise, Settings settings, LineEnd end, PropagationCache memory) {
        EventEchoes echoes = new EventEchoes(exercise.cable(), exercise.instrument(), settings, end, memory);
        double length = exercise.cable().lengthMetres();
        for (Event event : exercise.cable().events()) {
            List<Edge> found = new ArrayList<>();
            for (EventEcho echo : echoes.of(event.id())) {
                double metres = end == LineEnd.NEAR ? echo.trueMetres() : length - echo.trueMetres();
                found.add(new Edge(
                        metres,
                        echo.halfWaySeconds(),
                        echo.halfWayFromArrivalSeconds(),
                        settings.secondsThereAndBack(echo.showsToMetres())));
            }
            edges.put(event.id(), found);
        }
    }

    /**
     * Finds the edge that stands for a place.
     *
     * @param eventId the event
     * @param metres the place, from the end tested [m]
     * @return the nearest edge of that event; empty where the trace shows none
     */
    public Optional<Edge> edge(String eventId, double metres) {
        return of(eventId).stream().min(Comparator.comparingDouble(edge -> Math.abs(edge.metres() - metres)));
    }

    /**
     * Returns the edges of an event.
     *
     * @param eventId the event
     * @return its edges, nearest to the tested end first
     */
    public List<Edge> of(String eventId) {
        return edges.getOrDefault(eventId, List.of());
    }
}
