// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.measured;

import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.exchange.SweepReport;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.reading.CandidateEvent;
import cablewright.simulator.reading.CandidateEvents;
import cablewright.simulator.reading.PeeledProfile;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.desktop.track.ReadingAids;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import cablewright.ui.measured.MeasuredLine;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/** A measured line being read: its file, what is set, the trace, and the candidate events on it. */
public final class MeasuredViewModel {

    private static final double UNTOLD_OHMS = 50;
    private static final double USUAL_VELOCITY = 0.66;
    private static final int SAMPLES = 4096;

    private final Texts texts;
    private final LatestRun opening;
    private final LatestRun traces;
    private final LatestRun others;
    private final AxisViewModel axis = new AxisViewModel();
    private final TraceTrackViewModel traceTrack;
    private final ReadOnlyObjectWrapper<Optional<SettingsViewModel>> settings =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<CandidateEvent>> candidates = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<PeeledProfile>> profile =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper description = new ReadOnlyStringWrapper("");
    private Optional<Opened> opened = Optional.empty();

    private record Opened(
            MeasuredLine line, MeasuredLine.View near, Optional<MeasuredLine.View> far, Permitted permitted) {

        MeasuredLine.View view(LineEnd end) {
            return end == LineEnd.FAR ? far.orElse(near) : near;
        }

        double ohms() {
            return line.referenceOhms(1).orElse(UNTOLD_OHMS);
        }

        Trace trace(Settings settings, LineEnd end) {
            double longest = view(end).longestMetres(settings.velocityFraction());
            return view(end)
                    .trace(
                            settings.withRangeMetres(Math.min(settings.rangeMetres(), longest)),
                            Instrument.asMeasured(ohms(), SAMPLES),
                            1);
        }
    }

    private record Read(Trace trace, List<CandidateEvent> candidates, Optional<PeeledProfile> profile) {}

    /**
     * Makes the model with no file yet.
     *
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param texts texts of the desktop
     */
    public MeasuredViewModel(ObservableValue<LengthUnit> unit, Threads threads, Texts texts) {
        this.texts = texts;
        this.opening = new LatestRun(threads);
        this.traces = new LatestRun(threads);
        this.others = new LatestRun(threads);
        axis.unitProperty().bind(unit);
        this.traceTrack = new TraceTrackViewModel(axis, UNTOLD_OHMS, texts);
    }

    /**
     * Opens a file; if it can't be used, what was open stays, and says why.
     *
     * @param file a sweep or a table of numbers
     */
    public void open(Path file) {
        working.set(true);
        opening.ask(() -> opened(MeasuredLine.read(file)), this::show, this::showProblem);
    }

    private static Opened opened(MeasuredLine line) {
        double ohms = line.referenceOhms(1).orElse(UNTOLD_OHMS);
        MeasuredLine.View near = line.view(1, ohms);
        Optional<MeasuredLine.View> far = line.ports() == 2 ? Optional.of(line.view(2, ohms)) : Optional.empty();
        return new Opened(line, near, far, MeasuredChoices.of(line, near));
    }

    private void show(Opened now) {
        opened = Optional.of(now);
        double wanted = now.near().usualMetres(USUAL_VELOCITY);
        List<Double> ranges = now.permitted().rangesMetres();
        double range =
                ranges.stream().filter(metres -> metres >= wanted).findFirst().orElse(ranges.get(ranges.size() - 1));
        Settings first = new Settings(now.permitted().stimuli().get(0), USUAL_VELOCITY, range, 0, 1);
        SettingsViewModel made = new SettingsViewModel(now.permitted(), new Start(first, LineEnd.NEAR));
        made.endProperty().addListener(changed -> takeTrace());
        made.stimulusProperty().addListener(changed -> takeTrace());
        made.velocityProperty().addListener(changed -> takeTrace());
        made.rangeMetresProperty().addListener(changed -> takeTrace());
        traceTrack.setReferenceOhms(now.ohms());
        traceTrack.aids().forget();
        settings.set(Optional.of(made));
        description.set(now.line().name() + ": " + description(now));
        takeTrace();
    }

    private String description(Opened now) {
        Optional<SweepReport> report = now.near().report();
        if (report.isEmpty()) {
            return texts.say("measured.trace");
        }
        Quantities quantities = new Quantities(axis.unitProperty().get());
        return texts.say(
                "measured.sweep",
                report.get().frequencies(),
                Quantities.significant(report.get().highestHertz() / 1e6),
                quantities.time(now.near().reach().orElseThrow().shortestEdgeSeconds()),
                quantities.time(now.near().reach().orElseThrow().longestRecordSeconds()));
    }

    private void takeTrace() {
        Opened now = opened.orElseThrow();
        SettingsViewModel set = settings.get().orElseThrow();
        Settings wanted = set.settings();
        LineEnd end = set.endProperty().get();
        working.set(true);
        traceTrack
                .aids()
                .otherProperty()
                .get()
                .filter(ReadingAids.Other::mirrored)
                .ifPresent(seen -> traceTrack.aids().forget());
        traces.ask(
                () -> {
                    Trace trace = now.trace(wanted, end);
                    return new Read(
                            trace, CandidateEvents.on(trace, now.view(end).rules()), profile(trace, now.ohms()));
                },
                read -> {
                    working.set(false);
                    problem.set("");
                    axis.setRange(read.trace().settings().rangeMetres());
                    traceTrack.traceProperty().set(read.trace());
                    candidates.set(read.candidates());
                    profile.set(read.profile());
                },
                this::showProblem);
    }

    /** Empty for a pulse. */
    private static Optional<PeeledProfile> profile(Trace trace, double ohms) {
        Stimulus stimulus = trace.settings().stimulus();
        return stimulus.isStep()
                ? Optional.of(PeeledProfile.of(trace, ohms, PeeledProfile.RISES_A_LAYER * stimulus.resolutionSeconds()))
                : Optional.empty();
    }

    /**
     * Returns the impedance at the cursor, and what it can be trusted for.
     *
     * @return a sentence that follows the cursor and the trace
     */
    public ObservableValue<String> impedanceAtCursor() {
        return Bindings.createStringBinding(
                () -> profile.get()
                        .flatMap(found -> settings.get()
                                .map(set -> texts.say(
                                        "measured.impedance",
                                        new Quantities(axis.unitProperty().get())
                                                .length(
                                                        axis.cursorMetresProperty()
                                                                .get(),
                                                        2),
                                        Quantities.number(
                                                found.ohmsAt(set.settings()
                                                        .secondsThereAndBack(axis.cursorMetresProperty()
                                                                .get())),
                                                1))))
                        .orElseGet(() -> texts.say("measured.noImpedance")),
                profile,
                axis.cursorMetresProperty(),
                axis.unitProperty());
    }

    private void showProblem(Exception what) {
        working.set(false);
        problem.set(texts.say("measured.problem", String.valueOf(what.getMessage())));
    }

    /** Lays the trace of the other port over this one, mirrored, or takes it away. */
    public void toggleOtherEnd() {
        ReadingAids aids = traceTrack.aids();
        if (aids.otherProperty().get().isPresent()) {
            aids.forget();
            return;
        }
        OptionalDouble length = aids.mirrorMetres(OptionalDouble.empty());
        if (!hasBothEnds() || length.isEmpty()) {
            problem.set(texts.say(hasBothEnds() ? "aids.noLength" : "aids.oneEnd"));
            return;
        }
        problem.set("");
        Opened now = opened.orElseThrow();
        SettingsViewModel set = settings.get().orElseThrow();
        Settings wanted = set.settings();
        LineEnd opposite = set.endProperty().get() == LineEnd.NEAR ? LineEnd.FAR : LineEnd.NEAR;
        others.ask(
                () -> now.trace(wanted, opposite),
                seen -> aids.showOtherEnd(seen, length.getAsDouble()),
                this::showProblem);
    }

    /**
     * Returns whether the file has both ends.
     *
     * @return whether it is a sweep of two ports
     */
    public boolean hasBothEnds() {
        return opened.filter(now -> now.far().isPresent()).isPresent();
    }

    public AxisViewModel axis() {
        return axis;
    }

    public TraceTrackViewModel traceTrack() {
        return traceTrack;
    }

    /**
     * Returns what is set.
     *
     * @return the settings; empty while no file is open
     */
    public ReadOnlyObjectProperty<Optional<SettingsViewModel>> settingsProperty() {
        return settings.getReadOnlyProperty();
    }

    /**
     * Returns the candidate events of the trace.
     *
     * @return the candidates, nearest first
     */
    public ReadOnlyObjectProperty<List<CandidateEvent>> candidatesProperty() {
        return candidates.getReadOnlyProperty();
    }

    /**
     * Returns whether a trace is being made.
     *
     * @return true while the shown one is older than the settings
     */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /**
     * Returns why something could not be shown.
     *
     * @return a sentence, or nothing
     */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /**
     * Returns what can be said of the file.
     *
     * @return a sentence; nothing while none is open
     */
    public ReadOnlyStringProperty toldProperty() {
        return description.getReadOnlyProperty();
    }
}
