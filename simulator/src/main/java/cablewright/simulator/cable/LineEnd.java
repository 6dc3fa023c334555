// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

/** The two ends from which a line can be tested. */
public enum LineEnd {
    /** The end from which positions are counted. */
    NEAR,
    /** The other end. */
    FAR
}
