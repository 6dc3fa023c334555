// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.marking.MarkingRules;
import cablewright.lessons.text.Texts;

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
     * @return Markdown
     */
    public String text() {
        return texts.say(
                "rules",
                FindingWords.marks(MarkingRules.EVENT_MARKS),
                FindingWords.marks(MarkingRules.PLACE_MARKS),
                FindingWords.marks(MarkingRules.KIND_MARKS),
                FindingWords.marks(MarkingRules.VERDICT_MARKS),
                FindingWords.marks(MarkingRules.DIG_COST_MARKS));
    }
}
