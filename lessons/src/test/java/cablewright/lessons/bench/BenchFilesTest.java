// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of the Bench, and what is left after a crash. */
class BenchFilesTest {

    @TempDir
    Path folder;

    private static BenchDocument document() {
        return BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT);
    }

    @Test
    void whatIsSavedIsOpenedAgainAsItWas() throws Exception {
        BenchDocument two = document()
                .adding(BenchTemplate.BUILDING_RISER.document(Locale.ROOT).exercise());
        Path file = folder.resolve("lesson.json");
        BenchFile.save(file, two, BenchFile.savedAs(two, BenchFile.Form.EXERCISE));
        BenchFile opened = BenchFile.open(file, Locale.ROOT);
        assertEquals(BenchFile.Form.LESSON, opened.form());
        assertEquals(two.lesson(), opened.document().lesson());

        BenchFile.save(file, document(), BenchFile.Form.EXERCISE);
        assertEquals(
                document().exercise(),
                BenchFile.open(file, Locale.ROOT).document().exercise());
        assertEquals(BenchFile.Form.EXERCISE, BenchFile.open(file, Locale.ROOT).form());

        BenchFile.save(file, document(), BenchFile.Form.CABLE);
        assertEquals(
                document().cable(), BenchFile.open(file, Locale.ROOT).document().cable());
        assertEquals(BenchFile.Form.CABLE, BenchFile.open(file, Locale.ROOT).form());
    }

    @Test
    void aFileOfANewerProgramIsReadAsFarAsItIsUnderstood() throws Exception {
        String text =
                new String(BenchFile.bytes(document(), BenchFile.Form.LESSON), java.nio.charset.StandardCharsets.UTF_8);
        String newer = text.replace("\"version\": 1,", "\"version\": 9,\n  \"spectre\": true,")
                .replaceFirst("\"celsius\": 20", "\"celsius\": 20,\n \"moonlight\": {\"lux\": 0.2}");
        Path file = Files.writeString(folder.resolve("newer.json"), newer);
        BenchFile opened = BenchFile.open(file, Locale.ROOT);
        assertTrue(opened.isNewer());
        assertEquals(document().cable(), opened.document().cable());

        Path strange = Files.writeString(
                folder.resolve("strange.json"), newer.replaceFirst("\"kind\": \"tap\"", "\"kind\": \"flux-gate\""));
        LessonFormatException refusal =
                assertThrows(LessonFormatException.class, () -> BenchFile.open(strange, Locale.ROOT));
        assertTrue(refusal.getMessage().contains("flux-gate"), refusal.getMessage());
    }

    @Test
    void whatACrashLeftIsFoundOnceAndWhatIsOpenIsNot() throws IOException {
        RecoveryFolder recovery = new RecoveryFolder(folder.resolve("recovery"));
        try (RecoveryFolder.Keeper keeper = recovery.keeper()) {
            keeper.keep(document(), Optional.of(Path.of("street.json")));
            assertEquals(List.of(), recovery.leftBehind(Locale.ROOT), "its program still runs");
            copyAll(folder.resolve("recovery"), folder.resolve("crashed"));
        }
        assertEquals(List.of(), recovery.leftBehind(Locale.ROOT), "it was closed");

        RecoveryFolder crashed = new RecoveryFolder(folder.resolve("crashed"));
        List<RecoveryFolder.Found> found = crashed.leftBehind(Locale.ROOT);
        assertEquals(1, found.size());
        assertEquals(document().lesson(), found.get(0).document().lesson());
        assertEquals(
                Path.of("street.json").toAbsolutePath(), found.get(0).origin().orElseThrow());
        crashed.discard(found.get(0));
        assertEquals(List.of(), crashed.leftBehind(Locale.ROOT));
        assertFalse(Files.list(folder.resolve("crashed")).findAny().isPresent());
    }

    private static void copyAll(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }
}
