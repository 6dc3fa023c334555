// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

/** What can hurt someone at such work. The words that are shown come from the screen; each defers to local rules. */
public enum Caution {
    /** The cable may carry power for the plant's amplifiers. */
    LIVE_PLANT_POWER,
    /** The cable is, or runs beside, a mains circuit. */
    MAINS,
    /** A telephone pair may carry battery and ringing voltage. */
    RINGING_VOLTAGE,
    /** No testing while a thunderstorm is near. */
    LIGHTNING,
    /** Before the ground is opened: other services lie there. */
    DIGGING,
    /** A long open cable keeps charge: discharge it before the instrument is joined. */
    STATIC_CHARGE,
    /** Local codes and licensed practice go before anything said here. Every exercise has it. */
    LOCAL_CODES
}
