// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.exchange.ScatteringSweep;
import java.util.Arrays;

/** Collects the numbers of a Touchstone file into records of one frequency each, wherever its lines are broken. */
final class TouchstoneRecords {

    private final TouchstoneLines lines;
    private final int size;
    private double[] values;
    private int[] lineOfRecord = new int[64];
    private int filled;

    TouchstoneRecords(TouchstoneLines lines, int size) {
        this.lines = lines;
        this.size = size;
        this.values = new double[64 * size];
    }

    /** Takes the numbers of the line at hand. */
    void addLine(String[] words) throws TouchstoneFormatException {
        for (String word : words) {
            add(word);
        }
    }

    private void add(String word) throws TouchstoneFormatException {
        double value = lines.numberOf(word);
        if (filled % size == 0) {
            startRecord(word, value);
        }
        if (filled == values.length) {
            values = Arrays.copyOf(values, 2 * values.length);
        }
        values[filled++] = value;
    }

    private void startRecord(String word, double frequency) throws TouchstoneFormatException {
        int record = filled / size;
        if (record == ScatteringSweep.MOST_FREQUENCIES) {
            throw lines.wrong("the number of frequencies", "more", "at most " + ScatteringSweep.MOST_FREQUENCIES);
        }
        if (frequency < 0) {
            throw lines.wrong("a frequency", word, "0 or more");
        }
        if (record > 0 && frequency <= value(record - 1, 0)) {
            throw lines.wrong("a frequency", word, "more than the one before, " + value(record - 1, 0));
        }
        if (record == lineOfRecord.length) {
            lineOfRecord = Arrays.copyOf(lineOfRecord, 2 * record);
        }
        lineOfRecord[record] = lines.number();
    }

    int size() {
        return size;
    }

    boolean isBetweenRecords() {
        return filled % size == 0;
    }

    int count() {
        return filled / size;
    }

    double value(int record, int place) {
        return values[record * size + place];
    }

    int lineOf(int record) {
        return lineOfRecord[record];
    }

    /** Refuses a file that stops in the middle of a record, or holds none. */
    void requireWhole() throws TouchstoneFormatException {
        if (count() == 0) {
            throw lines.wrong("the data", "", "at least one frequency with its " + (size - 1) + " numbers");
        }
        if (!isBetweenRecords()) {
            throw lines.wrong(
                    "the last frequency's count of numbers",
                    Integer.toString(filled % size),
                    size + " with the frequency itself");
        }
    }
}
