// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.EventKind;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Names of made exercises: the same for the same request, another for another, and not to be read back. */
class ExerciseIdTest {

    private static final List<ExerciseFamily> DROP = List.of(ExerciseFamily.COAX_DROP);

    private static GenerationRequest drop(long seed) {
        return new GenerationRequest(seed, DROP, List.of(EventKind.WATER), 0.35);
    }

    @Test
    void exerciseHasTheNameOfItsRequest() {
        assertEquals(
                drop(5).exerciseId(), new ExerciseGenerator().generate(drop(5)).id());
    }

    /**
     * PBKDF2 (RFC 8018, 5.2) by another implementation: {@code hashlib.pbkdf2_hmac('sha256', b'5|[COAX_DROP]|[WATER]|35|NONE',
     * b'cablewright made exercise', 2000, 10)} of Python 3, its 80 bits written in base 32 (digits 0 to 9, a to v).
     */
    @Test
    void nameIsThatOfAnotherImplementation() {
        assertEquals("made-n1ufqq2jas3hud1a", drop(5).exerciseId());
    }

    @Test
    void everyPartOfTheRequestChangesTheName() {
        Set<String> names = new HashSet<>();
        for (long seed = 0; seed < 50; seed++) {
            names.add(drop(seed).exerciseId());
        }
        names.add(new GenerationRequest(5, List.of(ExerciseFamily.COAX_PLANT), List.of(EventKind.WATER), 0.35)
                .exerciseId());
        names.add(new GenerationRequest(5, DROP, List.of(EventKind.PINCH), 0.35).exerciseId());
        names.add(new GenerationRequest(5, DROP, List.of(EventKind.WATER), 0.36).exerciseId());
        names.add(new GenerationRequest(5, DROP, List.of(EventKind.WATER), 0.35, Contrast.SPLICE_AND_CONNECTOR)
                .exerciseId());
        assertEquals(54, names.size());
    }

    /** No digit of a name says anything of its seed: over 200 seeds in a row each of the 16 places takes most of 32 values. */
    @Test
    void seedsInARowHaveNamesThatShareNothing() {
        for (int place = 0; place < 16; place++) {
            Set<Character> seen = new HashSet<>();
            for (long seed = 0; seed < 200; seed++) {
                String name = drop(seed).exerciseId();
                assertTrue(name.matches("made-[0-9a-v]{16}"), name);
                seen.add(name.charAt("made-".length() + place));
            }
            assertTrue(seen.size() > 24, "place " + place + " takes only " + seen);
        }
    }

    /** Names as version 1.0's first logs hold them: seed 7, difficulty 30 = u, family 1, kinds 11 and 12 (2^11 + 2^12 = 4qo). */
    @Test
    void namesOfEarlierLogsAreStillRead() {
        assertEquals(
                Optional.of(new GenerationRequest(7, DROP, List.of(EventKind.PINCH, EventKind.WATER), 0.3)),
                ReadableId.request("made-7-u-2-4qo"));
        assertEquals(
                Optional.of(new GenerationRequest(-77, DROP, List.of(), 0.3, Contrast.SPLICE_AND_CONNECTOR)),
                ReadableId.request("made-" + Long.toUnsignedString(-77, 36) + "-u-2-0-j"));
        assertEquals(Optional.empty(), ReadableId.request("quay-camera-3"));
        assertEquals(Optional.empty(), ReadableId.request(drop(5).exerciseId()));
    }
}
