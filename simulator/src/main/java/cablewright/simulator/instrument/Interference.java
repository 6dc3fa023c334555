// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

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
        double humVolts,
        double humHertz,
        double radioVolts,
        double radioHertz,
        double impulseVolts,
        double impulsesPerSecond) {

    /** Refuses values out of bounds. */
    public Interference {
        Bounds.between("humVolts", humVolts, 0, 100);
        Bounds.between("humHertz", humHertz, 1, 10_000);
        Bounds.between("radioVolts", radioVolts, 0, 100);
        Bounds.between("radioHertz", radioHertz, 1e4, 1e11);
        Bounds.between("impulseVolts", impulseVolts, -100, 100);
        Bounds.between("impulsesPerSecond", impulsesPerSecond, 0, 1e9);
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
