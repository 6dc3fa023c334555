// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.file.BoundedLines;
import cablewright.simulator.file.PlainFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads traces from tables of numbers: our own CSV, and those of others as far as they are plain. Cells are parted by commas,
 * semicolons, tabs or blanks; lines that begin with # and empty ones are passed over; numbers have a decimal point.
 *
 * <p>A first line of names says what the columns are. A place is a time, {@code time_s}, or else a distance,
 * {@code distance_m}, each also in other units of the metre and the second ({@code time_ns}, {@code distance_ft}). A voltage is
 * {@code reflected_v} or else {@code port_v}, or any other name that ends in {@code _v} or {@code _mv} or says volt. Without
 * names, the first column is the time in seconds and the second the voltage.
 */
public final class TraceCsvReader {

    private static final int MOST_BYTES = 64 << 20;
    private static final int MOST_LINE = 100_000;
    private static final double METRES_PER_FOOT = 0.3048;
    private static final Pattern CELL_ENDS = Pattern.compile("\\s*+[,;\\t]\\s*+|\\s++");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

    private final String file;
    private int line;
    private double[] places = new double[256];
    private double[] volts = new double[256];
    private int count;

    private TraceCsvReader(String file) {
        this.file = file;
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @return the trace
     * @throws ExchangeFormatException if the file isn't such a table; it says where, and what is allowed there
     * @throws IOException if the file can't be read at all
     */
    public static RecordedTrace read(Path file) throws IOException {
        try (InputStream in = PlainFile.open(file, MOST_BYTES)) {
            return read(String.valueOf(file.getFileName()), in);
        }
    }

    /**
     * Reads a file from a stream.
     *
     * @param name the file's name, for messages
     * @param in the stream; it is read to its end, at most 64 MB, and not closed
     * @return the trace
     * @throws ExchangeFormatException if it isn't such a table
     * @throws IOException if the stream can't be read
     */
    public static RecordedTrace read(String name, InputStream in) throws IOException {
        return new TraceCsvReader(name).table(new BoundedLines(in, StandardCharsets.UTF_8, MOST_LINE));
    }

    private ExchangeFormatException wrong(String what, String value, String allowed) {
        return new ExchangeFormatException(file, Math.max(1, line), what, value, allowed);
    }

    /** Which column is the place and which the voltage, and what one of each is in SI units. */
    private record Columns(int place, double placeUnit, boolean byTime, int value, double valueUnit, String name) {}

    private RecordedTrace table(BoundedLines lines) throws IOException {
        Columns columns = null;
        while (lines.advance()) {
            line = (int) Math.min(Integer.MAX_VALUE, lines.number());
            if (lines.bytesTaken() > MOST_BYTES) {
                throw wrong("size of the file", "over " + MOST_BYTES + " bytes", "at most " + MOST_BYTES + " bytes");
            }
            String stripped =
                    lines.isBlank() ? "" : text(lines).replace("\uFEFF", "").strip();
            if (stripped.isEmpty() || stripped.startsWith("#")) {
                continue;
            }
            String[] cells = CELL_ENDS.split(stripped);
            if (columns == null && !isNumber(cells.length == 0 ? "" : cells[0])) {
                columns = named(cells);
            } else {
                columns = columns == null ? new Columns(0, 1, true, 1, 1, "") : columns;
                take(cells, columns);
            }
        }
        if (count < 2) {
            throw wrong("the number of samples", Integer.toString(count), "2 or more");
        }
        return new RecordedTrace(
                columns.byTime(), Arrays.copyOf(places, count), Arrays.copyOf(volts, count), columns.name());
    }

    private String text(BoundedLines lines) throws ExchangeFormatException {
        try {
            return lines.text();
        } catch (IllegalArgumentException e) {
            throw wrong(
                    "the line",
                    "not a line of such a table: " + e.getMessage(),
                    "text in UTF-8, at most " + MOST_LINE + " bytes a line");
        }
    }

    private void take(String[] cells, Columns columns) throws ExchangeFormatException {
        double place = columns.placeUnit() * number(cells, columns.place());
        double value = columns.valueUnit() * number(cells, columns.value());
        if (count > 0 && place <= places[count - 1]) {
            throw wrong("a place", cells[columns.place()], "more than that of the line before");
        }
        if (count == RecordedTrace.MOST_SAMPLES) {
            throw wrong("the number of samples", "more", "at most " + RecordedTrace.MOST_SAMPLES);
        }
        if (count == places.length) {
            places = Arrays.copyOf(places, 2 * count);
            volts = Arrays.copyOf(volts, 2 * count);
        }
        places[count] = place;
        volts[count++] = value;
    }

    private static boolean isNumber(String cell) {
        return cell.length() < 60 && NUMBER.matcher(cell).matches();
    }

    private double number(String[] cells, int column) throws ExchangeFormatException {
        String cell = column < cells.length ? cells[column] : "";
        double value = isNumber(cell) ? Double.parseDouble(cell) : Double.NaN;
        if (!Double.isFinite(value)) {
            throw wrong("column " + (column + 1), cell, "a decimal number such as 12.5 or 1.25e-9");
        }
        return value;
    }

    private Columns named(String[] cells) throws ExchangeFormatException {
        List<String> names = new ArrayList<>();
        for (String cell : cells) {
            names.add(cell.replace("\"", "").toLowerCase(Locale.ROOT));
        }
        int time = first(names, "(time|t|seconds?)(_(s|ms|us|ns|ps))?");
        int place = time >= 0 ? time : first(names, "(distance|length|metres|meters|x)(_(m|km|ft))?");
        int value = first(names, "reflected_m?v");
        value = value >= 0 ? value : first(names, "port_m?v");
        value = value >= 0 ? value : first(names, ".*_m?v|.*volt.*|v|amplitude|value");
        if (place < 0 || value < 0) {
            throw wrong(
                    "the line of names",
                    String.join(",", cells),
                    "a time such as time_s or a distance such as distance_m, and a voltage such as port_v");
        }
        double unit = unit(names.get(place));
        double valueUnit = names.get(value).endsWith("_mv") ? 1e-3 : 1;
        return new Columns(place, unit, time >= 0, value, valueUnit, names.get(value));
    }

    private static int first(List<String> names, String pattern) {
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).matches(pattern)) {
                return i;
            }
        }
        return -1;
    }

    private static double unit(String name) {
        switch (name.substring(name.indexOf('_') + 1)) {
            case "ms":
                return 1e-3;
            case "us":
                return 1e-6;
            case "ns":
                return 1e-9;
            case "ps":
                return 1e-12;
            case "km":
                return 1e3;
            case "ft":
                return METRES_PER_FOOT;
            default:
                return 1;
        }
    }
}
