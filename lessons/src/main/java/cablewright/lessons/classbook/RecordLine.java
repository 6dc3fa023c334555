// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.ReadableId;
import cablewright.simulator.cable.EventKind;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;

/**
 * One record as one line of JSON, fields in a fixed order. A line of version 2 ends with the checksum of all that stands before
 * that field: CRC-32C of the bytes in UTF-8 (RFC 3720, appendix B.4), eight hexadecimal digits. Lines of version 1 have none.
 */
final class RecordLine {

    static final int MOST_BYTES = 200_000;
    private static final int VERSION = 2;
    private static final Pattern CHECKED = Pattern.compile("(.*),\"crc32c\":\"([0-9a-f]{8})\"}", Pattern.DOTALL);
    private static final int MOST_OUTCOMES = 1000;

    private final ObjectMapper json;

    RecordLine() {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(8)
                        .maxStringLength(2000)
                        .maxNumberLength(40)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
        json = new ObjectMapper(factory);
    }

    /** The line of a log. */
    String write(AttemptRecord record) {
        String fields = json(record, VERSION);
        String checked = fields.substring(0, fields.length() - 1);
        return checked + ",\"crc32c\":\"" + checksum(checked) + "\"}";
    }

    /** What names a record for other systems: it stays the same whatever the version of the log. */
    String identity(AttemptRecord record) {
        return json(record, 1);
    }

    private static String checksum(String text) {
        CRC32C crc = new CRC32C();
        crc.update(text.getBytes(StandardCharsets.UTF_8));
        return String.format("%08x", crc.getValue());
    }

    private static void requireChecksum(String text) {
        Matcher matcher = CHECKED.matcher(text);
        if (!matcher.matches() || !checksum(matcher.group(1)).equals(matcher.group(2))) {
            throw new IllegalArgumentException("its checksum does not match: the line was damaged or changed by hand");
        }
    }

    private String json(AttemptRecord record, int version) {
        ObjectNode line = json.createObjectNode();
        line.put("version", version);
        line.put("trainee", record.trainee());
        line.put("lessonId", record.lessonId());
        line.put("exerciseId", record.exerciseId());
        line.put("committedAt", record.committedAt().toString());
        record.secondsTaken().ifPresent(seconds -> line.put("secondsTaken", seconds));
        line.put("marks", record.marks());
        line.put("maximum", record.maximum());
        line.put("hintsTaken", record.hintsTaken());
        line.put("needlessDigs", record.needlessDigs());
        line.put("damageLeft", record.damageLeft());
        line.put("damageMissed", record.damageMissed());
        ArrayNode outcomes = line.putArray("outcomes");
        for (Outcome outcome : record.outcomes()) {
            ObjectNode node = outcomes.addObject();
            node.put("kind", outcome.kind().id());
            node.put("truth", word(outcome.truth()));
            outcome.flaggedKind().ifPresent(kind -> node.put("flaggedKind", kind.id()));
            outcome.flaggedVerdict().ifPresent(verdict -> node.put("flaggedVerdict", word(verdict)));
            outcome.placeErrorMetres().ifPresent(error -> node.put("placeErrorMetres", error));
            node.put("marks", outcome.marks());
        }
        ArrayNode strays = line.putArray("strayKinds");
        record.strayKinds().forEach(kind -> strays.add(kind.id()));
        record.made().ifPresent(made -> MadeField.write(line, made));
        if (version > 1) {
            record.exerciseTitle().ifPresent(title -> line.put("exerciseTitle", title));
        }
        try {
            return json.writeValueAsString(line);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a record could not be written as JSON", e);
        }
    }

    /** Refuses anything but a sound record, in words that name the field. */
    AttemptRecord read(String text) {
        JsonNode line;
        try {
            line = json.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("it is not sound JSON", e);
        }
        if (line == null || !line.isObject()) {
            throw new IllegalArgumentException("it is no JSON object");
        }
        int version = whole(line, "version");
        if (version > VERSION) {
            throw new IllegalArgumentException(
                    "version is " + version + "; this program reads version " + VERSION + " and needs an update");
        }
        if (version > 1) {
            requireChecksum(text.strip());
        } else if (version < 1 || line.has("crc32c")) {
            throw new IllegalArgumentException(
                    "version is " + version + "; a line with a checksum has version " + VERSION);
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (JsonNode node : list(line, "outcomes")) {
            outcomes.add(outcome(node));
        }
        List<EventKind> strays = new ArrayList<>();
        list(line, "strayKinds").forEach(node -> strays.add(EventKind.ofId(node.asText())));
        return new AttemptRecord(
                text(line, "trainee"),
                text(line, "lessonId"),
                text(line, "exerciseId"),
                instant(text(line, "committedAt")),
                optional(line, "secondsTaken"),
                number(line, "marks"),
                number(line, "maximum"),
                whole(line, "hintsTaken"),
                whole(line, "needlessDigs"),
                whole(line, "damageLeft"),
                whole(line, "damageMissed"),
                outcomes,
                strays,
                line.has(MadeField.NAME)
                        ? Optional.of(MadeField.read(line.get(MadeField.NAME)))
                        : ReadableId.request(text(line, "exerciseId")),
                line.has("exerciseTitle") ? Optional.of(text(line, "exerciseTitle")) : Optional.empty());
    }

    private static Outcome outcome(JsonNode node) {
        Optional<EventKind> flagged =
                node.has("flaggedKind") ? Optional.of(EventKind.ofId(text(node, "flaggedKind"))) : Optional.empty();
        Optional<Verdict> verdict =
                node.has("flaggedVerdict") ? Optional.of(verdict(text(node, "flaggedVerdict"))) : Optional.empty();
        return new Outcome(
                EventKind.ofId(text(node, "kind")),
                verdict(text(node, "truth")),
                flagged,
                verdict,
                optional(node, "placeErrorMetres"),
                number(node, "marks"));
    }

    private static String word(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    private static Verdict verdict(String word) {
        for (Verdict verdict : Verdict.values()) {
            if (word(verdict).equals(word)) {
                return verdict;
            }
        }
        throw new IllegalArgumentException("verdict is \"" + word + "\"; allowed are belongs and damage");
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "committedAt is \"" + text + "\"; write a time such as 2031-03-01T08:00:00Z", e);
        }
    }

    private static JsonNode field(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null || value.isNull()) {
            throw new IllegalArgumentException(name + " is missing");
        }
        return value;
    }

    private static String text(JsonNode node, String name) {
        JsonNode value = field(node, name);
        if (!value.isTextual() || value.asText().length() > AttemptRecord.MOST_TEXT) {
            throw new IllegalArgumentException(
                    name + " must be text of at most " + AttemptRecord.MOST_TEXT + " characters");
        }
        return value.asText();
    }

    private static double number(JsonNode node, String name) {
        JsonNode value = field(node, name);
        if (!value.isNumber() || !Double.isFinite(value.asDouble())) {
            throw new IllegalArgumentException(name + " is " + value + "; it must be a number");
        }
        return value.asDouble();
    }

    private static OptionalDouble optional(JsonNode node, String name) {
        return node.has(name) ? OptionalDouble.of(number(node, name)) : OptionalDouble.empty();
    }

    private static int whole(JsonNode node, String name) {
        JsonNode value = field(node, name);
        if (!value.isInt()) {
            throw new IllegalArgumentException(name + " is " + value + "; it must be a whole number");
        }
        return value.asInt();
    }

    private static JsonNode list(JsonNode node, String name) {
        JsonNode value = field(node, name);
        if (!value.isArray() || value.size() > MOST_OUTCOMES) {
            throw new IllegalArgumentException(name + " must be a list of at most " + MOST_OUTCOMES + " entries");
        }
        return value;
    }
}
