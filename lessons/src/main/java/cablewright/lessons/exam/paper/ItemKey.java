// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

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
public record ItemKey(String itemId, String exerciseId, List<String> choices, List<String> reasons) {

    /** Copies the lists and checks the names. */
    public ItemKey {
        Require.id(itemId);
        Require.id(exerciseId);
        choices = List.copyOf(Require.present("choices", choices));
        reasons = List.copyOf(Require.present("reasons", reasons));
    }
}
