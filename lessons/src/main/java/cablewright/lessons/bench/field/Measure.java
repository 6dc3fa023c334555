// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

/** What a number of a field measures. Values are in SI units; the screen chooses the unit in which people read them. */
public enum Measure {
    /** A length or place [m]. */
    LENGTH,
    /** A resistance or impedance [Ω]. */
    RESISTANCE,
    /** A share of something, shown in percent [1]. */
    SHARE,
    /** A factor, shown as it is [1]. */
    FACTOR,
    /** An inductance [H]. */
    INDUCTANCE,
    /** A capacitance [F]. */
    CAPACITANCE,
    /** A frequency [Hz]. */
    FREQUENCY,
    /** A gain or loss [dB]. */
    LEVEL,
    /** A temperature [°C]. */
    TEMPERATURE,
    /** A conductivity [S/m]. */
    CONDUCTIVITY
}
