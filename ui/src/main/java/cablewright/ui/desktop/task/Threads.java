// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.task;

import java.time.Duration;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import javafx.application.Platform;

/**
 * Where work is done and where its results are shown.
 *
 * @param work does what takes long
 * @param screen runs what touches properties of view models
 * @param rest for how long a hand must rest before work begins that can wait; zero for at once
 */
public record Threads(Executor work, Executor screen, Duration rest) {

    private static final int WORKERS = 2;
    private static final Duration REST_OF_A_HAND = Duration.ofMillis(120);

    /**
     * Waits for no hand to rest.
     *
     * @param work does what takes long
     * @param screen runs what touches properties of view models
     */
    public Threads(Executor work, Executor screen) {
        this(work, screen, Duration.ZERO);
    }

    /**
     * Does everything at once on the calling thread: for tests, and for programs that have no screen.
     *
     * @return the threads
     */
    public static Threads sameThread() {
        return new Threads(Runnable::run, Runnable::run);
    }

    /**
     * Does work on two daemon threads, so that a trace need not wait for marks, and shows results on the JavaFX thread.
     *
     * @param name name of the threads that work
     * @return the threads
     */
    public static Threads besideTheScreen(String name) {
        ThreadFactory daemons = job -> {
            Thread thread = new Thread(job, name);
            thread.setDaemon(true);
            return thread;
        };
        ExecutorService worker = Executors.newFixedThreadPool(WORKERS, daemons);
        return new Threads(worker, Platform::runLater, REST_OF_A_HAND);
    }
}
