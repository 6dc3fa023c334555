// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.strip;

import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/** Scrolls a pane so that what has the focus in it can be seen: who uses keys alone never works unseen. */
public final class ScrollToFocus {

    private static final double MARGIN = 8;

    private final ScrollPane pane;
    private final ChangeListener<Node> follow = (o, before, now) -> show(now);

    private ScrollToFocus(ScrollPane pane) {
        this.pane = pane;
    }

    /**
     * Lets a pane follow the focus.
     *
     * @param pane the pane
     * @return the pane
     */
    public static ScrollPane on(ScrollPane pane) {
        ScrollToFocus made = new ScrollToFocus(pane);
        pane.sceneProperty().addListener((o, before, now) -> made.moved(before, now));
        made.moved(null, pane.getScene());
        return pane;
    }

    private void moved(Scene before, Scene now) {
        if (before != null) {
            before.focusOwnerProperty().removeListener(follow);
        }
        if (now != null) {
            now.focusOwnerProperty().addListener(follow);
        }
    }

    private void show(Node focused) {
        Node content = pane.getContent();
        if (focused == null || content == null || !isInside(focused, content)) {
            return;
        }
        Bounds there = content.sceneToLocal(focused.localToScene(focused.getLayoutBounds()));
        double high = pane.getViewportBounds().getHeight();
        double hidden = content.getLayoutBounds().getHeight() - high;
        if (hidden <= 0) {
            return;
        }
        double top = pane.getVvalue() * hidden;
        if (there.getMinY() - MARGIN < top) {
            pane.setVvalue(Math.max(0, (there.getMinY() - MARGIN) / hidden));
        } else if (there.getMaxY() + MARGIN > top + high) {
            pane.setVvalue(Math.min(1, (there.getMaxY() + MARGIN - high) / hidden));
        }
    }

    private static boolean isInside(Node node, Node content) {
        Node up = node;
        while (up != null && up != content) {
            up = up.getParent();
        }
        return up == content;
    }
}
