// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchFile;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.RecoveryFolder;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.BenchView;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of the Bench: nothing that was built is lost, and what can't be used changes nothing. */
class FilesViewModelTest {

    @TempDir
    Path folder;

    private BenchViewModel bench() {
        RecoveryFolder recovery = new RecoveryFolder(folder.resolve("recovery"));
        return new BenchViewModel(
                BenchTemplate.PLAIN_CABLE.document(Locale.ROOT),
                new SimpleObjectProperty<>(LengthUnit.METRES),
                Threads.sameThread(),
                new OneText(),
                new BenchStore(Optional.of(recovery), RecentFiles.none()),
                new Texts(BenchView.BUNDLE, Locale.ROOT),
                new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT));
    }

    /** A clipboard for tests. */
    private static final class OneText implements TextClipboard {
        private Optional<String> held = Optional.empty();

        @Override
        public void put(String text) {
            held = Optional.of(text);
        }

        @Override
        public Optional<String> get() {
            return held;
        }
    }

    private static void pinch(BenchViewModel bench, double metres) {
        bench.trace().axis().moveCursorTo(metres);
        bench.events().insert(Insertable.PINCH);
    }

    private static BenchNotice.Deed deed(BenchViewModel bench, String id) {
        return bench.files().notices().stream()
                .flatMap(notice -> notice.deeds().stream())
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no notice offers " + id));
    }

    @Test
    void aNewerFileIsLookedAtButNeitherChangedNorWritten() throws IOException {
        byte[] bytes = BenchFile.bytes(BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT), BenchFile.Form.LESSON);
        String newer = new String(bytes, java.nio.charset.StandardCharsets.UTF_8)
                .replaceFirst("\"version\"\\s*:\\s*\\d+", "\"version\": 99");
        Path file = Files.writeString(folder.resolve("newer.json"), newer);
        BenchViewModel bench = bench();
        bench.files().open(file);
        assertTrue(bench.files().notices().get(0).text().contains("newer version"));
        BenchDocument opened = bench.document().now();
        assertEquals(6, opened.cable().events().size());
        pinch(bench, 50);
        assertEquals(opened, bench.document().now());
        assertTrue(bench.events().faultProperty().get().contains("read-only"));
        assertFalse(bench.files().save());
        bench.files().saveAs(file);
        assertEquals(newer, Files.readString(file));
    }

    @Test
    void workThatACrashEndedIsOfferedAndTakenUp() {
        BenchViewModel crashed = bench();
        pinch(crashed, 40);
        BenchDocument built = crashed.document().now();
        new RecoveryLeft(folder.resolve("recovery")).leave(built);
        BenchViewModel next = bench();
        deed(next, "take-up").action().run();
        assertEquals(built.lesson(), next.document().now().lesson());
        assertTrue(next.files().unsavedProperty().get(), "it is in no file yet");
    }

    /** Leaves a recovery file as a crash does: with no lock that anybody holds. */
    private record RecoveryLeft(Path recovery) {
        void leave(BenchDocument document) {
            try {
                Files.createDirectories(recovery);
                Files.write(recovery.resolve("crashed.json"), BenchFile.bytes(document, BenchFile.Form.LESSON));
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
    }

    @Test
    void closingAsksWhatIsToBecomeOfUnsavedWorkAndKeepsItWhenAskedTwice() {
        BenchViewModel bench = bench();
        AtomicInteger closed = new AtomicInteger();
        assertTrue(bench.files().mayClose(closed::incrementAndGet, then -> {}));
        pinch(bench, 40);
        assertFalse(bench.files().mayClose(closed::incrementAndGet, then -> {}));
        assertTrue(bench.files().notices().get(0).text().contains("pinch1 was added"), "it says what changed");
        assertEquals(0, closed.get());
        assertFalse(bench.files().mayClose(closed::incrementAndGet, then -> {}));
        assertEquals(1, closed.get(), "the second time it closes, and the work is kept");
        assertEquals(1, kept());
    }

    private long kept() {
        try (java.util.stream.Stream<Path> files = Files.list(folder.resolve("recovery"))) {
            return files.filter(file -> file.toString().endsWith(".json")).count();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void whatIsSavedLeavesNoRecoveryFileBehind() {
        BenchViewModel bench = bench();
        pinch(bench, 40);
        bench.files().keep();
        assertEquals(1, kept());
        bench.files().saveAs(folder.resolve("line.json"));
        assertEquals(0, kept());
        assertFalse(bench.files().unsavedProperty().get());
    }

    @Test
    void aCableFileStaysOneUntilMoreThanACableIsBuilt() throws IOException {
        Path file = folder.resolve("cable.json");
        BenchFile.save(file, BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT), BenchFile.Form.CABLE);
        BenchViewModel bench = bench();
        bench.files().open(file);
        pinch(bench, 50);
        assertTrue(bench.files().save(), "a pinch is part of the cable");
        assertTrue(Files.readString(file).contains("pinch1"));
        bench.document().step("tell", before -> before.withTexts("quay", "Quay", "About it", "Invented.", 0.5));
        assertFalse(bench.files().save(), "a lesson's words have no room in a cable file");
    }

    @Test
    void whatFollowedFromTheCableFollowsItOnAndWhatWasChangedStays() {
        BenchViewModel bench = bench();
        bench.cable().runLength(0, 400);
        assertEquals(400, bench.document().now().record().lengthMetres().orElseThrow());
        assertTrue(bench.trace().settings().rangeMetresProperty().get() > 400, "the trace shows all of it");
        bench.document().step("note", before -> before.withRecord(record -> RecordEdits.withNote(record, "Redrawn.")));
        bench.cable().runLength(0, 500);
        assertEquals(400, bench.document().now().record().lengthMetres().orElseThrow(), "somebody's drawing stays");
    }

    @Test
    void thePlainExplanationStaysTrueUntilSomebodyWritesAnother() {
        BenchViewModel bench = bench();
        assertTrue(bench.document().now().exercise().explanation().contains("it is sound"));
        pinch(bench, 40);
        String told = bench.document().now().exercise().explanation();
        assertTrue(told.contains("**pinch** from {40.0 m} to "), told);
        bench.document().step("tell", before -> before.with(ExerciseEdits.withExplanation(before.exercise(), "Mine.")));
        pinch(bench, 60);
        assertEquals("Mine.", bench.document().now().exercise().explanation());
    }

    @Test
    void theTraceBeforeTheLastStepIsLaidOver() {
        BenchViewModel bench = bench();
        pinch(bench, 40);
        bench.comparisonProperty().set(Comparison.BEFORE);
        double at = 40;
        double with = bench.trace().traceTrack().traceProperty().get().voltsAt(at);
        double without = bench.trace().traceTrack().comparisonProperty().get().voltsAt(at);
        assertTrue(Math.abs(with - without) > 0.002, "the pinch is what differs");
        bench.comparisonProperty().set(Comparison.NONE);
        assertEquals(null, bench.trace().traceTrack().comparisonProperty().get());
    }
}
