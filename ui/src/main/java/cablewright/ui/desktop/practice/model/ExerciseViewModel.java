// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.draft.ExerciseDraft;
import cablewright.lessons.format.ExerciseFingerprint;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.desktop.track.ReadingAids;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** One exercise being done: settings, trace, flags, hints, the question before it, commit and what comes of it. */
public final class ExerciseViewModel {

    private final Exercise exercise;
    private final Marker marker;
    private final Texts texts;
    private final Clock clock;
    private final PracticeInstrument bench;
    private final LatestRun traces;
    private final LatestRun marking;
    private final LatestRun others;
    private final AxisViewModel axis = new AxisViewModel();
    private final SettingsViewModel settings;
    private final FlagsViewModel flags;
    private final TraceTrackViewModel traceTrack;
    private final RevealViewModel reveal;
    private final ReadOnlyObjectWrapper<Phase> phase;
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper advice = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper hintAsked = new ReadOnlyBooleanWrapper();
    private boolean commitAsked;
    private final ReadOnlyIntegerWrapper hintsTaken = new ReadOnlyIntegerWrapper();
    private final ReadOnlyObjectWrapper<Optional<MarkSheet>> sheet = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<String> chosenReason = Optional.empty();
    private final ReadOnlyObjectWrapper<Optional<String>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Instant> openedAt = Optional.empty();
    private boolean opened;

    /**
     * Makes the model of an exercise that nobody opened yet.
     *
     * @param exercise the exercise
     * @param marker who marks it
     * @param threads where to work and where to show
     * @param texts texts of the desktop
     * @param clock gives the times at which it was opened and committed
     */
    public ExerciseViewModel(Exercise exercise, Marker marker, Threads threads, Texts texts, Clock clock) {
        this.exercise = exercise;
        this.marker = marker;
        this.texts = texts;
        this.clock = clock;
        this.bench = new PracticeInstrument(exercise);
        this.traces = new LatestRun(threads);
        this.marking = new LatestRun(threads);
        this.others = new LatestRun(threads);
        this.settings = new SettingsViewModel(exercise.permitted(), exercise.start());
        this.flags = new FlagsViewModel(settings);
        this.traceTrack = new TraceTrackViewModel(axis, exercise.instrument().sourceOhms(), texts);
        this.phase = new ReadOnlyObjectWrapper<>(exercise.prediction().isPresent() ? Phase.ASKED : Phase.READING);
        axis.setRange(exercise.start().settings().rangeMetres());
        this.reveal =
                new RevealViewModel(exercise, bench, settings, traceTrack, threads, texts.locale(), this::showProblem);
        listen();
    }

    private void listen() {
        settings.whenChanged(this::settingsChanged);
        flags.draftsProperty().addListener((o, before, now) -> {
            advice.set("");
            commitAsked = false;
            hintAsked.set(false);
            showPennants();
        });
        flags.selectedProperty().addListener((o, before, now) -> showPennants());
    }

    /** Opens the exercise: the first trace is taken, unless a question comes first. */
    public void open() {
        if (!opened) {
            opened = true;
            openedAt = openedAt.or(() -> Optional.of(clock.instant()));
            if (phase.get() != Phase.ASKED) {
                takeTrace();
            }
            // What the exercise asks for takes a while to work out; with it at hand, marking is quick.
            marking.ask(() -> marker.demand(exercise), demand -> {}, this::showProblem);
        }
    }

    private void settingsChanged() {
        traceTrack
                .aids()
                .otherProperty()
                .get()
                .filter(ReadingAids.Other::mirrored)
                .ifPresent(seen -> traceTrack.aids().forget());
        reveal.settingsChanged();
        if (phase.get() != Phase.ASKED && opened) {
            takeTrace();
        }
    }

    private void takeTrace() {
        Settings wanted = settings.settings();
        LineEnd end = settings.endProperty().get();
        working.set(true);
        traces.ask(() -> bench.trace(wanted, end), trace -> showTrace(trace, end), this::showProblem);
    }

    /**
     * Returns whether both ends may be tested.
     *
     * @return whether the other end can be laid over
     */
    public boolean hasBothEnds() {
        return settings.permitted().ends().size() > 1;
    }

    /** Lays the trace from the other end over this one, mirrored about the length of the line, or takes it away. */
    public void toggleOtherEnd() {
        ReadingAids aids = traceTrack.aids();
        if (aids.otherProperty().get().filter(ReadingAids.Other::mirrored).isPresent()) {
            aids.forget();
            return;
        }
        OptionalDouble length = aids.mirrorMetres(exercise.record().lengthMetres());
        if (!hasBothEnds() || phase.get() == Phase.ASKED || length.isEmpty()) {
            advice.set(texts.say(hasBothEnds() ? "aids.noLength" : "aids.oneEnd"));
            return;
        }
        Settings wanted = settings.settings();
        LineEnd opposite = settings.endProperty().get() == LineEnd.NEAR ? LineEnd.FAR : LineEnd.NEAR;
        others.ask(
                () -> bench.trace(wanted, opposite),
                seen -> aids.showOtherEnd(seen, length.getAsDouble()),
                this::showProblem);
    }

    private void showTrace(Trace trace, LineEnd end) {
        boolean isLatest = trace.settings().equals(settings.settings())
                && end == settings.endProperty().get();
        working.set(!isLatest);
        problem.set("");
        axis.setRange(trace.settings().rangeMetres());
        traceTrack.traceProperty().set(trace);
        showPennants();
    }

    private void showProblem(Exception what) {
        working.set(false);
        problem.set(texts.say("problem.trace", String.valueOf(what.getMessage())));
    }

    private void showPennants() {
        traceTrack.pennantsProperty().set(flags.pennants());
    }

    /**
     * Answers the question that comes before the trace.
     *
     * @param choiceId the answer
     * @param reasonId the reason for it; empty where none is asked for
     */
    public void predict(String choiceId, Optional<String> reasonId) {
        if (phase.get() == Phase.ASKED
                && exercise.prediction()
                        .filter(asked -> asked.isAnswer(choiceId, reasonId))
                        .isPresent()) {
            chosen.set(Optional.of(choiceId));
            chosenReason = reasonId;
            phase.set(Phase.READING);
            if (opened) {
                takeTrace();
            }
        }
    }

    /** Asks for the next hint: first its price is said, and asked again the hint is shown. A free one is shown at once. */
    public void askForHint() {
        boolean isFree = hintsTaken.get() < exercise.hints().size()
                && exercise.hints().get(hintsTaken.get()).costMarks() == 0;
        if (hintAsked.get() || isFree) {
            takeHint();
        } else if (phase.get() == Phase.READING
                && hintsTaken.get() < exercise.hints().size()) {
            hintAsked.set(true);
        }
    }

    /**
     * Returns whether the next hint was asked for and waits for its price to be confirmed.
     *
     * @return true from the first press to the second
     */
    public ReadOnlyBooleanProperty hintAskedProperty() {
        return hintAsked.getReadOnlyProperty();
    }

    /**
     * Commits; without a flag only when asked twice, since a whole line without events is rare and a slip of the finger is
     * not.
     */
    public void askToCommit() {
        if (phase.get() == Phase.READING && flags.draftsProperty().get().isEmpty() && !commitAsked) {
            commitAsked = true;
            advice.set(texts.say("commit.none"));
        } else {
            commit();
        }
    }

    /** Shows the next hint, at its price. */
    public void takeHint() {
        if (phase.get() == Phase.READING && hintsTaken.get() < exercise.hints().size()) {
            hintsTaken.set(hintsTaken.get() + 1);
            hintAsked.set(false);
        }
    }

    /** Hands the flags in, if each says what it is; otherwise says which one does not, and selects it. */
    public void commit() {
        if (phase.get() != Phase.READING) {
            return;
        }
        Optional<FlagDraft> incomplete = flags.firstIncomplete();
        if (incomplete.isPresent()) {
            flags.select(incomplete.get().letter());
            advice.set(texts.say("commit.incomplete", incomplete.get().letter()));
            return;
        }
        phase.set(Phase.MARKING);
        Attempt attempt = attempt(flags.freeze());
        marking.ask(() -> marker.mark(exercise, attempt), this::showMarks, this::showMarkingProblem);
    }

    /**
     * Returns what was done so far, to be kept until it is handed in.
     *
     * @param lessonId the lesson
     * @return the draft; empty once the flags are handed in
     */
    public Optional<ExerciseDraft> draft(String lessonId) {
        if (phase.get() == Phase.MARKING || phase.get() == Phase.COMMITTED) {
            return Optional.empty();
        }
        return Optional.of(new ExerciseDraft(
                lessonId,
                exercise.id(),
                flags.draftsProperty().get().stream().map(FlagDraft::toSketch).toList(),
                settings.settings(),
                settings.endProperty().get(),
                hintsTaken.get(),
                chosen.get(),
                chosenReason,
                openedAt));
    }

    /**
     * Goes on with what was begun before. Of an exercise that was changed since, only what still fits it is taken up.
     *
     * @param draft the draft
     */
    public void resume(ExerciseDraft draft) {
        openedAt = draft.startedAt().or(() -> openedAt);
        draft.choiceId().ifPresent(choice -> predict(choice, draft.reasonId()));
        hintsTaken.set(Math.min(draft.hintsTaken(), exercise.hints().size()));
        if (exercise.permitted().allows(draft.settings(), draft.end())) {
            settings.endProperty().set(draft.end());
            settings.use(draft.settings());
        }
        flags.resume(draft.flags());
    }

    private Attempt attempt(List<Flag> handedIn) {
        return new Attempt(
                exercise.id(),
                texts.say("trainee"),
                handedIn,
                settings.settings(),
                hintsTaken.get(),
                chosen.get(),
                chosenReason,
                openedAt,
                Optional.of(clock.instant()),
                Optional.of(ExerciseFingerprint.of(exercise)));
    }

    private void showMarks(MarkSheet marked) {
        sheet.set(Optional.of(marked));
        phase.set(Phase.COMMITTED);
        reveal.open(marked);
    }

    private void showMarkingProblem(Exception what) {
        flags.thaw();
        phase.set(Phase.READING);
        advice.set(texts.say("problem.marking", String.valueOf(what.getMessage())));
    }

    public Exercise exercise() {
        return exercise;
    }

    public AxisViewModel axis() {
        return axis;
    }

    public SettingsViewModel settings() {
        return settings;
    }

    public FlagsViewModel flags() {
        return flags;
    }

    public TraceTrackViewModel traceTrack() {
        return traceTrack;
    }

    /**
     * Returns what commit opens.
     *
     * @return the cable, the wave on it, and traces of wrong claims
     */
    public RevealViewModel reveal() {
        return reveal;
    }

    public ReadOnlyObjectProperty<Phase> phaseProperty() {
        return phase.getReadOnlyProperty();
    }

    /**
     * Returns whether a trace is being taken.
     *
     * @return true while the shown trace is older than the settings
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
     * Returns what is still to be done before commit.
     *
     * @return a sentence, or nothing
     */
    public ReadOnlyStringProperty adviceProperty() {
        return advice.getReadOnlyProperty();
    }

    public ReadOnlyIntegerProperty hintsTakenProperty() {
        return hintsTaken.getReadOnlyProperty();
    }

    /**
     * Returns the marks.
     *
     * @return the marked attempt; empty before commit
     */
    public ReadOnlyObjectProperty<Optional<MarkSheet>> sheetProperty() {
        return sheet.getReadOnlyProperty();
    }

    /**
     * Returns the answer that was chosen before the trace.
     *
     * @return id of the choice; empty before
     */
    public ReadOnlyObjectProperty<Optional<String>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }
}
