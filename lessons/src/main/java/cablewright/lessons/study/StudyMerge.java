// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts the results files of shards together. What comes out is, byte for byte, what one run of the whole study would have
 * written, in whatever order the shards are given and whatever their number.
 */
public final class StudyMerge {

    private static final Pattern ROWS = Pattern.compile("(?m)^# rows ([0-9]{1,9}),");
    private static final int MOST_NAMED = 5;

    private final Map<Integer, String> lines = new TreeMap<>();
    private String head = "";
    private int rows;

    private StudyMerge() {}

    /**
     * Merges results files.
     *
     * @param files the files, at least one
     * @return the bytes of the whole study's file
     * @throws IOException if one can't be read
     * @throws IllegalArgumentException if they are not of one study, contradict each other, or rows are missing
     */
    public static byte[] of(List<Path> files) throws IOException {
        StudyMerge merge = new StudyMerge();
        for (Path file : files) {
            merge.add(file);
        }
        return merge.bytes();
    }

    private void add(Path file) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        StringBuilder found = new StringBuilder();
        int from = 0;
        int end = text.indexOf('\n');
        boolean inHead = true;
        while (end >= 0) {
            String line = text.substring(from, end);
            if (inHead) {
                inHead = line.startsWith("#");
                if (!line.startsWith(StudyHeader.SHARD)) {
                    found.append(line).append('\n');
                }
                if (!inHead) {
                    takeHead(file, found.toString());
                }
            } else {
                take(file, line);
            }
            from = end + 1;
            end = text.indexOf('\n', from);
        }
        if (inHead) {
            throw new IllegalArgumentException(file + " is no results file of a study, or holds no rows yet");
        }
    }

    private void takeHead(Path file, String found) {
        Matcher matcher = ROWS.matcher(found);
        if (!found.startsWith("# cablewright study") || !matcher.find()) {
            throw new IllegalArgumentException(file + " is no results file of a study");
        }
        if (head.isEmpty()) {
            head = found;
            rows = Integer.parseInt(matcher.group(1));
        }
        if (!head.equals(found)) {
            throw new IllegalArgumentException(file + " is of another study than the files before it: "
                    + "compare the lines at their heads that begin with '#'");
        }
    }

    private void take(Path file, String line) {
        int row = StudyFile.rowOf(file, line, rows);
        String before = lines.putIfAbsent(row, line);
        if (before != null && !before.equals(line)) {
            throw new IllegalArgumentException(file + " has another row " + row + " than a file before it; "
                    + "run both shards again with one version of the program");
        }
    }

    private byte[] bytes() {
        if (lines.size() < rows) {
            throw new IllegalArgumentException(missing());
        }
        StringBuilder text = new StringBuilder(head);
        lines.values().forEach(line -> text.append(line).append('\n'));
        return StudyHeader.bytes(text.toString());
    }

    private String missing() {
        StringBuilder named = new StringBuilder();
        int count = 0;
        for (int row = 0; row < rows && count < MOST_NAMED; row++) {
            if (!lines.containsKey(row)) {
                named.append(count++ == 0 ? "" : ", ").append(row);
            }
        }
        int lacking = rows - lines.size();
        return lacking + " of " + rows + " rows are missing (" + named + (lacking > MOST_NAMED ? ", …" : "")
                + "); run the unfinished shards again with the same --out files, then merge all of them";
    }
}
