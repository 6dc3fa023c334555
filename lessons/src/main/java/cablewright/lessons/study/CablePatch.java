// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.cable.Cable;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A cable file in which numbers are changed. A path is a JSON Pointer (RFC 6901) in which an entry of a list can also be
 * named by its {@code id}: {@code /cable/events/pinch/depthFraction}.
 */
final class CablePatch {

    private final JsonMapper mapper = new JsonMapper();
    private final DocumentReader reader = new DocumentReader();
    private final String fileName;
    private final JsonNode root;

    /** Reads a cable file, or an exercise file for its cable. */
    CablePatch(String fileName, byte[] file) throws LessonFormatException {
        this.fileName = fileName;
        cableOf(reader.parse(fileName, file));
        try {
            this.root = mapper.readTree(file);
        } catch (IOException e) {
            throw new IllegalStateException("a file that was read before can't be read", e);
        }
    }

    /** The cable with numbers put in; what can't be is refused with the file's own words. */
    Cable cable(List<Parameter> parameters, double[] values) throws LessonFormatException {
        JsonNode changed = root.deepCopy();
        for (int i = 0; i < values.length; i++) {
            if (parameters.get(i).isInFile()) {
                put(changed, parameters.get(i).name(), values[i]);
            }
        }
        try {
            return cableOf(reader.parse(fileName, mapper.writeValueAsBytes(changed)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree that was read can't be written", e);
        }
    }

    /** The number at a path, as the file has it. */
    double number(String path) {
        JsonNode node = root;
        for (String step : steps(path)) {
            node = child(node, step, path);
        }
        return node.asDouble();
    }

    /** Refuses paths that lead to no number of the file. */
    void requirePaths(List<Parameter> parameters) {
        JsonNode tried = root.deepCopy();
        parameters.stream().filter(Parameter::isInFile).forEach(p -> put(tried, p.name(), p.from()));
    }

    private Cable cableOf(Document document) {
        if (document instanceof Document.OfCable cable) {
            return cable.cable();
        }
        if (document instanceof Document.OfExercise exercise) {
            return exercise.exercise().cable();
        }
        throw new IllegalArgumentException(fileName + " holds no single cable; give a cable file or an exercise file");
    }

    private static void put(JsonNode root, String path, double value) {
        List<String> steps = steps(path);
        JsonNode node = root;
        for (int i = 0; i + 1 < steps.size(); i++) {
            node = child(node, steps.get(i), path);
        }
        String last = steps.get(steps.size() - 1);
        JsonNode old = child(node, last, path);
        if (!old.isNumber()) {
            throw new IllegalArgumentException("\"" + path + "\" is no number in the file; only numbers can be varied");
        }
        boolean whole = old.isIntegralNumber() && value == Math.rint(value) && Math.abs(value) < Long.MAX_VALUE;
        JsonNode number = whole ? LongNode.valueOf((long) value) : DoubleNode.valueOf(value);
        if (node instanceof ObjectNode objectNode) {
            objectNode.set(last, number);
        } else {
            ((ArrayNode) node).set(Integer.parseInt(last), number);
        }
    }

    private static List<String> steps(String path) {
        List<String> steps = new ArrayList<>();
        for (String step : path.substring(1).split("/", -1)) {
            steps.add(step.replace("~1", "/").replace("~0", "~"));
        }
        return steps;
    }

    private static JsonNode child(JsonNode node, String step, String path) {
        JsonNode found = node.isArray() ? entry(node, step) : node.get(step);
        if (found == null) {
            throw new IllegalArgumentException(
                    "the cable file has nothing at \"" + path + "\": no \"" + step + "\"; there is " + names(node));
        }
        return found;
    }

    private static JsonNode entry(JsonNode list, String step) {
        for (JsonNode entry : list) {
            if (entry.path("id").asText("").equals(step)) {
                return entry;
            }
        }
        return step.matches("[0-9]{1,6}") ? list.get(Integer.parseInt(step)) : null;
    }

    private static String names(JsonNode node) {
        List<String> names = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(entry -> names.add(entry.path("id").asText(Integer.toString(names.size()))));
        } else {
            node.fieldNames().forEachRemaining(names::add);
        }
        return names.isEmpty() ? "nothing there" : String.join(", ", names);
    }
}
