// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

/** What was typed can't be done; the message is a sentence that says why and what can. */
final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Refused(String sentence) {
        super(sentence);
    }
}
