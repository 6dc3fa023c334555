// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import java.util.Arrays;
import java.util.List;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/**
 * Demonstrations before a class: a question, the count of the room's answers, then what follows, and on to the next
 * question.
 */
public final class ClassSession {

    /** Most answers that are counted for one choice: more than any room holds. */
    static final int MOST = 999;

    private final List<DemonstrationViewModel> models;
    private final ReadOnlyIntegerWrapper index = new ReadOnlyIntegerWrapper();
    private final ReadOnlyBooleanWrapper revealed = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper votes = new ReadOnlyIntegerWrapper();
    private int[] counts = new int[0];

    /**
     * Begins with a question.
     *
     * @param models the demonstrations, in their order
     * @param first which is asked first, from 0
     */
    ClassSession(List<DemonstrationViewModel> models, int first) {
        this.models = List.copyOf(models);
        ask(first);
    }

    private void ask(int next) {
        index.set(next);
        DemonstrationViewModel model = model();
        model.askAgain();
        counts = new int[model.demonstration().answers()];
        votes.set(0);
        revealed.set(false);
    }

    DemonstrationViewModel model() {
        return models.get(index.get());
    }

    /**
     * Counts answers of the room.
     *
     * @param answer which answer, from 0; one that there is not counts nothing
     * @param more how many more; below 0 fewer
     */
    void count(int answer, int more) {
        if (!revealed.get() && answer >= 0 && answer < counts.length) {
            counts[answer] = Math.max(0, Math.min(MOST, counts[answer] + more));
            votes.set(Arrays.stream(counts).sum());
        }
    }

    /**
     * Returns how many gave an answer.
     *
     * @param answer which answer, from 0
     * @return their number
     */
    int countOf(int answer) {
        return counts[answer];
    }

    /** Reveals the answer and computes what follows from it; or, once it is revealed, asks the next question. */
    void goOn() {
        if (revealed.get()) {
            ask((index.get() + 1) % models.size());
            return;
        }
        revealed.set(true);
        model().answer(given(), model().demonstration().rightReason());
    }

    /** What most of the room said; the right answer where nobody was counted. */
    private int given() {
        int best = model().demonstration().rightAnswer();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > counts[best]) {
                best = i;
            }
        }
        return best;
    }

    ReadOnlyIntegerProperty indexProperty() {
        return index.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty revealedProperty() {
        return revealed.getReadOnlyProperty();
    }

    /** How many answers were counted in all. */
    ReadOnlyIntegerProperty votesProperty() {
        return votes.getReadOnlyProperty();
    }
}
