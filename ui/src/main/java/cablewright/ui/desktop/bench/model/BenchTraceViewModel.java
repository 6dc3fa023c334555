// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.UsualView;
import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.Suggestion;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.desktop.lattice.LatticeViewModel;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.desktop.track.CableTrackViewModel;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import cablewright.ui.desktop.wave.WaveViewModel;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.PauseTransition;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.util.Duration;

/**
 * The trace of the cable that is being built, and how its events show. The trace follows every change; who can be seen is
 * looked at once the hand rests, and given up as soon as something changes.
 */
public final class BenchTraceViewModel {

    private final Texts desktop;
    private final java.time.Duration rest;
    private final BenchTraces traces = new BenchTraces();
    private final LatestRun tracing;
    private final LatestRun looking;
    private final LatestRun comparing;
    private final LatestRun telling;
    private final LatestRun suggesting;
    private final AtomicLong generation = new AtomicLong();
    private final AxisViewModel axis = new AxisViewModel();
    private final SettingsViewModel settings;
    private final TraceTrackViewModel traceTrack;
    private final CableTrackViewModel cableTrack;
    private final LatticeViewModel lattice;
    private final WaveViewModel wave;
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper sightsAreOld = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<List<EventFacts>> facts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Advice> advice = new ReadOnlyObjectWrapper<>(Advice.NONE);
    private final ObjectProperty<Optional<Exercise>> compared = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<String>> described = new SimpleObjectProperty<>(Optional.empty());
    private BenchTraces.Question question;
    private Optional<BenchTraces.Question> answered = Optional.empty();
    private Optional<BenchTraces.Question> overlaid = Optional.empty();
    private boolean isQuiet;

    /**
     * The setting that would show the described event.
     *
     * @param isSearching whether it is still being looked for
     * @param suggestion the setting that shows it best; empty where none is known
     * @param wasSearched whether one was looked for, so that an empty suggestion means that there is none
     */
    public record Advice(boolean isSearching, Optional<Suggestion> suggestion, boolean wasSearched) {
        static final Advice NONE = new Advice(false, Optional.empty(), false);
        static final Advice SEARCHING = new Advice(true, Optional.empty(), false);
    }

    /**
     * Joins the instrument to an exercise's cable.
     *
     * @param first the exercise
     * @param threads where to work and where to show
     * @param desktop texts of the desktop
     */
    public BenchTraceViewModel(Exercise first, Threads threads, Texts desktop) {
        this.desktop = desktop;
        this.rest = threads.rest();
        this.tracing = new LatestRun(threads);
        this.looking = new LatestRun(threads);
        this.comparing = new LatestRun(threads);
        this.telling = new LatestRun(threads);
        this.suggesting = new LatestRun(threads);
        this.settings = new SettingsViewModel(UsualView.onTheBench(first), first.start());
        this.traceTrack = new TraceTrackViewModel(axis, first.instrument().sourceOhms(), desktop);
        this.cableTrack = new CableTrackViewModel(first.cable());
        this.lattice = new LatticeViewModel(
                traceTrack,
                () -> answered.map(it -> new LatticeViewModel.Subject(
                        it.exercise().cable(), it.exercise().instrument(), it.end())),
                Words.in(axis.unitProperty().get(), desktop.locale()),
                threads,
                this::showProblem);
        this.wave = new WaveViewModel(
                traceTrack,
                cableTrack,
                () -> answered.map(it -> new WaveViewModel.Subject(
                        it.exercise().cable(), it.end(), it.exercise().instrument(), it.settings())),
                threads,
                this::showProblem);
        this.question = new BenchTraces.Question(
                first, settings.settings(), settings.endProperty().get());
        axis.setRange(settings.rangeMetresProperty().get());
        settings.whenChanged(this::ask);
        compared.addListener(changed -> compare());
        described.addListener(changed -> tell());
        ask();
    }

    /**
     * Shows an exercise that was worked on.
     *
     * @param exercise the exercise
     * @param isOther whether it is another one than before, which begins with its own settings
     */
    void show(Exercise exercise, boolean isOther) {
        if (exercise.equals(question.exercise())) {
            return;
        }
        Exercise before = question.exercise();
        question = new BenchTraces.Question(exercise, question.settings(), question.end());
        quietly(() -> {
            if (isOther) {
                SettingsOnBench.start(settings, exercise);
                cableTrack.sightsProperty().set(List.of());
            } else {
                SettingsOnBench.follow(settings, before, exercise);
            }
        });
        traceTrack.setReferenceOhms(exercise.instrument().sourceOhms());
        cableTrack.cableProperty().set(exercise.cable());
        ask();
    }

    /** Sets what shows an event that does not show now. */
    public void take(Suggestion suggestion) {
        quietly(() -> SettingsOnBench.take(settings, suggestion));
        ask();
    }

    /** Lets several settings change with one trace after them. */
    private void quietly(Runnable change) {
        isQuiet = true;
        change.run();
        isQuiet = false;
    }

    private void ask() {
        if (isQuiet) {
            return;
        }
        generation.incrementAndGet();
        question = new BenchTraces.Question(
                question.exercise(), settings.settings(), settings.endProperty().get());
        BenchTraces.Question asked = question;
        working.set(true);
        sightsAreOld.set(true);
        tracing.ask(() -> traces.answer(asked), this::showTrace, this::showProblem);
    }

    private void showTrace(BenchTraces.Answer answer) {
        boolean isLatest = answer.question().equals(question);
        working.set(!isLatest);
        problem.set("");
        axis.setRange(answer.question().settings().rangeMetres());
        answered = Optional.of(answer.question());
        wave.forget();
        traceTrack.traceProperty().set(answer.trace());
        cableTrack.drawingProperty().set(Optional.of(answer.drawing()));
        if (isLatest) {
            compare();
            lookOnceTheHandRests();
        }
    }

    private void lookOnceTheHandRests() {
        if (rest.isZero()) {
            look();
            return;
        }
        PauseTransition pause = new PauseTransition(Duration.millis(rest.toMillis()));
        long mine = generation.get();
        pause.setOnFinished(event -> {
            if (generation.get() == mine) {
                look();
            }
        });
        pause.play();
    }

    private void showProblem(Exception what) {
        working.set(false);
        problem.set(desktop.say("problem.trace", String.valueOf(what.getMessage())));
    }

    private void look() {
        BenchTraces.Question asked = question;
        long mine = generation.get();
        looking.ask(
                () -> traces.sights(asked, () -> generation.get() != mine),
                sights -> {
                    if (generation.get() == mine) {
                        sightsAreOld.set(false);
                        cableTrack.sightsProperty().set(sights);
                        tell();
                    }
                },
                this::showProblem);
    }

    private void compare() {
        Optional<Exercise> other = compared.get();
        if (other.isEmpty() || other.get().cable().equals(question.exercise().cable())) {
            comparing.forget();
            traceTrack.comparisonProperty().set(null);
            return;
        }
        BenchTraces.Question asked = new BenchTraces.Question(other.get(), question.settings(), question.end());
        if (Optional.of(asked).equals(overlaid)
                && traceTrack.comparisonProperty().get() != null) {
            return;
        }
        overlaid = Optional.of(asked);
        comparing.ask(
                () -> traces.trace(asked),
                trace -> traceTrack.comparisonProperty().set(trace),
                this::showProblem);
    }

    /** Computes the visibility of the selected event, and the setting that would show it. */
    private void tell() {
        Optional<EventVisibility> sight = described.get().flatMap(this::sightOf);
        if (sight.isEmpty() || sightsAreOld.get()) {
            if (sight.isEmpty()) {
                facts.set(List.of());
                advice.set(Advice.NONE);
            }
            return;
        }
        BenchTraces.Question asked = question;
        long mine = generation.get();
        String id = sight.get().eventId();
        telling.ask(
                () -> traces.facts(asked, sight.get()),
                found -> {
                    if (generation.get() == mine && described.get().equals(Optional.of(id))) {
                        facts.set(found);
                    }
                },
                this::showProblem);
        if (sight.get().visibility() == Visibility.CLEAR) {
            advice.set(Advice.NONE);
            return;
        }
        advice.set(Advice.SEARCHING);
        suggesting.ask(
                () -> traces.suggestion(asked, sight.get(), () -> generation.get() != mine),
                found -> {
                    if (generation.get() == mine && described.get().equals(Optional.of(id))) {
                        advice.set(new Advice(false, found, true));
                    }
                },
                this::showProblem);
    }

    private Optional<EventVisibility> sightOf(String id) {
        return cableTrack.sightsProperty().get().stream()
                .filter(sight -> sight.eventId().equals(id))
                .findFirst();
    }

    /**
     * Returns where things lie on the axis.
     *
     * @param without names of events that are left out, since they are being moved
     * @return the places
     */
    ShownPlaces places(Set<String> without) {
        return new ShownPlaces(
                CableEdits.without(question.exercise().cable(), without),
                question.end(),
                question.settings().velocityFraction());
    }

    public AxisViewModel axis() {
        return axis;
    }

    public SettingsViewModel settings() {
        return settings;
    }

    public TraceTrackViewModel traceTrack() {
        return traceTrack;
    }

    public CableTrackViewModel cableTrack() {
        return cableTrack;
    }

    /**
     * Returns whether the shown trace is older than what was changed.
     *
     * @return true while a trace is being taken
     */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /**
     * Returns why no trace could be taken.
     *
     * @return a sentence, or nothing
     */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /**
     * Returns whether the visibility shown belongs to an earlier cable.
     *
     * @return true until it is looked at again
     */
    public ReadOnlyBooleanProperty sightsAreOldProperty() {
        return sightsAreOld.getReadOnlyProperty();
    }

    /**
     * Returns the visibility of the selected event.
     *
     * @return one entry for each of its places; nothing until it is worked out
     */
    public ReadOnlyObjectProperty<List<EventFacts>> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Advice> adviceProperty() {
        return advice.getReadOnlyProperty();
    }

    /**
     * Returns whose trace is laid over.
     *
     * @return the exercise with the other cable; empty for none
     */
    ObjectProperty<Optional<Exercise>> comparedProperty() {
        return compared;
    }

    /**
     * Returns which event is looked at closely.
     *
     * @return its name; empty for none
     */
    public ObjectProperty<Optional<String>> toldProperty() {
        return described;
    }

    public ObjectProperty<LineEnd> endProperty() {
        return settings.endProperty();
    }

    /**
     * Returns the wave along the cable of the trace that is shown.
     *
     * @return the wave
     */
    public WaveViewModel wave() {
        return wave;
    }

    public LatticeViewModel lattice() {
        return lattice;
    }
}
