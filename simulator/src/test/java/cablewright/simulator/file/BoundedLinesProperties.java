// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;

class BoundedLinesProperties {

    private static BoundedLines of(String text, int most) {
        return new BoundedLines(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), StandardCharsets.UTF_8, most);
    }

    /** {@link String#lines()} has the same ends of lines. */
    @Property
    void linesAreThoseOfJava(@ForAll @Chars({'\n', '\r', 'a', 'é', '😀'}) @CharRange(from = ' ', to = '~') String text)
            throws IOException {
        List<String> lines = new ArrayList<>();
        BoundedLines each = of(text, 1000);
        while (each.advance()) {
            lines.add(each.text());
            assertEquals(lines.size(), each.number());
        }
        assertEquals(wellFormed(text).lines().toList(), lines);
        assertEquals(wellFormed(text).getBytes(StandardCharsets.UTF_8).length, each.bytesTaken());
    }

    /** Half a pair of surrogates becomes a question mark on its way into UTF-8. */
    private static String wellFormed(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    @Property(tries = 50)
    void lineBeyondABlockIsWholeOrRefused(@ForAll @IntRange(min = 65_000, max = 140_000) int length)
            throws IOException {
        String text = "x".repeat(length) + "\r\nnext";
        BoundedLines kept = of(text, length);
        assertTrue(kept.advance() && kept.isEnded());
        assertEquals(length, kept.text().length());
        BoundedLines cut = of(text, length - 1);
        assertTrue(cut.advance());
        assertThrows(IllegalArgumentException.class, cut::text);
        assertTrue(cut.advance());
        assertEquals("next", cut.text());
        assertFalse(cut.isEnded());
        assertFalse(cut.advance());
    }

    @Example
    void whatIsNoTextIsRefusedAndTheNextLineIsRead() throws IOException {
        BoundedLines lines = new BoundedLines(
                new ByteArrayInputStream(new byte[] {(byte) 0xC3, '\n', 'a'}), StandardCharsets.UTF_8, 10);
        assertTrue(lines.advance());
        assertThrows(IllegalArgumentException.class, lines::text);
        assertTrue(lines.advance());
        assertEquals("a", lines.text());
    }
}
