// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.task;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class LatestRunTest {

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
