// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Matches;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * An exam as it is given out: no cable, no answer, nothing that leads back to them.
 *
 * @param title one line
 * @param rules what earns and costs marks, and what the trainee will see of them, in Markdown; shown before the exam begins
 * @param worldNote says that its people and places are invented
 * @param minutesAllowed time for the whole paper, 1 to 600 [min]
 * @param passMarkFraction share of the marks from which the exam is passed, 0 to 1
 * @param examinerKey public key to which the answers are sealed
 * @param items 1 to 100 lines to be read, in an order drawn for this paper
 * @param sealed the examiner's part, sealed to the same key in the age format, in Base64, in lines
 */
public record SealedPaper(
        @Text String title,
        @Lines String rules,
        @Text String worldNote,
        @Between(least = 1, most = SealedPaper.MOST_MINUTES) int minutesAllowed,
        @Between(least = 0, most = 1) double passMarkFraction,
        @Matches(pattern = "age1[02-9ac-hj-np-z]{58}", words = "a public key age1… of an examiner") String examinerKey,
        @Entries(least = 1, most = SealedPaper.MOST_ITEMS) List<PaperItem> items,
        @Entries(least = 1, most = SealedPaper.MOST_SEALED_LINES) @Base64Lines List<String> sealed) {

    /** Most minutes of an exam. */
    public static final int MOST_MINUTES = 600;

    /** Most lines to be read in an exam. */
    public static final int MOST_ITEMS = 100;

    static final int MOST_SEALED_LINES = 10_000;

    /** Copies the lists and checks the ranges. */
    public SealedPaper {
        Require.components(
                SealedPaper.class,
                title,
                rules,
                worldNote,
                minutesAllowed,
                passMarkFraction,
                examinerKey,
                items,
                sealed);
        try {
            ExaminerKey.checkedPublicKey(examinerKey);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "examinerKey is not sound; it must be a public key age1… of an examiner", e);
        }
        items = List.copyOf(items);
        Require.distinct("items", items, PaperItem::id);
        sealed = List.copyOf(sealed);
    }

    /**
     * Finds an item by its name.
     *
     * @param itemId the name
     * @return the item, if the paper has it
     */
    public Optional<PaperItem> item(String itemId) {
        return items.stream().filter(item -> item.id().equals(itemId)).findFirst();
    }

    /**
     * Returns the time for the whole paper.
     *
     * @return the time allowed
     */
    public Duration allowed() {
        return Duration.ofMinutes(minutesAllowed);
    }
}
