// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.reading.Reflection;
import java.util.List;
import java.util.Optional;

/**
 * A study of one cable file: says what any row gives. It holds nothing that changes and serves several threads; the same
 * plan, file and row give the same line on every machine.
 */
public final class Study {

    private static final int PLACES_TRIED = 101;

    private final StudyPlan plan;
    private final CablePatch patch;
    private final StudyHeader header;

    /**
     * Prepares a study, and tries its first row's paths.
     *
     * @param plan what is asked
     * @param fileName name of the cable file, as the results are to tell it
     * @param file its bytes
     * @param programVersion version of the program, for the results' provenance
     * @throws LessonFormatException if the file is not sound
     * @throws IllegalArgumentException if a parameter's path leads nowhere, or the cable lacks the event
     */
    public Study(StudyPlan plan, String fileName, byte[] file, String programVersion) throws LessonFormatException {
        this.plan = plan;
        this.patch = new CablePatch(fileName, file);
        this.header = new StudyHeader(plan, fileName, file, programVersion);
        Cable asFiled = patch.cable(List.of(), new double[0]);
        if (asFiled.event(plan.eventId()).isEmpty()) {
            throw new IllegalArgumentException("the cable of " + fileName + " has no event \"" + plan.eventId()
                    + "\"; it has "
                    + String.join(", ", asFiled.events().stream().map(Event::id).toList()));
        }
        patch.requirePaths(plan.parameters());
    }

    public StudyPlan plan() {
        return plan;
    }

    /**
     * Returns what stands before the rows in the file of the whole study.
     *
     * @return lines of provenance and the names of the columns, each with its end
     */
    public String head() {
        return header.text(new Shard(1, 1));
    }

    StudyHeader header() {
        return header;
    }

    /**
     * Computes a row.
     *
     * @param row which, from 0
     * @return the row; for values that no cable or instrument can have, one that says so
     */
    public StudyRow row(int row) {
        double[] values = plan.values(row);
        try {
            Settings settings = plan.settings();
            for (int i = 0; i < values.length; i++) {
                Parameter parameter = plan.parameters().get(i);
                if (!parameter.isInFile()) {
                    settings = StudySetting.ofColumn(parameter.name())
                            .orElseThrow()
                            .applied(settings, values[i]);
                }
            }
            return seen(row, values, patch.cable(plan.parameters(), values), settings);
        } catch (IllegalArgumentException | LessonFormatException e) {
            return StudyRow.impossible(row, values, String.valueOf(e.getMessage()));
        }
    }

    /**
     * Computes a row as the line that a results file holds for it.
     *
     * @param row which, from 0
     * @return the line, without its end
     */
    public String line(int row) {
        return row(row).line();
    }

    private StudyRow seen(int row, double[] values, Cable cable, Settings settings) {
        EventVisibility sight =
                VisibilityAnalysis.of(cable, Instrument.usual(plan.sourceOhms()), settings, plan.end()).stream()
                        .filter(s -> s.eventId().equals(plan.eventId()))
                        .findFirst()
                        .orElseThrow();
        Event event = cable.event(plan.eventId()).orElseThrow();
        CrossSection sound = cable.runAt(event.startMetres()).type().section();
        double worst = event instanceof LineCondition lc ? worstOhms(lc, sound) : Double.NaN;
        return new StudyRow(
                row,
                values,
                StudyRow.word(sight.visibility()),
                sight.reason().map(StudyRow::word).orElse(""),
                Optional.of(sight.best()),
                sight.noiseVolts(),
                worst,
                Double.isNaN(worst)
                        ? Double.NaN
                        : Reflection.ofImpedance(worst, sound.impedanceOhms()).coefficient(),
                "");
    }

    /** The impedance that differs most from the sound one, looked for at 101 places along the stretch. */
    private static double worstOhms(LineCondition condition, CrossSection sound) {
        double worst = sound.impedanceOhms();
        for (int i = 0; i < PLACES_TRIED; i++) {
            double depth = condition.depthAt((double) i / (PLACES_TRIED - 1));
            double ohms = condition.applyTo(sound, depth).impedanceOhms();
            boolean further = Math.abs(Math.log(ohms / sound.impedanceOhms()))
                    > Math.abs(Math.log(worst / sound.impedanceOhms()));
            worst = further ? ohms : worst;
        }
        return worst;
    }
}
