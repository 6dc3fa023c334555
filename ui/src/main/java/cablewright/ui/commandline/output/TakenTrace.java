// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A trace with how it was taken: columns of equal length, and settings by name, in SI units. */
public final class TakenTrace {

    private final String title;
    private final Map<String, Object> settings;
    private final List<Column> columns;

    /** One column: its name with its unit, and its values. */
    public static final class Column {
        private final String name;
        private final double[] values;

        /** Takes values over; the caller leaves them alone. */
        public Column(String name, double[] values) {
            this.name = name;
            this.values = values;
        }

        String name() {
            return name;
        }

        double value(int row) {
            return values[row];
        }
    }

    public TakenTrace(String title, Map<String, Object> settings, List<Column> columns) {
        this.title = title;
        this.settings = new LinkedHashMap<>(settings);
        this.columns = List.copyOf(columns);
    }

    String title() {
        return title;
    }

    Map<String, Object> settings() {
        return settings;
    }

    List<Column> columns() {
        return columns;
    }

    int rows() {
        return columns.get(0).values.length;
    }

    /** The distances [m], the second column of every trace. */
    double[] metres() {
        return columns.get(1).values.clone();
    }

    /** What a picture shows [V]: the third column of every trace. */
    double[] volts() {
        return columns.get(2).values.clone();
    }
}
