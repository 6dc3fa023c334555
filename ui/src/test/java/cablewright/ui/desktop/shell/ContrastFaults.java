// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollBar;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Border;
import javafx.scene.layout.BorderStroke;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Text;

/**
 * Text that differs too little from what lies behind it, and controls whose edge does. Limits: W3C, Web Content Accessibility
 * Guidelines 2.1, criteria 1.4.3 (text, 4.5 : 1) and 1.4.11 (what shows where a control is, and its state, 3 : 1).
 */
final class ContrastFaults {

    private static final double TEXT = 4.5;
    private static final double CONTROL = 3;

    /** Parts of controls that show where they are or what is chosen; a button with words is known by its words. */
    private static final Set<String> EDGES = Set.of("radio", "box", "text-input", "combo-box", "thumb");

    private final List<String> faults = new ArrayList<>();

    private ContrastFaults() {}

    static List<String> of(Parent root) {
        ContrastFaults found = new ContrastFaults();
        found.walk(root);
        return found.faults;
    }

    private void walk(Node node) {
        // What is disabled is exempt from both criteria.
        if (!node.isVisible() || node.isDisabled() || node instanceof ScrollBar) {
            return;
        }
        if (node instanceof Text text && !text.getText().isBlank() && text.getFill() instanceof Color ink) {
            Color behind = behind(text.getParent());
            check(text, "\"" + text.getText() + "\"", ratio(over(ink, opacity(text), behind), behind), TEXT);
        }
        if (node instanceof Region region && region.getStyleClass().stream().anyMatch(EDGES::contains)) {
            Color behind = behind(region.getParent());
            double best = paints(region).stream()
                    .mapToDouble(paint -> ratio(over(paint, opacity(region), behind), behind))
                    .max()
                    .orElse(1);
            check(region, "edge", best, CONTROL);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::walk);
        }
    }

    private void check(Node node, String what, double ratio, double least) {
        if (ratio < least) {
            faults.add(String.format(
                    Locale.ROOT, "%s: %s has contrast %.2f, below %.1f", LayoutFaults.name(node), what, ratio, least));
        }
    }

    private static double opacity(Node node) {
        double opacity = 1;
        for (Node up = node; up != null; up = up.getParent()) {
            opacity *= up.getOpacity();
        }
        return opacity;
    }

    private static List<Color> paints(Region region) {
        List<Color> paints = new ArrayList<>();
        Border border = region.getBorder();
        if (border != null) {
            border.getStrokes().stream().map(BorderStroke::getTopStroke).forEach(paint -> add(paint, paints));
        }
        Background background = region.getBackground();
        if (background != null) {
            background.getFills().stream().map(BackgroundFill::getFill).forEach(paint -> add(paint, paints));
        }
        return paints;
    }

    private static void add(Paint paint, List<Color> paints) {
        if (paint instanceof Color colour && colour.getOpacity() > 0) {
            paints.add(colour);
        }
    }

    /** The colour on which what a parent holds is drawn. */
    private static Color behind(Node parent) {
        if (parent == null) {
            return Color.WHITE;
        }
        Color below = behind(parent.getParent());
        if (parent instanceof Region region && region.getBackground() != null) {
            for (BackgroundFill fill : region.getBackground().getFills()) {
                if (fill.getFill() instanceof Color colour) {
                    below = over(colour, region.getOpacity(), below);
                }
            }
        }
        return below;
    }

    private static Color over(Color above, double opacity, Color below) {
        return below.interpolate(
                Color.color(above.getRed(), above.getGreen(), above.getBlue()), above.getOpacity() * opacity);
    }

    /** Contrast ratio of two colours (WCAG 2.1, definition of contrast ratio and relative luminance). */
    static double ratio(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double share) {
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
