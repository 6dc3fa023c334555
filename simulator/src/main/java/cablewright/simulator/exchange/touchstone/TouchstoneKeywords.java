// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The keywords of a file of version 2 and what was said after each. */
final class TouchstoneKeywords {

    private static final List<String> KNOWN = List.of(
            "version",
            "number of ports",
            "two port data order",
            "number of frequencies",
            "number of noise frequencies",
            "reference",
            "matrix format",
            "mixed mode order",
            "begin information",
            "end information",
            "network data",
            "noise data",
            "end");

    private static final int MOST_WORDS = 100;

    private final TouchstoneLines lines;
    private final Map<String, List<String>> words = new HashMap<>();
    private final Map<String, Integer> places = new HashMap<>();
    private String open = "";

    TouchstoneKeywords(TouchstoneLines lines) {
        this.lines = lines;
    }

    /** Takes a line that begins with a bracket; returns the keyword in small letters, with spaces for dashes. */
    String take() throws TouchstoneFormatException {
        String line = lines.line();
        int close = line.indexOf(']');
        String inside = close < 0 ? line : line.substring(1, close);
        String keyword =
                inside.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replaceAll("\\s+", " ");
        if (close < 0 || !KNOWN.contains(keyword)) {
            throw lines.wrong("a keyword", line, "one of [" + String.join("], [", KNOWN) + "]");
        }
        if (words.containsKey(keyword)) {
            throw lines.wrong("a keyword", line, "each keyword once; this one stands in line " + places.get(keyword));
        }
        words.put(keyword, new ArrayList<>());
        places.put(keyword, lines.number());
        open = keyword;
        takeMore(line.substring(close + 1));
        return keyword;
    }

    /** Takes more words for the keyword last met: references and mixed-mode orders may go on over several lines. */
    void takeMore(String text) throws TouchstoneFormatException {
        for (String word : text.strip().split("\\s+")) {
            if (!word.isEmpty()) {
                words.get(open).add(word);
            }
        }
        if (words.get(open).size() > MOST_WORDS) {
            throw lines.wrong("what follows [" + open + "]", text, "at most " + MOST_WORDS + " words");
        }
    }

    boolean goesOn() {
        return open.equals("reference") || open.equals("mixed mode order");
    }

    boolean has(String keyword) {
        return words.containsKey(keyword);
    }

    List<String> wordsOf(String keyword) {
        return words.getOrDefault(keyword, List.of());
    }

    TouchstoneFormatException wrong(String keyword, String allowed) {
        int place = places.getOrDefault(keyword, lines.number());
        String found = has(keyword) ? String.join(" ", wordsOf(keyword)) : "missing";
        return lines.wrong(place, "[" + keyword + "]", found, allowed);
    }

    /** Reads the one whole number after a keyword. */
    int wholeNumber(String keyword, int least, int most) throws TouchstoneFormatException {
        List<String> given = wordsOf(keyword);
        if (given.size() == 1 && given.get(0).matches("\\d{1,9}")) {
            int value = Integer.parseInt(given.get(0));
            if (value >= least && value <= most) {
                return value;
            }
        }
        throw wrong(keyword, "a whole number from " + least + " to " + most);
    }

    /** Reads the one word after a keyword. */
    String oneOf(String keyword, String otherwise, List<String> allowed) throws TouchstoneFormatException {
        List<String> given = has(keyword) ? wordsOf(keyword) : List.of(otherwise);
        String word = given.size() == 1 ? given.get(0).toLowerCase(Locale.ROOT) : "";
        if (!allowed.contains(word)) {
            throw wrong(keyword, String.join(" or ", allowed));
        }
        return word;
    }
}
