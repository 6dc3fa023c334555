// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.text.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every sentence of the paper has a key, and every key is said. */
class PrintWordsTest {

    private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:\\.[a-z]+)*)\"");

    @Test
    void keysAndSentencesAreTheSameSet() throws IOException {
        Set<String> keys = new TreeSet<>(new Texts("cablewright.ui.print.print", Locale.ROOT).keys());
        Set<String> said = new TreeSet<>();
        for (String name : List.of("SheetMaker", "TraceCaption", "TracksPicture", "ClassBookPaper", "LessonSheets")) {
            Path source = Path.of("src", "main", "java", "cablewright", "ui", "print", name + ".java");
            Matcher matcher = LITERAL.matcher(Files.readString(source));
            while (matcher.find()) {
                if (!matcher.group(1).startsWith("cablewright.")) {
                    said.add(matcher.group(1));
                }
            }
        }
        assertEquals(keys, said);
    }
}
