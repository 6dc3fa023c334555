// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;

/** Values that are one JSON token. */
enum Scalars implements Codec {
    /** A finite number. */
    DOUBLE {
        @Override
        public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
            if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
                return Codec.refuse(node, at, reading, "a number, up to about 1.8e308");
            }
            return Optional.of(node.doubleValue());
        }

        @Override
        public void write(Object value, JsonGenerator out) throws IOException {
            out.writeNumber(Numbers.text((Double) value));
        }
    },
    /** A whole number of 32 bits. */
    INT {
        @Override
        public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
            if (!node.isIntegralNumber() || !node.canConvertToInt()) {
                return Codec.refuse(node, at, reading, "a whole number, at most " + Integer.MAX_VALUE);
            }
            return Optional.of(node.intValue());
        }

        @Override
        public void write(Object value, JsonGenerator out) throws IOException {
            out.writeNumber((Integer) value);
        }
    },
    /** A whole number of 64 bits. */
    LONG {
        @Override
        public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
            if (!node.isIntegralNumber() || !node.canConvertToLong()) {
                return Codec.refuse(node, at, reading, "a whole number, at most " + Long.MAX_VALUE);
            }
            return Optional.of(node.longValue());
        }

        @Override
        public void write(Object value, JsonGenerator out) throws IOException {
            out.writeNumber((Long) value);
        }
    },
    /** Yes or no. */
    BOOLEAN {
        @Override
        public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
            return node.isBoolean()
                    ? Optional.of(node.booleanValue())
                    : Codec.refuse(node, at, reading, "true or false");
        }

        @Override
        public void write(Object value, JsonGenerator out) throws IOException {
            out.writeBoolean((Boolean) value);
        }
    },
    /** Text on one line. */
    STRING {
        @Override
        public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
            return node.isTextual()
                    ? Optional.of(node.textValue())
                    : Codec.refuse(node, at, reading, "text in quotation marks");
        }

        @Override
        public void write(Object value, JsonGenerator out) throws IOException {
            out.writeString((String) value);
        }
    },
    /** A moment, as ISO 8601 in UTC. */
    INSTANT {
        @Override
        public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
            try {
                if (node.isTextual()) {
                    return Optional.of(Instant.parse(node.textValue()));
                }
            } catch (DateTimeException e) {
                // Said below, with what is allowed.
            }
            return Codec.refuse(node, at, reading, "a moment such as \"2031-05-04T09:30:00Z\"");
        }

        @Override
        public void write(Object value, JsonGenerator out) throws IOException {
            out.writeString(value.toString());
        }
    }
}
