// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.lessons.course.FigureSlider;
import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import java.util.List;
import java.util.Optional;

/** A live figure whose slider moves. It may be used from one thread at a time. */
public final class FigureVariation {

    private final LiveFigure figure;
    private final PropagationCache memory = new PropagationCache();
    private final Optional<Parameter> varied;
    private final Optional<CablePatch> patch;

    /**
     * Prepares a figure.
     *
     * @param figure the figure
     * @throws IllegalArgumentException if its slider is bound to no number of the cable and to no setting
     */
    public FigureVariation(LiveFigure figure) {
        this.figure = figure;
        this.varied = figure.slider()
                .map(slider -> new Parameter(slider.target(), slider.least(), slider.most(), 2, slider.logarithmic()));
        this.patch = varied.filter(Parameter::isInFile).map(parameter -> patchOf(figure, parameter));
    }

    private static CablePatch patchOf(LiveFigure figure, Parameter parameter) {
        try {
            CablePatch patch =
                    new CablePatch(figure.id(), new DocumentWriter().bytes(new Document.OfCable(figure.cable())));
            patch.requirePaths(List.of(parameter));
            return patch;
        } catch (LessonFormatException e) {
            throw new IllegalStateException("a cable that was written can't be read", e);
        }
    }

    /**
     * Returns the value at which the figure opens.
     *
     * @return the slider's value in SI units; 0 where the figure has none
     */
    public double opening() {
        return varied.map(this::opening).orElse(0.0);
    }

    private double opening(Parameter parameter) {
        return patch.map(it -> it.number(parameter.name()))
                .orElseGet(() ->
                        StudySetting.ofColumn(parameter.name()).orElseThrow().of(figure.settings()));
    }

    /**
     * What a figure shows.
     *
     * @param cable the cable
     * @param trace its trace without noise
     */
    public record Shown(Cable cable, Trace trace) {}

    /**
     * Computes the figure.
     *
     * @param value the slider's value in SI units, within its range; without effect where the figure has none
     * @return cable and trace
     * @throws IllegalArgumentException if the cable can't be with that value
     */
    public Shown at(double value) {
        Cable cable = figure.cable();
        Settings settings = figure.settings();
        if (patch.isPresent()) {
            cable = patched(value);
        } else if (varied.isPresent()) {
            settings = StudySetting.ofColumn(varied.get().name()).orElseThrow().applied(settings, value);
        }
        return new Shown(
                cable,
                Measurement.at(LineEnd.NEAR, cable, figure.measuredBy(), memory).withoutNoise(settings));
    }

    private Cable patched(double value) {
        try {
            return patch.orElseThrow().cable(List.of(varied.orElseThrow()), new double[] {value});
        } catch (LessonFormatException e) {
            FigureSlider slider = figure.slider().orElseThrow();
            throw new IllegalArgumentException(slider.target() + " can't be " + value + ": " + e.getMessage(), e);
        }
    }
}
