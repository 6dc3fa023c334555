// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much of the outgoing wave comes back from a place where all of it is reflected: what an open there would show. It
 * holds all that the wave loses on its way there and back, in the cable, in what it passes and at the port, for the pulse
 * that is set.
 *
 * <p>With the traces r₊ of the line cut open at the place and r₋ of the same line shorted there, it is the largest
 * |r₊ − r₋|/2 in the window of the pulse after its arrival: what comes back from before the place is in both and cancels.
 * The event's own height over it is the reflection coefficient that a reader would tell for the event.
 */
public final class FullEcho {

    private static final String PROBE = "probe-of-full-echo";

    private final Instrument instrument;
    private final Settings settings;
    private final PropagationCache memory = new PropagationCache();

    /**
     * Makes it for an instrument and what is set on it.
     *
     * @param instrument the instrument
     * @param settings the settings
     */
    public FullEcho(Instrument instrument, Settings settings) {
        this.instrument = instrument;
        this.settings = settings;
    }

    /**
     * Looks at a place.
     *
     * @param cable the cable as it lies
     * @param end the end tested
     * @param metres the place, from the near end [m]
     * @return height for an outgoing wave of 1 V [V]; empty where a full open or short lies before the place, or where the
     *     place is beyond the range
     */
    public OptionalDouble volts(Cable cable, LineEnd end, double metres) {
        Cable tested = cable.seenFrom(end);
        double place = end == LineEnd.NEAR ? metres : Math.max(0, cable.lengthMetres() - metres);
        List<Event> before = new ArrayList<>();
        for (Event event : tested.events()) {
            if (event.startMetres() < place) {
                boolean full = event.kind() == EventKind.OPEN || event.kind() == EventKind.SHORT;
                if (full) {
                    return OptionalDouble.empty();
                }
                before.add(event);
            }
        }
        Trace open = trace(tested, before, new BrokenConductor(PROBE, place, OptionalDouble.empty()));
        Trace closed = trace(tested, before, new TouchingConductors(PROBE, place, OptionalDouble.empty()));
        double arrival = 2 * CableProfile.of(tested.withEvents(before)).secondsTo(place);
        return largest(open, closed, arrival);
    }

    /**
     * Returns by how much loss on the way makes every edge from a place late.
     *
     * @param cable the cable as it lies
     * @param end the end tested
     * @param metres the place, from the near end [m]
     * @return time from the wave's front to half-way up the edge that an open there would show [s]; empty where a full open
     *     or short lies before the place, or where the place is beyond the range
     */
    public OptionalDouble lateSeconds(Cable cable, LineEnd end, double metres) {
        Cable tested = cable.seenFrom(end);
        double place = end == LineEnd.NEAR ? metres : Math.max(0, cable.lengthMetres() - metres);
        List<Event> before = new ArrayList<>();
        for (Event event : tested.events()) {
            boolean full = event.kind() == EventKind.OPEN || event.kind() == EventKind.SHORT;
            if (full && event.startMetres() < place) {
                return OptionalDouble.empty();
            }
            if (event.endMetres() < place) {
                before.add(event);
            }
        }
        Trace open = trace(tested, before, new BrokenConductor(PROBE, place, OptionalDouble.empty()));
        double arrival = 2 * CableProfile.of(tested.withEvents(before)).secondsTo(place);
        int from = open.indexNear(settings.metresThereAndBack(arrival));
        double pulse = settings.stimulus().settledSeconds();
        int top = from;
        for (int i = from; i < open.count() && open.seconds(i) <= arrival + 2 * pulse; i++) {
            top = open.volts(i) > open.volts(top) ? i : top;
        }
        OptionalDouble read = new EdgeReader(pulse).halfWaySeconds(open, from, top, 1);
        return read.isPresent() ? OptionalDouble.of(read.getAsDouble() - arrival) : read;
    }

    private Trace trace(Cable tested, List<Event> before, Event probe) {
        List<Event> all = new ArrayList<>(before);
        all.add(probe);
        return Measurement.at(LineEnd.NEAR, tested.withEvents(all), instrument, memory)
                .withoutNoise(settings);
    }

    private OptionalDouble largest(Trace open, Trace closed, double arrival) {
        double settled = settings.stimulus().settledSeconds() + 1 / instrument.bandwidthHertz();
        int from = (int) Math.max(0, Math.floor(arrival / open.sampleSeconds()));
        int to = (int) Math.min(open.count() - 1.0, Math.ceil((arrival + settled) / open.sampleSeconds()));
        double most = 0;
        for (int i = from; i <= to; i++) {
            most = Math.max(most, Math.abs(open.volts(i) - closed.volts(i)) / 2);
        }
        return from > to ? OptionalDouble.empty() : OptionalDouble.of(most);
    }
}
