// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.sitting.ItemDraft;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** One line of a paper being read: settings, trace, flags, the question before it. It knows no cable and no marks. */
public final class SittingItemViewModel {

    private final PaperItem item;
    private final Reflectometer reflectometer;
    private final Map<LineEnd, PortResponse> ports = new EnumMap<>(LineEnd.class);
    private final LatestRun traces;
    private final Texts texts;
    private final AxisViewModel axis = new AxisViewModel();
    private final SettingsViewModel settings;
    private final FlagsViewModel flags;
    private final TraceTrackViewModel traceTrack;
    private final ReadOnlyBooleanWrapper asked = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private ItemDraft draft;
    private boolean opened;

    /**
     * Takes a line up where it was left.
     *
     * @param item the line
     * @param draft what is answered so far
     * @param threads where to work and where to show
     * @param desktop texts of the desktop
     * @param changed hears of each change of flags, settings or answer
     */
    SittingItemViewModel(PaperItem item, ItemDraft draft, Threads threads, Texts desktop, Runnable changed) {
        this.item = item;
        this.draft = draft;
        this.texts = desktop;
        this.traces = new LatestRun(threads);
        this.reflectometer = new Reflectometer(item.instrument());
        this.settings = new SettingsViewModel(item.permitted(), item.start());
        settings.use(draft.settings());
        this.flags = new FlagsViewModel(settings);
        flags.restore(draft.flags());
        this.traceTrack = new TraceTrackViewModel(axis, item.instrument().sourceOhms(), desktop);
        axis.setRange(draft.settings().rangeMetres());
        asked.set(item.question().isPresent() && draft.choiceId().isEmpty());
        settings.whenChanged(() -> {
            takeTrace();
            changed.run();
        });
        flags.draftsProperty().addListener((o, before, now) -> {
            showFlags();
            changed.run();
        });
        flags.selectedProperty().addListener((o, before, now) -> showFlags());
        asked.addListener((o, before, now) -> {
            takeTrace();
            changed.run();
        });
    }

    /** Takes the first trace, unless the question comes first. */
    void open() {
        if (!opened) {
            opened = true;
            takeTrace();
            showFlags();
        }
    }

    private void showFlags() {
        traceTrack.pennantsProperty().set(flags.pennants());
    }

    private void takeTrace() {
        if (asked.get() || !opened) {
            return;
        }
        Settings wanted = settings.settings();
        LineEnd end = settings.endProperty().get();
        working.set(true);
        traces.ask(() -> trace(wanted, end), trace -> show(trace, end), this::showProblem);
    }

    /** On the thread that works; one trace at a time. */
    private Trace trace(Settings wanted, LineEnd end) {
        return reflectometer.measure(ports.computeIfAbsent(end, item::port), wanted, item.noiseSeed());
    }

    private void show(Trace trace, LineEnd end) {
        boolean isLatest = trace.settings().equals(settings.settings())
                && end == settings.endProperty().get();
        working.set(!isLatest);
        problem.set("");
        axis.setRange(trace.settings().rangeMetres());
        traceTrack.traceProperty().set(trace);
        showFlags();
    }

    private void showProblem(Exception what) {
        working.set(false);
        problem.set(texts.say("problem.trace", String.valueOf(what.getMessage())));
    }

    /**
     * Answers the question that comes before the trace; it can't be changed afterwards.
     *
     * @param choiceId the answer
     * @param reasonId the reason for it; empty where none is asked for
     */
    public void answer(String choiceId, Optional<String> reasonId) {
        if (asked.get()
                && item.question()
                        .filter(question -> question.isAnswer(choiceId, reasonId))
                        .isPresent()) {
            draft = draft.withAnswer(choiceId, reasonId);
            asked.set(false);
        }
    }

    /** What is answered now: flags that say all they must, settings, the answer. */
    ItemDraft draft() {
        return draft.withFlags(flags.complete()).withSettings(settings.settings());
    }

    /**
     * Returns whether anything is answered that counts.
     *
     * @return whether there is a whole flag or an answer
     */
    public boolean isAnswered() {
        return draft().isAnswered();
    }

    /**
     * Counts flags that say no kind or no verdict, and so would not count.
     *
     * @return how many there are
     */
    public int incomplete() {
        return (int) flags.draftsProperty().get().stream()
                .filter(flag -> flag.kind().isEmpty() || flag.verdict().isEmpty())
                .count();
    }

    public PaperItem item() {
        return item;
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
     * Returns whether the question is still open.
     *
     * @return true until it is answered; the trace is hidden so long
     */
    public ReadOnlyBooleanProperty askedProperty() {
        return asked.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
