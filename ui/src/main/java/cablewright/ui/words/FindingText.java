// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import java.util.Optional;

/**
 * A finding in words.
 *
 * @param letter letter of the flag that it is about; absent where no flag stands for it
 * @param outcome how it went
 * @param title what and where, such as "84.2 m splice"
 * @param marks such as "4 / 10"; empty where no marks are at stake
 * @param why one or more sentences of reason, with numbers
 */
public record FindingText(Optional<String> letter, Outcome outcome, String title, String marks, String why) {

    /** How a finding went. */
    public enum Outcome {
        /** All right. */
        RIGHT,
        /** Some of it. */
        PARTLY,
        /** Wrong, or missed. */
        WRONG,
        /** Neither earned nor lost: for information. */
        TOLD
    }
}
