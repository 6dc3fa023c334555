// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.demonstrations.Demonstrations;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;

class ClassSessionTest {

    private final List<DemonstrationViewModel> models = Demonstrations.all().stream()
            .limit(2)
            .map(one -> new DemonstrationViewModel(
                    one, new SimpleObjectProperty<>(LengthUnit.METRES), Threads.sameThread(), Locale.ROOT))
            .toList();
    private final ClassSession session = new ClassSession(models, 0);

    @Test
    void theRoomIsCountedAndNothingIsShownBeforeItIsRevealed() {
        session.count(0, 1);
        session.count(2, 1);
        session.count(2, 1);
        session.count(2, -1);
        session.count(0, 1);
        session.count(1, -1);
        assertEquals(2, session.countOf(0));
        assertEquals(0, session.countOf(1), "no fewer than nobody");
        assertEquals(3, session.votesProperty().get());
        assertTrue(session.model().figureProperty().get().isEmpty());
        session.goOn();
        assertTrue(session.revealedProperty().get());
        assertEquals(0, session.model().answerProperty().get(), "the answer of most");
        assertTrue(session.model().figureProperty().get().isPresent());
        session.count(1, 1);
        assertEquals(0, session.countOf(1), "it is counted before the answer is known");
    }

    @Test
    void goingOnAsksTheNextQuestionAnewAndAfterTheLastTheFirst() {
        session.goOn();
        assertEquals(
                models.get(0).demonstration().rightAnswer(),
                models.get(0).answerProperty().get());
        session.goOn();
        assertEquals(1, session.indexProperty().get());
        assertFalse(session.revealedProperty().get());
        assertEquals(0, session.votesProperty().get());
        session.goOn();
        session.goOn();
        assertEquals(0, session.indexProperty().get());
        assertEquals(
                DemonstrationViewModel.NO_ANSWER, models.get(0).answerProperty().get());
    }
}
