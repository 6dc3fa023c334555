// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import cablewright.lessons.format.FileKind;
import cablewright.simulator.check.Components;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Matches;
import cablewright.simulator.check.PowerOfTwo;
import cablewright.simulator.check.Range;
import cablewright.simulator.check.Text;
import cablewright.simulator.line.CableType;
import com.fasterxml.classmate.ResolvedType;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.victools.jsonschema.generator.ConfigFunction;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.CustomPropertyDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaBuilder;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.lang.annotation.Annotation;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.text.MessageFormat;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Makes the published schemas from the records: their components, what is stated on them, and the words of the bundle. */
final class SchemaMaker {

    static final String SHARED = "urn:cablewright:schema:shared:1";

    private static final String LINE = "^[^\\u0000-\\u001f\\u007f-\\u009f]*$";
    private static final String VISIBLE_LINE =
            "^[^\\u0000-\\u001f\\u007f-\\u009f]*[^\\s\\u0000-\\u001f\\u007f-\\u009f][^\\u0000-\\u001f\\u007f-\\u009f]*$";
    private static final String LINE_OF_LINES = "^[^\\u0000-\\u0008\\u000a-\\u001f\\u007f-\\u009f]*$";
    private static final String MOMENT = "^-?[0-9+-]{10,}T[0-9:.]+Z$";
    private static final String DESCRIPTION = "description";
    private static final String PATTERN = "pattern";

    private final ObjectMapper mapper = new ObjectMapper();
    private final SchemaWords words = new SchemaWords();
    private final Map<Class<?>, List<Variant>> families = KindWords.families();
    private final SchemaGenerator generator;

    /** Families whose definition was begun: whoever meets one again, as a branch within a branch, refers to it. */
    private final Set<Class<?>> begun = new HashSet<>();

    SchemaMaker() {
        SchemaGeneratorConfigBuilder config =
                new SchemaGeneratorConfigBuilder(mapper, SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON);
        config.with(Option.DEFINITIONS_FOR_ALL_OBJECTS, Option.DEFINITION_FOR_MAIN_SCHEMA);
        config.without(Option.SCHEMA_VERSION_INDICATOR, Option.FLATTENED_OPTIONALS);
        config.forTypesInGeneral()
                .withPropertySorter((unused, unusedToo) -> 0)
                .withAdditionalPropertiesResolver(
                        scope -> scope.getType().getErasedType().isRecord() ? Void.class : null)
                .withDefinitionNamingStrategy(
                        (key, context) -> name(key.getType().getErasedType()))
                .withCustomDefinitionProvider(this::definition)
                .withTypeAttributeOverride((node, scope, context) -> {
                    if (scope.getType().getErasedType().isRecord()) {
                        describe(node, words.of(name(scope.getType().getErasedType())));
                    }
                });
        config.forFields()
                .withTargetTypeOverridesResolver(SchemaMaker::held)
                .withCustomDefinitionProvider(this::property)
                .withRequiredCheck(SchemaMaker::isRequired)
                .withDescriptionResolver(this::wordsOrThoseOfTheType)
                .withNumberInclusiveMinimumResolver(limit(it -> it.leastIsAllowed() && it.hasLeast(), Range::least))
                .withNumberExclusiveMinimumResolver(limit(it -> !it.leastIsAllowed(), Range::least))
                .withNumberInclusiveMaximumResolver(limit(it -> it.mostIsAllowed() && it.hasMost(), Range::most))
                .withNumberExclusiveMaximumResolver(limit(it -> !it.mostIsAllowed(), Range::most))
                .withArrayMinItemsResolver(list(it -> it.least() > 0 ? it.least() : null))
                .withArrayMaxItemsResolver(list(it -> it.most() < Integer.MAX_VALUE ? it.most() : null))
                .withArrayUniqueItemsResolver(list(it -> it.distinct() ? true : null));
        this.generator = new SchemaGenerator(config.build());
    }

    /** Makes the definitions that the schemas share. */
    ObjectNode shared() {
        ObjectNode schema = head(SHARED, words.of("title.shared"));
        schema.put(DESCRIPTION, words.of("shared"));
        SchemaBuilder builder = generator.buildMultipleSchemaDefinitions();
        for (FileKind kind : FileKind.values()) {
            builder.createSchemaReference(kind.content());
        }
        builder.createSchemaReference(CableType.class);
        ObjectNode definitions = schema.putObject("$defs");
        ObjectNode types = definitions.putObject("types");
        types.put(DESCRIPTION, words.of("types")).put("type", "array");
        types.putObject("items").put("$ref", "#/$defs/cableType");
        definitions.setAll(builder.collectDefinitions("$defs"));
        return schema;
    }

    /** Makes the schema of a kind of file. */
    ObjectNode of(FileKind kind) {
        String name = kind.format().substring("cablewright-".length());
        ObjectNode schema = head("urn:cablewright:schema:" + name + ":1", words.of("title." + name));
        schema.put("type", "object");
        ObjectNode fields = schema.putObject("properties");
        fields.putObject("format").put("const", kind.format());
        fields.putObject("version").put(DESCRIPTION, words.of("version")).put("const", FileKind.VERSION);
        if (kind.holdsCables()) {
            fields.putObject("types").put("$ref", SHARED + "#/$defs/types");
        }
        fields.putObject(kind.field()).put("$ref", SHARED + "#/$defs/" + name(kind.content()));
        schema.putArray("required").add("format").add("version").add(kind.field());
        return schema.put("additionalProperties", false);
    }

    private ObjectNode head(String id, String title) {
        return mapper.createObjectNode()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("$id", id)
                .put("title", title);
    }

    static String name(Class<?> type) {
        String simple = type.getSimpleName();
        return simple.substring(0, 1).toLowerCase(Locale.ROOT) + simple.substring(1);
    }

    private CustomDefinition definition(ResolvedType type, SchemaGenerationContext context) {
        Class<?> raw = type.getErasedType();
        if (families.containsKey(raw) && !begun.add(raw)) {
            ObjectNode reference = mapper.createObjectNode().put("$ref", "#/$defs/" + name(raw));
            return new CustomDefinition(
                    reference, CustomDefinition.INLINE_DEFINITION, CustomDefinition.INCLUDING_ATTRIBUTES);
        }
        if (families.containsKey(raw)) {
            return new CustomDefinition(
                    family(raw, context),
                    CustomDefinition.DefinitionType.ALWAYS_REF,
                    CustomDefinition.AttributeInclusion.NO);
        }
        if (raw.isEnum()) {
            ObjectNode choice = mapper.createObjectNode();
            ArrayNode constants = choice.putArray("enum");
            Arrays.stream(raw.getEnumConstants())
                    .map(it -> EnumCodec.word((Enum<?>) it))
                    .forEach(constants::add);
            return new CustomDefinition(
                    choice, CustomDefinition.INLINE_DEFINITION, CustomDefinition.INCLUDING_ATTRIBUTES);
        }
        return null;
    }

    private ObjectNode family(Class<?> family, SchemaGenerationContext context) {
        ObjectNode node = mapper.createObjectNode();
        describe(node, words.of(name(family)));
        ArrayNode shapes = node.putArray("oneOf");
        for (Variant variant : families.get(family)) {
            ObjectNode shape =
                    context.createStandardDefinition(context.getTypeContext().resolve(variant.type()), null);
            ObjectNode fields = mapper.createObjectNode();
            fields.putObject("kind").put("const", variant.word());
            shape.path("properties").properties().forEach(it -> fields.set(it.getKey(), it.getValue()));
            ArrayNode required = mapper.createArrayNode().add("kind");
            shape.path("required").forEach(required::add);
            variant.fixed().ifPresent(fixed -> {
                if (fixed.isGiven()) {
                    required.add(fixed.component());
                } else {
                    fields.remove(fixed.component());
                }
            });
            String own = words.of(name(family) + "." + variant.word());
            ObjectNode whole = shapes.addObject();
            describe(whole, own == null ? words.of(name(variant.type())) : own);
            whole.put("type", "object").set("properties", fields);
            whole.set("required", required);
            whole.put("additionalProperties", false);
        }
        return node;
    }

    /** The type of what an optional component holds. */
    private static List<ResolvedType> held(FieldScope field) {
        Class<?> raw = field.getType() == null ? Object.class : field.getType().getErasedType();
        if (raw == OptionalDouble.class) {
            return List.of(field.getContext().resolve(double.class));
        }
        if (raw == OptionalLong.class) {
            return List.of(field.getContext().resolve(long.class));
        }
        return raw == Optional.class
                ? List.of(field.getType().getTypeParameters().get(0))
                : null;
    }

    private static boolean isRequired(FieldScope field) {
        Class<?> raw = component(field).getType();
        boolean mayBeAbsent = raw == Optional.class
                || raw == OptionalDouble.class
                || raw == OptionalLong.class
                || raw == List.class
                        && find(field, Entries.class).map(it -> it.least() == 0).orElse(true);
        return !mayBeAbsent;
    }

    private CustomPropertyDefinition property(FieldScope field, SchemaGenerationContext context) {
        ObjectNode node = mapper.createObjectNode();
        Class<?> raw = field.getType().getErasedType();
        if (raw == CableType.class) {
            describe(node, Optional.ofNullable(words(field)).orElse(words.of("typeId")));
            string(node, anchored(find(CableType.class, "id", Matches.class).orElseThrow()));
        } else if (raw == Instant.class) {
            string(describe(node, words(field)), MOMENT);
        } else if (raw == String.class) {
            text(node, field);
        } else if (raw == int.class && find(field, PowerOfTwo.class).isPresent()) {
            PowerOfTwo power = find(field, PowerOfTwo.class).get();
            ArrayNode allowed = describe(node, words(field)).putArray("enum");
            for (int value = power.least(); value <= power.most(); value *= 2) {
                allowed.add(value);
            }
        } else {
            return null;
        }
        return new CustomPropertyDefinition(node, CustomDefinition.AttributeInclusion.NO);
    }

    private void text(ObjectNode node, FieldScope field) {
        String said = wordsOrThoseOfTheType(field);
        Optional<Lines> lines = find(field, Lines.class);
        if (lines.isPresent()) {
            boolean prose = lines.get().most() == Lines.PAGE;
            describe(node, prose ? MessageFormat.format(words.of("markdown"), said) : said);
            node.put("type", "array").put("minItems", 1);
            string(node.putObject("items"), prose ? LINE_OF_LINES : "^[A-Za-z0-9+/=]*$");
            node.putObject("contains").put(PATTERN, "\\S");
            return;
        }
        describe(node, said == null && find(field, Id.class).isPresent() ? words.of("id") : said);
        Optional<Matches> form = find(field, Matches.class);
        if (form.isPresent()) {
            string(node, anchored(form.get()));
        } else {
            Text text = find(field, Text.class).orElseThrow();
            string(node, text.least() == 0 ? LINE : VISIBLE_LINE);
            node.put("minLength", text.least()).put("maxLength", text.most());
        }
    }

    private static String anchored(Matches form) {
        return "^" + form.pattern() + "$";
    }

    private static ObjectNode string(ObjectNode node, String pattern) {
        return node.put("type", "string").put(PATTERN, pattern);
    }

    private static ObjectNode describe(ObjectNode node, String said) {
        return said == null ? node : node.put(DESCRIPTION, said);
    }

    private String words(FieldScope field) {
        return words.of(name(field.getDeclaringType().getErasedType()), field.getDeclaredName());
    }

    private String wordsOrThoseOfTheType(FieldScope field) {
        String record = name(field.getDeclaringType().getErasedType());
        String said = field.isFakeContainerItemScope()
                ? words.of(record + "." + field.getDeclaredName() + ".entry")
                : words(field);
        Class<?> raw = field.getType().getErasedType();
        return said == null && raw.isEnum() ? words.of(name(raw)) : said;
    }

    private static ConfigFunction<FieldScope, BigDecimal> limit(Predicate<Range> has, ToDoubleFunction<Range> value) {
        return field -> {
            boolean isList = component(field).getType() == List.class && !field.isFakeContainerItemScope();
            Optional<Range> range = Components.of(field.getDeclaringType().getErasedType())
                    .named(component(field).getName())
                    .range();
            return isList
                    ? null
                    : range.filter(has)
                            .map(it -> new BigDecimal(Numbers.text(value.applyAsDouble(it))))
                            .orElse(null);
        };
    }

    private static <T> ConfigFunction<FieldScope, T> list(Function<Entries, T> value) {
        return field -> field.isFakeContainerItemScope()
                ? null
                : find(field, Entries.class).map(value).orElse(null);
    }

    private static RecordComponent component(FieldScope field) {
        return component(field.getDeclaringType().getErasedType(), field.getDeclaredName());
    }

    private static RecordComponent component(Class<?> record, String name) {
        return Arrays.stream(record.getRecordComponents())
                .filter(it -> it.getName().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(record + " has no component " + name));
    }

    private static <A extends Annotation> Optional<A> find(FieldScope field, Class<A> wanted) {
        return Components.find(component(field), wanted);
    }

    private static <A extends Annotation> Optional<A> find(Class<?> record, String component, Class<A> wanted) {
        return Components.find(component(record, component), wanted);
    }

    /** Writes a schema: what fits on one line stands on one line. */
    static String text(JsonNode schema) {
        return text(schema, "") + "\n";
    }

    private static String text(JsonNode node, String indent) {
        String line = node.toString();
        if (indent.length() + line.length() <= 140 || node.isValueNode()) {
            return line;
        }
        String inner = indent + "  ";
        StringBuilder out = new StringBuilder(node.isObject() ? "{" : "[");
        String between = "";
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                out.append(between)
                        .append('\n')
                        .append(inner)
                        .append('"')
                        .append(field.getKey())
                        .append("\": ");
                out.append(text(field.getValue(), inner));
                between = ",";
            }
        } else {
            for (JsonNode entry : node) {
                out.append(between).append('\n').append(inner).append(text(entry, inner));
                between = ",";
            }
        }
        return out.append('\n')
                .append(indent)
                .append(node.isObject() ? "}" : "]")
                .toString();
    }
}
