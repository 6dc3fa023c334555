// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LatestRunTest {

    private static final int CHANGES = 10_000;

    private final Queue<Runnable> work = new ArrayDeque<>();
    private final List<String> shown = new ArrayList<>();
    private final List<String> failed = new ArrayList<>();
    private final LatestRun run = new LatestRun(new Threads(work::add, Runnable::run));

    private void ask(String result) {
        run.ask(() -> result, shown::add, e -> failed.add(e.getMessage()));
    }

    private void workAll() {
        while (!work.isEmpty()) {
            work.remove().run();
        }
    }

    @Test
    void ofJobsThatComeWhileOneRunsOnlyTheLastIsDone() {
        ask("first");
        ask("second");
        ask("third");
        ask("last");
        workAll();
        assertEquals(List.of("first", "last"), shown);
    }

    @Test
    void onlyOneJobIsHandedToTheWorkerAtATime() {
        ask("first");
        ask("second");
        assertEquals(1, work.size());
    }

    @Test
    void aFailureIsToldAndTheNextJobStillRuns() {
        run.<String>ask(
                () -> {
                    throw new IllegalStateException("no trace");
                },
                shown::add,
                e -> failed.add(e.getMessage()));
        ask("next");
        workAll();
        assertEquals(List.of("no trace"), failed);
        assertEquals(List.of("next"), shown);
    }

    /** As a hand that drags for long: each change is asked for on the screen's thread while workers work. */
    @Test
    void ofTenThousandChangesTheLastIsShownAndNoThreadIsLeft() throws InterruptedException, ExecutionException {
        ExecutorService screen = Executors.newSingleThreadExecutor();
        ExecutorService workers = Executors.newFixedThreadPool(2);
        List<Integer> results = Collections.synchronizedList(new ArrayList<>());
        AtomicInteger atOnce = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        LatestRun latest = new LatestRun(new Threads(workers, screen));
        CountDownLatch lastShown = new CountDownLatch(1);
        for (int i = 1; i <= CHANGES; i++) {
            int change = i;
            screen.submit(() -> latest.ask(
                            () -> {
                                most.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
                                Thread.sleep(0, 1000 * (change % 50));
                                atOnce.decrementAndGet();
                                return change;
                            },
                            result -> {
                                results.add(result);
                                if (result == CHANGES) {
                                    lastShown.countDown();
                                }
                            },
                            e -> failed.add(String.valueOf(e))))
                    .get();
        }
        assertTrue(lastShown.await(1, TimeUnit.MINUTES));
        screen.submit(() -> {}).get();
        assertEquals(List.of(), failed);
        assertEquals(CHANGES, results.get(results.size() - 1));
        assertEquals(results.stream().sorted().distinct().toList(), results, "an old result after a newer one");
        assertEquals(1, most.get());
        assertEquals(List.of(), workers.shutdownNow());
        assertTrue(workers.awaitTermination(1, TimeUnit.MINUTES));
        assertEquals(List.of(), screen.shutdownNow());
    }

    @Test
    void whatWasForgottenIsNotShown() {
        ask("old");
        run.forget();
        workAll();
        assertEquals(List.of(), shown);
        ask("new");
        workAll();
        assertEquals(List.of("new"), shown);
    }
}
