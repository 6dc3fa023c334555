// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import java.util.List;

/**
 * Which exercise an item of a paper stands for, and which of its choices the paper's choices stand for. Sealed.
 *
 * @param itemId the item
 * @param exerciseId the exercise
 * @param choices the exercise's names of its answers, in the paper's order
 * @param reasons the exercise's names of its reasons, in the paper's order
 */
public record ItemKey(
        @Id String itemId,
        @Id String exerciseId,
        @Id @Entries(most = 8) List<String> choices,
        @Id @Entries(most = 8) List<String> reasons) {

    /** Copies the lists and checks the names. */
    public ItemKey {
        Require.components(ItemKey.class, itemId, exerciseId, choices, reasons);
        choices = List.copyOf(choices);
        reasons = List.copyOf(reasons);
    }
}
