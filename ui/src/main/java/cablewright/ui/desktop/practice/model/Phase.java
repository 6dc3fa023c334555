// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

/** How far an exercise has come. */
public enum Phase {
    /** A question waits for its answer; the trace is not shown yet. */
    ASKED,
    /** The trace is read and flagged. */
    READING,
    /** The flags were handed in and are being marked. */
    MARKING,
    /** The marks are there and the cable is open. */
    COMMITTED
}
