// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Event;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/**
 * The Bench: one document, the trace of its cable, its events, its files. Panes read and change the document through {@link
 * #document()} alone; everything else follows from it.
 */
public final class BenchViewModel {

    private final Texts texts;
    private final Words words;
    private final Threads threads;
    private final DocumentViewModel document;
    private final BenchTraceViewModel trace;
    private final EventsViewModel events;
    private final CableViewModel cable;
    private final FilesViewModel files;
    private final InsertWords names;
    private final ObjectProperty<Comparison> comparison = new SimpleObjectProperty<>(Comparison.NONE);
    private BenchDocument saved;
    private BenchDocument shown;
    private boolean isOpening;

    /**
     * Puts a document on the Bench.
     *
     * @param first the document
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param clipboard where copied events go
     * @param store what is kept beside the files that people save
     * @param texts texts of the Bench
     * @param desktop texts of the desktop, which tracks and settings say
     */
    public BenchViewModel(
            BenchDocument first,
            ObservableValue<LengthUnit> unit,
            Threads threads,
            TextClipboard clipboard,
            BenchStore store,
            Texts texts,
            Texts desktop) {
        this.texts = texts;
        this.threads = threads;
        this.words = Words.in(unit.getValue(), texts.locale());
        this.names = new InsertWords(words, texts);
        this.document = new DocumentViewModel(first);
        this.saved = first;
        this.shown = first;
        this.trace = new BenchTraceViewModel(first.exercise(), threads, desktop);
        this.trace.axis().unitProperty().bind(unit);
        this.events = new EventsViewModel(document, trace, clipboard, names, texts);
        this.cable = new CableViewModel(document, texts);
        document.documentProperty().addListener((o, before, now) -> follow(now));
        events.selectedProperty().addListener(changed -> lookAtSelected());
        comparison.addListener(changed -> overlay());
        this.files = new FilesViewModel(this, store, threads, texts);
    }

    private void follow(BenchDocument now) {
        boolean isOther = isOpening
                || now.index() != shown.index()
                || !now.lesson().id().equals(shown.lesson().id())
                || !now.exercise().id().equals(shown.exercise().id());
        shown = now;
        trace.show(now.exercise(), isOther);
        lookAtSelected();
        overlay();
    }

    private void lookAtSelected() {
        trace.toldProperty().set(events.one().map(Event::id));
    }

    private void overlay() {
        trace.comparedProperty().set(other(comparison.get()));
    }

    private Optional<Exercise> other(Comparison wanted) {
        switch (wanted) {
            case BEFORE:
                return document.previous().flatMap(before -> sameIn(before.lesson()));
            case SAVED:
                return sameIn(saved.lesson());
            default:
                return Optional.empty();
        }
    }

    private Optional<Exercise> sameIn(Lesson lesson) {
        return lesson.exercise(document.now().exercise().id());
    }

    /**
     * Works on another exercise of the lesson.
     *
     * @param index which, from 0
     */
    public void select(int index) {
        if (index != document.now().index()) {
            document.step(texts.say("do.select", index + 1), before -> before.selecting(index));
        }
    }

    /**
     * Adds a copy of the exercise behind it, and works on that.
     *
     * @param title what the copy is called
     */
    public void duplicateExercise(String title) {
        Optional<String> wrong = document.step(
                texts.say("do.duplicateExercise"),
                before -> before.adding(ExerciseEdits.withTitle(before.exercise(), title)));
        wrong.ifPresent(files::tellFault);
    }

    /** Puts another document on the Bench, with what counts as saved of it and why it can't be changed. */
    void open(BenchDocument document, BenchDocument asSaved, Optional<String> whyLocked) {
        isOpening = true;
        saved = asSaved;
        events.selectNone();
        this.document.open(document, whyLocked);
        isOpening = false;
    }

    BenchDocument saved() {
        return saved;
    }

    /**
     * Returns which document counts as saved.
     *
     * @param document the document as it lies in its file
     */
    void savedIs(BenchDocument document) {
        saved = document;
        overlay();
    }

    public DocumentViewModel document() {
        return document;
    }

    public BenchTraceViewModel trace() {
        return trace;
    }

    public EventsViewModel events() {
        return events;
    }

    /**
     * Returns the document's files.
     *
     * @return what can be opened and saved
     */
    public FilesViewModel files() {
        return files;
    }

    public CableViewModel cable() {
        return cable;
    }

    /**
     * Returns which other trace is laid over.
     *
     * @return none, the one before the last step, or the saved one
     */
    public ObjectProperty<Comparison> comparisonProperty() {
        return comparison;
    }

    /**
     * Returns what things are called that can be put on a cable.
     *
     * @return the words
     */
    public InsertWords names() {
        return names;
    }

    public Threads threads() {
        return threads;
    }

    /**
     * Returns the sentences of the Bench.
     *
     * @return its texts
     */
    public Texts texts() {
        return texts;
    }

    /**
     * Returns the words of events, in the unit of lengths that holds now.
     *
     * @return the words
     */
    public Words words() {
        return words.with(trace.axis().unitProperty().get());
    }
}
