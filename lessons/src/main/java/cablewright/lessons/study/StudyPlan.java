// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a study asks.
 *
 * @param parameters what is varied, 1 to 20 of them, each once
 * @param sampling how rows are chosen
 * @param eventId the event whose visibility is asked for
 * @param end the end that is tested
 * @param settings what is set on the instrument where it is not varied
 * @param sourceOhms resistance of the source [Ω], 1 to 10000
 */
public record StudyPlan(
        List<Parameter> parameters,
        Sampling sampling,
        String eventId,
        LineEnd end,
        Settings settings,
        double sourceOhms) {

    private static final int MOST_PARAMETERS = 20;

    /** Copies the list and refuses a plan that can't be followed. */
    public StudyPlan {
        parameters = List.copyOf(parameters);
        if (parameters.isEmpty() || parameters.size() > MOST_PARAMETERS) {
            throw new IllegalArgumentException(
                    "a study varies " + parameters.size() + " parameters; allowed is 1 to " + MOST_PARAMETERS);
        }
        Set<String> names = new HashSet<>();
        for (Parameter parameter : parameters) {
            if (!names.add(parameter.name())) {
                throw new IllegalArgumentException("parameter \"" + parameter.name() + "\" is given twice");
            }
        }
        if (names.contains(StudySetting.PULSE.column()) && names.contains(StudySetting.STEP.column())) {
            throw new IllegalArgumentException("pulse_s and step_s are both varied; a wave is one or the other");
        }
        if (!(sourceOhms >= 1 && sourceOhms <= 10_000)) {
            throw new IllegalArgumentException("sourceOhms is " + sourceOhms + "; allowed is 1 to 10000");
        }
        sampling.rows(parameters);
    }

    /**
     * Counts the rows.
     *
     * @return number of rows of all shards together
     */
    public int rows() {
        return sampling.rows(parameters);
    }

    /**
     * Returns the values of a row.
     *
     * @param row which, from 0
     * @return one value for each parameter, in SI units
     */
    public double[] values(int row) {
        return sampling.values(parameters, row);
    }
}
