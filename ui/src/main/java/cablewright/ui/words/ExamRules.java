// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.MarkingRules;
import cablewright.lessons.text.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What earns and costs marks in an exam, for the paper itself: said before it begins. */
public final class ExamRules {

    /** Bundle of its sentences. */
    public static final String BUNDLE = "cablewright.ui.words.exam";

    private final Texts texts;

    /**
     * Takes the sentences.
     *
     * @param texts sentences of {@link #BUNDLE}
     */
    public ExamRules(Texts texts) {
        this.texts = texts;
    }

    /**
     * Writes the rules with the figures of marking.
     *
     * @param lesson what is asked
     * @return Markdown
     */
    public String text(Lesson lesson) {
        List<String> rules = new ArrayList<>(List.of(
                texts.say(
                        "rules.event",
                        FindingWords.marks(MarkingRules.EVENT_MARKS),
                        FindingWords.marks(MarkingRules.PLACE_MARKS),
                        FindingWords.marks(MarkingRules.KIND_MARKS),
                        FindingWords.marks(MarkingRules.VERDICT_MARKS)),
                texts.say(
                        "rules.place",
                        Quantities.number(100 * MarkingRules.TOLERANCE_SHARE, 0),
                        Quantities.number(MarkingRules.LEAST_TOLERANCE_METRES, 1),
                        Quantities.number(MarkingRules.NO_MATCH_TOLERANCES, 0)),
                texts.say("rules.kind"),
                texts.say(
                        "rules.cost",
                        FindingWords.marks(MarkingRules.DIG_COST_MARKS),
                        FindingWords.marks(MarkingRules.STRAY_COST_MARKS)),
                texts.say("rules.marginal")));
        if (lesson.exercises().stream()
                .anyMatch(exercise -> exercise.prediction().isPresent())) {
            rules.add(texts.say("rules.question", FindingWords.marks(MarkingRules.PREDICTION_MARKS)));
        }
        rules.add(texts.say("rules.examiner"));
        rules.add(texts.say("rules.silence"));
        return rules.stream().map(rule -> "- " + rule + "\n").collect(Collectors.joining());
    }
}
