// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/**
 * Controls of which one can't see that they have the focus: the picture with it must differ from the one without by 3 : 1,
 * in as many points as a line along half of the control's edge has (W3C, Web Content Accessibility Guidelines 2.2,
 * criterion 2.4.13).
 */
final class FocusFaults {

    private static final double LEAST_RATIO = 3;
    private static final double AROUND = 6;
    private static final PseudoClass FOCUSED = PseudoClass.getPseudoClass("focused");
    private static final PseudoClass VISIBLE = PseudoClass.getPseudoClass("focus-visible");
    private static final PseudoClass WITHIN = PseudoClass.getPseudoClass("focus-within");

    private final Region root;
    private final Set<String> looked;
    private final List<String> faults = new ArrayList<>();

    private FocusFaults(Region root, Set<String> looked) {
        this.root = root;
        this.looked = looked;
    }

    /**
     * Faults of what can be seen.
     *
     * @param looked what was looked at before and needs no second look; what is new is added
     */
    static List<String> of(Region root, Set<String> looked) {
        FocusFaults found = new FocusFaults(root, looked);
        found.walk(root);
        return found.faults;
    }

    static Set<String> nothingYet() {
        return new HashSet<>();
    }

    private void walk(Node node) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node.isFocusTraversable() && isInside(node) && looked.add(kind(node))) {
            check(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::walk);
        }
    }

    private boolean isInside(Node node) {
        Bounds box = node.localToScene(node.getBoundsInLocal());
        return root.getBoundsInLocal().contains(box) && box.getWidth() > 0 && box.getHeight() > 0;
    }

    /** Controls of one kind and style look alike. */
    private static String kind(Node node) {
        String parent = node.getParent() == null
                ? ""
                : String.join(".", node.getParent().getStyleClass());
        return node.getClass().getSimpleName() + node.getStyleClass() + node.getPseudoClassStates() + parent;
    }

    private void check(Node node) {
        // What has the focus already would not change.
        focus(node, false);
        WritableImage before = picture(node);
        focus(node, true);
        WritableImage after = picture(node);
        focus(node, false);
        Bounds box = node.getLayoutBounds();
        if (before.getWidth() != after.getWidth() || before.getHeight() != after.getHeight()) {
            faults.add(LayoutFaults.name(node) + ": its size changes with the focus");
            return;
        }
        int changed = changed(before, after);
        double least = Math.min(box.getWidth(), 60) + Math.min(box.getHeight(), 60);
        if (changed < least) {
            faults.add(LayoutFaults.name(node) + ": with the focus only " + changed + " points change by " + LEAST_RATIO
                    + " : 1; " + Math.round(least) + " would be seen");
        }
    }

    private void focus(Node node, boolean on) {
        node.pseudoClassStateChanged(FOCUSED, on);
        node.pseudoClassStateChanged(VISIBLE, on);
        for (Node up = node; up != null; up = up.getParent()) {
            up.pseudoClassStateChanged(WITHIN, on);
        }
        root.applyCss();
        root.layout();
    }

    private WritableImage picture(Node node) {
        Bounds box = node.localToScene(node.getLayoutBounds());
        Bounds card = node.getParent().localToScene(node.getParent().getLayoutBounds());
        // A track's frame is that of its card.
        Bounds shown = node.getParent().getStyleClass().contains("card") ? card : box;
        SnapshotParameters parameters = new SnapshotParameters();
        parameters.setViewport(new Rectangle2D(
                shown.getMinX() - AROUND,
                shown.getMinY() - AROUND,
                shown.getWidth() + 2 * AROUND,
                shown.getHeight() + 2 * AROUND));
        return root.snapshot(parameters, null);
    }

    private static int changed(WritableImage before, WritableImage after) {
        PixelReader one = before.getPixelReader();
        PixelReader other = after.getPixelReader();
        int changed = 0;
        for (int y = 0; y < before.getHeight(); y++) {
            for (int x = 0; x < before.getWidth(); x++) {
                if (one.getArgb(x, y) != other.getArgb(x, y)) {
                    Color a = one.getColor(x, y);
                    Color b = other.getColor(x, y);
                    changed += ContrastFaults.ratio(a, b) >= LEAST_RATIO ? 1 : 0;
                }
            }
        }
        return changed;
    }
}
