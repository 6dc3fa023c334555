// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class EditHistoryTest {

    @Property
    void undoingAllStepsAndRedoingThemComesBack(@ForAll @Size(max = 40) List<@IntRange(max = 9) Integer> steps) {
        EditHistory<Integer> history = new EditHistory<>(-1);
        steps.forEach(next -> history.step("step", next));
        int last = history.now();
        while (history.undoName().isPresent()) {
            history.undo();
        }
        assertEquals(-1, history.now());
        while (history.redoName().isPresent()) {
            history.redo();
        }
        assertEquals(last, history.now());
    }

    @Test
    void aStepAfterUndoForgetsWhatWasUndone() {
        EditHistory<String> history = new EditHistory<>("a");
        history.step("step", "b");
        history.undo();
        history.step("step", "c");
        assertFalse(history.redoName().isPresent());
        history.undo();
        assertEquals("a", history.now());
    }
}
