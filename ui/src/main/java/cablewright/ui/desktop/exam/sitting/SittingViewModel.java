// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.sitting.HandedIn;
import cablewright.lessons.exam.sitting.ItemDraft;
import cablewright.lessons.exam.sitting.Sitting;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Said;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/**
 * A sitting on the screen: which line is open, how much time is left, and handing in. Each change goes to disk beside the
 * screen's thread, at once; of changes that follow each other faster than the disk takes them, the last one.
 */
public final class SittingViewModel {

    private static final int SHORT_SECONDS = 300;

    private final Sitting sitting;
    private final Path target;
    private final Texts texts;
    private final Threads threads;
    private final List<SittingItemViewModel> items = new ArrayList<>();
    private final Map<String, LatestRun> saves = new HashMap<>();
    private final LatestRun ticks;
    private final ReadOnlyIntegerWrapper index = new ReadOnlyIntegerWrapper(-1);
    private final ReadOnlyIntegerWrapper changes = new ReadOnlyIntegerWrapper();
    private final ReadOnlyStringWrapper clock = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper isShort = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyBooleanWrapper handingIn = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);
    private final ReadOnlyObjectWrapper<Optional<HandedIn>> handedIn = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Opens a sitting at its first line.
     *
     * @param sitting the sitting; closed by {@link #close}
     * @param target where the sealed answers go
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param texts sentences of these pages
     * @param desktop texts of the desktop
     */
    public SittingViewModel(
            Sitting sitting,
            Path target,
            ObservableValue<LengthUnit> unit,
            Threads threads,
            Texts texts,
            Texts desktop) {
        this.sitting = sitting;
        this.target = target;
        this.threads = threads;
        this.texts = texts;
        this.ticks = new LatestRun(threads);
        sitting.paper().items().forEach(item -> {
            SittingItemViewModel[] made = new SittingItemViewModel[1];
            made[0] = new SittingItemViewModel(item, sitting.draft(item.id()), threads, desktop, () -> keep(made[0]));
            made[0].axis().unitProperty().bind(unit);
            items.add(made[0]);
            saves.put(item.id(), new LatestRun(threads));
        });
        look();
        select(0);
    }

    private void keep(SittingItemViewModel changed) {
        if (changed == null || !open.get()) {
            return;
        }
        changes.set(changes.get() + 1);
        String id = changed.item().id();
        ItemDraft draft = changed.draft();
        saves.get(id)
                .ask(
                        () -> {
                            sitting.change(id, draft);
                            return id;
                        },
                        kept -> said.set(Said.NOTHING),
                        this::notKept);
    }

    private void notKept(Exception e) {
        if (e instanceof IllegalStateException) {
            look();
        } else {
            said.set(Said.fault(texts.say("sit.notKept", String.valueOf(e.getMessage()))));
        }
    }

    /** Looks at the clock; call it each second. When the time is up, the flags stay as they are. */
    public void look() {
        long seconds = sitting.left().toSeconds();
        clock.set(texts.say("sit.left", seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60));
        isShort.set(seconds < SHORT_SECONDS);
        if (open.get() && sitting.isOver()) {
            open.set(false);
            items.forEach(item -> item.flags().stop());
            said.set(Said.fault(texts.say("sit.over")));
        }
    }

    /** Keeps the time that was used; call it every few seconds. */
    public void tick() {
        ticks.ask(
                () -> {
                    sitting.tick();
                    return true;
                },
                kept -> {},
                this::notKept);
    }

    /**
     * Opens a line.
     *
     * @param number its number, from 0; numbers beyond the paper do nothing
     */
    public void select(int number) {
        if (number >= 0 && number < items.size() && number != index.get()) {
            items.get(number).open();
            index.set(number);
        }
    }

    /** Seals the answers and writes them; what went wrong is said, and nothing is handed in then. */
    public void handIn() {
        if (handingIn.get()) {
            return;
        }
        handingIn.set(true);
        Map<String, ItemDraft> last = new HashMap<>();
        if (open.get()) {
            items.forEach(item -> last.put(item.item().id(), item.draft()));
        }
        threads.work().execute(() -> {
            try {
                HandedIn done = handedIn(last);
                threads.screen().execute(() -> {
                    handingIn.set(false);
                    open.set(false);
                    handedIn.set(Optional.of(done));
                });
            } catch (IOException | RuntimeException e) {
                threads.screen().execute(() -> {
                    handingIn.set(false);
                    said.set(Said.fault(texts.say("sit.notHandedIn", String.valueOf(e.getMessage()))));
                });
            }
        });
    }

    /** A change that still waits for the disk must not be missing: each line is kept once more, if there is time. */
    private HandedIn handedIn(Map<String, ItemDraft> last) throws IOException {
        for (Map.Entry<String, ItemDraft> one : last.entrySet()) {
            boolean isOpened = sitting.draft(one.getKey()).openedAt().isPresent()
                    || one.getValue().isAnswered();
            if (isOpened && !sitting.isOver()) {
                sitting.change(one.getKey(), one.getValue());
            }
        }
        return sitting.handIn(target);
    }

    /** Ends the sitting on this screen; what is kept stays kept. */
    public void close() {
        try {
            sitting.close();
        } catch (IOException e) {
            said.set(Said.fault(String.valueOf(e.getMessage())));
        }
    }

    public SealedPaper paper() {
        return sitting.paper();
    }

    public String trainee() {
        return sitting.trainee();
    }

    public List<SittingItemViewModel> items() {
        return List.copyOf(items);
    }

    /**
     * Returns the line that is open.
     *
     * @return the line
     */
    public SittingItemViewModel current() {
        return items.get(index.get());
    }

    /**
     * Counts the lines without a whole flag or an answer.
     *
     * @return how many there are
     */
    public int blank() {
        return (int) items.stream().filter(item -> !item.isAnswered()).count();
    }

    /**
     * Counts flags that say no kind or no verdict, over all lines.
     *
     * @return how many there are
     */
    public int incomplete() {
        return items.stream().mapToInt(SittingItemViewModel::incomplete).sum();
    }

    /**
     * Returns which line is open.
     *
     * @return its number, from 0
     */
    public ReadOnlyIntegerProperty indexProperty() {
        return index.getReadOnlyProperty();
    }

    /**
     * Returns a number that changes with what is answered.
     *
     * @return how many changes there were
     */
    public ReadOnlyIntegerProperty changesProperty() {
        return changes.getReadOnlyProperty();
    }

    /**
     * Returns how much time is left.
     *
     * @return a few words
     */
    public ReadOnlyStringProperty clockProperty() {
        return clock.getReadOnlyProperty();
    }

    /**
     * Returns whether little time is left.
     *
     * @return true in the last minutes
     */
    public ReadOnlyBooleanProperty shortProperty() {
        return isShort.getReadOnlyProperty();
    }

    /**
     * Returns whether anything can be changed.
     *
     * @return true until the time is up or the answers are handed in
     */
    public ReadOnlyBooleanProperty openProperty() {
        return open.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty handingInProperty() {
        return handingIn.getReadOnlyProperty();
    }

    /**
     * Returns what there is to say.
     *
     * @return the last of it
     */
    public ReadOnlyObjectProperty<Said> saidProperty() {
        return said.getReadOnlyProperty();
    }

    /**
     * Returns the sealed answers.
     *
     * @return file and receipt; empty until they are handed in
     */
    public ReadOnlyObjectProperty<Optional<HandedIn>> handedInProperty() {
        return handedIn.getReadOnlyProperty();
    }
}
