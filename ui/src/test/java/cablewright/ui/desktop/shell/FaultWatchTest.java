// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.text.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultWatchTest {

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();

    private FaultWatch watch(Path where) {
        Texts texts = new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT);
        return new FaultWatch(List.of(where), Runnable::run, told::add, texts);
    }

    private List<Path> reports() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    @Test
    void faultIsWrittenDownAndToldInOneSentenceWithoutTheUser() throws IOException {
        String home = System.getProperty("user.home");
        watch(folder)
                .uncaughtException(Thread.currentThread(), new IllegalStateException("no file " + home + "/ada.json"));
        assertEquals(1, told.size());
        Path report = reports().get(0);
        assertTrue(told.get(0).contains(report.toString()), told.get(0));
        assertFalse(told.get(0).contains("Exception"), told.get(0));
        String text = Files.readString(report);
        assertTrue(text.contains("IllegalStateException") && text.contains("FaultWatchTest"), text);
        assertFalse(text.contains(home + "/"), text);
    }

    @Test
    void faultThatComesAgainAndAgainDoesNotFillTheDisk() throws IOException {
        FaultWatch watch = watch(folder);
        for (int i = 0; i < 1000; i++) {
            watch.uncaughtException(Thread.currentThread(), new IllegalStateException("again"));
        }
        assertEquals(5, reports().size());
        assertEquals(5, told.size());
    }

    @Test
    void faultIsToldWhereNoReportCanBeWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        watch(file).uncaughtException(Thread.currentThread(), new StackOverflowError());
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("StackOverflowError"), told.get(0));
    }
}
