// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.FileKind;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.line.CableType;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Walks the records that the readers know and the published schema side by side. */
class SchemaTest {

    /** One record each with and without a resistance: two words, whose fields together are the record's. */
    private static final Set<String> HALVES = Set.of("open", "partial-open", "short", "partial-short");

    private final Codecs codecs = new Codecs();
    private final Set<String> walked = new HashSet<>();
    private JsonNode shared;

    @Test
    void theSchemasSayTheFieldsWordsAndOrderOfTheRecords() throws JsonProcessingException {
        shared = new ObjectMapper().readTree(FileKind.sharedSchema());

        walk("cable", codecs.ofRecord(Cable.class));
        walk("exercise", codecs.ofRecord(Exercise.class));
        walk("lesson", codecs.ofRecord(Lesson.class));
        walk("attemptSheet", codecs.ofRecord(AttemptSheet.class));
        walk("sealedPaper", codecs.ofRecord(SealedPaper.class));
        walk("examinersPart", codecs.ofRecord(ExaminersPart.class));
        walk("examAnswers", codecs.ofRecord(ExamAnswers.class));
        walk("cableType", codecs.ofRecord(CableType.class));

        Set<String> defined = names(shared.get("$defs"));
        defined.removeAll(Set.of("id", "typeId", "eventKind", "lineEnd", "profile", "waterPicture", "types"));
        assertEquals(defined, walked, "every definition is one of a record");
    }

    @Test
    void everyDefinitionAndEveryQuantityIsDescribed() throws JsonProcessingException {
        shared = new ObjectMapper().readTree(FileKind.sharedSchema());
        for (Map.Entry<String, JsonNode> definition : shared.get("$defs").properties()) {
            assertTrue(definition.getValue().has("description"), definition.getKey());
            if (definition.getValue().has("properties")) {
                for (Map.Entry<String, JsonNode> field :
                        definition.getValue().get("properties").properties()) {
                    boolean described = field.getValue().has("description")
                            || field.getValue().has("$ref")
                            || field.getKey().equals("kind");
                    assertTrue(described, definition.getKey() + "." + field.getKey());
                }
            }
        }
    }

    private void walk(String name, Codec codec) {
        if (!walked.add(name)) {
            return;
        }
        JsonNode definition = shared.get("$defs").get(name);
        if (codec instanceof CableCodec cable) {
            walkRecord(name, definition, cable.plain(), List.of());
        } else if (codec instanceof VariantCodec family) {
            walkFamily(name, definition, family);
        } else {
            walkRecord(name, definition, (RecordCodec) codec, List.of());
        }
    }

    private void walkFamily(String name, JsonNode definition, VariantCodec family) {
        List<String> words = new ArrayList<>();
        Map<String, RecordCodec> byWord = family.codecs();
        for (JsonNode member : definition.get("oneOf")) {
            String memberName = referred(member);
            JsonNode shape = shared.get("$defs").get(memberName);
            String word = shape.get("properties").get("kind").get("const").textValue();
            words.add(word);
            if (walked.add(memberName)) {
                walkRecord(memberName, shape, byWord.get(word), List.of("kind"));
            }
        }
        assertEquals(family.words(), words, name);
    }

    private void walkRecord(String name, JsonNode definition, RecordCodec codec, List<String> first) {
        List<String> fields = new ArrayList<>(first);
        fields.addAll(codec.fields());
        List<String> required = new ArrayList<>(first);
        required.addAll(codec.requiredFields());
        JsonNode kind = definition.get("properties").get("kind");
        boolean half = kind != null
                && kind.has("const")
                && HALVES.contains(kind.get("const").textValue());
        if (!half || !first.isEmpty() && definition.get("properties").size() == fields.size()) {
            assertEquals(fields, new ArrayList<>(names(definition.get("properties"))), name);
        }
        if (!half) {
            Set<String> mustBeThere = new HashSet<>(required);
            definition.get("properties").properties().stream()
                    .filter(field -> field.getValue().path("minItems").asInt() > 0)
                    .forEach(field -> mustBeThere.add(field.getKey()));
            assertEquals(mustBeThere, texts(definition.path("required")), name);
        }
        assertEquals(false, definition.get("additionalProperties").booleanValue(), name);
        codec.codecs().forEach((field, inner) -> {
            if (definition.get("properties").has(field)) {
                walkField(name + "." + field, definition.get("properties").get(field), inner);
            }
        });
    }

    private void walkField(String path, JsonNode schema, Codec codec) {
        if (codec instanceof OptionalCodec optional) {
            walkField(path, schema, optional.value());
        } else if (codec instanceof ListCodec list) {
            assertEquals("array", schema.get("type").textValue(), path);
            walkField(path + "[]", schema.get("items"), list.entry());
        } else if (codec instanceof EnumCodec words) {
            JsonNode choice = schema.has("$ref") ? shared.get("$defs").get(referred(schema)) : schema;
            assertEquals(new LinkedHashSet<>(words.words()), texts(choice.get("enum")), path);
        } else if (codec instanceof Scalars scalar) {
            requireScalar(path, schema, scalar);
        } else if (codec instanceof RecordCodec || codec instanceof VariantCodec || codec instanceof CableCodec) {
            walk(referred(schema), codec);
        }
    }

    private void requireScalar(String path, JsonNode schema, Scalars scalar) {
        JsonNode type = schema.has("$ref") ? shared.get("$defs").get(referred(schema)) : schema;
        switch (scalar) {
            case DOUBLE -> assertEquals("number", type.get("type").textValue(), path);
            case BOOLEAN -> assertEquals("boolean", type.get("type").textValue(), path);
            case INT, LONG ->
                assertTrue(type.has("enum") || type.get("type").textValue().equals("integer"), path);
            default -> assertEquals("string", type.get("type").textValue(), path);
        }
    }

    private static String referred(JsonNode schema) {
        String reference = schema.get("$ref").textValue();
        return reference.substring(reference.lastIndexOf('/') + 1);
    }

    private static Set<String> names(JsonNode node) {
        Set<String> names = new LinkedHashSet<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static Set<String> texts(JsonNode list) {
        Set<String> texts = new LinkedHashSet<>();
        list.forEach(text -> texts.add(text.textValue()));
        return texts;
    }
}
