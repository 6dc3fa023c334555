// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.simulator.line.CableType;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.EventsViewModel;
import cablewright.ui.desktop.practice.SettingKeys;
import cablewright.ui.desktop.track.AxisKeys;
import cablewright.ui.desktop.track.AxisViewModel.Stride;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * The keys of the Bench. Settings and cursor have the keys that they have in Practice; I and a letter put something on
 * the cable.
 */
final class BenchKeys {

    private final BenchViewModel model;
    private final FileDialogs files;
    private final Runnable openMenu;
    private final BenchTabs tabs;
    private boolean waitsForLetter;

    BenchKeys(BenchViewModel model, FileDialogs files, Runnable openMenu, BenchTabs tabs) {
        this.model = model;
        this.files = files;
        this.openMenu = openMenu;
        this.tabs = tabs;
    }

    /** Acts on a key; one that means something is used up. */
    void pressed(KeyEvent event) {
        if (AxisKeys.isForTheControl(event)) {
            return;
        }
        boolean used = waitsForLetter ? letter(event) : event.isShortcutDown() ? withShortcut(event) : plain(event);
        if (used) {
            event.consume();
        }
    }

    /** The letter after I. */
    private boolean letter(KeyEvent event) {
        if (event.getCode().isModifierKey()) {
            return false;
        }
        waitsForLetter = false;
        model.events().waitForLetter(false);
        CableType type = model.document().now().cable().runs().get(0).type();
        model.names().ofLetter(event.getText(), type).ifPresent(model.events()::insert);
        return true;
    }

    private boolean withShortcut(KeyEvent event) {
        EventsViewModel events = model.events();
        switch (event.getCode()) {
            case Z:
                if (event.isShiftDown()) {
                    model.document().redo();
                } else {
                    model.document().undo();
                }
                return true;
            case Y:
                model.document().redo();
                return true;
            case S:
                if (event.isShiftDown()) {
                    files.saveAs();
                } else {
                    files.save();
                }
                return true;
            case C:
                events.copy();
                return true;
            case X:
                events.cut();
                return true;
            case V:
                events.paste();
                return true;
            case D:
                events.duplicate();
                return true;
            case A:
                events.selectAll();
                return true;
            default:
                return AxisKeys.pressed(event, model.trace().traceTrack());
        }
    }

    private boolean plain(KeyEvent event) {
        if (event.isAltDown()) {
            return alt(event);
        }
        if (SettingKeys.pressed(event, model.trace().settings())) {
            return true;
        }
        return AxisKeys.pressed(event, model.trace().traceTrack()) || bench(event);
    }

    private boolean alt(KeyEvent event) {
        if (event.getCode() != KeyCode.LEFT && event.getCode() != KeyCode.RIGHT) {
            return false;
        }
        model.events()
                .nudge(event.getCode() == KeyCode.RIGHT ? 1 : -1, event.isShiftDown() ? Stride.FINE : Stride.USUAL);
        return true;
    }

    private boolean bench(KeyEvent event) {
        EventsViewModel events = model.events();
        switch (event.getCode()) {
            case I:
                waitsForLetter = true;
                events.waitForLetter(true);
                return true;
            case INSERT:
                openMenu.run();
                return true;
            case N:
                events.selectNeighbour(1);
                return true;
            case B:
                events.selectNeighbour(-1);
                return true;
            case M:
                events.moveToCursor();
                return true;
            case X:
                events.cutRun();
                return true;
            case C:
                model.comparisonProperty().set(model.comparisonProperty().get().next());
                return true;
            case L:
                model.trace().lattice().toggle();
                return true;
            case DELETE:
            case BACK_SPACE:
                events.remove();
                return true;
            case ESCAPE:
                events.leave();
                return true;
            case ENTER:
                tabs.enterInspector();
                return true;
            case F2:
                tabs.renameSelected();
                return true;
            default:
                return false;
        }
    }
}
