// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.marking;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.result.AnswerFile;
import cablewright.lessons.exam.result.ClassMarking;
import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Jobs;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.print.ClassReports;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Marking a class: paper, key and folder of answers in; table, reports and records out. */
public final class MarkingViewModel {

    /** Progress while nothing is being done. */
    public static final double IDLE = -1;

    private static final DateTimeFormatter DUE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Jobs jobs;
    private final ClassRecords records;
    private final StringProperty keyFile;
    private final StringProperty paperFile = new SimpleStringProperty("");
    private final StringProperty folder = new SimpleStringProperty("");
    private final StringProperty target = new SimpleStringProperty("");
    private final StringProperty due = new SimpleStringProperty("");
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(IDLE);
    private final ReadOnlyObjectWrapper<Optional<ClassResult>> result = new ReadOnlyObjectWrapper<>(Optional.empty());
    private AtomicBoolean stop = new AtomicBoolean();

    /**
     * Makes a page without a class.
     *
     * @param keyFile name of the examiner's key file
     * @param records where records go that are put into the class book
     * @param threads where to work and where to show
     * @param texts sentences of these pages
     */
    public MarkingViewModel(StringProperty keyFile, ClassRecords records, Threads threads, Texts texts) {
        this.jobs = new Jobs(threads, texts);
        this.records = records;
        this.keyFile = keyFile;
        jobs.busyProperty().addListener((o, before, now) -> {
            if (!now) {
                progress.set(IDLE);
            }
        });
    }

    /** What is said, and whether something is being done. */
    public Jobs jobs() {
        return jobs;
    }

    /** Marks the answers in the folder. */
    public void mark() {
        Optional<Path> paper = FileWish.typed(paperFile.get());
        Optional<Path> key = FileWish.typed(keyFile.get());
        Optional<Path> answers = FileWish.typed(folder.get());
        if (paper.isEmpty() || key.isEmpty() || answers.isEmpty()) {
            jobs.fault(paper.isEmpty() ? "mark.noPaper" : key.isEmpty() ? "mark.noKey" : "mark.noFolder");
            return;
        }
        Optional<Instant> until;
        try {
            until = due.get().isBlank()
                    ? Optional.empty()
                    : Optional.of(LocalDateTime.parse(due.get().strip(), DUE)
                            .atZone(ZoneId.systemDefault())
                            .toInstant());
        } catch (DateTimeException e) {
            jobs.fault("mark.badDue");
            return;
        }
        AtomicBoolean mine = begin();
        jobs.run(marking(paper.get(), key.get(), answers.get(), until, mine), marked -> {
            result.set(Optional.of(marked));
            if (marked.people().isEmpty() && marked.setAside().isEmpty()) {
                jobs.fault("mark.empty");
            } else {
                jobs.news("mark.done", marked.people().size(), marked.setAside().size());
            }
        });
    }

    private AtomicBoolean begin() {
        stop = new AtomicBoolean();
        progress.set(0);
        return stop;
    }

    private Callable<ClassResult> marking(
            Path paper, Path key, Path answers, Optional<Instant> until, AtomicBoolean mine) {
        return () -> {
            ClassMarking marking = new ClassMarking(PaperFile.read(paper), KeyFile.read(key), until);
            List<AnswerFile> files = AnswerFile.within(answers).stream()
                    .filter(file -> !file.toAbsolutePath().equals(paper.toAbsolutePath()))
                    .map(AnswerFile::read)
                    .toList();
            return marking.mark(files, (done, all) -> heard((double) done / all, mine), mine::get);
        };
    }

    private void heard(double share, AtomicBoolean mine) {
        jobs.onScreen(() -> {
            if (!mine.get() && jobs.busyProperty().get()) {
                progress.set(share);
            }
        });
    }

    /** Stops what is being done: nothing of a class is shown, and reports that are written already stay. */
    public void cancel() {
        stop.set(true);
    }

    /**
     * Writes reports, certificates and tables into the folder that is named.
     *
     * @param size the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public void write(PaperSize size, Words words) {
        Optional<Path> folderOfReports = FileWish.typed(target.get());
        if (folderOfReports.isEmpty()) {
            jobs.fault("mark.noTarget");
            return;
        }
        result.get().ifPresent(marked -> {
            AtomicBoolean mine = begin();
            ClassReports reports = new ClassReports(marked, size, words);
            jobs.run(() -> written(reports, folderOfReports.get(), mine), to -> jobs.news("mark.written", to));
        });
    }

    private Path written(ClassReports reports, Path to, AtomicBoolean mine) throws IOException {
        reports.write(to, (done, all) -> heard((double) done / all, mine), mine::get);
        return to;
    }

    /** Puts the attempts into the class book, each of them once. */
    public void keep() {
        result.get()
                .ifPresent(marked -> jobs.run(() -> kept(marked.records()), fresh -> jobs.news("mark.kept", fresh)));
    }

    private int kept(List<AttemptRecord> marked) throws IOException {
        Set<AttemptRecord> known = new HashSet<>(records.read().records());
        int fresh = 0;
        for (AttemptRecord record : marked) {
            if (known.add(record)) {
                records.append(record);
                fresh++;
            }
        }
        return fresh;
    }

    /**
     * Returns the marked class.
     *
     * @return the class; empty until one is marked
     */
    public ReadOnlyObjectProperty<Optional<ClassResult>> resultProperty() {
        return result.getReadOnlyProperty();
    }

    /**
     * Returns how far the work has come.
     *
     * @return 0 to 1; {@link #IDLE} while nothing is being done
     */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    public StringProperty paperFileProperty() {
        return paperFile;
    }

    public StringProperty keyFileProperty() {
        return keyFile;
    }

    /**
     * Returns the folder of answers.
     *
     * @return its name
     */
    public StringProperty folderProperty() {
        return folder;
    }

    /**
     * Returns where reports go.
     *
     * @return the name of a folder
     */
    public StringProperty targetProperty() {
        return target;
    }

    /**
     * Returns until when answers count.
     *
     * @return what is typed, such as {@code 2031-05-04 12:00} by this machine's clock; nothing where any time will do
     */
    public StringProperty dueProperty() {
        return due;
    }
}
