// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.LineEffect;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.paths.Reflector;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One fact of the cable that feedback states, with its numbers and the setting at which they hold. Sentences are made of
 * claims alone, and each kind of claim can be worked out again from exact traces.
 */
public sealed interface Claim {

    /**
     * Calls the visitor's method for this kind of claim.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(Visitor<T> visitor);

    /**
     * One method for each kind of claim, so that the build breaks wherever a new one must be treated.
     *
     * @param <T> what each method returns
     */
    interface Visitor<T> {
        T traceGoes(TraceGoes claim);

        T lineIs(LineIs claim);

        T waveIsBack(WaveIsBack claim);

        T traceReads(TraceReads claim);

        T notClear(NotClear claim);

        T beyondRange(BeyondRange claim);

        T otherWay(OtherWay claim);

        T looksAlike(LooksAlike claim);

        T stillOff(StillOff claim);

        T placeShows(PlaceShows claim);

        T atTop(AtTop claim);
    }

    /**
     * How the trace goes at one place of an event, against the trace of the cable without it.
     *
     * @param eventId the event
     * @param trueMetres the place, from the cable's near end [m]
     * @param shownMetres where the wave's front from there shows [m]
     * @param firstVolts top of the first lobe, with its sign [V]
     * @param secondVolts top of the lobe of the other sign that follows; absent where it is under a quarter of the first [V]
     * @param stays whether the outgoing wave is a step and the trace stays at the new level
     * @param settings what was set
     * @param end the end tested
     */
    record TraceGoes(
            String eventId,
            double trueMetres,
            double shownMetres,
            double firstVolts,
            OptionalDouble secondVolts,
            boolean stays,
            Settings settings,
            LineEnd end)
            implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.traceGoes(this);
        }
    }

    /**
     * What the event does to the line there.
     *
     * @param eventId the event
     * @param effect what it does
     * @param end the end from which distances are measured
     */
    record LineIs(String eventId, LineEffect effect, LineEnd end) implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.lineIs(this);
        }
    }

    /**
     * When the wave is back from a place.
     *
     * @param eventId the event
     * @param trueMetres the place, from the cable's near end [m]
     * @param seconds time there and back [s]
     * @param velocityFraction velocity that was set, over that of light
     * @param shownMetres what that is on the axis [m]
     * @param end the end tested
     */
    record WaveIsBack(
            String eventId, double trueMetres, double seconds, double velocityFraction, double shownMetres, LineEnd end)
            implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.waveIsBack(this);
        }
    }

    /**
     * What the trainee's trace reads where the first lobe of an event has its top.
     *
     * @param metres where on the axis [m]
     * @param seenVolts the trace with its noise [V]
     * @param withoutNoiseVolts the trace without noise [V]
     * @param settings what was set
     * @param end the end tested
     */
    record TraceReads(double metres, double seenVolts, double withoutNoiseVolts, Settings settings, LineEnd end)
            implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.traceReads(this);
        }
    }

    /**
     * Why an event was not clear.
     *
     * @param eventId the event
     * @param trueMetres the place of it, from the cable's near end [m]
     * @param reason why
     * @param contrastVolts largest change that it makes, without sign [V]
     * @param noiseVolts noise after averaging [V]
     * @param other what hides it; empty where there is none
     * @param settings what was set
     * @param end the end tested
     */
    record NotClear(
            String eventId,
            double trueMetres,
            HiddenReason reason,
            double contrastVolts,
            double noiseVolts,
            Optional<Reflector> other,
            Settings settings,
            LineEnd end)
            implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.notClear(this);
        }
    }

    /**
     * The event lies beyond the range that was set.
     *
     * @param eventId the event
     * @param settings what was set
     * @param end the end tested
     */
    record BeyondRange(String eventId, Settings settings, LineEnd end) implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.beyondRange(this);
        }
    }

    /**
     * The kind that was flagged first goes the other way, whatever its size and length.
     *
     * @param eventId the true event
     * @param kind the kind that was flagged
     * @param firstVolts first lobe of an event of that kind, with its sign [V]
     * @param settings what was set
     * @param end the end tested
     */
    record OtherWay(String eventId, EventKind kind, double firstVolts, Settings settings, LineEnd end)
            implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.otherWay(this);
        }
    }

    /**
     * The kind that was flagged can look the same at what was set.
     *
     * @param eventId the true event
     * @param comparison the event of that kind that comes nearest
     * @param settings what was set
     * @param end the end tested
     */
    record LooksAlike(String eventId, KindComparison comparison, Settings settings, LineEnd end) implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.looksAlike(this);
        }
    }

    /**
     * The kind that was flagged can't look the same, whatever its size, length and place.
     *
     * @param eventId the true event
     * @param comparison the event of that kind that comes nearest
     * @param settings what was set
     * @param end the end tested
     */
    record StillOff(String eventId, KindComparison comparison, Settings settings, LineEnd end) implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.stillOff(this);
        }
    }

    /**
     * Where a place is right, and how late its edge is on the trace.
     *
     * @param eventId the event
     * @param place the place
     * @param goesUp whether its edge goes up
     * @param byLoss whether an edge from there is late by at least half as much whatever the event is, by loss on the way
     * @param settings what was set
     * @param end the end tested
     */
    record PlaceShows(String eventId, PlaceMark place, boolean goesUp, boolean byLoss, Settings settings, LineEnd end)
            implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.placeShows(this);
        }
    }

    /**
     * The flag stands at a top of the echo, not at its edge.
     *
     * @param eventId the event
     * @param place the place
     * @param topMetres where the top is [m]
     * @param settings what was set
     * @param end the end tested
     */
    record AtTop(String eventId, PlaceMark place, double topMetres, Settings settings, LineEnd end) implements Claim {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.atTop(this);
        }
    }
}
