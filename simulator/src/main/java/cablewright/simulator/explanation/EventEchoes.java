// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.visibility.EventWindows;
import cablewright.simulator.explanation.visibility.FartherEdge;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Works out what single events do to the noise-free trace of a cable, by leaving each out in turn. */
public final class EventEchoes {

    private static final double SHOWS_FROM_SHARE = 0.1;
    private static final double LOBE_FLOOR_SHARE = 0.5;

    /** The front of a wave runs a little ahead of the velocity factor used to convert time to distance; before it nothing differs. */
    private static final double EARLY_SHARE = 0.03;

    private static final double CLEAR_PULSES = 2;

    private final Cable cable;
    private final Cable tested;
    private final LineEnd end;
    private final Settings settings;
    private final Measurement measurement;
    private final Trace trace;

    /**
     * Looks at a cable.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set on it
     * @param end the end that is tested
     * @param memory what is remembered of lines
     */
    public EventEchoes(Cable cable, Instrument instrument, Settings settings, LineEnd end, PropagationCache memory) {
        this.cable = cable;
        this.measurement = Measurement.at(end, cable, instrument, memory);
        this.tested = measurement.tested();
        this.end = end;
        this.settings = settings;
        this.trace = traceOf(tested);
    }

    private Trace traceOf(Cable other) {
        return measurement.of(other).withoutNoise(settings);
    }

    /**
     * Returns the trace of the whole cable.
     *
     * @return the trace without noise
     */
    public Trace trace() {
        return trace;
    }

    /**
     * Works out what an event does.
     *
     * @param eventId the event's name
     * @return its echo at each place of it, nearest to the tested end first; left out is a place beyond the record
     */
    public List<EventEcho> of(String eventId) {
        Optional<Event> event = tested.event(eventId);
        if (event.isEmpty()) {
            return List.of();
        }
        return differences(event.get(), traceOf(tested.withoutEvent(eventId)));
    }

    /**
     * Works out what an event would do that is not on the cable, with all the others there but one.
     *
     * @param other the event, with distances from the cable's near end
     * @param insteadOf name of the event that it replaces; none is replaced where there is no such event
     * @return the trace with it, and its echo at each place of it
     * @throws IllegalArgumentException if the event can't be on this cable
     */
    public Would would(Event other, String insteadOf) {
        Cable bare = tested.withoutEvent(insteadOf);
        Event seen = end == LineEnd.NEAR ? other : other.mirrored(cable.lengthMetres());
        List<Event> events = new ArrayList<>(bare.events());
        events.add(seen);
        Cable changed = bare.withEvents(events);
        Trace with = traceOf(changed);
        return new Would(with, echoes(seen, changed, with, traceOf(bare)));
    }

    /**
     * What another event would show.
     *
     * @param trace the trace without noise
     * @param echoes its echo at each place
     */
    public record Would(Trace trace, List<EventEcho> echoes) {
        /** Copies the list. */
        public Would {
            echoes = List.copyOf(echoes);
        }
    }

    private List<EventEcho> differences(Event event, Trace without) {
        return echoes(event, tested, trace, without);
    }

    private List<EventEcho> echoes(Event event, Cable on, Trace with, Trace without) {
        List<EventEcho> echoes = new ArrayList<>();
        CableProfile profile = CableProfile.of(on);
        for (EventWindows.Window window : new EventWindows(profile, measurement.instrument(), settings).of(event)) {
            double early = echoes.isEmpty() ? EARLY_SHARE * window.arrivalSeconds() : 0;
            double begins = window.arrivalSeconds()
                    - Math.max(early, settings.stimulus().shortestEdgeSeconds());
            int from = (int) Math.max(0, Math.floor(begins / with.sampleSeconds()));
            double next = nextSeconds(event, on, profile, window.arrivalSeconds());
            int last = (int) Math.min(with.count() - 1.0, Math.ceil(next / with.sampleSeconds()));
            int to = (int) Math.min(last, Math.ceil(window.endSeconds() / with.sampleSeconds()));
            Trace base = echoes.isEmpty()
                    ? without
                    : FartherEdge.takenFrom(on, event.id()).map(this::traceOf).orElse(without);
            Difference difference = new Difference(with, base, from, to).toItsTop(last);
            if (difference.from() < difference.to()) {
                echoes.add(echo(event, window, difference));
            }
        }
        return echoes;
    }

    /** When the next thing is back that lies clear of an echo: what an event does to that is no echo of its own. */
    private double nextSeconds(Event event, Cable on, CableProfile profile, double arrivalSeconds) {
        double clear = arrivalSeconds
                + CLEAR_PULSES * settings.stimulus().settledSeconds()
                + 1 / measurement.instrument().bandwidthHertz();
        double beyond = Math.max(clear, 2 * profile.secondsTo(event.endMetres()));
        DoubleStream others = on.events().stream()
                .filter(other -> !other.id().equals(event.id()))
                .mapToDouble(other -> 2 * profile.secondsTo(other.startMetres()));
        return DoubleStream.concat(others, DoubleStream.of(2 * profile.secondsTo(on.lengthMetres())))
                .filter(seconds -> seconds > beyond)
                .map(seconds -> seconds
                        - Math.max(EARLY_SHARE * seconds, settings.stimulus().shortestEdgeSeconds() / 2))
                .map(seconds -> Math.max(clear, seconds))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private EventEcho echo(Event event, EventWindows.Window window, Difference difference) {
        int first = difference.firstTop();
        int second = difference.topOfOtherSign(first);
        double metres = end == LineEnd.NEAR ? window.metres() : cable.lengthMetres() - window.metres();
        return new EventEcho(
                event.id(),
                metres,
                settings.metresThereAndBack(window.arrivalSeconds()),
                window.arrivalSeconds(),
                halfWaySeconds(
                        difference,
                        difference.from - 2 * samples(settings.stimulus().settledSeconds()),
                        first),
                halfWaySeconds(difference, difference.from, first),
                difference.volts(first),
                difference.metres(first),
                second < 0 ? 0 : difference.volts(second),
                difference.metres(second < 0 ? first : second),
                difference.volts(difference.to),
                difference.metres(difference.firstOver(SHOWS_FROM_SHARE)),
                difference.metres(difference.lastOver(SHOWS_FROM_SHARE)));
    }

    private int samples(double seconds) {
        return (int) Math.ceil(seconds / trace.sampleSeconds());
    }

    /** On the whole trace, or on what the event adds to it where the whole trace has no edge of its own there. */
    private double halfWaySeconds(Difference difference, int from, int top) {
        EdgeReader reader = new EdgeReader(settings.stimulus().settledSeconds());
        double sign = Math.signum(difference.volts(top));
        // No edge that passed before the wave was back is one of this event's.
        double back = difference.with.seconds(difference.from);
        OptionalDouble read = reader.halfWaySeconds(difference.with, from, top, sign);
        return read.isPresent() && read.getAsDouble() >= back
                ? read.getAsDouble()
                : reader.halfWaySeconds(difference.asTrace(), from, top, sign).orElse(back);
    }

    /** The difference of two traces of the same settings between two samples. */
    private record Difference(Trace with, Trace without, int from, int to) {

        double volts(int index) {
            return with.volts(index) - without.volts(index);
        }

        double metres(int index) {
            return with.metres(index);
        }

        Trace asTrace() {
            double[] volts = new double[with.count()];
            for (int i = 0; i < volts.length; i++) {
                volts[i] = volts(i);
            }
            Waveform waveform = new Waveform(with.sampleSeconds(), volts);
            return new Trace(
                    with.settings(),
                    waveform,
                    with.zeroSeconds(),
                    with.noiseVolts(),
                    with.clipVolts(),
                    with.stepVolts());
        }

        /** What still grows at the end of the window is followed to its top, but not into what comes next. */
        Difference toItsTop(int end) {
            int last = to;
            while (last > from && last < end && Math.abs(volts(last + 1)) > Math.abs(volts(last))) {
                last++;
            }
            return new Difference(with, without, from, last);
        }

        private double largest() {
            double most = 0;
            for (int i = from; i <= to; i++) {
                most = Math.max(most, Math.abs(volts(i)));
            }
            return most;
        }

        int firstOver(double share) {
            double floor = share * largest();
            int i = from;
            while (i < to && Math.abs(volts(i)) < floor) {
                i++;
            }
            return i;
        }

        int lastOver(double share) {
            double floor = share * largest();
            int i = to;
            while (i > from && Math.abs(volts(i)) < floor) {
                i--;
            }
            return i;
        }

        /** Top of the first run of one sign that rises to half of the largest: as the eye takes it. */
        int firstTop() {
            int top = firstOver(LOBE_FLOOR_SHARE);
            for (int i = top; i <= to && volts(i) * volts(top) > 0; i++) {
                top = Math.abs(volts(i)) > Math.abs(volts(top)) ? i : top;
            }
            return top;
        }

        int topOfOtherSign(int first) {
            int top = -1;
            for (int i = first + 1; i <= to; i++) {
                boolean other = volts(i) * volts(first) < 0;
                if (other && (top < 0 || Math.abs(volts(i)) > Math.abs(volts(top)))) {
                    top = i;
                }
            }
            return top;
        }
    }
}
