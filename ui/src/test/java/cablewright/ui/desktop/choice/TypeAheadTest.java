// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class TypeAheadTest {

    private static final List<String> NAMES =
            List.of("splice", "tap", "splitter", "heat", "short", "spread pair", "split");

    private final TypeAhead ahead = new TypeAhead();

    private OptionalInt type(String letters, double from, int now) {
        OptionalInt found = OptionalInt.empty();
        int chosen = now;
        for (int i = 0; i < letters.length(); i++) {
            found = ahead.type(letters.substring(i, i + 1), from + 0.1 * i, NAMES, chosen);
            chosen = found.orElse(chosen);
        }
        return found;
    }

    @Test
    void theBeginningOfANameFindsIt() {
        assertEquals(OptionalInt.of(4), type("sh", 0, -1), "not heat, which holds no such beginning");
        assertEquals(OptionalInt.of(5), type("SPR", 10, -1));
    }

    @Test
    void theSameLetterGoesThroughWhatBeginsWithIt() {
        assertEquals(OptionalInt.of(0), ahead.type("s", 0, NAMES, -1));
        assertEquals(OptionalInt.of(2), ahead.type("s", 0.2, NAMES, 0));
        assertEquals(OptionalInt.of(4), ahead.type("s", 0.4, NAMES, 2));
        assertEquals(OptionalInt.of(5), ahead.type("s", 5, NAMES, 4));
    }

    @Test
    void aPauseBeginsANewName() {
        type("sp", 0, -1);
        assertEquals(OptionalInt.of(3), ahead.type("h", 5, NAMES, 0));
    }

    @Test
    void whatNoNameBeginsWithFindsNothing() {
        assertEquals(OptionalInt.empty(), ahead.type("x", 0, NAMES, 2));
    }
}
