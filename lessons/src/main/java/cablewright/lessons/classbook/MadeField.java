// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.generation.Contrast;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.EventKind;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The request of which an exercise was made, as a field of a record's line. */
final class MadeField {

    static final String NAME = "made";

    private MadeField() {}

    static void write(ObjectNode line, GenerationRequest made) {
        ObjectNode node = line.putObject(NAME);
        node.put("seed", made.seed());
        ArrayNode families = node.putArray("families");
        made.families().forEach(family -> families.add(word(family)));
        ArrayNode damage = node.putArray("damage");
        made.damage().forEach(kind -> damage.add(kind.id()));
        node.put("difficulty", made.difficulty());
        node.put("contrast", word(made.contrast()));
    }

    static GenerationRequest read(JsonNode node) {
        JsonNode seed = node.path("seed");
        JsonNode difficulty = node.path("difficulty");
        if (!seed.isIntegralNumber() || !seed.canConvertToLong()) {
            throw new IllegalArgumentException("made.seed is " + seed + "; it must be a whole number");
        }
        if (!difficulty.isNumber()) {
            throw new IllegalArgumentException(
                    "made.difficulty is " + difficulty + "; it must be a number from 0 to 1");
        }
        List<ExerciseFamily> families = new ArrayList<>();
        node.path("families").forEach(family -> families.add(named(ExerciseFamily.values(), "made.families", family)));
        List<EventKind> damage = new ArrayList<>();
        node.path("damage").forEach(kind -> damage.add(EventKind.ofId(kind.asText())));
        return new GenerationRequest(
                seed.asLong(),
                families,
                damage,
                difficulty.asDouble(),
                named(Contrast.values(), "made.contrast", node.path("contrast")));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static <E extends Enum<E>> E named(E[] values, String field, JsonNode word) {
        return Arrays.stream(values)
                .filter(value -> word(value).equals(word.asText()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(field + " holds \"" + word.asText() + "\"; allowed are "
                        + Arrays.stream(values).map(MadeField::word).toList()));
    }
}
