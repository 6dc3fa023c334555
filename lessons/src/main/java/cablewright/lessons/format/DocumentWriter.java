// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.format.codec.Codecs;
import cablewright.simulator.line.CableType;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes files in their one canonical form: fields in a fixed order, shortest numbers that read back the same, two spaces,
 * line feeds, a line feed at the end, UTF-8. What is read and written again has the same bytes.
 */
public final class DocumentWriter {

    private final JsonFactory factory = new JsonFactory();
    private final Codecs codecs = new Codecs();

    /** Makes a writer. */
    public DocumentWriter() {}

    /**
     * Writes a document.
     *
     * @param document what to write
     * @return the bytes of its file
     * @throws IllegalArgumentException if it can't be written: two different cable types of one id, or half a character
     */
    public byte[] bytes(Document document) {
        try {
            ByteBuffer encoded = StandardCharsets.UTF_8
                    .newEncoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .encode(CharBuffer.wrap(text(document)));
            byte[] bytes = new byte[encoded.remaining()];
            encoded.get(bytes);
            return bytes;
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException(
                    "a text holds half a character, which can't be written; type that text again", e);
        }
    }

    private String text(Document document) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = factory.createGenerator(text)) {
            out.setPrettyPrinter(printer());
            out.writeStartObject();
            out.writeStringField("format", document.kind().format());
            out.writeNumberField("version", FileKind.VERSION);
            List<CableType> types = TypesUsed.of(document);
            if (!types.isEmpty()) {
                out.writeFieldName("types");
                codecs.types().write(types, out);
            }
            out.writeFieldName(document.kind().field());
            codecs.content(document.kind().content()).write(document.content(), out);
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        return printer;
    }
}
