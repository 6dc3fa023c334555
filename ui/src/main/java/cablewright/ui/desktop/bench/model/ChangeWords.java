// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.DocumentChange;
import cablewright.lessons.bench.DocumentChanges;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Lists the differences between two versions of a document. */
final class ChangeWords {

    private static final int MOST_TOLD = 5;

    private final Texts texts;

    ChangeWords(Texts texts) {
        this.texts = texts;
    }

    /** Such as "pinch1 came; tap2 moved; the drawing changed". */
    String between(Lesson before, Lesson after) {
        List<DocumentChange> changes = DocumentChanges.between(before, after);
        boolean several = before.exercises().size() > 1 || after.exercises().size() > 1;
        String listed = changes.stream()
                .limit(MOST_TOLD)
                .map(change -> one(change, several))
                .collect(Collectors.joining("; "));
        int more = changes.size() - MOST_TOLD;
        return more > 0 ? texts.say("changes.more", listed, more) : listed;
    }

    private String one(DocumentChange change, boolean several) {
        String what = texts.say(
                "change." + change.what().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                change.subject(),
                change.exerciseTitle());
        return several ? texts.say("changes.in", change.exerciseTitle(), what) : what;
    }
}
