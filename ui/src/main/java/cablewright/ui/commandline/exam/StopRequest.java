// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Hears when somebody stops the program, by Ctrl+C or by asking the system to end it, and gives the work time to come to a
 * sound end.
 */
final class StopRequest implements BooleanSupplier, AutoCloseable {

    private static final long PATIENCE_SECONDS = 30;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "stop-request");
    private volatile boolean asked;

    /** Begins to listen. */
    StopRequest() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void stop() {
        asked = true;
        try {
            // The program goes on until its hooks are done, so the work ends where it says it does.
            ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean getAsBoolean() {
        return asked;
    }

    /** The work has come to its end, and what there was to say is said. */
    @Override
    public void close() {
        ended.countDown();
        if (!asked) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // Somebody stopped the program just now; the hook finds the work ended.
                return;
            }
        }
    }
}
