// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.exercise.Lesson;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Splice;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** The schema and the reader agree: both are held against files that were sound and then spoilt at one place. */
class SchemaAgreementProperties {

    private final DocumentReader reader = new DocumentReader();
    private final DocumentWriter writer = new DocumentWriter();
    private final Schemas schemas = new Schemas();
    private final ObjectMapper mapper = new ObjectMapper();

    @Property(tries = 100)
    void theSchemaTakesEveryCableThatTheWriterWrites(@ForAll long seed) {
        String text = text(new Document.OfCable(new AnyCable(new SplittableRandom(seed)).draw()));

        assertEquals(List.of(), schemas.faults(FileKind.CABLE, text), text);
    }

    @Property(tries = 400)
    void whatTheSchemaRefusesTheReaderRefuses(@ForAll long seed) throws JsonProcessingException {
        SplittableRandom random = new SplittableRandom(seed);
        FileKind kind = random.nextBoolean() ? FileKind.CABLE : FileKind.EXERCISE;
        Document sound = kind == FileKind.CABLE
                ? new Document.OfCable(new AnyCable(random).draw())
                : new Document.OfExercise(SampleExercises.with(
                        new Splice("s", 31, 1e-9, 0, 0.1), new CorrodedJoint("c", 60, 5, OptionalDouble.empty())));
        JsonNode tree = mapper.readTree(text(sound));
        spoil(tree, random);
        String spoilt = mapper.writeValueAsString(tree);

        requireRefusedByBoth(kind, spoilt);
    }

    @Property(tries = 100)
    void whatTheSchemaRefusesOfALessonTheReaderRefuses(@ForAll long seed) throws JsonProcessingException {
        SplittableRandom random = new SplittableRandom(seed);
        Lesson lesson = new Lesson(
                "lesson",
                "A lesson",
                "Text",
                "Invented.",
                0.6,
                List.of(SampleExercises.with()),
                AnyPages.draw(seed),
                AnyPages.plan(seed));
        JsonNode tree = mapper.readTree(text(new Document.OfLesson(lesson)));
        assertEquals(List.of(), schemas.faults(FileKind.LESSON, mapper.writeValueAsString(tree)));
        ((ObjectNode) tree.get("lesson")).remove("exercises");
        spoil(tree.get("lesson"), random);
        ((ObjectNode) tree.get("lesson"))
                .set(
                        "exercises",
                        mapper.readTree(text(new Document.OfLesson(lesson)))
                                .get("lesson")
                                .get("exercises"));
        String spoilt = mapper.writeValueAsString(tree);

        requireRefusedByBoth(FileKind.LESSON, spoilt);
    }

    /** What the schema refuses the reader must refuse; most of what is spoilt must be refused, or this would test nothing. */
    private void requireRefusedByBoth(FileKind kind, String spoilt) {
        List<String> faults = schemas.faults(kind, spoilt);
        Statistics.label("refused by the schema").collect(!faults.isEmpty()).coverage(tries -> tries.check(true)
                .percentage(share -> share > 80));
        if (!faults.isEmpty()) {
            assertThrows(
                    LessonFormatException.class,
                    () -> reader.parse("spoilt", spoilt.getBytes(StandardCharsets.UTF_8)),
                    () -> faults + "\n" + spoilt);
        }
    }

    private String text(Document document) {
        return new String(writer.bytes(document), StandardCharsets.UTF_8);
    }

    private static void spoil(JsonNode tree, SplittableRandom random) {
        List<JsonNode> holders = new ArrayList<>();
        collect(tree, holders);
        JsonNode holder = holders.get(random.nextInt(holders.size()));
        JsonNode wrong = wrong(random);
        if (holder instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = names.isEmpty() ? "x" : names.get(random.nextInt(names.size()));
            switch (random.nextInt(3)) {
                case 0 -> object.remove(name);
                case 1 -> object.set(name + "s", wrong);
                default -> object.set(name, wrong);
            }
        } else {
            ((ArrayNode) holder).set(random.nextInt(holder.size()), wrong);
        }
    }

    private static JsonNode wrong(SplittableRandom random) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        double[] numbers = {-1, 0, 1e-30, 0.5, 1.5, 1e9, 1e300, -1e300};
        return switch (random.nextInt(6)) {
            case 0 -> make.textNode(random.nextBoolean() ? "" : "no such word");
            case 1 -> make.booleanNode(true);
            case 2 -> make.nullNode();
            case 3 -> make.arrayNode();
            case 4 -> make.objectNode();
            default -> make.numberNode(numbers[random.nextInt(numbers.length)]);
        };
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainerNode() && !node.isEmpty()) {
            holders.add(node);
        }
        node.forEach(inner -> collect(inner, holders));
    }
}
