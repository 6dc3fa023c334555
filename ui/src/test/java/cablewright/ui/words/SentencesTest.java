// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.text.Texts;
import com.ibm.icu.text.MessageFormat;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read stands in bundles, all of it well formed, and none of it in code. */
class SentencesTest {

    private static final List<Path> MODULES = List.of(Path.of("..", "lessons"), Path.of("..", "ui"));
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)[,}]");
    private static final Pattern CALL = Pattern.compile("\\b(?:say|notice)\\(\\s*\"([a-z][\\w.-]*[\\w])\"\\s*([,)])");
    private static final Pattern REFUSED = Pattern.compile("new Refused\\(\\s*\"(\\w+)\"\\s*([,)])");

    /** Where no sentence may stand in code. */
    private static final List<String> WITHOUT_PROSE = List.of(
            "lessons/generation",
            "lessons/bench",
            "ui/terminal",
            "ui/words",
            "ui/desktop",
            "ui/demonstrations",
            "ui/print",
            "ui/commandline");

    /** Refusals of bad arguments are worded in code, all in the one style of {@code Require}, as are failures of the system. */
    private static final Pattern REFUSAL =
            Pattern.compile("new (?:\\w*Exception|\\w*Error|UnsupportedOperation\\w*)\\([^;]*?;", Pattern.DOTALL);

    /** Patterns, not prose; and words that are typed, which are the same in every language. */
    private static final Set<String> ALLOWED = Set.of(
            "([+-]?[0-9]*\\\\.?[0-9]+ ?(?:mm|cm|km|m|ft|in)?)",
            "([0-9]|\\\\S+(?= ))(?: ?because)? ?([A-Za-z]|(?<= )\\\\S+)",
            "(\\\\d) (?=(?:%|m|km|ft|ns|µs|dB|MHz|GHz|Ω)(?:\\\\W|$))",
            "near end",
            "far end",
            "hand in",
            "hand in yes",
            "yyyy-MM-dd HH:mm",
            "uuuu-MM-dd HH:mm",
            "uuuu-MM-dd HH:mm 'UTC'",
            "Unsupported JavaFX configuration",
            // What the system says, and what other programs read.
            "Broken pipe",
            "pipe is being closed",
            "the port",
            "change of cable",
            "end of line",
            "cablewright ",
            "Java ",
            "NAME=FROM..TO:COUNT, such as pulse=2ns..100ns:10:log or ",
            // Lowered inside a sentence; another language needs no such start.
            "What ");

    private static final Pattern TYPED =
            Pattern.compile("(?:zoom|flag|remove|answer|exercise|save|at) [\\w. -]+(?:json)?|end of ");

    private static final Pattern CODE = Pattern.compile(
            "/\\*.*?\\*/|//[^\\n]*|\"((?:\\\\.|[^\"\\\\\\n])*)\"|'(?:\\\\.|[^'\\\\])+'", Pattern.DOTALL);

    private static final Pattern PROSE = Pattern.compile("[A-Za-z]{2,}[,.;:]? [a-zA-Z]{2,}|[a-z]{3,} $|^ [a-z]{3,}");

    @Test
    void everySentenceIsWellFormed() throws IOException {
        for (Map.Entry<String, Texts> bundle : bundles().entrySet()) {
            for (String key : bundle.getValue().keys()) {
                String sentence = bundle.getValue().bundle().getString(key);
                String where = bundle.getKey() + ": " + key;
                if (sentence.matches("(?s).*\\{\\d\\s*,.*")) {
                    new MessageFormat(sentence, Locale.ENGLISH);
                    assertTrue(!sentence.contains("'{"), where + ": an apostrophe before a brace would quote it");
                    assertTrue(sentence.contains("other{"), where + ": a plural needs the form \"other\"");
                }
            }
        }
    }

    @Test
    void everyCallGivesTheArgumentsThatItsSentenceTakes() throws IOException {
        Map<String, Integer> needed = new HashMap<>();
        for (Texts texts : bundles().values()) {
            for (String key : texts.keys()) {
                int most = PLACE.matcher(texts.bundle().getString(key))
                        .results()
                        .mapToInt(found -> 1 + Integer.parseInt(found.group(1)))
                        .max()
                        .orElse(0);
                needed.merge(key, most, Math::min);
            }
        }
        List<String> wrong = new ArrayList<>();
        int calls = 0;
        for (Path file : sources()) {
            String code = Files.readString(file);
            for (Pattern pattern : List.of(CALL, REFUSED)) {
                Matcher call = pattern.matcher(code);
                while (call.find()) {
                    String key = pattern == REFUSED ? "refused." + call.group(1) : call.group(1);
                    int given = call.group(2).equals(")") ? 0 : arguments(code, call.end());
                    if (needed.containsKey(key) && given >= 0) {
                        calls++;
                        if (given < needed.get(key)) {
                            wrong.add(file.getFileName() + ": \"" + key + "\" needs " + needed.get(key) + ", has "
                                    + given);
                        }
                    }
                }
            }
        }
        assertTrue(calls > 300, "only " + calls + " calls were found");
        assertEquals(List.of(), wrong);
    }

    /** Counts the arguments of a call after its first; −1 where it ends in an array that is passed on. */
    private static int arguments(String code, int from) {
        int depth = 0;
        int count = 1;
        int start = from;
        boolean quoted = false;
        for (int i = from; i < code.length(); i++) {
            char c = code.charAt(i);
            if (quoted) {
                i += c == '\\' ? 1 : 0;
                quoted = c != '"';
            } else if (c == '"') {
                quoted = true;
            } else if (c == '\'') {
                i = code.indexOf('\'', i + (code.charAt(i + 1) == '\\' ? 3 : 1));
            } else if ("([{".indexOf(c) >= 0) {
                depth++;
            } else if (c == ',' && depth == 0) {
                count++;
                start = i + 1;
            } else if (")]}".indexOf(c) >= 0 && --depth < 0) {
                return code.substring(start, i).strip().equals("arguments") ? -1 : count;
            }
        }
        return -1;
    }

    /** How patterns of {@link java.time.format.DateTimeFormatter} begin here. */
    private static final String DATE_PATTERN = "uuuu-MM-dd";

    @Test
    void everyKeyOfTerminalGenerationAndBenchIsUsed() throws IOException {
        Set<String> literals = new HashSet<>();
        for (Path file : sources()) {
            Matcher literal = CODE.matcher(Files.readString(file));
            while (literal.find()) {
                if (literal.group(1) != null) {
                    literals.add(literal.group(1));
                }
            }
        }
        Set<String> orphans = new TreeSet<>();
        for (String name : List.of(
                "cablewright.ui.terminal.terminal",
                "cablewright.lessons.generation.generation",
                "cablewright.lessons.bench.bench")) {
            for (String key : bundles().get(name).keys()) {
                String plain = key.replaceFirst("^(refused\\.)", "").replaceFirst("\\.\\d+$", "");
                boolean used = literals.contains(key)
                        || literals.contains(plain)
                        || literals.stream().anyMatch(it -> it.endsWith(".") && it.length() > 1 && key.startsWith(it));
                if (!used) {
                    orphans.add(name + ": " + key);
                }
            }
        }
        assertEquals(Set.of(), orphans);
    }

    @Test
    void noSentenceStandsInCode() throws IOException {
        Set<String> prose = new TreeSet<>();
        int seen = 0;
        for (Path file : sources()) {
            String path = file.toString().replace(File.separatorChar, '/');
            boolean namesIds = path.endsWith("ReadableId.java") || path.endsWith("OpaqueId.java");
            boolean isForTheMakers = path.endsWith("FaultReport.java");
            if (namesIds
                    || isForTheMakers
                    || WITHOUT_PROSE.stream().noneMatch(part -> path.contains("/cablewright/" + part))) {
                continue;
            }
            String code = Files.readString(file);
            Matcher literal = CODE.matcher(REFUSAL.matcher(code).replaceAll(""));
            while (literal.find()) {
                String text = literal.group(1);
                seen++;
                if (text != null
                        && PROSE.matcher(text).find()
                        && !ALLOWED.contains(text)
                        && !TYPED.matcher(text).matches()
                        && !text.startsWith(DATE_PATTERN)) {
                    prose.add(file.getFileName() + ": \"" + text + "\"");
                }
            }
        }
        assertTrue(seen > 1000, "the sources were found and read");
        assertEquals(Set.of(), prose);
    }

    private static List<Path> sources() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path module : MODULES) {
            try (Stream<Path> files = Files.walk(module.resolve(Path.of("src", "main", "java")))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .filter(file -> !file.endsWith("DragTimes.java"))
                        .forEach(all::add);
            }
        }
        return all;
    }

    private static Map<String, Texts> bundles() throws IOException {
        Map<String, Texts> bundles = new TreeMap<>();
        for (Path module : MODULES) {
            Path resources = module.resolve(Path.of("src", "main", "resources"));
            try (Stream<Path> files = Files.walk(resources)) {
                for (Path file : files.filter(it -> it.toString().endsWith(".properties"))
                        .collect(Collectors.toList())) {
                    String name = resources.relativize(file).toString().replace(File.separatorChar, '.');
                    String bundle = name.substring(0, name.length() - ".properties".length());
                    bundles.put(bundle, new Texts(bundle, Locale.ROOT));
                }
            }
        }
        return bundles;
    }
}
