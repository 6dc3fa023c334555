// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.track.AxisKeys;
import cablewright.ui.desktop.track.TraceTrackViewModel;
import javafx.beans.binding.BooleanExpression;
import javafx.scene.input.KeyEvent;

/** The keys of reading a trace, in practice and in an exam: what is set, the cursor, the flags. */
public final class ReadingKeys {

    private final SettingsViewModel settings;
    private final TraceTrackViewModel track;
    private final FlagsViewModel flags;
    private final BooleanExpression open;
    private final Runnable openKinds;

    /**
     * Takes what the keys act on.
     *
     * @param settings what is set on the instrument
     * @param track the trace
     * @param flags the flags
     * @param open whether flags can be set now
     * @param openKinds opens the list of kinds of the selected flag
     */
    public ReadingKeys(
            SettingsViewModel settings,
            TraceTrackViewModel track,
            FlagsViewModel flags,
            BooleanExpression open,
            Runnable openKinds) {
        this.settings = settings;
        this.track = track;
        this.flags = flags;
        this.open = open;
        this.openKinds = openKinds;
    }

    /**
     * Acts on a key.
     *
     * @param event the key
     * @return whether the key means something here
     */
    public boolean acted(KeyEvent event) {
        return event.isShortcutDown() ? withShortcut(event) : plain(event);
    }

    private boolean withShortcut(KeyEvent event) {
        switch (event.getCode()) {
            case Z:
                if (event.isShiftDown()) {
                    flags.redo();
                } else {
                    flags.undo();
                }
                return true;
            case Y:
                flags.redo();
                return true;
            default:
                return AxisKeys.pressed(event, track);
        }
    }

    private boolean plain(KeyEvent event) {
        if (!event.isAltDown() && SettingKeys.pressed(event, settings)) {
            return true;
        }
        return AxisKeys.pressed(event, track) || flag(event);
    }

    private boolean flag(KeyEvent event) {
        double cursor = track.axis().cursorMetresProperty().get();
        switch (event.getCode()) {
            case F:
            case INSERT:
                if (open.get()) {
                    flags.place(cursor);
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
                flags.moveSelected(cursor);
                return true;
            case W:
                if (event.isShiftDown()) {
                    flags.unstretchSelected();
                } else {
                    flags.stretchSelected(cursor);
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
            default:
                return false;
        }
    }

    private void showSelected() {
        flags.selectedDraft()
                .filter(draft -> draft.end() == settings.endProperty().get())
                .ifPresent(draft -> track.axis().showCursorAt(draft.startMetres()));
    }
}
