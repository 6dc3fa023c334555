// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/**
 * A slim row or column of controls. Those at its end that do not fit fold into a menu, each as the menu item that does the
 * same; the first part stays as long as there is room for it.
 */
public final class FoldingStrip extends Pane {

    private static final double GAP_LETTERS = 0.6;

    private final Orientation orientation;
    private final MenuButton more = new MenuButton("", new FontIcon(Feather.MENU));
    private final List<Part> parts = new ArrayList<>();
    private final boolean toTheRight;
    private int shown;

    /** One control, and the menu items that stand for it while it is folded away. */
    private record Part(Node node, Supplier<List<MenuItem>> folded) {}

    /**
     * Makes an empty strip.
     *
     * @param orientation a row or a column
     * @param alignment {@link Pos#CENTER_RIGHT} puts a row's controls at its right end; anything else at its left
     * @param moreWords what the menu of folded controls is called
     */
    public FoldingStrip(Orientation orientation, Pos alignment, String moreWords) {
        this.orientation = orientation;
        this.toTheRight = alignment == Pos.CENTER_RIGHT;
        getStyleClass().add("strip");
        setAccessibleRole(AccessibleRole.TOOL_BAR);
        more.getStyleClass().addAll("flat", "small-button", "strip-more");
        more.setAccessibleText(moreWords);
        more.setTooltip(new Tooltip(moreWords));
        more.setVisible(false);
        more.setOnShowing(event -> fill());
        getChildren().add(more);
    }

    /**
     * Adds a control at the end.
     *
     * @param node the control; the strip sets whether it is visible
     * @param folded makes the menu items that do the same; none for what is only read
     */
    public void add(Node node, Supplier<List<MenuItem>> folded) {
        parts.add(new Part(node, folded));
        getChildren().add(getChildren().size() - 1, node);
    }

    /** Takes all controls away. */
    public void clear() {
        parts.clear();
        getChildren().setAll(more);
    }

    /**
     * Returns the menu of what does not fit.
     *
     * @return the menu; not visible while everything fits
     */
    public MenuButton more() {
        return more;
    }

    private void fill() {
        more.getItems().clear();
        parts.subList(shown, parts.size())
                .forEach(part -> more.getItems().addAll(part.folded().get()));
    }

    private double gap() {
        return Math.round(GAP_LETTERS * more.getFont().getSize());
    }

    private boolean isRow() {
        return orientation == Orientation.HORIZONTAL;
    }

    private double along(Node node) {
        return Math.ceil(isRow() ? node.prefWidth(-1) : node.prefHeight(-1));
    }

    private double across(Node node) {
        return Math.ceil(isRow() ? node.prefHeight(-1) : node.prefWidth(-1));
    }

    /** How far the first parts reach. */
    private double reach(int count) {
        double reach = 0;
        for (Part part : parts.subList(0, count)) {
            reach += along(part.node()) + gap();
        }
        return Math.max(0, reach - gap());
    }

    private double widest() {
        return parts.stream().mapToDouble(part -> across(part.node())).max().orElse(0);
    }

    @Override
    protected void layoutChildren() {
        double left = snappedLeftInset();
        double top = snappedTopInset();
        double room = (isRow() ? getWidth() - left - snappedRightInset() : getHeight() - top - snappedBottomInset());
        double breadth = isRow() ? getHeight() - top - snappedBottomInset() : getWidth() - left - snappedRightInset();
        shown = parts.size();
        if (reach(shown) > room + 0.5) {
            while (shown > 0 && reach(shown) + gap() + along(more) > room) {
                shown--;
            }
        }
        boolean folds = shown < parts.size();
        double used = reach(shown) + (folds ? along(more) + (shown > 0 ? gap() : 0) : 0);
        double at = toTheRight ? Math.max(0, room - used) : 0;
        for (int i = 0; i < parts.size(); i++) {
            Node node = parts.get(i).node();
            node.setVisible(i < shown);
            if (i < shown) {
                at = put(node, at, breadth, left, top) + gap();
            }
        }
        more.setVisible(folds);
        if (folds) {
            put(more, at, breadth, left, top);
        }
    }

    private double put(Node node, double at, double breadth, double left, double top) {
        double length = along(node);
        double wide = Math.min(breadth, across(node));
        double aside = Math.round((breadth - wide) / 2);
        if (isRow()) {
            node.resizeRelocate(left + at, top + aside, length, wide);
        } else {
            node.resizeRelocate(left + aside, top + at, wide, length);
        }
        return at + length;
    }

    @Override
    protected double computeMinWidth(double height) {
        return snappedLeftInset() + snappedRightInset() + (isRow() ? along(more) : Math.max(widest(), across(more)));
    }

    @Override
    protected double computeMinHeight(double width) {
        return snappedTopInset() + snappedBottomInset() + (isRow() ? Math.max(widest(), across(more)) : along(more));
    }

    @Override
    protected double computePrefWidth(double height) {
        return snappedLeftInset()
                + snappedRightInset()
                + (isRow() ? reach(parts.size()) : Math.max(widest(), across(more)));
    }

    @Override
    protected double computePrefHeight(double width) {
        return snappedTopInset()
                + snappedBottomInset()
                + (isRow() ? Math.max(widest(), across(more)) : reach(parts.size()));
    }
}
