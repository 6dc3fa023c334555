// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.UUID;

/**
 * Records as xAPI statements (IEEE 9274.1.1): who, did what, to which activity, with what result and when.
 *
 * <p>One statement for each attempt: actor an Agent identified by an account, verb {@code answered}, object the exercise as an
 * Activity, result with score (scaled = raw/max), success, completion and duration (ISO 8601), context with the lesson as
 * parent. The id is a name-based UUID of the record, so that exporting twice gives the same statements and a store that
 * already has them keeps one. No version is set: where it is absent the store sets that of the standard by which it was sent. Addresses lie under {@code .invalid} (RFC 2606): they name and never lead anywhere.
 */
public final class XapiStatements {

    private static final String HOME = "https://cablewright.invalid";
    private static final String ANSWERED = "http://adlnet.gov/expapi/verbs/answered";
    private static final String INTERACTION = "http://adlnet.gov/expapi/activities/assessment";
    private static final String LESSON = "http://adlnet.gov/expapi/activities/lesson";
    private static final double PASS = 0.7;

    private final ObjectMapper json = new ObjectMapper();
    private final RecordLine lines = new RecordLine();

    /** Makes a writer of statements. */
    public XapiStatements() {
        // It keeps nothing.
    }

    /**
     * Writes records.
     *
     * @param records the records
     * @return a JSON array of statements, ended by a line end
     */
    public String of(List<AttemptRecord> records) {
        ArrayNode statements = json.createArrayNode();
        records.forEach(record -> fill(statements.addObject(), record));
        try {
            return json.writerWithDefaultPrettyPrinter().writeValueAsString(statements) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("statements could not be written as JSON", e);
        }
    }

    private void fill(ObjectNode statement, AttemptRecord record) {
        byte[] name = lines.identity(record).getBytes(StandardCharsets.UTF_8);
        statement.put("id", UUID.nameUUIDFromBytes(name).toString());
        ObjectNode actor = statement.putObject("actor");
        actor.put("objectType", "Agent");
        actor.put("name", record.trainee());
        actor.putObject("account").put("homePage", HOME).put("name", record.trainee());
        ObjectNode verb = statement.putObject("verb");
        verb.put("id", ANSWERED);
        verb.putObject("display").put("en", "answered");
        activity(
                statement.putObject("object"),
                HOME + "/exercises/" + segment(record.exerciseId()),
                INTERACTION,
                record.exerciseId());
        result(statement.putObject("result"), record);
        ArrayNode parents =
                statement.putObject("context").putObject("contextActivities").putArray("parent");
        activity(parents.addObject(), HOME + "/lessons/" + segment(record.lessonId()), LESSON, record.lessonId());
        statement.put("timestamp", record.committedAt().toString());
    }

    /** A name as one segment of a path: all but the unreserved characters is percent-encoded (RFC 3986, section 2). */
    private static String segment(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("*", "%2A")
                .replace("%7E", "~");
    }

    private static void activity(ObjectNode node, String id, String type, String name) {
        node.put("objectType", "Activity");
        node.put("id", id);
        ObjectNode definition = node.putObject("definition");
        definition.put("type", type);
        definition.putObject("name").put("en", name);
    }

    private static void result(ObjectNode result, AttemptRecord record) {
        if (record.maximum() > 0) {
            result.putObject("score")
                    .put("scaled", record.fraction())
                    .put("raw", record.marks())
                    .put("min", 0.0)
                    .put("max", record.maximum());
        }
        result.put("success", record.fraction() >= PASS);
        result.put("completion", true);
        record.secondsTaken()
                .ifPresent(seconds -> result.put(
                        "duration",
                        Duration.ofMillis(Math.round(1000 * seconds)).toString()));
        ObjectNode extensions = result.putObject("extensions");
        extensions.put(HOME + "/needless-digs", record.needlessDigs());
        extensions.put(HOME + "/damage-left", record.damageLeft());
        extensions.put(HOME + "/damage-missed", record.damageMissed());
        extensions.put(HOME + "/hints-taken", record.hintsTaken());
    }
}
