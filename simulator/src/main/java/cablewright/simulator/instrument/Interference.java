// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;

/**
 * What else is on the line, seen at the receiver. None of it is in step with the instrument, so averaging n records lowers
 * hum and radio by √n, and an impulse that falls into one record by n.
 *
 * @param humVolts peak of the hum that a supply leaves [V], 0 to 100
 * @param humHertz its frequency [Hz], 1 to 10000
 * @param radioVolts peak of a carrier that a poor shield lets in [V], 0 to 100
 * @param radioHertz its frequency [Hz], 1e4 to 1e11
 * @param impulseVolts height of an impulse, such as a motor's switch makes [V], −100 to 100
 * @param impulsesPerSecond how often they come on average [1/s], 0 to 1e9
 */
public record Interference(
        @Between(least = 0, most = 100) double humVolts,
        @Between(least = 1, most = 10_000) double humHertz,
        @Between(least = 0, most = 100) double radioVolts,
        @Between(least = 1e4, most = 1e11) double radioHertz,
        @Between(least = -100, most = 100) double impulseVolts,
        @Between(least = 0, most = 1e9) double impulsesPerSecond) {

    /** Refuses values out of bounds. */
    public Interference {
        Require.components(
                Interference.class, humVolts, humHertz, radioVolts, radioHertz, impulseVolts, impulsesPerSecond);
    }

    /**
     * A quiet line.
     *
     * @return no interference
     */
    public static Interference none() {
        return new Interference(0, 50, 0, 1e6, 0, 0);
    }
}
