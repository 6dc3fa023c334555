// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Rows of numbers from a reference file beside the tests; lines that start with # tell where they come from. */
public final class ReferenceTable {

    private ReferenceTable() {}

    public static List<double[]> rows(String name) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(name), name),
                StandardCharsets.UTF_8))) {
            List<double[]> rows = reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
            if (rows.isEmpty()) {
                throw new IllegalStateException(name + " holds no rows");
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
