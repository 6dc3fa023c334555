// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.format.FileKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The published schemas are what the records say. After a record has changed, write them anew:
 *
 * <pre>mvn -q -pl lessons -am test -Dtest=PublishedSchemaTest -Dsurefire.failIfNoSpecifiedTests=false -Dschemas=write</pre>
 */
class PublishedSchemaTest {

    private static final Path FOLDER = Path.of("src/main/resources/cablewright/lessons/format");

    private final SchemaMaker maker = new SchemaMaker();

    @Test
    void theSharedDefinitionsAreThoseOfTheRecords() throws IOException {
        hold("cablewright-shared", SchemaMaker.text(maker.shared()), FileKind.sharedSchema());
    }

    @Test
    void theSchemaOfEachKindOfFileIsThatOfItsRecord() throws IOException {
        for (FileKind kind : FileKind.values()) {
            hold(kind.format(), SchemaMaker.text(maker.of(kind)), kind.schema());
        }
    }

    private static void hold(String name, String made, String published) throws IOException {
        if ("write".equals(System.getProperty("schemas"))) {
            Files.writeString(FOLDER.resolve(name + ".schema.json"), made);
        } else {
            assertEquals(made, published, name + " differs from its records; write it anew as the class says");
        }
    }
}
