// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.feedback.Feedback;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.feedback.LookHere;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.MarkSheet;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.lattice.LatticeViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.CableTrackViewModel;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import cablewright.ui.desktop.wave.WaveViewModel;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What commit opens: the cable under its trace, the wave on its way, and what a wrong claim would have shown. */
public final class RevealViewModel {

    private static final double LEAST_LOOK_METRES = 0.01;

    private final Exercise exercise;
    private final PracticeInstrument bench;
    private final SettingsViewModel settings;
    private final TraceTrackViewModel traceTrack;
    private final CableTrackViewModel cableTrack;
    private final Consumer<Exception> problems;
    private final LatestRun sights;
    private final LatestRun comparisons;
    private final ReadOnlyObjectWrapper<Optional<Claim>> compared = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<FindingReasons>> reasons = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<Finding>> pointedAt = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Claim>> nothingToShow = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final LatestRun reasoning;
    private final LatticeViewModel lattice;
    private final WaveViewModel wave;
    private boolean open;

    RevealViewModel(
            Exercise exercise,
            PracticeInstrument bench,
            SettingsViewModel settings,
            TraceTrackViewModel traceTrack,
            Threads threads,
            Locale locale,
            Consumer<Exception> problems) {
        this.exercise = exercise;
        this.bench = bench;
        this.settings = settings;
        this.traceTrack = traceTrack;
        this.problems = problems;
        this.cableTrack = new CableTrackViewModel(exercise.cable());
        this.sights = new LatestRun(threads);
        this.comparisons = new LatestRun(threads);
        this.reasoning = new LatestRun(threads);
        this.lattice = new LatticeViewModel(
                traceTrack,
                this::subject,
                Words.in(traceTrack.axis().unitProperty().get(), locale),
                threads,
                problems);
        this.wave = new WaveViewModel(traceTrack, cableTrack, this::waveSubject, threads, problems);
    }

    private Optional<WaveViewModel.Subject> waveSubject() {
        return open
                ? Optional.of(new WaveViewModel.Subject(
                        exercise.cable(), settings.endProperty().get(), exercise.instrument(), settings.settings()))
                : Optional.empty();
    }

    /** Opens the cable, and works out the reasons behind the marks. Before this nothing of it is shown. */
    void open(MarkSheet sheet) {
        open = true;
        lookAgain();
        LineEnd end = settings.endProperty().get();
        reasoning.ask(() -> Feedback.of(exercise, sheet, end, () -> false), reasons::set, problems);
    }

    /**
     * Returns the reasons behind the marks.
     *
     * @return one for each finding; none until they are worked out
     */
    public ReadOnlyObjectProperty<List<FindingReasons>> reasonsProperty() {
        return reasons.getReadOnlyProperty();
    }

    /**
     * Points out on the trace what a finding is about, with what was set when the flags were handed in, or takes the marks
     * away again.
     *
     * @param one the finding with its reasons
     * @param handedIn what was set then
     */
    public void pointOut(FindingReasons one, Settings handedIn) {
        if (pointedAt.get().filter(one.finding()::equals).isPresent()) {
            pointAtNothing();
            return;
        }
        settings.endProperty().set(one.lookHere().get(0).end());
        settings.use(handedIn.withVelocityFraction(one.velocityFraction()));
        traceTrack
                .lookHereProperty()
                .set(one.lookHere().stream()
                        .map(look -> new Extent(look.fromMetres(), look.toMetres() + LEAST_LOOK_METRES))
                        .toList());
        pointedAt.set(Optional.of(one.finding()));
        LookHere first = one.lookHere().get(0);
        traceTrack.axis().moveCursorTo((first.fromMetres() + first.toMetres()) / 2);
    }

    private void pointAtNothing() {
        pointedAt.set(Optional.empty());
        traceTrack.lookHereProperty().set(List.of());
    }

    /**
     * Returns what is pointed out.
     *
     * @return the finding; empty while nothing is
     */
    public ReadOnlyObjectProperty<Optional<Finding>> pointedAtProperty() {
        return pointedAt.getReadOnlyProperty();
    }

    /** What the flagged kind would have shown in the size that comes nearest, where it is known for these settings. */
    private Optional<Trace> fitted(Claim claim, Settings wanted) {
        return reasons.get().stream()
                .filter(one -> Claim.in(one.finding()).filter(claim::equals).isPresent())
                .flatMap(one -> one.comparison().stream())
                .map(one -> one.nearest().trace())
                .filter(trace -> trace.settings().equals(wanted))
                .findFirst();
    }

    /** Takes away what belonged to other settings, and looks at the cable anew if it is open. */
    void settingsChanged() {
        wave.forget();
        comparisons.forget();
        pointAtNothing();
        compared.set(Optional.empty());
        traceTrack.comparisonProperty().set(null);
        if (open) {
            lookAgain();
        }
    }

    private Optional<LatticeViewModel.Subject> subject() {
        LineEnd end = settings.endProperty().get();
        return open
                ? Optional.of(new LatticeViewModel.Subject(exercise.cable(), exercise.instrument(), end))
                : Optional.empty();
    }

    public LatticeViewModel lattice() {
        return lattice;
    }

    public CableTrackViewModel cableTrack() {
        return cableTrack;
    }

    /**
     * Lays over what a flagged thing would have shown where something else, or nothing, is; or takes it away again.
     *
     * @param claim the claim
     */
    public void compare(Claim claim) {
        if (compared.get().filter(claim::equals).isPresent()) {
            compared.set(Optional.empty());
            traceTrack.comparisonProperty().set(null);
            return;
        }
        if (settings.endProperty().get() != claim.flag().end()) {
            settings.endProperty().set(claim.flag().end());
        }
        Settings wanted = settings.settings();
        Optional<Trace> fit = fitted(claim, wanted);
        comparisons.ask(
                () -> fit.isPresent() ? fit : bench.claimed(claim, wanted),
                trace -> {
                    nothingToShow.set(trace.isEmpty() ? Optional.of(claim) : Optional.empty());
                    compared.set(trace.map(it -> claim));
                    traceTrack.comparisonProperty().set(trace.orElse(null));
                },
                problems);
    }

    /**
     * Returns the claim of which nothing can be shown: it lies beyond the cable, or its kind has no usual size.
     *
     * @return the claim; empty while there is none
     */
    public ReadOnlyObjectProperty<Optional<Claim>> nothingToShowProperty() {
        return nothingToShow.getReadOnlyProperty();
    }

    /**
     * Returns the claim whose trace is laid over.
     *
     * @return the claim; empty while there is none
     */
    public ReadOnlyObjectProperty<Optional<Claim>> comparedProperty() {
        return compared.getReadOnlyProperty();
    }

    /**
     * Returns the wave along the open cable.
     *
     * @return the wave; it plays once the cable is open
     */
    public WaveViewModel wave() {
        return wave;
    }

    /** Lays the cable out anew under the trace, and works out what can be seen of it at these settings. */
    private void lookAgain() {
        Settings wanted = settings.settings();
        LineEnd end = settings.endProperty().get();
        sights.ask(
                () -> bench.look(wanted, end),
                look -> {
                    cableTrack.drawingProperty().set(Optional.of(look.drawing()));
                    cableTrack.sightsProperty().set(look.sights());
                },
                problems);
    }
}
