// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Rows of text under headings, written for people or as comma-separated values. */
public final class Table {

    private static final String GAP = "  ";

    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();

    public Table(String... headings) {
        this.headings = List.of(headings);
    }

    public void add(String... cells) {
        if (cells.length != headings.size()) {
            throw new IllegalArgumentException(
                    "a row has " + cells.length + " cells; it needs " + headings.size() + ", one under each heading");
        }
        rows.add(List.of(cells));
    }

    /** Columns that line up; the last is as long as it is. */
    public String aligned() {
        int[] widths = new int[headings.size()];
        List<List<String>> all = new ArrayList<>();
        all.add(headings);
        all.addAll(rows);
        for (List<String> row : all) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder out = new StringBuilder();
        for (List<String> row : all) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                line.append(row.get(i))
                        .append(" ".repeat(widths[i] - row.get(i).length()))
                        .append(GAP);
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }

    /** RFC 4180 with line feeds. */
    public String csv() {
        StringBuilder out = new StringBuilder();
        out.append(line(headings));
        rows.forEach(row -> out.append(line(row)));
        return out.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(Table::quoted).collect(Collectors.joining(",")) + "\n";
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
