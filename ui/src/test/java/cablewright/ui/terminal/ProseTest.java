// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.Whitespace;
import org.junit.jupiter.api.Test;

class ProseTest {

    @Test
    void signsOfMarkdownAreTakenAwayAndItsLinesJoined() {
        String text = new Prose(80).ofMarkdown("**Damp** in\nthe *joint*.\n\n- one\n- two\n");
        assertEquals("Damp in the joint.\n\n- one\n- two\n", text);
    }

    @Test
    void whatIsBehindABreakStandsUnderTheFirstWord() {
        String text = new Prose(30).wrapped("Have every service in it located first.", "  ! ");
        assertEquals("  ! Have every service in it\n    located first.\n", text);
    }

    @Property
    void linesKeepToTheWidthAndNoWordIsLost(
            @ForAll @IntRange(min = 30, max = 100) int width,
            @ForAll @AlphaChars @Whitespace @StringLength(max = 400) String text) {
        String plain =
                text.replaceAll("\\S{25,}", "word").replaceAll("\\s+", " ").strip();
        String wrapped = new Prose(width).wrapped(plain, "");
        assertEquals(plain, wrapped.replaceAll("\\s+", " ").strip());
        wrapped.lines().forEach(line -> assertTrue(line.length() <= width, line));
    }
}
