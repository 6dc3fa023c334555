// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import javafx.scene.Scene;
import javafx.scene.layout.Region;

/** Keeps for the trace the room that it needs: two fifths of the window's height on every page that shows one. */
public final class TraceRoom {

    private static final double SHARE = 0.4;

    private final Region page;
    private final TraceTrack trace;

    private TraceRoom(Region page, TraceTrack trace) {
        this.page = page;
        this.trace = trace;
    }

    /**
     * Gives a trace its room on a page, whatever size the window takes.
     *
     * @param page the page
     * @param trace the trace on it
     */
    public static void keep(Region page, TraceTrack trace) {
        TraceRoom room = new TraceRoom(page, trace);
        page.heightProperty().addListener(changed -> room.fit());
        page.sceneProperty().addListener(changed -> room.fit());
    }

    private void fit() {
        Scene scene = page.getScene();
        if (scene != null) {
            trace.setMinHeight(
                    Math.ceil(SHARE * scene.getRoot().getLayoutBounds().getHeight()));
        }
    }
}
