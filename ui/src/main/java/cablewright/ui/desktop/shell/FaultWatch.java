// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.environment.FaultReport;
import java.lang.Thread.UncaughtExceptionHandler;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Hears of faults of the program while a window is open: writes a report, and says so in one sentence above the work, which
 * goes on. What stands on the Bench is in the recovery folder by then. Of faults that come again and again only the first few
 * are written down.
 */
final class FaultWatch implements UncaughtExceptionHandler {

    private static final int MOST_REPORTS = 5;

    private final List<Path> folders;
    private final Executor screen;
    private final Consumer<String> reported;
    private final Texts texts;
    private final AtomicInteger faults = new AtomicInteger();

    /**
     * Makes a watch.
     *
     * @param folders where reports go; the first that can be written
     * @param screen runs what touches the window
     * @param reported shows a sentence
     * @param texts the window's sentences
     */
    FaultWatch(List<Path> folders, Executor screen, Consumer<String> reported, Texts texts) {
        this.folders = List.copyOf(folders);
        this.screen = screen;
        this.reported = reported;
        this.texts = texts;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable fault) {
        if (faults.incrementAndGet() > MOST_REPORTS) {
            return;
        }
        String sentence = FaultReport.write(List.of("desktop"), fault, folders)
                .map(file -> texts.say("window.fault", file))
                .orElseGet(() ->
                        texts.say("window.fault.unwritten", fault.getClass().getSimpleName()));
        screen.execute(() -> reported.accept(sentence));
    }
}
