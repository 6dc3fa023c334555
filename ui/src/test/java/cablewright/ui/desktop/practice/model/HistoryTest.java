// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class HistoryTest {

    @Property
    void undoingAllStepsAndRedoingThemComesBack(@ForAll @Size(max = 40) List<@IntRange(max = 9) Integer> steps) {
        History<Integer> history = new History<>(-1);
        steps.forEach(history::step);
        int last = history.now();
        while (history.canUndo()) {
            history.undo();
        }
        assertEquals(-1, history.now());
        while (history.canRedo()) {
            history.redo();
        }
        assertEquals(last, history.now());
    }

    @Test
    void aStepAfterUndoForgetsWhatWasUndone() {
        History<String> history = new History<>("a");
        history.step("b");
        history.undo();
        history.step("c");
        assertFalse(history.canRedo());
        history.undo();
        assertEquals("a", history.now());
    }
}
