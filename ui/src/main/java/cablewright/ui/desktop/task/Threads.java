package cablewright.ui.desktop.task;

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
 */
public record Threads(Executor work, Executor screen) {

    private static final int WORKERS = 2;

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
        return new Threads(worker, Platform::runLater);
    }
}
