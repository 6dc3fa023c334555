// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.reading.Cursor;
import cablewright.simulator.reading.CursorPair;
import cablewright.simulator.reading.EventReturnLoss;
import cablewright.simulator.reading.Measured;
import cablewright.simulator.reading.TraceDifference;
import cablewright.simulator.reading.VelocityFinding;
import cablewright.simulator.wave.Waveform;
import cablewright.ui.words.Quantities;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** What helps to read a trace: a second cursor, and another trace that was kept or is seen from the other end. */
public final class ReadingAids {

    private final TraceTrackViewModel track;
    private final Texts texts;
    private final ObjectProperty<OptionalDouble> second = new SimpleObjectProperty<>(OptionalDouble.empty());
    private final ReadOnlyObjectWrapper<Optional<Other>> other = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Another trace on the same axis.
     *
     * @param trace the trace, mirrored already where it is from the other end
     * @param mirrored whether it is from the other end
     */
    public record Other(Trace trace, boolean mirrored) {}

    ReadingAids(TraceTrackViewModel track, Texts texts) {
        this.track = track;
        this.texts = texts;
    }

    /**
     * Returns where the second cursor stands.
     *
     * @return distance at the set velocity [m]; empty while there is none
     */
    public ObjectProperty<OptionalDouble> secondMetresProperty() {
        return second;
    }

    /** Sets the second cursor where the cursor is, or takes it away where it stands there already. */
    public void toggleSecond() {
        double cursor = track.axis().cursorMetresProperty().get();
        boolean here =
                second.get().isPresent() && Math.abs(second.get().getAsDouble() - cursor) <= track.sampleMetres() / 2;
        second.set(here ? OptionalDouble.empty() : OptionalDouble.of(cursor));
    }

    /**
     * Returns the other trace.
     *
     * @return the trace; empty while there is none
     */
    public ReadOnlyObjectProperty<Optional<Other>> otherProperty() {
        return other.getReadOnlyProperty();
    }

    /** Keeps the trace as it is now, so that the next can be held against it, or lets a kept one go. */
    public void toggleKept() {
        Trace now = track.traceProperty().get();
        if (other.get().isPresent()) {
            forget();
        } else if (now != null) {
            other.set(Optional.of(new Other(now, false)));
        }
    }

    /** Lets the other trace go. */
    public void forget() {
        other.set(Optional.empty());
    }

    /**
     * Lays a trace from the other end over this one, so that the same place of the line is at the same distance.
     *
     * @param seen the trace from the other end
     * @param lengthMetres length of the line at the set velocity [m]
     */
    public void showOtherEnd(Trace seen, double lengthMetres) {
        double[] volts = new double[seen.count()];
        for (int i = 0; i < volts.length; i++) {
            double metres = lengthMetres - seen.metres(i);
            volts[i] = metres < seen.metres(0) || metres > seen.metres(seen.count() - 1) ? 0 : seen.voltsAt(metres);
        }
        Trace mirrored = new Trace(
                seen.settings(),
                new Waveform(seen.sampleSeconds(), volts),
                seen.zeroSeconds(),
                seen.noiseVolts(),
                seen.clipVolts(),
                seen.stepVolts());
        other.set(Optional.of(new Other(mirrored, true)));
    }

    /**
     * Returns where the other end is taken to be when its trace is laid over.
     *
     * @param drawnMetres length that the drawings give [m], where they do
     * @return the second cursor's place, or else the drawn length [m]; empty where neither is there
     */
    public OptionalDouble mirrorMetres(OptionalDouble drawnMetres) {
        return second.get().isPresent() ? second.get() : drawnMetres;
    }

    /**
     * Says what lies between the two cursors.
     *
     * @return a sentence; empty while there is no second cursor or no trace
     */
    public Optional<String> between() {
        Trace trace = track.traceProperty().get();
        if (trace == null || second.get().isEmpty()) {
            return Optional.empty();
        }
        Quantities quantities = new Quantities(track.axis().unitProperty().get());
        CursorPair pair = pair(trace);
        int digits = track.sampleMetres() < 0.02 ? 2 : 1;
        EventReturnLoss loss = pair.returnLoss(0);
        String height = loss.isAboveNoise()
                ? texts.say("aids.returnLoss", Quantities.number(loss.apparentDecibels(), 1))
                : texts.say("aids.noReturnLoss");
        return Optional.of(texts.say(
                "aids.between",
                quantities.length(Math.abs(pair.metresBetween()), digits),
                quantities.time(Math.abs(pair.secondsBetween())),
                quantities.percent(pair.voltsBetween()),
                height));
    }

    private CursorPair pair(Trace trace) {
        double cursor = track.axis().cursorMetresProperty().get();
        double other = second.get().getAsDouble();
        return new CursorPair(trace, Math.min(cursor, other), Math.max(cursor, other));
    }

    /**
     * Says by how much the trace differs from the kept one at the cursor.
     *
     * @return a sentence; empty while no trace is kept
     */
    public Optional<String> difference() {
        Trace trace = track.traceProperty().get();
        if (trace == null || other.get().isEmpty()) {
            return Optional.empty();
        }
        Quantities quantities = new Quantities(track.axis().unitProperty().get());
        double cursor = track.axis().cursorMetresProperty().get();
        double here = Cursor.on(trace, cursor).volts();
        double there = Cursor.on(other.get().get().trace(), cursor).volts();
        return Optional.of(
                other.get().get().mirrored()
                        ? texts.say("aids.otherEnd", quantities.percent(there))
                        : texts.say("aids.difference", quantities.percent(here - there)));
    }

    /**
     * Computes the difference of the trace from the kept one.
     *
     * @return the difference as a trace; empty where none is kept, it is from the other end, or the pulses differ
     */
    public Optional<Trace> differenceTrace() {
        Trace trace = track.traceProperty().get();
        Trace kept =
                other.get().filter(one -> !one.mirrored()).map(Other::trace).orElse(null);
        if (trace == null
                || kept == null
                || kept.equals(trace)
                || !kept.settings().stimulus().equals(trace.settings().stimulus())) {
            return Optional.empty();
        }
        TraceDifference difference = TraceDifference.of(trace, kept);
        return difference.count() < 2
                ? Optional.empty()
                : Optional.of(new Trace(
                        kept.settings(),
                        new Waveform(kept.sampleSeconds(), difference.copyOfVolts()),
                        kept.zeroSeconds(),
                        difference.noiseVolts(),
                        Double.POSITIVE_INFINITY,
                        0));
    }

    /**
     * Finds the velocity from the length between the two cursors, read to half a sample.
     *
     * @param metres known length between them [m], above 0
     * @return the velocity; empty while there is no second cursor, or where both stand at one place
     */
    public Optional<VelocityFinding> velocity(double metres) {
        Trace trace = track.traceProperty().get();
        if (trace == null || second.get().isEmpty() || !(metres > 0)) {
            return Optional.empty();
        }
        Settings settings = trace.settings();
        double seconds = settings.secondsThereAndBack(Math.abs(pair(trace).metresBetween()));
        return seconds <= 0
                ? Optional.empty()
                : Optional.of(VelocityFinding.fromKnownLength(
                        Measured.exactly(metres), new Measured(seconds, trace.sampleSeconds() / 2)));
    }
}
