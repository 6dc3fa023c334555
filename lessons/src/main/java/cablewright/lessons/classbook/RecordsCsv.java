// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import java.util.List;
import java.util.Locale;

/**
 * Records as CSV (RFC 4180): one line for each event that could be asked for, so that a spreadsheet can count by kind. Text
 * that a spreadsheet could take for a formula gets an apostrophe in front.
 */
public final class RecordsCsv {

    private static final String HEADER = "trainee,lesson,exercise,committed_at,seconds,marks,maximum,hints,"
            + "needless_digs,damage_left,damage_missed,kind,truth,flagged_kind,flagged_verdict,place_error_m,event_marks";

    private RecordsCsv() {}

    /**
     * Writes records.
     *
     * @param records the records
     * @return the text, with a header line and lines ended by CR LF as the RFC has it
     */
    public static String of(List<AttemptRecord> records) {
        StringBuilder text = new StringBuilder(HEADER).append("\r\n");
        for (AttemptRecord record : records) {
            String front = String.join(
                    ",",
                    cell(record.trainee()),
                    cell(record.lessonId()),
                    cell(record.exerciseId()),
                    record.committedAt().toString(),
                    record.secondsTaken().isPresent()
                            ? Double.toString(record.secondsTaken().getAsDouble())
                            : "",
                    Double.toString(record.marks()),
                    Double.toString(record.maximum()),
                    Integer.toString(record.hintsTaken()),
                    Integer.toString(record.needlessDigs()),
                    Integer.toString(record.damageLeft()),
                    Integer.toString(record.damageMissed()));
            if (record.outcomes().isEmpty()) {
                text.append(front).append(",,,,,,\r\n");
            }
            for (Outcome outcome : record.outcomes()) {
                text.append(front).append(',').append(cells(outcome)).append("\r\n");
            }
        }
        return text.toString();
    }

    private static String cells(Outcome outcome) {
        return String.join(
                ",",
                outcome.kind().id(),
                outcome.truth().name().toLowerCase(Locale.ROOT),
                outcome.flaggedKind().map(kind -> kind.id()).orElse(""),
                outcome.flaggedVerdict()
                        .map(verdict -> verdict.name().toLowerCase(Locale.ROOT))
                        .orElse(""),
                outcome.placeErrorMetres().isPresent()
                        ? Double.toString(outcome.placeErrorMetres().getAsDouble())
                        : "",
                Double.toString(outcome.marks()));
    }

    /**
     * Puts an apostrophe in front of a text that a spreadsheet could take for a formula.
     *
     * @param text the text
     * @return the text for a cell
     */
    public static String withoutFormula(String text) {
        boolean formula = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
        return formula ? "'" + text : text;
    }

    private static String cell(String text) {
        String safe = withoutFormula(text);
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
