// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Optional;

/** A reference to a cable type by its id: one that the file brings along, or else one of the catalogue. */
final class CableTypeCodec implements Codec {

    private static final int MOST_ID = 40;

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        if (!node.isTextual()) {
            return Codec.refuse(node, at, reading, "the id of a cable type in quotation marks");
        }
        Optional<CableType> type = reading.type(node.textValue());
        if (type.isEmpty() && reading.hasRoomForProblems()) {
            reading.problem(
                    at,
                    "is " + Shown.value(node) + ", which neither the field \"types\" nor the catalogue has",
                    nearest(node.textValue()));
        }
        return type.map(found -> found);
    }

    private static String nearest(String id) {
        if (id.length() > MOST_ID) {
            return "define it under \"types\", or use one of the catalogue; an id has at most " + MOST_ID
                    + " characters";
        }
        try {
            return "use " + Catalogue.standard().type(id).id();
        } catch (IllegalArgumentException e) {
            String message = e.getMessage();
            String nearest = message.substring(message.lastIndexOf(": ") + 2, message.length() - 1);
            return "define it under \"types\", or use one such as " + nearest;
        }
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        out.writeString(((CableType) value).id());
    }
}
