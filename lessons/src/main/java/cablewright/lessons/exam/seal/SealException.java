// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

/** Sealed bytes did not open. */
public final class SealException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Why they did not. */
    public enum Fault {
        /** They are not in the age format at all. */
        NOT_SEALED,
        /** They are sealed to somebody else's key, or under another passphrase. */
        OTHER_KEY,
        /** They were changed or cut after they were sealed. */
        CHANGED
    }

    private final Fault fault;

    SealException(Fault fault, Throwable cause) {
        super(sentence(fault), cause);
        this.fault = fault;
    }

    private static String sentence(Fault fault) {
        return switch (fault) {
            case NOT_SEALED -> "it is not a sealed file (age format)";
            case OTHER_KEY -> "it is sealed to another key or passphrase";
            case CHANGED -> "it was changed or cut after it was sealed";
        };
    }

    /**
     * Returns why the bytes did not open.
     *
     * @return the fault
     */
    public Fault fault() {
        return fault;
    }
}
