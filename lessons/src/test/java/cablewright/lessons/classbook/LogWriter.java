// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A program that appends numbered records to a log, as one of several that do so at once. */
final class LogWriter {

    private LogWriter() {}

    static AttemptRecord numbered(String writer, int number) {
        return new AttemptRecord(
                "Ada",
                writer,
                "exercise-" + number,
                Instant.parse("2031-03-01T08:00:00Z").plusSeconds(number),
                OptionalDouble.empty(),
                1,
                1,
                0,
                0,
                0,
                0,
                List.of(),
                List.of(),
                Optional.empty());
    }

    /** Appends {@code count} records of a writer. */
    static void write(Path log, String writer, int count) throws IOException {
        for (int i = 0; i < count; i++) {
            new TraineeLog(log).append(numbered(writer, i));
            System.out.println(i);
        }
    }

    /** Arguments: log, writer, count. Prints each number once its record is on disk. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), arguments[1], Integer.parseInt(arguments[2]));
    }
}
