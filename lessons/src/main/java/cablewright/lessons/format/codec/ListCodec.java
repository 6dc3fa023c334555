// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A list of values; left out where it is empty. */
final class ListCodec implements Codec {

    /** More than any list of the model may have; what fewer a list allows, its record says. */
    private static final int MOST_ENTRIES = 20_000;

    private final Codec entry;

    ListCodec(Codec entry) {
        this.entry = entry;
    }

    Codec entry() {
        return entry;
    }

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        if (!node.isArray()) {
            return Codec.refuse(node, at, reading, "a list in square brackets");
        }
        if (node.size() > MOST_ENTRIES) {
            return Codec.refuse(node, at, reading, "a list of at most " + MOST_ENTRIES);
        }
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            entry.read(node.get(i), at.entry(i), reading).ifPresent(values::add);
        }
        return values.size() == node.size() ? Optional.of(values) : Optional.empty();
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        out.writeStartArray();
        for (Object each : (List<?>) value) {
            entry.write(each, out);
        }
        out.writeEndArray();
    }

    @Override
    public Optional<Object> absent() {
        return Optional.of(List.of());
    }
}
