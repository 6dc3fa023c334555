// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.marking.MarkSheet;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A marked class for other programs: a row for each person. */
public final class ClassTable {

    private static final String LINE_END = "\r\n";

    private final ClassResult result;

    /**
     * Takes a marked class.
     *
     * @param result the class
     */
    public ClassTable(ClassResult result) {
        this.result = result;
    }

    /**
     * Writes CSV (RFC 4180). Text that a spreadsheet could take for a formula gets an apostrophe in front.
     *
     * @return a header and a line for each person
     */
    public String csv() {
        List<String> head = new ArrayList<>(List.of(
                "name",
                "marks",
                "maximum",
                "passed",
                "needless_digs",
                "damage_left",
                "damage_missed",
                "seconds_used",
                "handed_in_at",
                "runs",
                "clock_jump_s",
                "receipt",
                "file"));
        result.lesson().exercises().stream().map(Exercise::id).forEach(id -> head.add("marks_" + id));
        StringBuilder text = new StringBuilder(line(head));
        for (PersonResult person : result.people()) {
            List<String> cells = new ArrayList<>(List.of(
                    person.name(),
                    String.valueOf(person.total().marks()),
                    String.valueOf(person.total().maximum()),
                    String.valueOf(person.total().passed()),
                    String.valueOf(sum(person, Count.DIGS)),
                    String.valueOf(sum(person, Count.LEFT)),
                    String.valueOf(sum(person, Count.MISSED)),
                    String.format(Locale.ROOT, "%.0f", person.answers().secondsUsed()),
                    person.answers().handedInAt().map(Instant::toString).orElse(""),
                    String.valueOf(person.answers().runs()),
                    String.format(Locale.ROOT, "%.0f", person.answers().clockJumpSeconds()),
                    person.receipt(),
                    person.file()));
            person.sheets().forEach(sheet -> cells.add(String.valueOf(sheet.marks())));
            text.append(line(cells));
        }
        return text.toString();
    }

    private enum Count {
        DIGS,
        LEFT,
        MISSED
    }

    private static int sum(PersonResult person, Count what) {
        return person.sheets().stream()
                .mapToInt(sheet -> switch (what) {
                    case DIGS -> sheet.needlessDigs();
                    case LEFT -> sheet.damageLeft();
                    case MISSED -> sheet.damageMissed();
                })
                .sum();
    }

    private static String line(List<String> cells) {
        return String.join(",", cells.stream().map(ClassTable::cell).toList()) + LINE_END;
    }

    private static String cell(String text) {
        String safe = text.matches("(?s)[=+@\\t\\r-].*") && !text.matches("-?[0-9.E]+") ? "'" + text : text;
        return safe.matches("(?s).*[\",\\r\\n].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    /**
     * Writes JSON: people, what was set aside, how each exercise did, and pairs that resemble each other.
     *
     * @return one object, ended by a line end
     */
    public String json() {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode root = mapper.createObjectNode();
        root.put("title", result.title());
        ArrayNode people = root.putArray("people");
        result.people().forEach(person -> fill(people.addObject(), person));
        ArrayNode aside = root.putArray("set_aside");
        result.setAside().forEach(one -> aside.addObject()
                .put("file", one.file())
                .put("reason", word(one.reason()))
                .put("detail", one.detail()));
        ArrayNode items = root.putArray("exercises");
        for (ItemAnalysis item : result.items()) {
            ObjectNode node = items.addObject()
                    .put("exercise", item.exerciseId())
                    .put("answered", item.answered())
                    .put("difficulty", item.difficulty());
            item.discrimination().ifPresent(value -> node.put("discrimination", value));
        }
        ArrayNode pairs = root.putArray("resemblances");
        result.resemblances().forEach(pair -> pairs.addObject()
                .put("first", pair.first())
                .put("second", pair.second())
                .put("shared", pair.shared())
                .put("expected", pair.expected())
                .put("probability", pair.probability()));
        try {
            return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the table could not be written as JSON", e);
        }
    }

    private static void fill(ObjectNode node, PersonResult person) {
        node.put("name", person.name())
                .put("marks", person.total().marks())
                .put("maximum", person.total().maximum())
                .put("passed", person.total().passed())
                .put("seconds_used", person.answers().secondsUsed())
                .put("runs", person.answers().runs())
                .put("clock_jump_s", person.answers().clockJumpSeconds())
                .put("receipt", person.receipt())
                .put("file", person.file());
        person.answers().handedInAt().ifPresent(at -> node.put("handed_in_at", at.toString()));
        ArrayNode sheets = node.putArray("exercises");
        for (MarkSheet sheet : person.sheets()) {
            sheets.addObject()
                    .put("exercise", sheet.exerciseId())
                    .put("marks", sheet.marks())
                    .put("maximum", sheet.maximum())
                    .put("needless_digs", sheet.needlessDigs())
                    .put("damage_left", sheet.damageLeft())
                    .put("damage_missed", sheet.damageMissed());
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
