// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.paper;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.print.PaperPrinter;
import cablewright.ui.print.PaperSize;
import cablewright.ui.print.Printout;
import cablewright.ui.print.SheetMaker;
import cablewright.ui.print.TracksPicture;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** Puts the exercise on paper and its tracks into pictures, beside the screen, and says what came of it. */
public final class PaperViewModel {

    private final Supplier<Exercise> exercise;
    private final Supplier<Optional<Shown>> shown;
    private final ObservableValue<LengthUnit> unit;
    private final Threads threads;
    private final Texts texts;
    private final ObjectProperty<PaperSize> paper = new SimpleObjectProperty<>(PaperSize.A4);
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");

    /**
     * Makes it.
     *
     * @param exercise the exercise as it is now
     * @param shown the trace that is shown now, if there is one
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param texts the sentences of the editors
     */
    public PaperViewModel(
            Supplier<Exercise> exercise,
            Supplier<Optional<Shown>> shown,
            ObservableValue<LengthUnit> unit,
            Threads threads,
            Texts texts) {
        this.exercise = exercise;
        this.shown = shown;
        this.unit = unit;
        this.threads = threads;
        this.texts = texts;
    }

    /**
     * A trace that is shown.
     *
     * @param trace the trace
     * @param end the end from which it was taken
     */
    public record Shown(Trace trace, LineEnd end) {}

    /** What can be put on paper. */
    public enum Sheets {
        /** For trainees. */
        WORKSHEET,
        /** For instructors. */
        ANSWERS,
        /** One behind the other. */
        BOTH
    }

    private Printout made(Sheets sheets, Exercise of, PaperSize on, Words words) {
        SheetMaker maker = new SheetMaker(of, on, words);
        return switch (sheets) {
            case WORKSHEET -> maker.worksheet();
            case ANSWERS -> maker.answerSheet();
            case BOTH -> maker.worksheet().then(maker.answerSheet());
        };
    }

    private Callable<Printout> sheets(Sheets sheets) {
        Exercise of = exercise.get();
        PaperSize on = paper.get();
        Words words = Words.in(unit.getValue(), texts.locale());
        return () -> made(sheets, of, on, words);
    }

    private void work(Callable<String> job) {
        working.set(true);
        message.set(texts.say("paper.working"));
        threads.work().execute(() -> {
            String said = outcome(job);
            threads.screen().execute(() -> {
                working.set(false);
                message.set(said);
            });
        });
    }

    private String outcome(Callable<String> job) {
        try {
            return job.call();
        } catch (Exception e) {
            return texts.say("paper.failed", String.valueOf(e.getMessage()));
        }
    }

    /**
     * Saves sheets as PDF.
     *
     * @param sheets which
     * @param file where
     */
    public void savePdf(Sheets sheets, Path file) {
        Callable<Printout> maker = sheets(sheets);
        work(() -> {
            Printout made = maker.call();
            AtomicSave.save(file, made.pdf());
            return texts.say("paper.saved", file.getFileName(), made.pages().size());
        });
    }

    /**
     * Prints sheets; the system asks which printer to use.
     *
     * @param sheets which
     */
    public void print(Sheets sheets) {
        Callable<Printout> maker = sheets(sheets);
        work(() -> {
            if (!PaperPrinter.isAvailable()) {
                return texts.say("paper.noPrinter");
            }
            return texts.say(PaperPrinter.print(maker.call()) ? "paper.printed" : "paper.notPrinted");
        });
    }

    /**
     * Saves the tracks as a picture.
     *
     * @param file where; its ending says as what: .png, .svg or .pdf
     */
    public void savePicture(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        Optional<PictureFormat> format = Arrays.stream(PictureFormat.values())
                .filter(it -> name.endsWith("." + it.name().toLowerCase(Locale.ROOT)))
                .findFirst();
        Optional<Shown> now = shown.get();
        if (format.isEmpty() || now.isEmpty()) {
            message.set(texts.say(format.isEmpty() ? "paper.ending" : "paper.noTrace"));
            return;
        }
        TracksPicture picture = new TracksPicture(
                exercise.get(), now.get().trace(), now.get().end(), Words.in(unit.getValue(), texts.locale()));
        work(() -> {
            AtomicSave.save(file, picture.draw(format.get()));
            return texts.say("paper.drawn", file.getFileName());
        });
    }

    /** Says that a picture was copied. */
    void copied() {
        message.set(texts.say("paper.copied"));
    }

    public ObjectProperty<PaperSize> paperProperty() {
        return paper;
    }

    /**
     * Returns whether something is being made.
     *
     * @return true while it is
     */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /**
     * Returns what came of the last thing.
     *
     * @return a sentence, or nothing
     */
    public ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }
}
