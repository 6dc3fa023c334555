// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Holds files against the published schemas with a validator that knows nothing of this project. */
final class Schemas {

    private static final String SHARED = "urn:cablewright:schema:shared:1";

    private final Map<FileKind, Schema> schemas = new EnumMap<>(FileKind.class);

    Schemas() {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12,
                builder -> builder.schemas(Map.of(SHARED, FileKind.sharedSchema())));
        for (FileKind kind : FileKind.values()) {
            schemas.put(
                    kind,
                    registry.getSchema(
                            SchemaLocation.of("urn:cablewright:test:" + kind.format()),
                            kind.schema(),
                            InputFormat.JSON));
        }
    }

    /** What the schema has against a file. */
    List<String> faults(FileKind kind, String text) {
        List<String> faults = new ArrayList<>();
        schemas.get(kind).validate(text, InputFormat.JSON).forEach(error -> faults.add(error.toString()));
        return faults;
    }
}
