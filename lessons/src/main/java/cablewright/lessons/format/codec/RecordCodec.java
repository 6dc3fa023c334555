// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A record as an object: one field for each component, of the component's name, in the components' order. What the record's
 * constructor refuses is a problem of the file.
 */
final class RecordCodec implements Codec {

    private final Class<?> type;
    private final Constructor<?> constructor;
    private final Map<RecordComponent, Codec> components = new LinkedHashMap<>();

    RecordCodec(Class<?> type) {
        this.type = type;
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            this.constructor = type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record has its constructor", e);
        }
    }

    /** Finds the codecs of the components; done after making, so that records may hold each other. */
    void resolve(Codecs codecs) {
        for (RecordComponent component : type.getRecordComponents()) {
            components.put(component, codecs.of(component));
        }
    }

    List<String> fields() {
        return components.keySet().stream().map(RecordComponent::getName).toList();
    }

    /** The codec of each field, in order. */
    Map<String, Codec> codecs() {
        Map<String, Codec> byName = new LinkedHashMap<>();
        components.forEach((component, codec) -> byName.put(component.getName(), codec));
        return byName;
    }

    List<String> requiredFields() {
        return components.entrySet().stream()
                .filter(entry -> entry.getValue().absent().isEmpty())
                .map(entry -> entry.getKey().getName())
                .toList();
    }

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        return read(node, at, reading, List.of());
    }

    /** Reads an object some of whose fields were read already. */
    Optional<Object> read(JsonNode node, At at, ReadingState reading, List<String> known) {
        if (!node.isObject()) {
            return Codec.refuse(node, at, reading, "an object in braces");
        }
        boolean sound = refuseUnknown(node, at, reading, known);
        List<Object> values = new ArrayList<>();
        for (Map.Entry<RecordComponent, Codec> entry : components.entrySet()) {
            Optional<Object> value = component(node, entry.getKey().getName(), entry.getValue(), at, reading);
            value.ifPresent(values::add);
        }
        return sound && values.size() == components.size() ? make(values, at, reading) : Optional.empty();
    }

    private boolean refuseUnknown(JsonNode node, At at, ReadingState reading, List<String> known) {
        List<String> allowed = new ArrayList<>(known);
        allowed.addAll(fields());
        boolean sound = true;
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            if (!allowed.contains(field.getKey()) && !reading.leavesOutWhatIsNew()) {
                reading.problem(
                        at.field(field.getKey()),
                        "is not a field that is known here",
                        "remove it, or use one of " + String.join(", ", allowed));
                sound = false;
            }
        }
        return sound;
    }

    private static Optional<Object> component(JsonNode node, String name, Codec codec, At at, ReadingState reading) {
        JsonNode field = node.get(name);
        if (field == null) {
            if (codec.absent().isEmpty()) {
                reading.problem(at.field(name), "is missing", "it must be given");
            }
            return codec.absent();
        }
        if (field.isNull()) {
            reading.problem(at.field(name), "is null", "give a value, or leave the field out if it may be left out");
            return Optional.empty();
        }
        return codec.read(field, at.field(name), reading);
    }

    private Optional<Object> make(List<Object> values, At at, ReadingState reading) {
        try {
            return Optional.of(constructor.newInstance(values.toArray()));
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException) {
                reading.refusal(at, e.getCause().getMessage());
                return Optional.empty();
            }
            throw new IllegalStateException("the record " + type.getName() + " could not be made", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the record " + type.getName() + " could not be made", e);
        }
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        out.writeStartObject();
        writeFields(value, out);
        out.writeEndObject();
    }

    void writeFields(Object value, JsonGenerator out) throws IOException {
        for (Map.Entry<RecordComponent, Codec> entry : components.entrySet()) {
            Object held = held(entry.getKey(), value);
            if (!entry.getValue().absent().equals(Optional.of(held))) {
                out.writeFieldName(entry.getKey().getName());
                entry.getValue().write(held, out);
            }
        }
    }

    private static Object held(RecordComponent component, Object value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the component " + component.getName() + " could not be read", e);
        }
    }
}
