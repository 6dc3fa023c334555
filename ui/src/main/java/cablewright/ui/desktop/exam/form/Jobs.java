// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.form;

import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.task.Threads;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What a page does beside the screen's thread, one job at a time, and what it says of it. */
public final class Jobs {

    private final Threads threads;
    private final Texts texts;
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);

    /**
     * Makes a page's jobs.
     *
     * @param threads where to work and where to show
     * @param texts sentences of {@link Form#BUNDLE}
     */
    public Jobs(Threads threads, Texts texts) {
        this.threads = threads;
        this.texts = texts;
    }

    /**
     * Does a job, unless one is running.
     *
     * @param job what takes long; what it throws is said
     * @param then receives the result on the screen's thread
     * @param <T> type of the result
     */
    public <T> void run(Callable<T> job, Consumer<T> then) {
        if (busy.get()) {
            return;
        }
        busy.set(true);
        said.set(Said.NOTHING);
        threads.work().execute(() -> {
            try {
                T result = job.call();
                threads.screen().execute(() -> {
                    busy.set(false);
                    then.accept(result);
                });
            } catch (Exception e) {
                threads.screen().execute(() -> {
                    busy.set(false);
                    said.set(Said.fault(sentence(e)));
                });
            }
        });
    }

    /**
     * Shows something while a job runs.
     *
     * @param what what to do on the screen's thread
     */
    public void onScreen(Runnable what) {
        threads.screen().execute(what);
    }

    /**
     * Says what was done.
     *
     * @param key key of the sentence
     * @param arguments what stands in its places
     */
    public void news(String key, Object... arguments) {
        said.set(Said.news(texts.say(key, arguments)));
    }

    /**
     * Says what is missing or wrong.
     *
     * @param key key of the sentence
     * @param arguments what stands in its places
     */
    public void fault(String key, Object... arguments) {
        said.set(Said.fault(texts.say(key, arguments)));
    }

    private String sentence(Exception e) {
        if (e instanceof FileAlreadyExistsException there) {
            return texts.say("fault.there", there.getFile());
        } else if (e instanceof NoSuchFileException missing) {
            return texts.say("fault.missing", missing.getFile());
        } else if (e instanceof AccessDeniedException denied) {
            return texts.say("fault.denied", denied.getFile());
        } else if (e instanceof FileSystemException file && file.getReason() != null) {
            return texts.say("fault.file", file.getFile(), file.getReason());
        } else if (e instanceof LessonFormatException format) {
            return format.problems().get(0).sentence();
        } else if (e instanceof SealException seal) {
            return texts.say("fault.seal", seal.getMessage());
        } else if (e instanceof CancellationException) {
            return texts.say("fault.cancelled");
        }
        return texts.say("fault", String.valueOf(e.getMessage()));
    }

    /**
     * Returns whether a job is running.
     *
     * @return true until it has ended
     */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /**
     * Returns what there is to say.
     *
     * @return the last of it
     */
    public ReadOnlyObjectProperty<Said> saidProperty() {
        return said.getReadOnlyProperty();
    }
}
