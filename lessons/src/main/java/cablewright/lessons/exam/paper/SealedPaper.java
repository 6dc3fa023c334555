// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exercise.Lines;
import cablewright.simulator.check.Require;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
        String title,
        @Lines String rules,
        String worldNote,
        int minutesAllowed,
        double passMarkFraction,
        String examinerKey,
        List<PaperItem> items,
        List<String> sealed) {

    /** Most minutes of an exam. */
    public static final int MOST_MINUTES = 600;

    /** Most lines to be read in an exam. */
    public static final int MOST_ITEMS = 100;

    private static final int MOST_SEALED_LINES = 10_000;

    /** Copies the lists and checks the ranges. */
    public SealedPaper {
        Require.text("title", title);
        Require.present("rules", rules);
        Require.text("worldNote", worldNote);
        Require.between("minutesAllowed", minutesAllowed, 1, MOST_MINUTES);
        Require.between("passMarkFraction", passMarkFraction, 0, 1);
        try {
            examinerKey = ExaminerKey.checkedPublicKey(Require.present("examinerKey", examinerKey));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "examinerKey is not sound; it must be a public key age1… of an examiner", e);
        }
        items = List.copyOf(Require.present("items", items));
        Require.between("items", items.size(), 1, MOST_ITEMS);
        Set<String> ids = new HashSet<>();
        for (PaperItem item : items) {
            if (!ids.add(item.id())) {
                throw new IllegalArgumentException("items has \"" + item.id() + "\" twice; each needs its own id");
            }
        }
        sealed = List.copyOf(Require.present("sealed", sealed));
        Require.between("sealed", sealed.size(), 1, MOST_SEALED_LINES);
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
