// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.file.BoundedLines;
import cablewright.simulator.file.PlainFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The lines of a results file from some place on. */
record StudyLines(InputStream in, BoundedLines lines) implements AutoCloseable {

    static StudyLines at(Path file, long offset) throws IOException {
        InputStream in = PlainFile.open(file, Long.MAX_VALUE);
        in.skipNBytes(offset);
        return new StudyLines(in, new BoundedLines(in, StandardCharsets.UTF_8, StudyFile.MOST_LINE));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
