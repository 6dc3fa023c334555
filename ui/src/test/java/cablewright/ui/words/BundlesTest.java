// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.marking.PlaceMark;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.explanation.LineEffect;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.desktop.bench.BenchView;
import cablewright.ui.desktop.practice.model.Setting;
import cablewright.ui.drawing.track.TrackSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every sentence that is said has a key, and every key is said. */
class BundlesTest {

    private static final Path SOURCES = Path.of("src", "main", "java", "cablewright", "ui");
    private static final Pattern LITERAL = Pattern.compile("\"([a-zA-Z]+(?:\\.[a-zA-Z-]*)*)\"");
    private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*\"([a-z][^\"]*)\"\\s*[,)]");

    @Test
    void everyFamilyOfWordsHasAWordForEachOfItsMembers() {
        Texts words = new Texts(Words.BUNDLE, Locale.ROOT);
        assertFamily(
                words.sibling(Texts.KINDS),
                "",
                Arrays.stream(EventKind.values()).map(EventKind::id));
        assertFamily(words, "aKind.", Arrays.stream(EventKind.values()).map(EventKind::id));
        assertFamily(words, "verdict.", names(Verdict.values()));
        assertFamily(words, "caution.", names(Caution.values()));
        assertFamily(words, "end.", names(LineEnd.values()));
        assertFamily(words, "recordedEnd.", names(RecordedEnd.Kind.values()));
        assertFamily(words, "picture.", names(WaterDistribution.values()));
        assertFamily(words, "reason.", Stream.concat(names(HiddenReason.values()), Stream.of("overshadowed.unnamed")));
        assertFamily(words, "place.", names(PlaceMark.Edge.values()).flatMap(edge -> Stream.of(edge, edge + ".exact")));
        assertFamily(words, "effect.", names(LineEffect.values()));
        Texts desktop = new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT);
        assertFamily(desktop, "visibility.", names(Visibility.values()));
        assertFamily(
                desktop,
                "outcome.",
                names(FindingText.Outcome.values()).flatMap(word -> Stream.of(word + ".sign", word + ".name")));
        Set<String> settings = names(Setting.values()).collect(Collectors.toCollection(TreeSet::new));
        settings.addAll(Set.of("rise", "accessible", "tip", "folded", "velocity.more", "velocity.less"));
        assertFamily(desktop, "setting.", settings.stream());
    }

    private static Stream<String> names(Enum<?>[] values) {
        return Arrays.stream(values).map(Words::word);
    }

    private static void assertFamily(Texts texts, String prefix, Stream<String> members) {
        Set<String> wanted = members.map(prefix::concat).collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = texts.keys().stream()
                .filter(key -> key.startsWith(prefix))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(wanted, there);
    }

    @Test
    void everyKeyThatIsSaidByNameIsThere() throws IOException {
        Set<String> keys = keysOfEveryBundle();
        Set<String> said = matches(SAID);
        assertTrue(said.size() > 50, "the sources were found and read");
        Set<String> missing =
                said.stream().filter(key -> !keys.contains(key)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), missing);
    }

    @Test
    void noKeyIsLeftThatNobodySays() throws IOException {
        Set<String> literals = matches(LITERAL);
        Set<String> orphans = allKeys().stream()
                .filter(key -> !literals.contains(key) && literals.stream().noneMatch(it -> isPrefix(it, key)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), orphans);
    }

    private static boolean isPrefix(String literal, String key) {
        return literal.endsWith(".") && key.startsWith(literal);
    }

    private static Set<String> allKeys() {
        Set<String> keys = new HashSet<>(new Texts(Words.BUNDLE, Locale.ROOT).keys());
        keys.addAll(new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT).keys());
        keys.addAll(new Texts(BenchView.BUNDLE, Locale.ROOT).keys());
        keys.addAll(new Texts(TrackSheet.BUNDLE, Locale.ROOT).keys());
        return keys;
    }

    /** Screens with a bundle of their own say its keys too. */
    private static Set<String> keysOfEveryBundle() throws IOException {
        Set<String> keys = new HashSet<>();
        Path resources = Path.of("src", "main", "resources");
        try (Stream<Path> files = Files.walk(resources)) {
            for (Path file :
                    files.filter(it -> it.toString().endsWith(".properties")).toList()) {
                String name = resources.relativize(file).toString().replace(java.io.File.separatorChar, '.');
                keys.addAll(new Texts(name.substring(0, name.length() - ".properties".length()), Locale.ROOT).keys());
            }
        }
        return keys;
    }

    private static Set<String> matches(Pattern pattern) throws IOException {
        Set<String> found = new HashSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
                boolean ours = Stream.of("words", "desktop", "drawing", "commandline/output/PathLines.java")
                        .anyMatch(part -> file.startsWith(SOURCES.resolve(part)));
                Matcher matcher = pattern.matcher(Files.readString(file));
                while (ours && matcher.find()) {
                    found.add(matcher.group(1));
                }
            }
        }
        return found;
    }

    @Test
    void aSentenceRefusesToBeSaidWithoutItsNumbers() {
        Texts words = new Texts(Words.BUNDLE, Locale.ROOT);
        IllegalArgumentException refused = org.junit.jupiter.api.Assertions.assertThrows(
                IllegalArgumentException.class, () -> words.say("why.ghost", "a", "b"));
        assertTrue(refused.getMessage().contains("why.ghost"), refused.getMessage());
    }
}
