// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.Whitespace;
import org.junit.jupiter.api.Test;

class ProseTest {

    private static final Quantities METRES = new Quantities(LengthUnit.METRES);

    @Test
    void signsOfMarkdownAreTakenAwayAndItsLinesJoined() {
        String text = new Prose(80, METRES).ofMarkdown("**Damp** in\nthe *joint*.\n\n- one\n- two\n");
        assertEquals("Damp in the joint.\n\n- one\n- two\n", text);
    }

    @Test
    void whatIsBehindABreakStandsUnderTheFirstWord() {
        String text = new Prose(30, METRES).wrapped("Have every service in it located first.", "  ! ");
        assertEquals("  ! Have every service in it\n    located first.\n", text);
    }

    @Property
    void linesKeepToTheWidthAndNoWordIsLost(
            @ForAll @IntRange(min = 30, max = 100) int width,
            @ForAll @AlphaChars @Whitespace @StringLength(max = 400) String text) {
        String plain =
                text.replaceAll("\\S{25,}", "word").replaceAll("\\s+", " ").strip();
        String wrapped = new Prose(width, METRES).wrapped(plain, "");
        assertEquals(plain, wrapped.replaceAll("\\s+", " ").strip());
        wrapped.lines().forEach(line -> assertTrue(line.length() <= width, line));
    }
}
