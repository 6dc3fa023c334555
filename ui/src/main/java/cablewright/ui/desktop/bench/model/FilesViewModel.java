// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchFile;
import cablewright.lessons.bench.BenchFile.Form;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.model.BenchNotice.Deed;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The document and its files: opened, saved whole or not at all, and never lost. Opening another document asks nothing: one
 * that was not saved is put aside, and can be brought back.
 */
public final class FilesViewModel {

    private final List<Aside> asides = new ArrayList<>();
    private final BenchViewModel bench;
    private final Texts texts;
    private final ChangeWords changes;
    private final RecentFiles recent;
    private final Recovery recovery;
    private final LatestRun reading;
    private final LatestRun writing;
    private final ReadOnlyObjectWrapper<Origin> origin = new ReadOnlyObjectWrapper<>(Origin.NEW);
    private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
    private final ObservableList<BenchNotice> notices = FXCollections.observableArrayList();

    /**
     * Where a document came from.
     *
     * @param file its file; empty where it has none yet
     * @param form what kind of file that is
     * @param isNewer whether a newer program wrote it, so that it is only looked at
     */
    public record Origin(Optional<Path> file, Form form, boolean isNewer) {
        static final Origin NEW = new Origin(Optional.empty(), Form.LESSON, false);
    }

    FilesViewModel(BenchViewModel bench, BenchStore store, Threads threads, Texts texts) {
        this.bench = bench;
        this.texts = texts;
        this.changes = new ChangeWords(texts);
        this.recent = store.recent();
        this.reading = new LatestRun(threads);
        this.writing = new LatestRun(threads);
        this.recovery = new Recovery(store.recovery(), threads, this::tell);
        bench.document().documentProperty().addListener(changed -> compareWithSaved());
        recovery.find(texts.locale(), found -> found.forEach(this::offer));
    }

    /**
     * Unsaved work that another document took the place of.
     *
     * @param title title of its lesson
     * @param restore puts it back
     */
    public record Aside(String title, Runnable restore) {}

    private void compareWithSaved() {
        unsaved.set(!now().lesson().equals(bench.saved().lesson()));
    }

    private BenchDocument now() {
        return bench.document().now();
    }

    private void tell(String key, Object... arguments) {
        notices.add(BenchNotice.of(texts.say(key, arguments)));
    }

    private Deed deed(String id, Runnable action) {
        return new Deed(id, texts.say("deed." + id), action);
    }

    public void tellReadOnly() {
        tell("file.readOnly");
    }

    void tellFault(String sentence) {
        tell("file.fault", sentence);
    }

    /** A name for a file that has none yet. */
    public String suggestedName() {
        return origin.get()
                .file()
                .map(FilesViewModel::name)
                .orElse(now().lesson().id() + ".json");
    }

    /** Starts from a template. */
    public void start(BenchTemplate template) {
        replace(template.document(texts.locale(), new SecureRandom()), Origin.NEW);
    }

    /**
     * Starts from a document that no file holds yet.
     *
     * @param document the document
     */
    public void start(BenchDocument document) {
        replace(document, Origin.NEW);
    }

    /** Goes on with the same in a document of its own, which has no file yet. */
    public void startFromThis() {
        BenchDocument same = BenchDocument.of(now().exercise(), texts.locale());
        replace(same, Origin.NEW);
    }

    /**
     * Opens a file. What was open stays if it can't be used, and the Bench says why.
     *
     * @param file the file
     */
    public void open(Path file) {
        reading.ask(
                () -> BenchFile.open(file, texts.locale()),
                opened -> {
                    replace(opened.document(), new Origin(Optional.of(file), opened.form(), opened.isNewer()));
                    recent.add(file);
                    if (opened.isNewer()) {
                        tell("file.newer", name(file));
                    }
                },
                problem -> {
                    if (!Files.exists(file)) {
                        recent.forget(file);
                    }
                    tell("file.notOpened", String.valueOf(problem.getMessage()));
                });
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    /** Puts a document on the Bench; one that was not saved is put aside first. */
    private void replace(BenchDocument next, Origin from) {
        if (unsaved.get()) {
            putAside();
        }
        recovery.forget();
        put(next, from, next);
    }

    private void put(BenchDocument document, Origin from, BenchDocument asSaved) {
        origin.set(from);
        bench.open(document, asSaved, from.isNewer() ? Optional.of(texts.say("file.readOnly")) : Optional.empty());
        compareWithSaved();
    }

    private void putAside() {
        BenchDocument aside = now();
        BenchDocument asideSaved = bench.saved();
        Origin from = origin.get();
        Recovery.Kept kept = recovery.putAside(aside, from.file());
        String what = changes.between(asideSaved.lesson(), aside.lesson());
        Deed bringBack = deed("bring-back", () -> {
            if (unsaved.get()) {
                putAside();
            }
            put(aside, from, asideSaved);
            kept.letGo();
        });
        // Whoever only closes the message has not thrown the work away: the File menu still offers it.
        notices.add(new BenchNotice(
                texts.say("aside", aside.lesson().title(), what),
                List.of(bringBack),
                () -> asides.add(new Aside(aside.lesson().title(), bringBack.action()))));
    }

    /**
     * Lists unsaved work that was set aside and whose message was closed.
     *
     * @return the work, oldest first
     */
    public List<Aside> asides() {
        return List.copyOf(asides);
    }

    /**
     * Puts work that was set aside back on the Bench.
     *
     * @param aside the work
     */
    public void bringBack(Aside aside) {
        asides.remove(aside);
        aside.restore().run();
    }

    private void offer(Recovery.Left left) {
        BenchDocument document = left.document();
        notices.add(new BenchNotice(
                texts.say("recovered", document.lesson().title()),
                List.of(deed("take-up", () -> takeUp(left)), deed("throw-away", left::discard)),
                () -> {}));
    }

    private void takeUp(Recovery.Left left) {
        if (unsaved.get()) {
            putAside();
        }
        Origin from = new Origin(left.origin(), Form.LESSON, false);
        // Nothing counts as saved but what was there before anybody worked on it, which is not known any more.
        put(left.document(), from, BenchTemplate.PLAIN_CABLE.document(texts.locale()));
        left.discard();
        keep();
    }

    /**
     * Saves the document where it came from.
     *
     * @return whether it has a file to be saved in; if not, one must be named
     */
    public boolean save() {
        Origin from = origin.get();
        boolean cableNeedsMore = from.form() == Form.CABLE && !isCableAlone();
        if (from.file().isEmpty() || from.isNewer() || cableNeedsMore) {
            if (cableNeedsMore) {
                tell("file.cableAlone");
            }
            return false;
        }
        write(from.file().get(), from, () -> {});
        return true;
    }

    /**
     * Saves the document in a file, and from then on there.
     *
     * @param file the file
     */
    public void saveAs(Path file) {
        if (origin.get().isNewer()) {
            tellReadOnly();
            return;
        }
        Form form = origin.get().form() == Form.CABLE && !isCableAlone()
                ? Form.LESSON
                : origin.get().form();
        write(file, new Origin(Optional.of(file), form, false), () -> {});
    }

    private boolean isCableAlone() {
        return BenchDocument.of(
                        BenchTemplate.around(now().exercise().id(), now().cable(), texts.locale()), texts.locale())
                .lesson()
                .equals(now().lesson());
    }

    private Form form(Form form) {
        if (form == Form.CABLE && isCableAlone()) {
            return Form.CABLE;
        }
        boolean holdsAll =
                BenchDocument.of(now().exercise(), texts.locale()).lesson().equals(now().lesson());
        return holdsAll ? BenchFile.savedAs(now(), form) : Form.LESSON;
    }

    /** Writes the document; only once it lies there is the file its own. */
    private void write(Path file, Origin from, Runnable then) {
        BenchDocument written = now();
        Form form = form(from.form());
        writing.ask(
                () -> {
                    BenchFile.save(file, written, form);
                    return file;
                },
                saved -> {
                    origin.set(from);
                    bench.savedIs(written);
                    compareWithSaved();
                    recent.add(saved);
                    if (!unsaved.get()) {
                        recovery.forget();
                    }
                    then.run();
                },
                problem -> tell("file.notSaved", String.valueOf(file), why(problem)));
    }

    /** Why a file could not be written, without the temporary file beside it that a person never named. */
    private String why(Exception problem) {
        Throwable cause = problem;
        while (cause.getCause() != null && !(cause instanceof FileSystemException)) {
            cause = cause.getCause();
        }
        if (cause instanceof NoSuchFileException) {
            return texts.say("file.why.noFolder");
        }
        if (cause instanceof AccessDeniedException) {
            return texts.say("file.why.denied");
        }
        return cause instanceof FileSystemException of && of.getReason() != null
                ? of.getReason()
                : String.valueOf(problem.getMessage());
    }

    /**
     * Saves a copy of the cable alone.
     *
     * @param file the file
     */
    public void saveCable(Path file) {
        BenchDocument written = now();
        writing.ask(
                () -> {
                    BenchFile.save(file, written, Form.CABLE);
                    return file;
                },
                saved -> tell("file.cableSaved", name(saved)),
                problem -> tell("file.notSaved", String.valueOf(file), why(problem)));
    }

    /** Keeps what is not saved yet, so that a crash loses none of it. To be called once the hand has come to rest. */
    public void keep() {
        if (unsaved.get()) {
            recovery.keep(now(), origin.get().file());
        }
    }

    /** Says what changed since the document was saved or opened. */
    public void tellChanges() {
        String changed = changesSinceSaved();
        tell(changed.isEmpty() ? "changes.none" : "changes.since", changed);
    }

    String changesSinceSaved() {
        Lesson before = bench.saved().lesson();
        return changes.between(before, now().lesson());
    }

    /**
     * Asked before the window closes. Where something is not saved it says what, and offers what can be done; asked again,
     * it keeps the work for the next time.
     *
     * @param close closes the window
     * @param askWhere asks in which file to save, and saves there
     * @return whether the window may close now
     */
    public boolean mayClose(Runnable close, Consumer<Runnable> askWhere) {
        if (!unsaved.get()) {
            recovery.close();
            return true;
        }
        boolean again = notices.stream().anyMatch(notice -> notice.deeds().stream()
                .anyMatch(deed -> deed.id().equals("close-keep")));
        if (again) {
            recovery.keepThen(now(), origin.get().file(), close);
            return false;
        }
        notices.add(
                0,
                BenchNotice.of(
                        texts.say("closing", now().lesson().title(), changesSinceSaved()),
                        deed("save-close", () -> saveThen(close, askWhere)),
                        deed(
                                "close-keep",
                                () -> recovery.keepThen(now(), origin.get().file(), close)),
                        deed("close-drop", () -> {
                            recovery.close();
                            close.run();
                        })));
        return false;
    }

    private void saveThen(Runnable close, Consumer<Runnable> askWhere) {
        Runnable then = () -> {
            recovery.close();
            close.run();
        };
        Origin from = origin.get();
        if (from.file().isPresent() && (from.form() != Form.CABLE || isCableAlone())) {
            write(from.file().get(), from, then);
        } else {
            askWhere.accept(then);
        }
    }

    /** Saves in a file that was asked for on closing, and then closes. */
    public void saveAs(Path file, Runnable then) {
        Form form =
                origin.get().form() == Form.CABLE ? Form.LESSON : origin.get().form();
        write(file, new Origin(Optional.of(file), form, false), then);
    }

    public ReadOnlyObjectProperty<Origin> originProperty() {
        return origin.getReadOnlyProperty();
    }

    /**
     * Returns whether the document differs from what was saved or opened.
     *
     * @return true while something is not saved
     */
    public ReadOnlyBooleanProperty unsavedProperty() {
        return unsaved.getReadOnlyProperty();
    }

    /**
     * Returns what is said above the work.
     *
     * @return notices, each to be answered or closed
     */
    public ObservableList<BenchNotice> notices() {
        return notices;
    }

    public RecentFiles recent() {
        return recent;
    }
}
