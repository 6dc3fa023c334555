// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Settings;

/**
 * What is set when an exercise opens.
 *
 * @param settings what is set on the instrument
 * @param end the end to which it is joined
 */
public record Start(Settings settings, LineEnd end) {

    /** Refuses missing values. */
    public Start {
        Require.components(Start.class, settings, end);
    }
}
