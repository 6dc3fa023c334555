// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.file;

import java.util.Locale;

/** Names of people as a part of names of files. */
public final class FileWord {

    private static final int MOST_LETTERS = 60;

    private FileWord() {}

    /**
     * Makes a word that every file system takes.
     *
     * @param name a name, such as {@code Ada Quay}
     * @return its letters and digits in small letters, the rest as hyphens, such as {@code ada-quay}; {@code nobody} where
     *     nothing is left
     */
    public static String of(String name) {
        String word = name.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String whole = word.isEmpty() ? "nobody" : word;
        return whole.length() > MOST_LETTERS ? whole.substring(0, MOST_LETTERS) : whole;
    }
}
