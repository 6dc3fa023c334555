// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.sitting.KeptSitting;
import cablewright.lessons.exam.sitting.Sitting;
import cablewright.lessons.exam.sitting.SittingPlace;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Jobs;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Before an exam: which paper, who sits, what the rules are, and sittings that were broken off. */
public final class StartViewModel {

    private final Jobs jobs;
    private final Clock wall;
    private final LongSupplier nanos;
    private final Consumer<Begun> begun;
    private final StringProperty paperFile = new SimpleStringProperty("");
    private final StringProperty trainee = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<Opened>> opened = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * A paper that was opened.
     *
     * @param file its file
     * @param paper what is in it
     * @param kept sittings of it that were begun
     */
    public record Opened(Path file, PaperFile paper, List<KeptSitting> kept) {}

    /**
     * A sitting that begins.
     *
     * @param sitting the sitting
     * @param target where its sealed answers go
     */
    public record Begun(Sitting sitting, Path target) {}

    /**
     * Makes a page without a paper.
     *
     * @param threads where to work and where to show
     * @param texts sentences of these pages
     * @param wall the machine's clock
     * @param nanos a counter of nanoseconds that nobody can set
     * @param begun hears of a sitting that begins
     */
    public StartViewModel(Threads threads, Texts texts, Clock wall, LongSupplier nanos, Consumer<Begun> begun) {
        this.jobs = new Jobs(threads, texts);
        this.wall = wall;
        this.nanos = nanos;
        this.begun = begun;
    }

    /** What is said, and whether something is being done. */
    public Jobs jobs() {
        return jobs;
    }

    /** Reads the paper that is named, and looks for sittings beside it. */
    public void openPaper() {
        Optional<Path> named = FileWish.typed(paperFile.get());
        if (named.isEmpty()) {
            jobs.fault("start.noPaper");
            return;
        }
        jobs.run(() -> read(named.get()), paper -> opened.set(Optional.of(paper)));
    }

    private static Opened read(Path file) throws IOException, cablewright.lessons.format.LessonFormatException {
        PaperFile paper = PaperFile.read(file);
        return new Opened(file, paper, KeptSitting.beside(file, paper));
    }

    /** Begins under the name that is typed, or goes on where that person was. */
    public void begin() {
        String name = trainee.get().strip();
        if (opened.get().isEmpty()) {
            jobs.fault("start.noPaper");
        } else if (name.isEmpty()) {
            jobs.fault("start.noName");
        } else {
            begin(name, SittingPlace.beside(opened.get().get().file(), name));
        }
    }

    /**
     * Goes on with a sitting that was broken off.
     *
     * @param kept the sitting
     */
    public void goOn(KeptSitting kept) {
        opened.get().ifPresent(paper -> {
            Path answers = SittingPlace.beside(paper.file(), kept.trainee()).answers();
            begin(kept.trainee(), new SittingPlace(kept.file(), answers));
        });
    }

    private void begin(String name, SittingPlace place) {
        PaperFile paper = opened.get().orElseThrow().paper();
        jobs.run(
                () -> {
                    Sitting sitting = Sitting.open(paper, name, place.kept(), wall, nanos);
                    // Handed in already, but the file is gone: it may be handed in again, and nothing else.
                    if (sitting.isHandedIn() && Files.exists(place.answers())) {
                        sitting.close();
                        return Optional.<Begun>empty();
                    }
                    return Optional.of(new Begun(sitting, place.answers()));
                },
                done -> done.ifPresentOrElse(begun, () -> jobs.fault("start.already", place.answers())));
    }

    /**
     * Returns the paper that is open.
     *
     * @return the paper; empty until one is read
     */
    public ReadOnlyObjectProperty<Optional<Opened>> openedProperty() {
        return opened.getReadOnlyProperty();
    }

    public StringProperty paperFileProperty() {
        return paperFile;
    }

    /**
     * Returns who sits.
     *
     * @return the name
     */
    public StringProperty traineeProperty() {
        return trainee;
    }
}
