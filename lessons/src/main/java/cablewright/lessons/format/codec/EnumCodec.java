// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A choice of words: the constants in lower case with hyphens. */
final class EnumCodec implements Codec {

    private final List<Enum<?>> constants;

    EnumCodec(Class<?> type) {
        this.constants = Arrays.stream(type.getEnumConstants())
                .<Enum<?>>map(constant -> (Enum<?>) constant)
                .toList();
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    List<String> words() {
        return constants.stream().map(EnumCodec::word).toList();
    }

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        for (Enum<?> constant : constants) {
            if (node.isTextual() && word(constant).equals(node.textValue())) {
                return Optional.of(constant);
            }
        }
        return Codec.refuse(node, at, reading, "one of " + String.join(", ", words()));
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        out.writeString(word((Enum<?>) value));
    }
}
