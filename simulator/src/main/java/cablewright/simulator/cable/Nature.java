// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

/** Whether a kind of event is something that may belong in a line or something that went wrong with it. */
public enum Nature {
    /** Hardware of the trade: it belongs where the as-built record, or normal practice, puts it. */
    HARDWARE,
    /** Damage or a fault of making or laying: it never belongs. */
    DAMAGE
}
