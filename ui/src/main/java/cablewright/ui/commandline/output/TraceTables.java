// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.ui.commandline.output.TakenTrace.Column;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes traces as tables of numbers, each with all the digits of its double. */
final class TraceTables {

    private TraceTables() {}

    /** Comma-separated values as in RFC 4180 with line feeds: a line of names, then one line for each row. */
    static byte[] csv(TakenTrace trace) {
        StringBuilder out = new StringBuilder(trace.rows() * trace.columns().size() * 22);
        out.append(trace.columns().stream().map(Column::name).collect(Collectors.joining(",")));
        out.append('\n');
        for (int row = 0; row < trace.rows(); row++) {
            for (int i = 0; i < trace.columns().size(); i++) {
                out.append(i == 0 ? "" : ",").append(trace.columns().get(i).value(row));
            }
            out.append('\n');
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** One object: the cable's title, the settings by name, and an array for each column. */
    static byte[] json(TakenTrace trace) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.writeStartObject();
            json.writeStringField("cable", trace.title());
            for (Map.Entry<String, Object> setting : trace.settings().entrySet()) {
                write(json, setting.getKey(), setting.getValue());
            }
            for (Column column : trace.columns()) {
                json.writeArrayFieldStart(column.name());
                for (int row = 0; row < trace.rows(); row++) {
                    json.writeNumber(column.value(row));
                }
                json.writeEndArray();
            }
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("JSON can't be written in memory", e);
        }
        out.write('\n');
        return out.toByteArray();
    }

    private static void write(JsonGenerator json, String name, Object value) throws IOException {
        if (value instanceof Integer || value instanceof Long) {
            json.writeNumberField(name, ((Number) value).longValue());
        } else if (value instanceof Double double1) {
            json.writeNumberField(name, double1);
        } else {
            json.writeStringField(name, value.toString());
        }
    }
}
