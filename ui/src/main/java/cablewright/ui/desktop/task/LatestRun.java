// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.task;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/**
 * Runs one job at a time, and of the jobs that came meanwhile only the last. So a dragged slider never queues up work, each
 * result that is shown is newer than the one before, and the last job asked for is always done.
 *
 * <p>To be called on the screen's thread only; results come there too.
 */
public final class LatestRun {

    private final Threads threads;
    private Optional<Runnable> waiting = Optional.empty();
    private boolean running;
    private long generation;

    /**
     * Makes a runner with no job.
     *
     * @param threads where to work and where to show
     */
    public LatestRun(Threads threads) {
        this.threads = threads;
    }

    /**
     * Asks for a job. It starts at once if none runs; otherwise it waits and replaces the one that waits already.
     *
     * @param job what takes long; it may throw
     * @param shown receives the result on the screen's thread
     * @param failed receives what was thrown on the screen's thread
     * @param <T> type of the result
     */
    public <T> void ask(Callable<T> job, Consumer<T> shown, Consumer<Exception> failed) {
        long mine = generation;
        Runnable start = () -> threads.work().execute(() -> {
            Runnable after = outcome(job, shown, failed);
            threads.screen().execute(() -> finish(mine, after));
        });
        if (running) {
            waiting = Optional.of(start);
        } else {
            running = true;
            start.run();
        }
    }

    /** Forgets what waits and drops the result of what runs. */
    public void forget() {
        generation++;
        waiting = Optional.empty();
    }

    private static <T> Runnable outcome(Callable<T> job, Consumer<T> shown, Consumer<Exception> failed) {
        try {
            T result = job.call();
            return () -> shown.accept(result);
        } catch (Exception e) {
            return () -> failed.accept(e);
        } catch (Error e) {
            // The next job must still come; the screen's thread reports what is no fault of the job's input.
            return () -> {
                throw e;
            };
        }
    }

    private void finish(long startedIn, Runnable after) {
        Optional<Runnable> next = waiting;
        waiting = Optional.empty();
        running = next.isPresent();
        try {
            if (startedIn == generation) {
                after.run();
            }
        } finally {
            next.ifPresent(Runnable::run);
        }
    }
}
