// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

/** The settings of the shelf, in its order, each with the key that steps through its choices. */
public enum Setting {
    /** The end of the line that is tested. */
    END("E"),
    /** Step or pulse. */
    SHAPE("S"),
    /** Width of the pulse, or rise of the step. */
    WIDTH("P"),
    /** Velocity of propagation. */
    VELOCITY("V"),
    /** Range. */
    RANGE("R"),
    /** Gain. */
    GAIN("G"),
    /** Averaging. */
    AVERAGES("A");

    private final String key;

    Setting(String key) {
        this.key = key;
    }

    /**
     * Returns the key that steps through the choices; with Shift it steps back.
     *
     * @return one capital letter
     */
    public String key() {
        return key;
    }
}
