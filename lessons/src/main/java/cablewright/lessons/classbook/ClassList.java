// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The people of a class, from a CSV file (RFC 4180): a head line whose first field is {@code name}, then one line for each person,
 * the name in the first field. What other fields hold is left alone.
 *
 * @param names the names, in the order of the file
 */
public record ClassList(List<String> names) {

    /** Most people of a class. */
    public static final int MOST_NAMES = 10_000;

    private static final Pattern FIRST_FIELD = Pattern.compile("(?:\"((?:[^\"]|\"\")*)\"|([^,\"]*))(?:,.*)?");

    /** Copies the list. */
    public ClassList {
        names = List.copyOf(names);
    }

    /**
     * Reads a class list.
     *
     * @param name what messages call the file
     * @param text what it holds
     * @return the people
     * @throws IllegalArgumentException if it is no such list; the message names the line and what is wanted
     */
    public static ClassList parse(String name, String text) {
        List<String> lines = text.replaceFirst("^\ufeff", "").lines().toList();
        if (lines.isEmpty() || !field(name, 1, lines.get(0)).equalsIgnoreCase("name")) {
            throw new IllegalArgumentException(
                    name + ": line 1 is no head; begin with a line whose first field is \"name\"");
        }
        Set<String> names = new LinkedHashSet<>();
        for (int i = 1; i < lines.size(); i++) {
            if (!lines.get(i).isBlank() && !names.add(field(name, i + 1, lines.get(i)))) {
                throw new IllegalArgumentException(
                        name + ": line " + (i + 1) + " has a name that came before; give each person one line");
            }
        }
        if (names.isEmpty() || names.size() > MOST_NAMES) {
            throw new IllegalArgumentException(
                    name + ": it has " + names.size() + " names; allowed is 1 to " + MOST_NAMES);
        }
        return new ClassList(new ArrayList<>(names));
    }

    private static String field(String name, int number, String line) {
        Matcher first = FIRST_FIELD.matcher(line);
        if (!first.matches()) {
            throw new IllegalArgumentException(
                    name + ": line " + number
                            + " has a quotation mark out of place; put a name with a comma or a quotation mark in quotation marks");
        }
        String found = first.group(1) == null ? first.group(2) : first.group(1).replace("\"\"", "\"");
        String stripped = found.strip();
        if (stripped.isEmpty() || stripped.length() > AttemptRecord.MOST_TEXT) {
            throw new IllegalArgumentException(name + ": line " + number + " has a name of " + stripped.length()
                    + " characters; allowed is 1 to " + AttemptRecord.MOST_TEXT);
        }
        return stripped;
    }
}
