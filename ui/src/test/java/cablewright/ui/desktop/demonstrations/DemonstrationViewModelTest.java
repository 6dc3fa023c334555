// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.demonstrations.Control;
import cablewright.ui.demonstrations.Demonstration;
import cablewright.ui.demonstrations.ProgressListener;
import cablewright.ui.demonstrations.Values;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;

class DemonstrationViewModelTest {

    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private final Deque<Runnable> work = new ArrayDeque<>();
    private int stopped;

    /** Says in its caption what was set. */
    private final Demonstration echo = new Demonstration() {
        @Override
        public String id() {
            return "echo";
        }

        @Override
        public int answers() {
            return 2;
        }

        @Override
        public int rightAnswer() {
            return 1;
        }

        @Override
        public int rightReason() {
            return 2;
        }

        @Override
        public List<Control> controls() {
            return List.of(new Control("x", Control.Form.LINEAR, Control.Measure.NUMBER, 0, 10, 5));
        }

        @Override
        public Optional<Figure> figure(Values values, Words lengths, ProgressListener hearing) {
            if (hearing.isCancelled()) {
                stopped++;
                return Optional.empty();
            }
            if (values.get("x") > 9) {
                throw new IllegalArgumentException("x is too large; allowed is 0 to 9");
            }
            hearing.progress(0.5);
            hearing.preview(figureOf("coarse"));
            return Optional.of(
                    figureOf(values.get("x") + " " + lengths.quantities().unit().symbol()));
        }

        @Override
        public Values clicked(int panel, double x, double y, Values values) {
            return values.with("x", 10 * x);
        }
    };

    private static Figure figureOf(String caption) {
        return new Figure("echo", List.of(), caption, "");
    }

    private DemonstrationViewModel atOnce() {
        return new DemonstrationViewModel(echo, unit, Threads.sameThread(), Locale.ROOT);
    }

    private static String caption(DemonstrationViewModel model) {
        return model.figureProperty().get().orElseThrow().caption();
    }

    @Test
    void nothingIsShownBeforeTheAnswer() {
        DemonstrationViewModel model = atOnce();
        model.set("x", 3);
        unit.set(LengthUnit.FEET);
        assertEquals(Optional.empty(), model.figureProperty().get());
        model.answer(0, 0);
        assertEquals("3.0 ft", caption(model));
        assertThrows(IllegalArgumentException.class, () -> model.answer(2, 0));
        assertThrows(IllegalArgumentException.class, () -> model.answer(1, Demonstration.REASONS));
    }

    @Test
    void slidersClicksAndTheUnitAreFollowedOnceAnswered() {
        DemonstrationViewModel model = atOnce();
        model.answer(1, 0);
        model.set("x", 7);
        assertEquals("7.0 m", caption(model));
        model.click(0, 0.2, 0.5);
        assertEquals("2.0 m", caption(model));
        unit.set(LengthUnit.FEET);
        assertEquals("2.0 ft", caption(model));
        assertFalse(model.runningProperty().get());
    }

    @Test
    void whatCanNotBeIsSaidAndTheLastFigureStays() {
        DemonstrationViewModel model = atOnce();
        model.answer(1, 0);
        model.set("x", 9.5);
        assertEquals(
                "x is too large; allowed is 0 to 9", model.problemProperty().get());
        assertEquals("5.0 m", caption(model));
        model.set("x", 4);
        assertEquals("", model.problemProperty().get());
    }

    @Test
    void askingAgainForgetsFigureAndSettings() {
        DemonstrationViewModel model = atOnce();
        model.answer(1, 0);
        model.set("x", 7);
        model.askAgain();
        assertEquals(Optional.empty(), model.figureProperty().get());
        assertEquals(5, model.valuesProperty().get().get("x"));
        assertEquals(DemonstrationViewModel.NO_ANSWER, model.answerProperty().get());
    }

    @Test
    void ofManySettingsOnlyTheLastIsShownAndEarlierOnesAreStopped() {
        DemonstrationViewModel model =
                new DemonstrationViewModel(echo, unit, new Threads(work::add, Runnable::run), Locale.ROOT);
        model.answer(1, 0);
        model.set("x", 1);
        model.set("x", 2);
        model.set("x", 3);
        assertTrue(model.runningProperty().get());
        while (!work.isEmpty()) {
            work.remove().run();
        }
        assertEquals("3.0 m", caption(model));
        assertEquals(1, stopped);
        assertFalse(model.runningProperty().get());
    }

    @Test
    void cancelledFigureNeverComes() {
        DemonstrationViewModel model =
                new DemonstrationViewModel(echo, unit, new Threads(work::add, Runnable::run), Locale.ROOT);
        model.answer(1, 0);
        model.cancel();
        work.remove().run();
        assertEquals(Optional.empty(), model.figureProperty().get());
        assertFalse(model.runningProperty().get());
    }
}
