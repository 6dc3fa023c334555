// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.wave;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.CableTrackViewModel;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import cablewright.ui.drawing.track.WavePlay;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/**
 * The wave along a cable. It is computed when it is first asked for and kept as long as cable, end and settings stay; from
 * then on play, pause, scrub and step only choose the frame. The trace is drawn as far as the port has received by then.
 */
public final class WaveViewModel {

    private static final double SECONDS_OF_A_PLAY = 7;

    private final TraceTrackViewModel trace;
    private final CableTrackViewModel cable;
    private final Supplier<Optional<Subject>> subject;
    private final Consumer<Exception> problems;
    private final LatestRun runs;
    private final ReadOnlyBooleanWrapper preparing = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper frames = new ReadOnlyIntegerWrapper();
    private final ReadOnlyObjectWrapper<OptionalDouble> seconds = new ReadOnlyObjectWrapper<>(OptionalDouble.empty());
    private final BooleanProperty halfSpeed = new SimpleBooleanProperty();
    private Optional<Subject> computed = Optional.empty();
    private double position;

    /**
     * What the wave runs along.
     *
     * @param cable the cable, with distances from its near end
     * @param end the end that is tested
     * @param instrument the instrument
     * @param settings what is set
     */
    public record Subject(Cable cable, LineEnd end, Instrument instrument, Settings settings) {}

    /**
     * Makes a wave that is not asked for yet.
     *
     * @param trace the trace under which it is shown
     * @param cable the cable along which it runs
     * @param subject gives the cable; empty while it may not be seen
     * @param threads where to compute
     * @param problems receives what went wrong
     */
    public WaveViewModel(
            TraceTrackViewModel trace,
            CableTrackViewModel cable,
            Supplier<Optional<Subject>> subject,
            Threads threads,
            Consumer<Exception> problems) {
        this.trace = trace;
        this.cable = cable;
        this.subject = subject;
        this.problems = problems;
        this.runs = new LatestRun(threads);
    }

    /** Plays on from where the wave is, from the start once it has ended; or pauses. */
    public void toggle() {
        if (playing.get()) {
            playing.set(false);
        } else {
            whenComputed(() -> {
                if (frame() >= frames.get() - 1) {
                    show(0);
                }
                playing.set(true);
            });
        }
    }

    /**
     * Pauses, and goes some frames on or back.
     *
     * @param count how many; below 0 back
     */
    public void step(int count) {
        whenComputed(() -> {
            playing.set(false);
            show(Math.max(0, frame()) + count);
        });
    }

    /**
     * Pauses at a frame.
     *
     * @param frame which, from 0; kept within the wave
     */
    public void scrubTo(int frame) {
        whenComputed(() -> {
            playing.set(false);
            show(frame);
        });
    }

    /**
     * Lets time pass while the wave plays.
     *
     * @param elapsedSeconds time since the last call [s]
     */
    void advance(double elapsedSeconds) {
        if (!playing.get()) {
            return;
        }
        double perSecond = frames.get() / SECONDS_OF_A_PLAY * (halfSpeed.get() ? 0.5 : 1);
        double next = position + elapsedSeconds * perSecond;
        show((int) next);
        position = next;
        if (next >= frames.get() - 1) {
            playing.set(false);
        }
    }

    private void whenComputed(Runnable then) {
        Optional<Subject> wanted = subject.get();
        if (wanted.isEmpty()) {
            return;
        }
        if (wanted.equals(computed) && cable.waveProperty().get().isPresent()) {
            then.run();
            return;
        }
        preparing.set(true);
        Subject of = wanted.get();
        runs.ask(
                () -> WavePlay.of(of.cable(), of.end(), of.instrument().sourceOhms(), of.settings()),
                play -> {
                    preparing.set(false);
                    computed = wanted;
                    cable.clipVoltsProperty()
                            .set(of.instrument().clipVolts(of.settings().gainDecibels()));
                    cable.waveProperty().set(Optional.of(play));
                    frames.set(play.frames());
                    show(0);
                    then.run();
                },
                problem -> {
                    preparing.set(false);
                    problems.accept(problem);
                });
    }

    private int frame() {
        return cable.frameProperty().get();
    }

    private void show(int wanted) {
        int frame = Math.max(0, Math.min(frames.get() - 1, wanted));
        position = frame;
        cable.frameProperty().set(frame);
        WavePlay play = cable.waveProperty().get().orElseThrow();
        Trace shown = trace.traceProperty().get();
        boolean ended = frame == frames.get() - 1;
        seconds.set(ended ? OptionalDouble.empty() : OptionalDouble.of(play.seconds(frame)));
        double received = play.seconds(frame) - shown.zeroSeconds();
        trace.writtenToProperty()
                .set(
                        ended
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(shown.settings().metresThereAndBack(received)));
    }

    /** Takes the wave away: cable, end or settings are others now. */
    public void forget() {
        runs.forget();
        computed = Optional.empty();
        preparing.set(false);
        playing.set(false);
        frames.set(0);
        seconds.set(OptionalDouble.empty());
        cable.frameProperty().set(-1);
        cable.waveProperty().set(Optional.empty());
        trace.writtenToProperty().set(OptionalDouble.empty());
    }

    /**
     * Returns whether the wave is being computed.
     *
     * @return true until its first frame
     */
    public ReadOnlyBooleanProperty preparingProperty() {
        return preparing.getReadOnlyProperty();
    }

    /**
     * Returns whether the wave moves.
     *
     * @return false while it stands still or there is none
     */
    public ReadOnlyBooleanProperty playingProperty() {
        return playing.getReadOnlyProperty();
    }

    /**
     * Returns how many frames there are.
     *
     * @return number of frames; 0 until it is computed
     */
    public ReadOnlyIntegerProperty framesProperty() {
        return frames.getReadOnlyProperty();
    }

    /**
     * Returns which frame is shown.
     *
     * @return the frame, from 0; below 0 while there is none
     */
    public ReadOnlyIntegerProperty frameProperty() {
        return cable.frameProperty();
    }

    /**
     * Returns the time of the frame that is shown.
     *
     * @return time since the wave began to leave [s]; empty while there is none and once it has ended
     */
    public ReadOnlyObjectProperty<OptionalDouble> secondsProperty() {
        return seconds.getReadOnlyProperty();
    }

    public BooleanProperty halfSpeedProperty() {
        return halfSpeed;
    }
}
