// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Computes the rows of a shard that are not yet in its file, several at a time, and adds them in order. */
public final class StudyRun {

    private static final int ROWS_AT_A_TIME = 16;

    private final Study study;
    private final Shard shard;

    /**
     * Prepares a run.
     *
     * @param study the study
     * @param shard which part of it
     */
    public StudyRun(Study study, Shard shard) {
        this.study = study;
        this.shard = shard;
    }

    /** Hears how a run comes along. */
    @FunctionalInterface
    public interface Progress {

        /**
         * Returns how far it is.
         *
         * @param done rows in the file
         * @param of rows of the shard
         */
        void rows(int done, int of);
    }

    /**
     * Runs until the shard is complete.
     *
     * @param file the results file; what is in it already is kept and not computed again
     * @param progress hears after each few rows
     * @param cancelled asked before each few rows; once true, the run stops with the file in good order
     * @return whether the shard is complete
     * @throws IOException if the file can't be written
     * @throws IllegalArgumentException if the file holds another study
     */
    public boolean into(Path file, Progress progress, BooleanSupplier cancelled) throws IOException {
        int all = study.plan().rows();
        int mine = shard.count(all);
        try (StudyFile results = StudyFile.open(file, study.header().text(shard), all)) {
            progress.rows(results.count(), mine);
            List<Integer> some = new ArrayList<>(ROWS_AT_A_TIME);
            for (int row = 0; row < all; row++) {
                if (shard.has(row) && !results.has(row)) {
                    some.add(row);
                }
                if (some.size() == ROWS_AT_A_TIME || row == all - 1 && !some.isEmpty()) {
                    if (cancelled.getAsBoolean()) {
                        return false;
                    }
                    String[] lines = lines(some);
                    for (int i = 0; i < lines.length; i++) {
                        results.add(some.get(i), lines[i]);
                    }
                    some.clear();
                    progress.rows(results.count(), mine);
                }
            }
        }
        return true;
    }

    private String[] lines(List<Integer> rows) {
        return IntStream.range(0, rows.size())
                .parallel()
                .mapToObj(i -> study.line(rows.get(i)))
                .toArray(String[]::new);
    }
}
