// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.RecordsCsv;
import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.classbook.XapiStatements;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.print.ClassBookPaper;
import cablewright.ui.print.PaperPrinter;
import cablewright.ui.print.PaperSize;
import cablewright.ui.print.Printout;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The class book: records of one trainee or of all, what they show together, and where they come from and go to. */
public final class ClassBookViewModel {

    private static final Set<EventKind> CAN_BE_MADE = Arrays.stream(ExerciseFamily.values())
            .flatMap(family -> family.damage().stream())
            .collect(Collectors.toUnmodifiableSet());

    /** Progress while nothing is being marked. */
    public static final double IDLE = -1;

    private final ClassRecords store;
    private final Threads threads;
    private final Texts texts;
    private final List<AttemptRecord> all = new ArrayList<>();
    private final ObservableList<AttemptRecord> shown = FXCollections.observableArrayList();
    private final ObservableList<String> trainees = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<String>> trainee = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<ClassSummary> summary = new ReadOnlyObjectWrapper<>(ClassSummary.of(List.of()));
    private final ReadOnlyObjectWrapper<Optional<WeakKind>> next = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(IDLE);
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private AtomicBoolean cancelled = new AtomicBoolean();

    /**
     * Makes an empty book.
     *
     * @param store where the logs lie
     * @param threads where to work and where to show
     * @param texts texts of the desktop
     */
    public ClassBookViewModel(ClassRecords store, Threads threads, Texts texts) {
        this.store = store;
        this.threads = threads;
        this.texts = texts;
        trainee.addListener((o, before, now) -> show());
    }

    private <T> void work(Callable<T> job, Consumer<T> then) {
        threads.work().execute(() -> {
            try {
                T result = job.call();
                threads.screen().execute(() -> then.accept(result));
            } catch (Exception e) {
                threads.screen().execute(() -> {
                    progress.set(IDLE);
                    message.set(texts.say("classbook.failed", String.valueOf(e.getMessage())));
                });
            }
        });
    }

    /** Reads the logs anew. */
    public void load() {
        if (all.isEmpty()) {
            message.set(texts.say("classbook.reading"));
        }
        work(store::read, contents -> {
            take(contents.records());
            message.set(String.join(" ", contents.faults()));
        });
    }

    private void take(List<AttemptRecord> records) {
        all.clear();
        all.addAll(records);
        List<String> names =
                records.stream().map(AttemptRecord::trainee).distinct().sorted().toList();
        trainees.setAll(names);
        if (trainee.get().isPresent() && !names.contains(trainee.get().get())) {
            trainee.set(Optional.empty());
        }
        show();
    }

    private void show() {
        List<AttemptRecord> chosen = all.stream()
                .filter(record -> trainee.get().map(record.trainee()::equals).orElse(true))
                .toList();
        List<AttemptRecord> latestFirst = new ArrayList<>(chosen);
        java.util.Collections.reverse(latestFirst);
        shown.setAll(latestFirst);
        summary.set(ClassSummary.of(chosen));
        next.set(WeakKind.ranked(chosen).stream()
                .filter(weak -> CAN_BE_MADE.contains(weak.kind()))
                .findFirst());
    }

    /**
     * Takes the logs of trainees into the book.
     *
     * @param paths logs, or folders of them
     */
    public void takeOver(List<Path> paths) {
        work(() -> store.takeOver(paths), contents -> added(contents, "classbook.imported"));
    }

    private void added(ClassRecords.Contents contents, String key) {
        progress.set(IDLE);
        String said = texts.say(key, contents.records().size());
        work(store::read, everything -> {
            take(everything.records());
            message.set(contents.faults().isEmpty() ? said : said + " " + String.join(" ", contents.faults()));
        });
    }

    /**
     * Marks a folder of answers and puts the records into the book; nothing is put in if it is cancelled.
     *
     * @param lesson the lesson that they answer
     * @param folder the folder
     */
    public void mark(Lesson lesson, Path folder) {
        AtomicBoolean stop = new AtomicBoolean();
        cancelled = stop;
        progress.set(0);
        work(
                () -> {
                    ClassRecords.Contents marked = new AnswerFolder(lesson, folder, texts)
                            .mark(share -> threads.screen().execute(() -> showProgress(share, stop)), stop::get);
                    return stop.get() ? Optional.<ClassRecords.Contents>empty() : Optional.of(kept(marked));
                },
                marked -> marked.ifPresentOrElse(contents -> added(contents, "classbook.marked"), this::showCancelled));
    }

    private void showProgress(double share, AtomicBoolean stop) {
        if (!stop.get()) {
            progress.set(share);
        }
    }

    private void showCancelled() {
        progress.set(IDLE);
        message.set(texts.say("classbook.cancelled"));
    }

    private ClassRecords.Contents kept(ClassRecords.Contents marked) throws IOException {
        List<AttemptRecord> fresh = new ArrayList<>();
        List<AttemptRecord> known = store.read().records();
        for (AttemptRecord record : marked.records()) {
            if (!known.contains(record)) {
                store.append(record);
                fresh.add(record);
            }
        }
        return new ClassRecords.Contents(fresh, marked.faults());
    }

    /** Stops the marking of a folder. */
    public void cancel() {
        cancelled.set(true);
    }

    /**
     * Writes the shown records as CSV.
     *
     * @param file where to
     */
    public void exportCsv(Path file) {
        export(file, RecordsCsv::of);
    }

    /**
     * Writes the shown records as xAPI statements.
     *
     * @param file where to
     */
    public void exportXapi(Path file) {
        export(file, records -> new XapiStatements().of(records));
    }

    private void export(Path file, Function<List<AttemptRecord>, String> format) {
        List<AttemptRecord> oldestFirst = new ArrayList<>(shown);
        java.util.Collections.reverse(oldestFirst);
        work(
                () -> Files.write(file, format.apply(oldestFirst).getBytes(StandardCharsets.UTF_8)),
                written -> message.set(texts.say("classbook.exported", oldestFirst.size(), written.getFileName())));
    }

    private Printout paper(PaperSize size, Words words) {
        String whose = trainee.get().orElseGet(() -> texts.say("classbook.everyone"));
        return new ClassBookPaper(summary.get(), whose, size, words).pages();
    }

    /**
     * Saves what the shown records show together as PDF.
     *
     * @param file where to
     * @param size the size of the paper
     * @param words the words, in the unit of length in which it is to be read
     */
    public void savePdf(Path file, PaperSize size, Words words) {
        Printout pages = paper(size, words);
        work(
                () -> {
                    AtomicSave.save(file, pages.pdf());
                    return file;
                },
                written -> message.set(texts.say("classbook.paper.saved", written.getFileName())));
    }

    /**
     * Prints what the shown records show together; the system asks which printer to use.
     *
     * @param size the size of the paper
     * @param words the words, in the unit of length in which it is to be read
     */
    public void print(PaperSize size, Words words) {
        Printout pages = paper(size, words);
        work(
                () -> PaperPrinter.isAvailable()
                        ? PaperPrinter.print(pages) ? "classbook.paper.printed" : "classbook.paper.notPrinted"
                        : "classbook.paper.noPrinter",
                said -> message.set(texts.say(said)));
    }

    /**
     * Returns the records that are shown.
     *
     * @return records, latest first
     */
    public ObservableList<AttemptRecord> records() {
        return shown;
    }

    public ObservableList<String> trainees() {
        return trainees;
    }

    /**
     * Returns whose records are shown.
     *
     * @return the name; empty for all
     */
    public ObjectProperty<Optional<String>> traineeProperty() {
        return trainee;
    }

    /**
     * Returns what to do next.
     *
     * @return the weakest kind of damage by the recent attempts that are shown; empty where none was missed
     */
    public ReadOnlyObjectProperty<Optional<WeakKind>> nextProperty() {
        return next.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<ClassSummary> summaryProperty() {
        return summary.getReadOnlyProperty();
    }

    /**
     * Returns how far the marking of a folder has come.
     *
     * @return 0 to 1; {@link #IDLE} while nothing is being marked
     */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /**
     * Returns what there is to say.
     *
     * @return sentences, or nothing
     */
    public ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }
}
