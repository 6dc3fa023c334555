// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Measures text before it is drawn. */
final class TextSize {

    private TextSize() {}

    static double width(String text, Font font) {
        Text measured = new Text(text);
        measured.setFont(font);
        return measured.getLayoutBounds().getWidth();
    }

    static double height(Font font) {
        Text measured = new Text("Ag");
        measured.setFont(font);
        return measured.getLayoutBounds().getHeight();
    }

    /** Cuts a text so that it fits, and shows by a dot leader that something is missing. */
    static String cut(String text, Font font, double most) {
        if (width(text, font) <= most) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (width(text.substring(0, middle).strip() + "…", font) <= most) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low == 0 ? "" : text.substring(0, low).strip() + "…";
    }
}
