// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Says for each event of a cable whether a trace shows it, from the trace with and without the event and not from rules of
 * thumb.
 *
 * <p>With r the noise-free trace, r₀ the same without the event (condition undone, element bridged, break replaced by the
 * cable that goes on), both as the converter clips them: contrast is max |r − r₀| in the event's window, from its arrival
 * to its end plus the pulse and plus what loss makes its top late; clutter is how far r₀ swings there.
 * {@link VisibilityRules} holds the thresholds.
 */
public final class VisibilityAnalysis {

    private final Cable tested;
    private final Cable asLaid;
    private final LineEnd end;
    private final Settings settings;
    private final Measurement measurement;
    private final CableProfile profile;
    private final Trace trace;
    private final BlindZone blindZone;
    private final EventWindows windows;

    private VisibilityAnalysis(
            Cable cable, Instrument instrument, Settings settings, LineEnd end, PropagationCache memory) {
        this.asLaid = cable;
        this.measurement = Measurement.at(end, cable, instrument, memory);
        this.tested = measurement.tested();
        this.end = end;
        this.settings = settings;
        this.profile = CableProfile.of(tested);
        this.trace = traceOf(tested);
        this.windows = new EventWindows(profile, instrument, settings);
        this.blindZone = BlindZone.of(measurement.reflectometer(), settings);
    }

    /**
     * Looks for every event of a cable.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set on it
     * @param end the end that is tested
     * @return how each event shows, in the order in which the wave meets them
     */
    public static List<EventVisibility> of(Cable cable, Instrument instrument, Settings settings, LineEnd end) {
        return of(cable, instrument, settings, end, new PropagationCache(), () -> false);
    }

    /**
     * Looks for every event of a cable, sharing what lines do with other work.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set on it
     * @param end the end that is tested
     * @param memory what is remembered of lines
     * @param cancelled asked before each event; once true, the rest is left out
     * @return how each event shows, in the order in which the wave meets them
     */
    public static List<EventVisibility> of(
            Cable cable,
            Instrument instrument,
            Settings settings,
            LineEnd end,
            PropagationCache memory,
            BooleanSupplier cancelled) {
        return new VisibilityAnalysis(cable, instrument, settings, end, memory).all(cancelled);
    }

    private Trace traceOf(Cable cable) {
        return measurement.of(cable).withoutNoise(settings);
    }

    private List<EventVisibility> all(BooleanSupplier cancelled) {
        List<Event> ordered = new ArrayList<>(tested.events());
        ordered.sort((a, b) -> Double.compare(a.startMetres(), b.startMetres()));
        Map<Event, Change> changes = new LinkedHashMap<>();
        for (Event event : ordered) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            changes.put(event, new Change(traceOf(tested.withoutEvent(event.id())), windows.of(event)));
        }
        List<EventVisibility> sights = new ArrayList<>();
        changes.forEach((event, change) -> sights.add(sight(event, change, changes)));
        return sights;
    }

    /** What the trace is without an event, and where to look for the difference. */
    private record Change(Trace without, List<EventWindows.Window> windows) {}

    private EventVisibility sight(Event event, Change change, Map<Event, Change> changes) {
        List<PlaceVisibility> places = new ArrayList<>();
        for (EventWindows.Window window : change.windows()) {
            places.add(place(event, change, window, changes));
        }
        return new EventVisibility(event.id(), event.kind(), places, trace.noiseVolts());
    }

    private PlaceVisibility place(Event event, Change change, EventWindows.Window window, Map<Event, Change> changes) {
        EventContrast look = new EventContrast(trace, change.without(), window.arrivalSeconds(), window.endSeconds());
        EventContrast edge = ownEdge(event, change, window, look);
        double shown = settings.metresThereAndBack(window.arrivalSeconds());
        double position = end == LineEnd.NEAR ? window.metres() : asLaid.lengthMetres() - window.metres();
        Optional<Reflector> hiding = fullReflectionBefore(event);
        if (hiding.isPresent()) {
            return notShown(position, shown, window, edge, look, HiddenReason.BEYOND_FULL_REFLECTION, hiding);
        }
        if (look.isEmpty()) {
            return notShown(position, shown, window, edge, look, HiddenReason.BEYOND_RANGE, Optional.empty());
        }
        Neighbour neighbour = nearestNeighbour(event, window, changes);
        double blindEnd = blindZone.endSeconds(look.contrastVolts());
        VisibilityRules.Verdict verdict = VisibilityRules.judge(new VisibilityRules.Evidence(
                look.contrastVolts(),
                trace.noiseVolts(),
                measurement.instrument().stepVoltsAfter(settings.gainDecibels(), settings.averages()),
                look.clutterVolts(),
                blindEnd <= 0 ? Double.POSITIVE_INFINITY : look.peakSeconds() / blindEnd,
                neighbour.apart()));
        Optional<Reflector> other = verdict.reason().flatMap(reason -> switch (reason) {
            case MERGED -> neighbour.other();
            case OVERSHADOWED -> largestBeside(event, window, changes, look.clutterVolts());
            default -> Optional.empty();
        });
        return new PlaceVisibility(
                position,
                shown,
                window.arrivalSeconds(),
                edge.expectedVolts(),
                look.contrastVolts(),
                look.clutterVolts(),
                verdict.visibility(),
                verdict.reason(),
                other);
    }

    /** Of a farther edge only what it sends back itself has its sign and height. */
    private EventContrast ownEdge(Event event, Change change, EventWindows.Window window, EventContrast look) {
        boolean farther =
                change.windows().size() == 2 && window.equals(change.windows().get(1));
        if (!farther || look.isEmpty()) {
            return look;
        }
        return FartherEdge.takenFrom(tested, event.id())
                .map(on -> new EventContrast(trace, traceOf(on), window.arrivalSeconds(), window.endSeconds()))
                .orElse(look);
    }

    private static PlaceVisibility notShown(
            double position,
            double shown,
            EventWindows.Window window,
            EventContrast edge,
            EventContrast look,
            HiddenReason reason,
            Optional<Reflector> other) {
        return new PlaceVisibility(
                position,
                shown,
                window.arrivalSeconds(),
                edge.expectedVolts(),
                look.contrastVolts(),
                look.clutterVolts(),
                Visibility.HIDDEN,
                Optional.of(reason),
                other);
    }

    private Optional<Reflector> fullReflectionBefore(Event event) {
        return tested.events().stream()
                .filter(other -> other.kind() == EventKind.OPEN || other.kind() == EventKind.SHORT)
                .filter(other -> other.startMetres() < event.startMetres())
                .findFirst()
                .map(other -> Reflector.event(other.id()));
    }

    /** The event that makes most of what is there without this one; none where no single one makes half of it. */
    private Optional<Reflector> largestBeside(
            Event event, EventWindows.Window window, Map<Event, Change> changes, double clutterVolts) {
        String largest = null;
        double most = clutterVolts / 2;
        for (Map.Entry<Event, Change> other : changes.entrySet()) {
            EventContrast look =
                    new EventContrast(trace, other.getValue().without(), window.arrivalSeconds(), window.endSeconds());
            if (!other.getKey().id().equals(event.id()) && look.contrastVolts() > most) {
                most = look.contrastVolts();
                largest = other.getKey().id();
            }
        }
        return Optional.ofNullable(largest).map(Reflector::event);
    }

    private record Neighbour(Optional<Reflector> other, double apart) {}

    /** The nearest edge of another event that itself stands above the noise, in pulse widths. */
    private Neighbour nearestNeighbour(Event event, EventWindows.Window window, Map<Event, Change> changes) {
        Neighbour nearest = new Neighbour(Optional.empty(), Double.POSITIVE_INFINITY);
        for (Map.Entry<Event, Change> other : changes.entrySet()) {
            if (other.getKey().id().equals(event.id())) {
                continue;
            }
            for (EventWindows.Window edge : other.getValue().windows()) {
                EventContrast look =
                        new EventContrast(trace, other.getValue().without(), edge.arrivalSeconds(), edge.endSeconds());
                boolean shows = look.contrastVolts() >= VisibilityRules.MARGINAL_OVER_NOISE * trace.noiseVolts();
                double apart = Math.abs(edge.arrivalSeconds() - window.arrivalSeconds())
                        / settings.stimulus().resolutionSeconds();
                if (shows && apart < nearest.apart()) {
                    nearest = new Neighbour(
                            Optional.of(Reflector.event(other.getKey().id())), apart);
                }
            }
        }
        return withEndOfLine(window, nearest);
    }

    /** The end of the line counts as a neighbour where it reflects and can be met. */
    private Neighbour withEndOfLine(EventWindows.Window window, Neighbour nearest) {
        boolean met =
                tested.events().stream().noneMatch(e -> e.kind() == EventKind.OPEN || e.kind() == EventKind.SHORT);
        double arrival = 2 * profile.secondsTo(tested.lengthMetres());
        double apart = Math.abs(arrival - window.arrivalSeconds())
                / settings.stimulus().resolutionSeconds();
        if (!met || apart >= nearest.apart() || apart >= 1) {
            return nearest;
        }
        return new Neighbour(Optional.of(new Reflector.EndOfLine()), apart);
    }
}
