// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.practice.model.Phase;
import cablewright.ui.desktop.practice.model.Setting;
import cablewright.ui.desktop.track.AxisKeys;
import java.util.Map;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys of Practice. Letters never clash: settings have theirs, flags have theirs, and the cursor has the arrows. */
final class PracticeKeys {

    private static final Map<KeyCode, Setting> SETTINGS = Map.of(
            KeyCode.E, Setting.END,
            KeyCode.S, Setting.SHAPE,
            KeyCode.P, Setting.WIDTH,
            KeyCode.V, Setting.VELOCITY,
            KeyCode.R, Setting.RANGE,
            KeyCode.G, Setting.GAIN,
            KeyCode.A, Setting.AVERAGES);

    private final ExerciseViewModel model;
    private final Runnable openKinds;
    private final Runnable playWave;

    PracticeKeys(ExerciseViewModel model, Runnable openKinds, Runnable playWave) {
        this.model = model;
        this.openKinds = openKinds;
        this.playWave = playWave;
    }

    /** Acts on a key; one that means something is used up. */
    void pressed(KeyEvent event) {
        if (isForTheControl(event)) {
            return;
        }
        boolean used = event.isShortcutDown() ? withShortcut(event) : plain(event);
        if (used) {
            event.consume();
        }
    }

    private static boolean isForTheControl(KeyEvent event) {
        Object target = event.getTarget();
        boolean listIsOpen = target instanceof ComboBoxBase<?> cbb && cbb.isShowing();
        boolean sliderMoves = target instanceof Slider && event.getCode().isArrowKey();
        return target instanceof TextInputControl || listIsOpen || sliderMoves;
    }

    private boolean withShortcut(KeyEvent event) {
        switch (event.getCode()) {
            case Z:
                if (event.isShiftDown()) {
                    model.flags().redo();
                } else {
                    model.flags().undo();
                }
                return true;
            case Y:
                model.flags().redo();
                return true;
            case ENTER:
                model.commit();
                return true;
            default:
                return AxisKeys.pressed(event, model.traceTrack());
        }
    }

    private boolean plain(KeyEvent event) {
        if (SETTINGS.containsKey(event.getCode()) && !event.isAltDown()) {
            Setting setting = SETTINGS.get(event.getCode());
            if (model.settings().isFree(setting)) {
                model.settings().step(setting, event.isShiftDown() ? -1 : 1);
            }
            return true;
        }
        return AxisKeys.pressed(event, model.traceTrack()) || flags(event);
    }

    private boolean flags(KeyEvent event) {
        FlagsViewModel flags = model.flags();
        double hair = model.axis().hairMetresProperty().get();
        switch (event.getCode()) {
            case F:
            case INSERT:
                if (model.phaseProperty().get() == Phase.READING) {
                    flags.place(hair);
                }
                return true;
            case N:
                flags.selectNeighbour(1);
                showSelected();
                return true;
            case B:
                flags.selectNeighbour(-1);
                showSelected();
                return true;
            case M:
                flags.moveSelected(hair);
                return true;
            case W:
                if (event.isShiftDown()) {
                    flags.unstretchSelected();
                } else {
                    flags.stretchSelected(hair);
                }
                return true;
            case D:
                flags.turnVerdict();
                return true;
            case K:
                openKinds.run();
                return true;
            case DELETE:
            case BACK_SPACE:
                flags.removeSelected();
                return true;
            case T:
                playWave.run();
                return true;
            case L:
                model.reveal().lattice().toggle();
                return true;
            case J:
                model.toggleOtherEnd();
                return true;
            case H:
                model.takeHint();
                return true;
            default:
                return false;
        }
    }

    private void showSelected() {
        model.flags()
                .selectedDraft()
                .filter(draft -> draft.end() == model.settings().endProperty().get())
                .ifPresent(draft -> model.axis().showHairAt(draft.startMetres()));
    }
}
