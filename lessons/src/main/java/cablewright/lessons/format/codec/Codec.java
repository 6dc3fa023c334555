// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Optional;

/** Reads and writes one type of value. */
public interface Codec {

    /**
     * Reads a value.
     *
     * @param node what the file holds
     * @param at where it stands
     * @param reading takes problems
     * @return the value; empty where there was a problem, which has then been noted
     */
    Optional<Object> read(JsonNode node, At at, ReadingState reading);

    /**
     * Writes a value.
     *
     * @param value the value
     * @param out receives it
     * @throws IOException never, since what is written is kept in memory
     */
    void write(Object value, JsonGenerator out) throws IOException;

    /** What a field is that the file leaves out; empty where it must not. */
    default Optional<Object> absent() {
        return Optional.empty();
    }

    /** Notes that something else was expected. */
    static Optional<Object> refuse(JsonNode node, At at, ReadingState reading, String allowed) {
        reading.problem(at, "is " + Shown.value(node), "it must be " + allowed);
        return Optional.empty();
    }
}
