// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Steps of one immutable state that can be undone and redone.
 *
 * @param <S> the state
 */
final class History<S> {

    private static final int MOST_STEPS = 500;

    private final Deque<S> before = new ArrayDeque<>();
    private final Deque<S> after = new ArrayDeque<>();
    private S now;

    History(S first) {
        now = first;
    }

    S now() {
        return now;
    }

    /** Takes a step; a step that changes nothing is none. */
    void step(S next) {
        if (next.equals(now)) {
            return;
        }
        before.push(now);
        if (before.size() > MOST_STEPS) {
            before.removeLast();
        }
        after.clear();
        now = next;
    }

    boolean canUndo() {
        return !before.isEmpty();
    }

    boolean canRedo() {
        return !after.isEmpty();
    }

    void undo() {
        if (canUndo()) {
            after.push(now);
            now = before.pop();
        }
    }

    void redo() {
        if (canRedo()) {
            before.push(now);
            now = after.pop();
        }
    }
}
