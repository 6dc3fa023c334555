// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.figure;

import cablewright.lessons.course.FigureSlider;
import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.study.FigureVariation;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.Quantities;
import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;

/** A live figure: where its slider stands, and the trace of the cable with that number. */
public final class LiveFigureViewModel {

    private static final double LEAST_HALF_SPAN = 0.001;

    private final LiveFigure figure;
    private final FigureVariation variation;
    private final LatestRun computing;
    private final DoubleProperty share = new SimpleDoubleProperty();
    private final ReadOnlyObjectWrapper<Optional<FigureVariation.Shown>> shown =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    /**
     * Prepares a figure; its trace follows from the threads that work.
     *
     * @param figure the figure
     * @param threads where to work and where to show
     */
    public LiveFigureViewModel(LiveFigure figure, Threads threads) {
        this.figure = figure;
        this.variation = new FigureVariation(figure);
        this.computing = new LatestRun(threads);
        figure.slider().ifPresent(slider -> share.set(slider.shareOf(variation.opening())));
        share.addListener((o, before, now) -> compute());
        compute();
    }

    private void compute() {
        double value = figure.slider().isPresent() ? value() : 0;
        computing.ask(
                () -> variation.at(value),
                found -> {
                    problem.set("");
                    shown.set(Optional.of(found));
                },
                failed -> problem.set(String.valueOf(failed.getMessage())));
    }

    public LiveFigure figure() {
        return figure;
    }

    /**
     * Where the slider stands.
     *
     * @return its share of the way, 0 to 1
     */
    public DoubleProperty shareProperty() {
        return share;
    }

    /**
     * Returns the number at which the slider stands.
     *
     * @return the value in SI units
     */
    public double value() {
        return figure.slider()
                .map((FigureSlider slider) -> slider.at(share.get()))
                .orElse(0.0);
    }

    /**
     * Writes the number at which the slider stands, in the unit that its name ends in.
     *
     * @param quantities how numbers are written
     * @return such as "12.0 m"
     */
    public String valueText(Quantities quantities) {
        String target = figure.slider().map(FigureSlider::target).orElse("");
        if (target.endsWith("Metres") || target.endsWith("_m")) {
            return quantities.length(value());
        }
        if (target.endsWith("Ohms")) {
            return value() < 10 ? Quantities.significant(value()) + "\u00a0Ω" : quantities.ohms(value());
        }
        if (target.endsWith("Seconds") || target.endsWith("_s")) {
            return quantities.time(value());
        }
        boolean isShare = target.endsWith("Fraction") || target.endsWith("velocity") || target.endsWith("eccentricity");
        return isShare ? Quantities.significant(100 * value()) + "\u00a0%" : Quantities.significant(value());
    }

    public ReadOnlyObjectProperty<Optional<FigureVariation.Shown>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /**
     * Chooses the vertical scale: what comes back behind the outgoing pulse fills it, rounded up to 1, 2 or 5 times a power of
     * ten so that it moves in few steps.
     *
     * @param trace the trace
     * @return half of the span, as a share of the outgoing wave
     */
    public static double halfSpan(Trace trace) {
        double covered = trace.settings()
                .metresThereAndBack(2 * trace.settings().stimulus().settledSeconds());
        double most = LEAST_HALF_SPAN;
        for (int i = trace.indexNear(covered); i < trace.count(); i++) {
            most = Math.max(most, Math.abs(trace.volts(i)));
        }
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double digits = 1.1 * most / power;
        return power * (digits <= 1 ? 1 : digits <= 2 ? 2 : digits <= 5 ? 5 : 10) * 1.02;
    }
}
