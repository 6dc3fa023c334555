// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import java.util.Locale;
import javafx.scene.paint.Color;

/** The colours of the tracks. Each is a property of the style sheet; what stands here shows only if a sheet is missing. */
enum Ink {
    /** Background of a track. */
    PAPER("#ffffff"),
    /** Lines of the grid. */
    GRID("#e8e8e4"),
    /** Line of no reflection, frames. */
    AXIS("#b9bcc2"),
    /** Text. */
    TEXT("#24292f"),
    /** Text that should not be met first. */
    FAINT("#5d6570"),
    /** The trace. */
    TRACE("#0072b2"),
    /** Where the converter clips. */
    CLIP("#d55e00"),
    /** Band of the noise that is left. */
    NOISE("#56b4e9"),
    /** The cursor. */
    HAIR("#24292f"),
    /** Flags that say: belongs. */
    BELONGS("#009e73"),
    /** Flags that say: damage. */
    DAMAGE("#d55e00"),
    /** Writing on a pennant. */
    ON_PENNANT("#ffffff"),
    /** A trace laid over for comparison. */
    OTHER_TRACE("#cc79a7"),
    /** Shields and outlines. */
    SHIELD("#57606a"),
    /** Copper. */
    COPPER("#b87333"),
    /** Dielectric. */
    DIELECTRIC("#eee6d6"),
    /** Water. */
    WATER("#56b4e9"),
    /** Hardware put in the line. */
    HARDWARE("#f0e442"),
    /** Outline of hardware. */
    HARDWARE_EDGE("#3a3a2a"),
    /** Impedance along the cable. */
    PROFILE("#57606a"),
    /** Mark of what the trace shows. */
    SEEN("#00795a"),
    /** Mark of what it shows with doubt. */
    DOUBTFUL("#7a4b00"),
    /** Mark of what it hides. */
    HIDDEN("#b84f00"),
    /** The wave on its way. */
    WAVE("#0072b2");

    private final Color fallback;

    Ink(String fallback) {
        this.fallback = Color.web(fallback);
    }

    Color fallback() {
        return fallback;
    }

    String property() {
        return "-track-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
