// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Hint;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.line.CableFamily;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Examines what an exercise says: whether anything is left blank or unfinished, out of reach, or unsaid that could hurt. */
public final class TextCheck {

    /** Marks that writers leave for later: common practice, no source. */
    private static final Pattern UNFINISHED = Pattern.compile(
            "\\b(?:todo|tbd|fixme|xxx|lorem ipsum)\\b|\\?{3}|\\[\\s*(?:\\.{3}|…)?\\s*]|^\\s*(?:\\.{3}|…)\\s*$",
            Pattern.CASE_INSENSITIVE | Pattern.MULTILINE);

    private static final Pattern NOTE = Pattern.compile("(?m)^\\*[^*]+\\*$");

    /** What can hurt on a line of a family, whatever else is said: common practice, no source. */
    private static final Map<CableFamily, Caution> USUAL = Map.of(
            CableFamily.COAX_PLANT, Caution.LIVE_PLANT_POWER,
            CableFamily.TELEPHONE_PAIR, Caution.RINGING_VOLTAGE,
            CableFamily.BUILDING_WIRE, Caution.MAINS);

    private final Exercise exercise;
    private final List<Remark> remarks = new ArrayList<>();

    private TextCheck(Exercise exercise) {
        this.exercise = exercise;
    }

    /** What can be wrong with a text. */
    public enum Kind {
        /** Nothing is written there. */
        BLANK,
        /** A mark for later still stands there. */
        UNFINISHED,
        /** Hints before it cost all marks that there are. */
        OUT_OF_REACH,
        /** Something that can hurt on such a line is not among the cautions. */
        CAUTION_MISSING
    }

    /**
     * Something to put right.
     *
     * @param kind what it is
     * @param where the text: brief, explanation, title, question, or hint with its number; the caution that is missing
     */
    public record Remark(Kind kind, String where) {}

    /**
     * Examines an exercise.
     *
     * @param exercise the exercise
     * @param maximumMarks most that can be earned in it
     * @return what is to be put right, in the order in which an exercise is written
     */
    public static List<Remark> of(Exercise exercise, double maximumMarks) {
        TextCheck check = new TextCheck(exercise);
        check.text("title", exercise.title());
        check.text("brief", NOTE.matcher(exercise.brief()).replaceAll(""));
        check.cautions();
        check.hints(maximumMarks);
        exercise.prediction().ifPresent(asked -> {
            check.text("question", asked.question());
            check.text("reason", asked.explanation());
        });
        check.text("explanation", exercise.explanation());
        return List.copyOf(check.remarks);
    }

    private void text(String where, String text) {
        if (text.isBlank()) {
            remarks.add(new Remark(Kind.BLANK, where));
        } else if (UNFINISHED.matcher(text).find()) {
            remarks.add(new Remark(Kind.UNFINISHED, where));
        }
    }

    private void cautions() {
        exercise.cable().runs().stream()
                .map(run -> USUAL.get(run.type().family()))
                .filter(caution -> caution != null && !exercise.cautions().contains(caution))
                .distinct()
                .forEach(this::missing);
        boolean open = exercise.cable().farEnd() instanceof FarEnd.Open;
        if (open && !exercise.cautions().contains(Caution.STATIC_CHARGE)) {
            missing(Caution.STATIC_CHARGE);
        }
    }

    private void missing(Caution caution) {
        remarks.add(new Remark(Kind.CAUTION_MISSING, caution.name()));
    }

    private void hints(double maximumMarks) {
        double spent = 0;
        for (int i = 0; i < exercise.hints().size(); i++) {
            Hint hint = exercise.hints().get(i);
            String where = "hint " + (i + 1);
            text(where, hint.text());
            if (i > 0 && spent >= maximumMarks) {
                remarks.add(new Remark(Kind.OUT_OF_REACH, where));
            }
            spent += hint.costMarks();
        }
    }
}
