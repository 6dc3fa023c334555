// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.form.Refusals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every sentence of the editors is said somewhere; that each that is said is there, the bundles' own test holds. */
class EditorTextsTest {

    private static final Path SOURCES = Path.of("src", "main", "java", "cablewright", "ui", "desktop");
    private static final Pattern LITERAL = Pattern.compile("\"([a-zA-Z]+(?:\\.[a-zA-Z-]*)*)\"");

    /** Said with a beginning that a variable holds: {@code kind + ".up"}. */
    private static final Set<String> PUT_TOGETHER = Set.of("up", "down", "remove", "add", "right", "text", "why");

    @Test
    void noKeyIsLeftThatNobodySays() throws IOException {
        Set<String> literals = literals();
        assertTrue(literals.size() > 100, "the sources were found and read");
        Set<String> orphans = EditorTexts.open(Locale.ROOT).keys().stream()
                .filter(key -> !literals.contains(key)
                        && !PUT_TOGETHER.contains(key.substring(key.lastIndexOf('.') + 1))
                        && literals.stream().noneMatch(it -> it.endsWith(".") && key.startsWith(it)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), orphans);
    }

    private static Set<String> literals() throws IOException {
        Set<String> found = new HashSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
                Matcher matcher = LITERAL.matcher(Files.readString(file));
                while (matcher.find()) {
                    found.add(matcher.group(1));
                }
            }
        }
        return found;
    }

    @Test
    void refusalsCallThingsByTheirWords() {
        Refusals refusals = new Refusals(EditorTexts.open(Locale.ROOT));
        assertEquals(
                "The stated velocity is 0.9; allowed is 0.3 to 0.8",
                refusals.tell("statedFraction is 0.9; allowed is 0.3 to 0.8"));
        assertEquals("Title is \"\"; it needs more", refusals.tell("title is \"\"; it needs more"));
    }
}
