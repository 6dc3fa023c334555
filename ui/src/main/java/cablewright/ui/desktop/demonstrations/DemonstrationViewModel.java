// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.ui.demonstrations.Demonstration;
import cablewright.ui.demonstrations.ProgressListener;
import cablewright.ui.demonstrations.Values;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/**
 * One demonstration on the screen: it waits for an answer, and from then on computes a figure for whatever is set, of many
 * settings the last.
 */
public final class DemonstrationViewModel {

    /** The answer before anybody has answered. */
    public static final int NO_ANSWER = -1;

    private final Demonstration demonstration;
    private final ObservableValue<LengthUnit> unit;
    private final Locale locale;
    private final Threads threads;
    private final LatestRun runs;
    private final ReadOnlyIntegerWrapper answer = new ReadOnlyIntegerWrapper(NO_ANSWER);
    private final ReadOnlyObjectWrapper<Values> values;
    private final ReadOnlyObjectWrapper<Optional<Figure>> figure = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(0);
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private int reason;
    private AtomicBoolean stop = new AtomicBoolean();

    /**
     * Makes a demonstration that waits for its answer.
     *
     * @param demonstration which
     * @param unit the unit of lengths
     * @param threads where to compute
     * @param locale the language
     */
    public DemonstrationViewModel(
            Demonstration demonstration, ObservableValue<LengthUnit> unit, Threads threads, Locale locale) {
        this.locale = locale;
        this.demonstration = demonstration;
        this.unit = unit;
        this.threads = threads;
        this.runs = new LatestRun(threads);
        this.values = new ReadOnlyObjectWrapper<>(Values.initial(demonstration.controls()));
        unit.addListener((o, before, now) -> computeIfAnswered());
    }

    public Demonstration demonstration() {
        return demonstration;
    }

    /**
     * Returns the class's answer.
     *
     * @return its number, or {@link #NO_ANSWER}
     */
    public ReadOnlyIntegerProperty answerProperty() {
        return answer.getReadOnlyProperty();
    }

    /**
     * Returns the reason that was chosen with the answer.
     *
     * @return its number; without meaning before the answer
     */
    public int reason() {
        return reason;
    }

    public ReadOnlyObjectProperty<Values> valuesProperty() {
        return values.getReadOnlyProperty();
    }

    /**
     * Returns the figure.
     *
     * @return the last one; empty before the answer
     */
    public ReadOnlyObjectProperty<Optional<Figure>> figureProperty() {
        return figure.getReadOnlyProperty();
    }

    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /**
     * Returns why there is no figure of what is set.
     *
     * @return a sentence; empty if there is one
     */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /**
     * Takes the class's answer and its reason; the sliders come alive.
     *
     * @param number the answer's number
     * @param why the reason's number
     */
    public void answer(int number, int why) {
        if (number < 0 || number >= demonstration.answers()) {
            throw new IllegalArgumentException("answer is " + number + "; there are " + demonstration.answers());
        }
        if (why < 0 || why >= Demonstration.REASONS) {
            throw new IllegalArgumentException("why is " + why + "; there are " + Demonstration.REASONS);
        }
        reason = why;
        answer.set(number);
        compute();
    }

    /** Asks again: the figure goes, the settings return to the first ones. */
    public void askAgain() {
        cancel();
        runs.forget();
        running.set(false);
        answer.set(NO_ANSWER);
        figure.set(Optional.empty());
        problem.set("");
        values.set(Values.initial(demonstration.controls()));
    }

    /**
     * Sets a control.
     *
     * @param id its name
     * @param value its value
     */
    public void set(String id, double value) {
        if (values.get().get(id) != value) {
            values.set(values.get().with(id, value));
            computeIfAnswered();
        }
    }

    /**
     * Takes a click on the figure.
     *
     * @param panel number of the panel, from 0
     * @param x share of its horizontal axis
     * @param y share of its vertical axis
     */
    public void click(int panel, double x, double y) {
        Values changed = demonstration.clicked(panel, x, y, values.get());
        if (!changed.equals(values.get())) {
            values.set(changed);
            computeIfAnswered();
        }
    }

    /** Stops what is being computed; the last figure stays. */
    public void cancel() {
        stop.set(true);
    }

    private void computeIfAnswered() {
        if (answer.get() != NO_ANSWER) {
            compute();
        }
    }

    private void compute() {
        stop.set(true);
        AtomicBoolean mine = new AtomicBoolean();
        stop = mine;
        Values wanted = values.get();
        Words words = Words.in(unit.getValue(), locale);
        progress.set(0);
        running.set(true);
        runs.ask(
                () -> demonstration.figure(wanted, words, listener(mine)),
                result -> shown(result, mine),
                failure -> failed(failure, mine));
    }

    private void shown(Optional<Figure> result, AtomicBoolean mine) {
        if (result.isPresent()) {
            figure.set(result);
            problem.set("");
        }
        finished(mine);
    }

    private void failed(Exception failure, AtomicBoolean mine) {
        problem.set(String.valueOf(failure.getMessage()));
        finished(mine);
    }

    private void finished(AtomicBoolean mine) {
        if (mine == stop) {
            running.set(false);
        }
    }

    private ProgressListener listener(AtomicBoolean mine) {
        return new ProgressListener() {
            @Override
            public void progress(double share) {
                threads.screen().execute(() -> {
                    if (!mine.get()) {
                        progress.set(share);
                    }
                });
            }

            @Override
            public void preview(Figure coarse) {
                threads.screen().execute(() -> {
                    if (!mine.get()) {
                        figure.set(Optional.of(coarse));
                    }
                });
            }

            @Override
            public boolean isCancelled() {
                return mine.get();
            }
        };
    }
}
