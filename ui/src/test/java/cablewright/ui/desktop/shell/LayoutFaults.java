// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** What is wrong with where things lie: text cut short, nodes outside the window or under each other. */
final class LayoutFaults {

    private static final double SLACK = 1.5;
    private static final double SPACE = 8;

    private final List<String> faults = new ArrayList<>();

    private LayoutFaults() {}

    /** Faults of a window that is laid out. */
    static List<String> of(Region root) {
        LayoutFaults found = new LayoutFaults();
        found.walk(root, new Room(0, root.getWidth(), 0, root.getHeight()));
        return found.faults;
    }

    /** Where something can be seen; without end downward and upward in what scrolls. */
    private record Room(double left, double right, double top, double bottom) {

        Room within(Bounds clip) {
            return new Room(
                    Math.max(left, clip.getMinX()),
                    Math.min(right, clip.getMaxX()),
                    Math.max(top, clip.getMinY()),
                    Math.min(bottom, clip.getMaxY()));
        }

        Room scrollingDown(Bounds clip) {
            return new Room(
                    Math.max(left, clip.getMinX()),
                    Math.min(right, clip.getMaxX()),
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY);
        }

        Room wider(double by) {
            return new Room(left, right + by, top, bottom);
        }

        boolean holds(Bounds box) {
            return box.getMinX() >= left - SLACK
                    && box.getMaxX() <= right + SLACK
                    && box.getMinY() >= top - SLACK
                    && box.getMaxY() <= bottom + SLACK;
        }
    }

    private void walk(Node node, Room room) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled labeled && !(node instanceof TitledPane)) {
            checkText(labeled, room);
        }
        // In a flow a line's last space may hang over its edge.
        double hangs = node.getParent() instanceof TextFlow ? SPACE : 0;
        if (node instanceof Text text
                && !text.getText().isBlank()
                && !room.wider(hangs).holds(inScene(text))) {
            fault(text, "is cut off: \"" + text.getText() + "\" at " + place(inScene(text)));
        }
        if (node instanceof TextInputControl) {
            return; // A field scrolls under what is typed.
        }
        if (node instanceof ScrollPane pane) {
            walkScrolled(pane, room);
        } else if (node instanceof Parent parent) {
            Room inner = node.getClip() == null ? room : room.within(clipOf(node));
            if (isLaidOutByUs(parent)) {
                checkChildren((Region) parent);
            }
            parent.getChildrenUnmodifiable().forEach(child -> walk(child, inner));
        }
    }

    private void walkScrolled(ScrollPane pane, Room room) {
        Node content = pane.getContent();
        if (content == null || !content.isVisible()) {
            return;
        }
        Bounds viewport = pane.localToScene(pane.getBoundsInLocal());
        double least = content.minWidth(-1);
        if (pane.isFitToWidth() && least > pane.getViewportBounds().getWidth() + SLACK) {
            fault(
                    pane,
                    "holds what needs " + least + " across and has "
                            + pane.getViewportBounds().getWidth() + ", because of " + name(widest(content)));
        }
        double high = content.getLayoutBounds().getHeight();
        if (pane.getStyleClass().contains("left-scroll")
                && high > pane.getViewportBounds().getHeight() + SLACK) {
            fault(
                    pane,
                    "must scroll down, which it should only below the least size: " + high + " in "
                            + pane.getViewportBounds().getHeight());
        }
        walk(content, room.scrollingDown(viewport));
    }

    /** The innermost node to which a least width is due. */
    private static Node widest(Node node) {
        if (node instanceof Parent parent) {
            return parent.getChildrenUnmodifiable().stream()
                    .filter(Node::isManaged)
                    .max(Comparator.comparingDouble(child -> child.minWidth(-1)))
                    .filter(child -> child.minWidth(-1) > node.minWidth(-1) / 2)
                    .map(LayoutFaults::widest)
                    .orElse(node);
        }
        return node;
    }

    private static Bounds clipOf(Node node) {
        return node.localToScene(node.getClip().getBoundsInParent());
    }

    private static Bounds inScene(Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    private void checkText(Labeled labeled, Room room) {
        String full = labeled.getText();
        if (full == null || full.isBlank() || labeled.getWidth() == 0) {
            return;
        }
        for (Node child : labeled.getChildrenUnmodifiable()) {
            boolean cut = child instanceof Text text
                    && text.isVisible()
                    && text.getText().endsWith(labeled.getEllipsisString())
                    && !full.endsWith(labeled.getEllipsisString());
            // A value too long for its box is told in full by the box's tooltip.
            boolean told = labeled.getParent() instanceof ComboBox<?> box && box.getTooltip() != null;
            if (cut && !told) {
                fault(labeled, "is cut short: \"" + full + "\" as \"" + ((Text) child).getText() + "\"");
            }
        }
        if (!room.holds(inScene(labeled))) {
            fault(labeled, "lies outside of what can be seen: \"" + full + "\" at " + place(inScene(labeled)));
        }
    }

    private static boolean isLaidOutByUs(Parent parent) {
        boolean lays = parent instanceof HBox
                || parent instanceof VBox
                || parent instanceof FlowPane
                || parent instanceof GridPane
                || parent instanceof BorderPane
                || parent instanceof StackPane;
        for (Node up = parent; up != null; up = up.getParent()) {
            if (up instanceof Control && !(up instanceof ScrollPane) && !(up instanceof TabPane)) {
                return false;
            }
        }
        boolean ofASkin = parent.getStyleClass().stream()
                .anyMatch(style -> style.equals("viewport")
                        || style.startsWith("tab-")
                        || style.equals("headers-region")
                        || style.equals("control-buttons-tab"));
        return lays && !ofASkin;
    }

    private void checkChildren(Region parent) {
        List<Node> shown = parent.getChildrenUnmodifiable().stream()
                .filter(child -> child.isManaged() && child.isVisible())
                .filter(child -> child.getLayoutBounds().getWidth() > 0
                        && child.getLayoutBounds().getHeight() > 0)
                .toList();
        Bounds whole = new BoundingBox(-SLACK, -SLACK, parent.getWidth() + 2 * SLACK, parent.getHeight() + 2 * SLACK);
        for (Node child : shown) {
            if (!whole.contains(boxOf(child))) {
                fault(
                        child,
                        "is larger than " + name(parent) + ", which is " + size(parent) + ": " + place(boxOf(child)));
            }
        }
        if (parent instanceof StackPane) {
            return;
        }
        for (int i = 0; i < shown.size(); i++) {
            for (int j = i + 1; j < shown.size(); j++) {
                if (overlap(boxOf(shown.get(i)), boxOf(shown.get(j)))) {
                    fault(shown.get(i), "lies over " + name(shown.get(j)) + " in " + name(parent));
                }
            }
        }
    }

    private static Bounds boxOf(Node child) {
        Bounds own = child.getLayoutBounds();
        return new BoundingBox(
                child.getLayoutX() + own.getMinX(),
                child.getLayoutY() + own.getMinY(),
                own.getWidth(),
                own.getHeight());
    }

    private static boolean overlap(Bounds one, Bounds other) {
        double across = Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX());
        double down = Math.min(one.getMaxY(), other.getMaxY()) - Math.max(one.getMinY(), other.getMinY());
        return across > SLACK && down > SLACK;
    }

    private void fault(Node node, String what) {
        faults.add(name(node) + " " + what);
    }

    private static String size(Region region) {
        return String.format(Locale.ROOT, "%.0f x %.0f", region.getWidth(), region.getHeight());
    }

    private static String place(Bounds box) {
        return String.format(
                Locale.ROOT, "%.0f..%.0f, %.0f..%.0f", box.getMinX(), box.getMaxX(), box.getMinY(), box.getMaxY());
    }

    /** What a node is, and in what. */
    static String name(Node node) {
        StringBuilder name = new StringBuilder();
        Node up = node;
        for (int i = 0; i < 4 && up != null; i++) {
            String one = up.getId() != null
                    ? "#" + up.getId()
                    : up.getClass().getSimpleName() + "." + String.join(".", up.getStyleClass());
            name.insert(0, (i < 3 ? " > " : "") + one);
            up = up.getParent();
        }
        return name.toString().strip();
    }
}
