// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

/**
 * A file that was not marked.
 *
 * @param file its name
 * @param reason why
 * @param detail what is known beyond that, such as whose it is; may be empty
 */
public record SetAside(String file, Reason reason, String detail) {

    /** Why a file is not marked. */
    public enum Reason {
        /** It could not be read from the disk. */
        UNREADABLE,
        /** It is no sealed file. */
        NOT_SEALED,
        /** It was cut off, or something was added at its end. */
        CUT,
        /** It was changed after it was sealed. */
        CHANGED,
        /** It is sealed to another examiner. */
        OTHER_KEY,
        /** It answers another paper, or this one after it was changed. */
        OTHER_PAPER,
        /** What was sealed is not sound: it was not made by this program. */
        NOT_SOUND,
        /** It was never handed in. */
        NOT_HANDED_IN,
        /** The same person, or the same sitting, handed in before. */
        DOUBLED,
        /** It was handed in too late. */
        LATE
    }
}
