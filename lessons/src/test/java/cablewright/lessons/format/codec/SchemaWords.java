// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What the schemas say of records and fields, from their bundle. */
final class SchemaWords {

    private final Properties words = new Properties();

    SchemaWords() {
        try (InputStream in = SchemaWords.class.getResourceAsStream("schema.properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is said under a key; null where nothing is. */
    String of(String key) {
        return words.getProperty(key);
    }

    /** What is said of a field of a record, or else of that field in general; null where nothing is. */
    String of(String record, String field) {
        return words.getProperty(record + "." + field, words.getProperty("any." + field));
    }
}
