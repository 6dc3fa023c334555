// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.RecoveryFolder;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Keeps work that was not saved in the recovery folder, beside the screen. Where there is no folder nothing is kept. */
final class Recovery {

    private final Optional<RecoveryFolder> folder;
    private final Threads threads;
    private final LatestRun runs;
    private final Teller teller;
    private Optional<RecoveryFolder.Keeper> keeper = Optional.empty();
    private boolean hasToldFault;

    /** Says something above the work. */
    interface Teller {
        void tell(String key, Object... arguments);
    }

    /** Work that was put aside. */
    interface Kept {
        /** It is not needed any more. */
        void letGo();
    }

    /**
     * Work that a crash left behind.
     *
     * @param document the document as it was
     * @param origin its file
     * @param gone takes it out of the folder
     */
    record Left(BenchDocument document, Optional<Path> origin, Runnable gone) {
        void discard() {
            gone.run();
        }
    }

    Recovery(Optional<RecoveryFolder> folder, Threads threads, Teller teller) {
        this.folder = folder;
        this.threads = threads;
        this.runs = new LatestRun(threads);
        this.teller = teller;
    }

    void find(Locale language, Consumer<List<Left>> found) {
        folder.ifPresent(there -> runs.ask(
                () -> there.leftBehind(language),
                left -> found.accept(left.stream()
                        .map(one -> new Left(one.document(), one.origin(), () -> work(() -> there.discard(one))))
                        .toList()),
                this::tellFault));
    }

    private interface Deed {
        void run() throws IOException;
    }

    private void work(Deed deed) {
        threads.work().execute(() -> {
            try {
                deed.run();
            } catch (IOException | RuntimeException e) {
                threads.screen().execute(() -> tellFault(e));
            }
        });
    }

    private void tellFault(Exception problem) {
        if (!hasToldFault) {
            hasToldFault = true;
            teller.tell("recovery.fault", String.valueOf(problem.getMessage()));
        }
    }

    void keep(BenchDocument document, Optional<Path> origin) {
        keepThen(document, origin, () -> {});
    }

    /** Keeps a document, then does something on the screen's thread. */
    void keepThen(BenchDocument document, Optional<Path> origin, Runnable then) {
        if (folder.isEmpty()) {
            then.run();
            return;
        }
        runs.ask(
                () -> {
                    keeper().keep(document, origin);
                    return document;
                },
                kept -> then.run(),
                problem -> {
                    tellFault(problem);
                    then.run();
                });
    }

    private synchronized RecoveryFolder.Keeper keeper() throws IOException {
        if (keeper.isEmpty()) {
            keeper = Optional.of(folder.orElseThrow().keeper());
        }
        return keeper.get();
    }

    private synchronized Optional<RecoveryFolder.Keeper> taken() {
        Optional<RecoveryFolder.Keeper> now = keeper;
        keeper = Optional.empty();
        return now;
    }

    /** Forgets what was kept of the document that is open: it is saved, or put aside. */
    void forget() {
        runs.ask(
                () -> {
                    closeTaken();
                    return true;
                },
                done -> {},
                this::tellFault);
    }

    private void closeTaken() throws IOException {
        Optional<RecoveryFolder.Keeper> now = taken();
        if (now.isPresent()) {
            now.get().close();
        }
    }

    /** Keeps a document that makes room for another, until it is let go. */
    Kept putAside(BenchDocument document, Optional<Path> origin) {
        if (folder.isEmpty()) {
            return () -> {};
        }
        Aside aside = new Aside();
        work(() -> aside.keep(folder.get(), document, origin));
        return () -> work(aside::letGo);
    }

    /** A recovery file of its own. */
    private static final class Aside {
        private Optional<RecoveryFolder.Keeper> own = Optional.empty();

        synchronized void keep(RecoveryFolder where, BenchDocument document, Optional<Path> origin) throws IOException {
            own = Optional.of(where.keeper());
            own.get().keep(document, origin);
        }

        synchronized void letGo() throws IOException {
            if (own.isPresent()) {
                own.get().close();
                own = Optional.empty();
            }
        }
    }

    /** Gives the recovery file up as the program ends: all is saved, or not wanted. */
    void close() {
        try {
            closeTaken();
        } catch (IOException e) {
            tellFault(e);
        }
    }
}
