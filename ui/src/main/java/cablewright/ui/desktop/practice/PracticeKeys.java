// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.track.AxisKeys;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys of Practice. Letters never clash: settings have theirs, flags have theirs, and the cursor has the arrows. */
final class PracticeKeys {

    private final ExerciseViewModel model;
    private final ReadingKeys reading;
    private final Runnable playWave;

    PracticeKeys(ExerciseViewModel model, Runnable openKinds, Runnable playWave) {
        this.model = model;
        this.reading = new ReadingKeys(
                model.settings(),
                model.traceTrack(),
                model.flags(),
                model.phaseProperty().isEqualTo(Phase.READING),
                openKinds);
        this.playWave = playWave;
    }

    /** Acts on a key; one that means something is used up. */
    void pressed(KeyEvent event) {
        if (!AxisKeys.isForTheControl(event) && (own(event) || reading.acted(event))) {
            event.consume();
        }
    }

    private boolean own(KeyEvent event) {
        if (event.isShortcutDown()) {
            if (event.getCode() == KeyCode.ENTER) {
                model.askToCommit();
                return true;
            }
            return false;
        }
        switch (event.getCode()) {
            case T:
                playWave.run();
                return true;
            case COMMA:
                model.reveal().wave().step(-1);
                return true;
            case PERIOD:
                model.reveal().wave().step(1);
                return true;
            case L:
                model.reveal().lattice().toggle();
                return true;
            case J:
                model.toggleOtherEnd();
                return true;
            case H:
                model.askForHint();
                return true;
            default:
                return false;
        }
    }
}
