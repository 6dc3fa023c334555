// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.file.BoundedLines;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts the results files of shards together. What comes out is, byte for byte, what one run of the whole study would have
 * written, in whatever order the shards are given and whatever their number.
 *
 * <p>Rows are merged a window at a time, so memory holds {@value #WINDOW} rows whatever the size of the study, and one file is
 * open at a time whatever the number of shards.
 */
public final class StudyMerge {

    private static final int WINDOW = 50_000;
    private static final int MOST_NAMED = 5;

    private final List<StudyHead> heads = new ArrayList<>();

    private StudyMerge(List<Path> files) throws IOException {
        for (Path file : files) {
            heads.add(StudyHead.of(file));
            if (!heads.get(0).text().equals(heads.get(heads.size() - 1).text())) {
                throw new IllegalArgumentException(file + " is of another study than the files before it: "
                        + "compare the lines at their heads that begin with '#'");
            }
        }
    }

    /**
     * Reads results files and checks that they make a whole study.
     *
     * @param files the files, at least one
     * @return the whole study, to be written
     * @throws IOException if one can't be read
     * @throws IllegalArgumentException if they are not of one study, contradict each other, or rows are missing
     */
    public static StudyMerge of(List<Path> files) throws IOException {
        StudyMerge merge = new StudyMerge(files);
        merge.writeTo(OutputStream.nullOutputStream());
        return merge;
    }

    /**
     * Writes the whole study's file.
     *
     * @param out where to
     * @throws IOException if a file can't be read, or the output not written
     * @throws IllegalArgumentException if the files have changed and do not make a whole study any more
     */
    public void writeTo(OutputStream out) throws IOException {
        int rows = heads.get(0).rows();
        List<Part> parts = new ArrayList<>();
        heads.forEach(head -> parts.add(new Part(head)));
        List<Integer> missing = new ArrayList<>();
        int lacking = 0;
        out.write(StudyHeader.bytes(heads.get(0).text()));
        for (int from = 0; from < rows; from += WINDOW) {
            String[] lines = new String[Math.min(WINDOW, rows - from)];
            for (Part part : parts) {
                part.readInto(lines, from, rows);
            }
            for (int i = 0; i < lines.length; i++) {
                if (lines[i] != null) {
                    out.write(StudyHeader.bytes(lines[i] + "\n"));
                } else if (lacking++ < MOST_NAMED) {
                    missing.add(from + i);
                }
            }
        }
        if (lacking > 0) {
            throw new IllegalArgumentException(missing(missing, lacking, rows));
        }
    }

    private static String missing(List<Integer> named, int lacking, int rows) {
        String names = String.join(", ", named.stream().map(String::valueOf).toList());
        return lacking + " of " + rows + " rows are missing (" + names + (lacking > MOST_NAMED ? ", …" : "")
                + "); run the unfinished shards again with the same --out files, then merge all of them";
    }

    /** How far one file has been read. */
    private static final class Part {
        private final Path file;
        private long offset;
        private int last = -1;

        Part(StudyHead head) {
            file = head.file();
            offset = head.bytes();
        }

        /** Puts the rows of a window in their places; a torn last line is no row yet. */
        void readInto(String[] window, int from, int rows) throws IOException {
            long start = offset;
            try (StudyLines lines = StudyLines.at(file, start)) {
                BoundedLines each = lines.lines();
                while (each.advance() && each.isEnded()) {
                    String line = StudyFile.textOf(file, each);
                    int row = StudyFile.rowOf(file, line, rows);
                    if (row <= last) {
                        throw new IllegalArgumentException(file + " has row " + row + " after row " + last
                                + "; a results file has each row once, in rising order");
                    }
                    if (row >= from + window.length) {
                        return;
                    }
                    put(window, row - from, line, row);
                    last = row;
                    offset = start + each.bytesTaken();
                }
            }
        }

        private void put(String[] window, int place, String line, int row) {
            if (window[place] != null && !window[place].equals(line)) {
                throw new IllegalArgumentException(file + " has another row " + row + " than a file before it; "
                        + "run both shards again with one version of the program");
            }
            window[place] = line;
        }
    }
}
