// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.lattice;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.lattice.Lattice;
import cablewright.ui.drawing.lattice.LatticeMaker;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The lattice diagram of the trace that is shown: worked out when it is opened and anew when another trace comes, with the
 * echoes that are pointed at. The cursor points at the extremum of the trace where it stands; what is pointed at on the
 * diagram is marked on the trace.
 */
public final class LatticeViewModel {

    private static final double LEAST_SHARE_OF_RANGE = 0.006;

    private final TraceTrackViewModel trace;
    private final Supplier<Optional<Subject>> subject;
    private final Words words;
    private final Consumer<Exception> problems;
    private final LatestRun runs;
    private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<Lattice>> lattice = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Set<Integer>> chosen = new ReadOnlyObjectWrapper<>(Set.of());
    private final ReadOnlyObjectWrapper<String> description = new ReadOnlyObjectWrapper<>("");
    private boolean pointing;

    /**
     * What the trace is of.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param end the end that is tested
     */
    public record Subject(Cable cable, Instrument instrument, LineEnd end) {}

    /**
     * Makes the model of a diagram that is shut.
     *
     * @param trace the trace's track
     * @param subject gives what the trace is of; empty while that may not be seen
     * @param words the words
     * @param threads where to work
     * @param problems receives what went wrong
     */
    public LatticeViewModel(
            TraceTrackViewModel trace,
            Supplier<Optional<Subject>> subject,
            Words words,
            Threads threads,
            Consumer<Exception> problems) {
        this.trace = trace;
        this.subject = subject;
        this.words = words;
        this.problems = problems;
        this.runs = new LatestRun(threads);
        trace.traceProperty().addListener((o, before, now) -> workOut());
        trace.axis().unitProperty().addListener((o, before, now) -> workOut());
        trace.axis().cursorMetresProperty().addListener((o, before, now) -> cursorMoved(now.doubleValue()));
    }

    /**
     * Returns whether the diagram is open.
     *
     * @return true from when it is asked for until it is shut
     */
    public ReadOnlyBooleanProperty openProperty() {
        return open.getReadOnlyProperty();
    }

    /**
     * Returns whether the diagram is being worked out.
     *
     * @return true until it is there
     */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /**
     * Returns the diagram.
     *
     * @return the diagram; empty until it is worked out
     */
    public ReadOnlyObjectProperty<Optional<Lattice>> latticeProperty() {
        return lattice.getReadOnlyProperty();
    }

    /**
     * Returns which echoes are pointed at.
     *
     * @return their places in the diagram's list; none while nothing is
     */
    public ReadOnlyObjectProperty<Set<Integer>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /**
     * Returns what is said of what is pointed at.
     *
     * @return a sentence; empty while nothing is
     */
    public ReadOnlyObjectProperty<String> toldProperty() {
        return description.getReadOnlyProperty();
    }

    /** Opens the diagram, or shuts it. */
    public void toggle() {
        if (open.get()) {
            shut();
        } else if (subject.get().isPresent()) {
            open.set(true);
            workOut();
        }
    }

    /** Shuts the diagram. */
    public void shut() {
        open.set(false);
        working.set(false);
        runs.forget();
        lattice.set(Optional.empty());
        pointAt(Set.of());
    }

    private void workOut() {
        Trace shown = trace.traceProperty().get();
        Optional<Subject> of = subject.get();
        if (!open.get() || shown == null) {
            return;
        }
        if (of.isEmpty()) {
            shut();
            return;
        }
        Words inUnit = words.with(trace.axis().unitProperty().get());
        working.set(true);
        runs.ask(
                () -> latticeOf(of.get(), shown, inUnit),
                made -> {
                    working.set(false);
                    lattice.set(Optional.of(made));
                    pointAt(Set.of());
                    cursorMoved(trace.axis().cursorMetresProperty().get());
                },
                problem -> {
                    shut();
                    problems.accept(problem);
                });
    }

    private static Lattice latticeOf(Subject of, Trace shown, Words words) {
        Attribution attribution = Attribution.ofTrace(of.cable(), of.instrument(), shown, of.end(), () -> false);
        double least = VisibilityRules.MARGINAL_OVER_NOISE * shown.noiseVolts();
        return new LatticeMaker(of.cable(), of.end(), words).of(attribution, least);
    }

    private double nearMetres() {
        Trace shown = trace.traceProperty().get();
        return Math.max(
                shown.settings().halfPulseMetres(),
                LEAST_SHARE_OF_RANGE * shown.settings().rangeMetres());
    }

    private void cursorMoved(double metres) {
        if (pointing || lattice.get().isEmpty()) {
            return;
        }
        Optional<Lattice.Bump> bump = lattice.get().get().bumpNear(metres, nearMetres());
        chosen.set(bump.map(Lattice.Bump::echoes).orElse(Set.of()));
        description.set(bump.map(Lattice.Bump::description).orElse(""));
        trace.lookHereProperty().set(List.of());
    }

    /**
     * Points at echoes of the diagram; the trace is marked where it shows them, and the cursor goes to the highest.
     *
     * @param echoes their places in the diagram's list; none to point at nothing
     */
    public void pointAt(Set<Integer> echoes) {
        if (lattice.get().isEmpty() || echoes.isEmpty()) {
            chosen.set(Set.of());
            description.set("");
            trace.lookHereProperty().set(List.of());
            return;
        }
        List<Lattice.Echo> all = lattice.get().get().echoes();
        int best = highest(echoes, all);
        chosen.set(echoes.size() > 1 ? Set.of(best) : Set.copyOf(echoes));
        Lattice.Echo echo = all.get(best);
        description.set(words.texts().say("lattice.echo", echo.shown(), echo.height(), echo.way()));
        double shown = echo.path().shownMetres();
        trace.lookHereProperty().set(List.of(new Extent(shown, shown + 2 * nearMetres())));
        pointing = true;
        trace.axis().moveCursorTo(shown);
        pointing = false;
    }

    private static int highest(Set<Integer> echoes, List<Lattice.Echo> all) {
        int best = -1;
        for (int echo : echoes) {
            double size = Math.abs(all.get(echo).path().peakVolts());
            if (best < 0 || size > Math.abs(all.get(best).path().peakVolts())) {
                best = echo;
            }
        }
        return best;
    }

    /**
     * Points at the next echo in the order of arrival.
     *
     * @param direction 1 for the next, −1 for the one before
     */
    public void step(int direction) {
        int count = lattice.get().map(it -> it.echoes().size()).orElse(0);
        if (count == 0) {
            return;
        }
        int from = chosen.get().stream().min(Integer::compare).orElse(direction > 0 ? -1 : 0);
        pointAt(Set.of(Math.floorMod(from + direction, count)));
    }
}
