// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.format.FileKind;
import cablewright.simulator.line.CableType;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Walks what the readers know and the published schema side by side. */
class SchemaTest {

    private final Codecs codecs = new Codecs();
    private final Set<Codec> walked = new HashSet<>();
    private final Set<String> referred = new HashSet<>();
    private JsonNode shared;
    private int compared;

    @BeforeEach
    void readTheSchema() throws JsonProcessingException {
        shared = new ObjectMapper().readTree(FileKind.sharedSchema()).get("$defs");
    }

    @Test
    void theSchemasStateTheFieldsWordsAndOrderOfTheRecords() {
        for (FileKind kind : FileKind.values()) {
            String name = SchemaMaker.name(kind.content());
            walk(name, definition(name), codecs.content(kind.content()));
        }
        walk("cableType", definition("cableType"), codecs.ofRecord(CableType.class));

        Set<String> defined = names(shared);
        defined.remove("types");
        assertEquals(defined, referred, "every definition is referred to");
        assertTrue(compared > 80, () -> "only " + compared + " records were compared");
    }

    @Test
    void everyDefinitionAndEveryFieldIsDescribed() {
        List<String> silent = new ArrayList<>();
        shared.properties().forEach(it -> collectSilent(it.getKey(), it.getValue(), silent));
        assertEquals(List.of(), silent);
    }

    private static void collectSilent(String path, JsonNode schema, List<String> silent) {
        if (!schema.has("description") && !schema.has("$ref") && !schema.has("const")) {
            silent.add(path);
        }
        schema.path("oneOf").forEach(it -> collectSilent(path + "|", it, silent));
        schema.path("properties")
                .properties()
                .forEach(it -> collectSilent(path + "." + it.getKey(), it.getValue(), silent));
    }

    private JsonNode definition(String name) {
        referred.add(name);
        return shared.get(name);
    }

    private JsonNode resolved(JsonNode schema) {
        String reference = schema.path("$ref").asText();
        return reference.isEmpty() ? schema : definition(reference.substring(reference.lastIndexOf('/') + 1));
    }

    private void walk(String path, JsonNode schema, Codec codec) {
        JsonNode here = resolved(schema);
        if (codec instanceof CableCodec cable) {
            walk(path, here, cable.plain());
        } else if (codec instanceof VariantCodec family) {
            walkFamily(path, here, family);
        } else if (codec instanceof RecordCodec record) {
            if (walked.add(record)) {
                walkRecord(path, here, record, List.of(), Optional.empty());
            }
        } else if (codec instanceof OptionalCodec optional) {
            walk(path, here, optional.value());
        } else if (codec instanceof ListCodec list) {
            assertEquals("array", here.path("type").asText(), path);
            walk(path + "[]", here.get("items"), list.entry());
        } else if (codec instanceof EnumCodec words) {
            assertEquals(new LinkedHashSet<>(words.words()), texts(here.get("enum")), path);
        } else if (codec instanceof Scalars scalar) {
            requireScalar(path, here, scalar);
        }
    }

    private void walkFamily(String path, JsonNode schema, VariantCodec family) {
        if (!walked.add(family)) {
            return;
        }
        Iterator<JsonNode> shapes = schema.get("oneOf").iterator();
        family.variants().forEach((variant, codec) -> {
            JsonNode shape = shapes.next();
            assertEquals(variant.word(), shape.at("/properties/kind/const").textValue(), path);
            walkRecord(path + "|" + variant.word(), shape, codec, List.of("kind"), variant.fixed());
        });
        assertFalse(shapes.hasNext(), path);
    }

    private void walkRecord(
            String path, JsonNode schema, RecordCodec codec, List<String> first, Optional<Variant.Fixed> fixed) {
        compared++;
        List<String> fields = new ArrayList<>(first);
        fields.addAll(codec.fields());
        Set<String> required = new HashSet<>(first);
        required.addAll(codec.requiredFields());
        fixed.filter(Variant.Fixed::isGiven).ifPresent(it -> required.add(it.component()));
        fixed.filter(it -> !it.isGiven()).ifPresent(it -> fields.remove(it.component()));
        schema.get("properties").properties().stream()
                .filter(field -> field.getValue().path("minItems").asInt() > 0)
                .forEach(field -> required.add(field.getKey()));

        assertEquals(fields, List.copyOf(names(schema.get("properties"))), path);
        assertEquals(required, texts(schema.path("required")), path);
        assertEquals("false", schema.path("additionalProperties").asText(), path);
        codec.codecs().forEach((field, inner) -> {
            if (fields.contains(field)) {
                walk(path + "." + field, schema.get("properties").get(field), inner);
            }
        });
    }

    private static void requireScalar(String path, JsonNode schema, Scalars scalar) {
        String type = schema.path("type").asText();
        switch (scalar) {
            case DOUBLE -> assertEquals("number", type, path);
            case BOOLEAN -> assertEquals("boolean", type, path);
            case INT, LONG -> assertTrue(schema.has("enum") || type.equals("integer"), path);
            default -> assertEquals("string", type, path);
        }
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
