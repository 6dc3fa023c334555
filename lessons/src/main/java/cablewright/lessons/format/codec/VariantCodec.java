// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A value of a sealed family: its field "kind" says which record it is. */
final class VariantCodec implements Codec {

    private static final String KIND = "kind";

    private final Map<Variant, RecordCodec> variants = new LinkedHashMap<>();

    /** Adds the codecs; done after making, so that records may hold their own family. */
    void resolve(List<Variant> all, Codecs codecs) {
        all.forEach(variant -> variants.put(variant, codecs.ofRecord(variant.type())));
    }

    /** The codec of each shape, in order. */
    Map<Variant, RecordCodec> variants() {
        return variants;
    }

    List<String> words() {
        return variants.keySet().stream().map(Variant::word).toList();
    }

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        if (!node.isObject()) {
            return Codec.refuse(node, at, reading, "an object in braces with a field \"kind\"");
        }
        JsonNode word = node.get(KIND);
        if (word == null) {
            reading.problem(at.field(KIND), "is missing", "it must be one of " + String.join(", ", words()));
            return Optional.empty();
        }
        for (Map.Entry<Variant, RecordCodec> entry : variants.entrySet()) {
            Variant variant = entry.getKey();
            if (word.isTextual() && variant.word().equals(word.textValue())) {
                return entry.getValue()
                        .read(node, at, reading, List.of(KIND))
                        .flatMap(disassembled -> made(variant, disassembled, at, reading))
                        .filter(value -> goesByItsWord(variant, value, at, reading));
            }
        }
        return Codec.refuse(word, at.field(KIND), reading, "one of " + String.join(", ", words()));
    }

    private static Optional<Object> made(Variant variant, Object disassembled, At at, ReadingState reading) {
        try {
            return Optional.of(variant.made().apply(disassembled));
        } catch (IllegalArgumentException e) {
            reading.refusal(at, e.getMessage());
            return Optional.empty();
        }
    }

    private static boolean goesByItsWord(Variant variant, Object value, At at, ReadingState reading) {
        if (!variant.fits().test(value)) {
            reading.problem(at.field(KIND), "is \"" + variant.word() + "\"", variant.otherwise());
            return false;
        }
        return true;
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        for (Map.Entry<Variant, RecordCodec> entry : variants.entrySet()) {
            Variant variant = entry.getKey();
            if (variant.fits().test(value)) {
                out.writeStartObject();
                out.writeStringField(KIND, variant.word());
                entry.getValue().writeFields(variant.disassembled().apply(value), out);
                out.writeEndObject();
                return;
            }
        }
        throw new IllegalStateException("no word is known for " + value.getClass());
    }
}
