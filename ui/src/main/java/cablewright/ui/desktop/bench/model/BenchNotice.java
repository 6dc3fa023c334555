// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import java.util.List;

/**
 * Something that the Bench says above the work, with what can be done about it. It blocks nothing and stays until it is
 * answered or closed.
 *
 * @param text what is said
 * @param deeds what can be done; doing one closes the notice
 * @param closed what is done where it is closed without any of them
 */
public record BenchNotice(String text, List<Deed> deeds, Runnable closed) {

    /** Copies the list. */
    public BenchNotice {
        deeds = List.copyOf(deeds);
    }

    static BenchNotice of(String text, Deed... deeds) {
        return new BenchNotice(text, List.of(deeds), () -> {});
    }

    /**
     * Something that can be done.
     *
     * @param id name of its button
     * @param words what stands on it
     * @param action what it does
     */
    public record Deed(String id, String words, Runnable action) {}
}
