// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.file.BoundedLines;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The head of a results file as it was found.
 *
 * @param file the file
 * @param text the head of the whole study: what distinguishes the shards is left out
 * @param rows rows of the whole study
 * @param bytes where the first row begins
 */
record StudyHead(Path file, String text, int rows, long bytes) {

    private static final Pattern ROWS = Pattern.compile("(?m)^# rows ([0-9]{1,9}),");
    private static final int MOST_LINES = 200;

    static StudyHead of(Path file) throws IOException {
        StringBuilder found = new StringBuilder();
        try (StudyLines lines = StudyLines.at(file, 0)) {
            BoundedLines each = lines.lines();
            while (each.advance() && each.isEnded() && each.number() <= MOST_LINES) {
                String line = StudyFile.textOf(file, each);
                if (!line.startsWith(StudyHeader.SHARD)) {
                    found.append(line).append('\n');
                }
                if (!line.startsWith("#")) {
                    return new StudyHead(file, found.toString(), rows(file, found.toString()), each.bytesTaken());
                }
            }
        }
        throw new IllegalArgumentException(file + " is no results file of a study, or holds no rows yet");
    }

    private static int rows(Path file, String found) {
        Matcher matcher = ROWS.matcher(found);
        if (!found.startsWith("# cablewright study") || !matcher.find()) {
            throw new IllegalArgumentException(file + " is no results file of a study");
        }
        int rows = Integer.parseInt(matcher.group(1));
        if (rows > Sampling.MOST_ROWS) {
            throw new IllegalArgumentException(
                    file + " says that it has " + rows + " rows; a study has at most " + Sampling.MOST_ROWS);
        }
        return rows;
    }
}
