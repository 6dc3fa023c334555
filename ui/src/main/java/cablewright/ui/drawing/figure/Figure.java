// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import java.util.List;

/**
 * What is shown of a demonstration at one setting.
 *
 * @param title what it is
 * @param rows panels, row by row from the top
 * @param caption what it says, with its numbers
 * @param settings how it was made, for whoever wants to repeat it
 */
public record Figure(String title, List<Row> rows, String caption, String settings) {

    /**
     * Panels side by side.
     *
     * @param weight height of the row, against that of the others
     * @param panels the panels with their widths
     */
    public record Row(double weight, List<Part> panels) {
        /** Copies the list. */
        public Row {
            panels = List.copyOf(panels);
        }

        /**
         * A row of panels of equal width.
         *
         * @param weight height of the row, against that of the others
         * @param panels the panels
         * @return the row
         */
        public static Row of(double weight, Panel... panels) {
            return new Row(
                    weight,
                    java.util.Arrays.stream(panels)
                            .map(panel -> new Part(1, panel))
                            .toList());
        }
    }

    /**
     * A panel in its row.
     *
     * @param weight its width, against that of the others
     * @param panel the panel
     */
    public record Part(double weight, Panel panel) {}

    /** Copies the list. */
    public Figure {
        rows = List.copyOf(rows);
    }
}
