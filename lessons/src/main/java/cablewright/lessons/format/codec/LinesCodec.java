// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A text of several lines, held as a list of lines. */
final class LinesCodec implements Codec {

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        if (!node.isArray() || node.isEmpty()) {
            return Codec.refuse(node, at, reading, "a list of lines of text");
        }
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            JsonNode line = node.get(i);
            if (!line.isTextual() || line.textValue().indexOf('\n') >= 0) {
                return Codec.refuse(line, at.entry(i), reading, "one line of text in quotation marks");
            }
            lines.add(line.textValue());
        }
        return Optional.of(String.join("\n", lines));
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        out.writeStartArray();
        for (String line : ((String) value).split("\n", -1)) {
            out.writeString(line);
        }
        out.writeEndArray();
    }
}
