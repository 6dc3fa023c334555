// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.key;

import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Jobs;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.print.KeyPaper;
import cablewright.ui.print.PaperPrinter;
import cablewright.ui.print.PaperSize;
import cablewright.ui.print.Printout;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The examiner's key that is open: where it comes from, and what is done with it. No secret is kept in a property. */
public final class KeyViewModel {

    private final Jobs jobs;
    private final Clock clock;
    private final StringProperty keyFile = new SimpleStringProperty("");
    private final StringProperty passphrase = new SimpleStringProperty("");
    private final StringProperty repeated = new SimpleStringProperty("");
    private final StringProperty backupFile = new SimpleStringProperty("");
    private final StringProperty typed = new SimpleStringProperty("");
    private final StringProperty lost = new SimpleStringProperty("");
    private final StringProperty lostPassphrase = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<ExaminerKey>> key = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Makes a page without a key.
     *
     * @param threads where to work and where to show
     * @param texts sentences of these pages
     * @param clock says when a key was made
     */
    public KeyViewModel(Threads threads, Texts texts, Clock clock) {
        this.jobs = new Jobs(threads, texts);
        this.clock = clock;
        // A key belongs to the file that is named: another name, no key until it is opened.
        keyFile.addListener((o, before, now) -> key.set(Optional.empty()));
    }

    /** What is said, and whether something is being done. */
    public Jobs jobs() {
        return jobs;
    }

    private Optional<Path> named(StringProperty file) {
        Optional<Path> path = FileWish.typed(file.get());
        if (path.isEmpty()) {
            jobs.fault("keys.noFile");
        }
        return path;
    }

    private void take(Callable<ExaminerKey> from, String said) {
        String file = keyFile.get();
        jobs.run(from, opened -> {
            key.set(Optional.of(opened));
            jobs.news(said, file);
        });
    }

    /** Makes a new key in the file that is named; one that is there is never written over. */
    public void make() {
        named(keyFile).ifPresent(file -> take(() -> written(file, ExaminerKey.make()), "keys.made"));
    }

    private ExaminerKey written(Path file, ExaminerKey fresh) throws IOException {
        KeyFile.write(file, fresh, clock.instant());
        return fresh;
    }

    /** Opens the file that is named. */
    public void open() {
        named(keyFile).ifPresent(file -> take(() -> KeyFile.read(file), "keys.opened"));
    }

    /** Backs the open key up under the passphrase that was typed twice. */
    public void backUp() {
        if (passphrase.get().length() < KeyFile.LEAST_PASSPHRASE) {
            jobs.fault("keys.short", KeyFile.LEAST_PASSPHRASE);
        } else if (!passphrase.get().equals(repeated.get())) {
            jobs.fault("keys.differ");
        } else if (key.get().isEmpty()) {
            jobs.fault("keys.none");
        } else {
            String words = passphrase.get();
            ExaminerKey open = key.get().get();
            named(backupFile)
                    .ifPresent(file -> jobs.run(
                            () -> {
                                KeyFile.backUp(file, open, words, clock.instant());
                                return file;
                            },
                            saved -> {
                                passphrase.set("");
                                repeated.set("");
                                jobs.news("keys.backedUp", saved);
                            }));
        }
    }

    /** Opens a backup with its passphrase, and writes its key into the file that is named. */
    public void restore() {
        String words = lostPassphrase.get();
        Optional<Path> backup = named(lost);
        backup.flatMap(from -> named(keyFile))
                .ifPresent(file -> take(() -> written(file, KeyFile.openBackup(backup.get(), words)), "keys.restored"));
        lostPassphrase.set("");
    }

    /** Writes a key that was typed from paper into the file that is named. */
    public void takeTyped() {
        String letters = typed.get();
        named(keyFile).ifPresent(file -> take(() -> written(file, ExaminerKey.of(letters)), "keys.restored"));
        typed.set("");
    }

    private Optional<Printout> paper(PaperSize size, Words words) {
        if (key.get().isEmpty()) {
            jobs.fault("keys.none");
        }
        return key.get().map(open -> new KeyPaper(open, clock.instant(), size, words).pages());
    }

    /**
     * Sends the key to a printer; the system asks which.
     *
     * @param size the size of the paper
     * @param words the words
     */
    public void print(PaperSize size, Words words) {
        paper(size, words)
                .ifPresent(pages -> jobs.run(
                        () -> PaperPrinter.isAvailable()
                                ? PaperPrinter.print(pages) ? "keys.printed" : "keys.notPrinted"
                                : "keys.noPrinter",
                        jobs::news));
    }

    /**
     * Saves the key as a PDF that its owner alone can read.
     *
     * @param file where to
     * @param size the size of the paper
     * @param words the words
     */
    public void savePaper(Path file, PaperSize size, Words words) {
        paper(size, words)
                .ifPresent(pages -> jobs.run(
                        () -> {
                            KeyFile.writePrivate(file, pages.pdf());
                            return file;
                        },
                        saved -> jobs.news("keys.paperSaved", saved)));
    }

    /**
     * Returns the open key.
     *
     * @return the key; empty until one is made, opened or restored
     */
    public ReadOnlyObjectProperty<Optional<ExaminerKey>> keyProperty() {
        return key.getReadOnlyProperty();
    }

    /**
     * Returns the name of the key file.
     *
     * @return what is typed
     */
    public StringProperty keyFileProperty() {
        return keyFile;
    }

    /**
     * Returns the passphrase for a backup.
     *
     * @return what is typed; emptied once the backup is made
     */
    public StringProperty passphraseProperty() {
        return passphrase;
    }

    /**
     * Returns the passphrase for a backup, typed again.
     *
     * @return what is typed
     */
    public StringProperty repeatedProperty() {
        return repeated;
    }

    public StringProperty backupFileProperty() {
        return backupFile;
    }

    /**
     * Returns the letters of a key that are typed from paper.
     *
     * @return what is typed; emptied once it is taken
     */
    public StringProperty typedProperty() {
        return typed;
    }

    /**
     * Returns the backup from which a lost key is restored.
     *
     * @return the name of its file
     */
    public StringProperty lostProperty() {
        return lost;
    }

    /**
     * Returns the passphrase of that backup.
     *
     * @return what is typed; emptied once it is tried
     */
    public StringProperty lostPassphraseProperty() {
        return lostPassphrase;
    }
}
