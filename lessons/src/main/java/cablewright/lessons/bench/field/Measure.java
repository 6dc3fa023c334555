// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import java.util.Map;

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
    CONDUCTIVITY;

    private static final Map<String, Measure> BY_UNIT = Map.of(
            "Metres", LENGTH,
            "Ohms", RESISTANCE,
            "Henries", INDUCTANCE,
            "Farads", CAPACITANCE,
            "Hertz", FREQUENCY,
            "Decibels", LEVEL,
            "elsius", TEMPERATURE,
            "SiemensPerMetre", CONDUCTIVITY,
            "Factor", FACTOR);

    /** Returns what a component measures, by the unit at the end of its name; a share where there is none. */
    public static Measure of(String component) {
        return BY_UNIT.entrySet().stream()
                .filter(unit -> component.endsWith(unit.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(SHARE);
    }
}
