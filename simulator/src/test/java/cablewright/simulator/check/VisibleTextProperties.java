// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class VisibleTextProperties {

    /** What steers a terminal: C0 and C1 controls (ECMA-48) and the marks of direction of Unicode. */
    @Property
    void nothingThatSteersATerminalIsLeft(@ForAll String text) {
        assertTrue(VisibleText.line(text)
                .codePoints()
                .noneMatch(c -> Character.isISOControl(c) || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069));
    }

    @Property
    void plainTextStaysAsItIs(@ForAll("plain") String text) {
        assertEquals(text, VisibleText.line(text));
    }

    @Provide
    Arbitrary<String> plain() {
        return Arbitraries.strings().withCharRange(' ', '~').withChars("äéΩµ−→中");
    }

    @Example
    void escapesAreShownAsTheyAreWritten() {
        assertEquals("a\\u001b[2Jb\\u202ec\\u000ad", VisibleText.line("a\u001b[2Jb\u202ec\nd"));
        assertEquals("a\nb\\u0000", VisibleText.lines("a\nb\u0000"));
    }
}
