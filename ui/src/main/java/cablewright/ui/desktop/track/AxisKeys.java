// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.desktop.track.AxisViewModel.Stride;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys of the distance axis, the same on every screen: arrows carry the cursor, plus and minus zoom, Q sets a second cursor, O
 * keeps the trace to compare. */
public final class AxisKeys {

    private AxisKeys() {}

    /**
     * Returns whether a key belongs to the control that has the focus.
     *
     * @param event the key
     * @return true while text is typed, a list is open or a slider moved
     */
    public static boolean isForTheControl(KeyEvent event) {
        Object target = event.getTarget();
        boolean listIsOpen = target instanceof ComboBoxBase<?> box && box.isShowing();
        boolean sliderMoves = target instanceof Slider && event.getCode().isArrowKey();
        return target instanceof TextInputControl || listIsOpen || sliderMoves;
    }

    /**
     * Acts on a key.
     *
     * @param event the key
     * @param track the trace, whose samples are the finest step
     * @return whether the key means something here
     */
    public static boolean pressed(KeyEvent event, TraceTrackViewModel track) {
        AxisViewModel axis = track.axis();
        boolean arrow = event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT;
        if (arrow && !event.isAltDown()) {
            Stride stride = event.isShiftDown() ? Stride.FINE : event.isShortcutDown() ? Stride.COARSE : Stride.USUAL;
            axis.stepCursor(event.getCode() == KeyCode.RIGHT ? 1 : -1, stride, track.sampleMetres());
            return true;
        }
        return !event.isShortcutDown() && !event.isAltDown() && plain(event.getCode(), track);
    }

    private static boolean plain(KeyCode key, TraceTrackViewModel track) {
        AxisViewModel axis = track.axis();
        double cursor = axis.cursorMetresProperty().get();
        switch (key) {
            case HOME:
                axis.showCursorAt(0);
                return true;
            case END:
                axis.showCursorAt(axis.extent().toMetres());
                return true;
            case PLUS:
            case ADD:
            case EQUALS:
                axis.zoomIn(cursor);
                return true;
            case MINUS:
            case SUBTRACT:
                axis.zoomOut(cursor);
                return true;
            case DIGIT0:
            case NUMPAD0:
                axis.showAll();
                return true;
            case PAGE_UP:
                axis.panByShare(-0.5);
                return true;
            case PAGE_DOWN:
                axis.panByShare(0.5);
                return true;
            case U:
                track.noiseShownProperty().set(!track.noiseShownProperty().get());
                return true;
            case Q:
                track.aids().toggleSecond();
                return true;
            case O:
                track.aids().toggleKept();
                return true;
            default:
                return false;
        }
    }
}
