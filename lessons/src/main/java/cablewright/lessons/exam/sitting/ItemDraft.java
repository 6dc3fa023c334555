// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import cablewright.simulator.instrument.Settings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What is answered to one item so far.
 *
 * @param flags the flags
 * @param settings what is set
 * @param choiceId answer to the question before the trace
 * @param reasonId reason chosen with it
 * @param openedAt when the item was first opened, by the machine's clock
 */
public record ItemDraft(
        List<Flag> flags,
        Settings settings,
        Optional<String> choiceId,
        Optional<String> reasonId,
        Optional<Instant> openedAt) {

    /** Copies the list. */
    public ItemDraft {
        flags = List.copyOf(flags);
    }

    /**
     * Makes the draft of an item that was not opened yet.
     *
     * @param item the item
     * @return no flag, the settings with which it opens
     */
    public static ItemDraft fresh(PaperItem item) {
        return new ItemDraft(List.of(), item.start().settings(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    static ItemDraft of(Attempt attempt) {
        return new ItemDraft(
                attempt.flags(),
                attempt.settings(),
                attempt.predictedChoiceId(),
                attempt.predictedReasonId(),
                attempt.startedAt());
    }

    Attempt attempt(String itemId, String trainee, Instant now) {
        return new Attempt(itemId, trainee, flags, settings, 0, choiceId, reasonId, openedAt, Optional.of(now));
    }

    /**
     * Changes the flags.
     *
     * @param others the flags
     * @return a draft alike but for them
     */
    public ItemDraft withFlags(List<Flag> others) {
        return new ItemDraft(others, settings, choiceId, reasonId, openedAt);
    }

    /**
     * Changes the settings.
     *
     * @param others the settings
     * @return a draft alike but for them
     */
    public ItemDraft withSettings(Settings others) {
        return new ItemDraft(flags, others, choiceId, reasonId, openedAt);
    }

    /**
     * Answers the question before the trace.
     *
     * @param choice the answer
     * @param reason the reason
     * @return a draft alike but for them
     */
    public ItemDraft withAnswer(String choice, Optional<String> reason) {
        return new ItemDraft(flags, settings, Optional.of(choice), reason, openedAt);
    }

    ItemDraft openedAt(Instant now) {
        return new ItemDraft(flags, settings, choiceId, reasonId, Optional.of(openedAt.orElse(now)));
    }

    /**
     * Returns whether anything was answered.
     *
     * @return whether there is a flag or an answer
     */
    public boolean isAnswered() {
        return !flags.isEmpty() || choiceId.isPresent();
    }
}
