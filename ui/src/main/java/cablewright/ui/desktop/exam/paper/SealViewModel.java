// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.paper;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.making.PaperMaker;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.file.FileWord;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Jobs;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.school.HandOut;
import cablewright.ui.words.ExamRules;
import cablewright.ui.words.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What is asked in an exam, on what terms, and to whom it is sealed. */
public final class SealViewModel {

    private static final double PERCENT = 100;
    private static final String USUAL_MINUTES = "90";

    private final Jobs jobs;
    private final Texts texts;
    private final StringProperty title = new SimpleStringProperty("");
    private final StringProperty minutes = new SimpleStringProperty(USUAL_MINUTES);
    private final StringProperty pass = new SimpleStringProperty("");
    private final StringProperty publicKey = new SimpleStringProperty("");
    private final StringProperty target = new SimpleStringProperty("");
    private final StringProperty handOutFile = new SimpleStringProperty("");
    private final StringProperty lessonFile = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<Lesson>> lesson = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Map<Exercise, BooleanProperty> asked = new LinkedHashMap<>();

    /**
     * Makes a page without a lesson.
     *
     * @param threads where to work and where to show
     * @param texts sentences of these pages
     */
    public SealViewModel(Threads threads, Texts texts) {
        this.jobs = new Jobs(threads, texts);
        this.texts = texts;
    }

    /** What is said, and whether something is being done. */
    public Jobs jobs() {
        return jobs;
    }

    /**
     * Takes a lesson: all of its exercises are asked, its title and pass mark are proposed.
     *
     * @param taken the lesson
     */
    public void take(Lesson taken) {
        asked.clear();
        taken.exercises().forEach(exercise -> asked.put(exercise, new SimpleBooleanProperty(true)));
        title.set(taken.title());
        pass.set(String.valueOf(Math.round(PERCENT * taken.passMarkFraction())));
        if (target.get().isBlank()) {
            target.set(Path.of(System.getProperty("user.home"), FileWord.of(taken.title()) + "-paper.json")
                    .toString());
        }
        lesson.set(Optional.of(taken));
    }

    /** Reads the lesson file that is named. */
    public void openLesson() {
        Optional<Path> file = FileWish.typed(lessonFile.get());
        if (file.isEmpty()) {
            jobs.fault("seal.noLesson");
            return;
        }
        jobs.run(() -> new DocumentReader().readLesson(file.get()), this::take);
    }

    /**
     * Returns the exercises, and whether each is asked.
     *
     * @return in the order of the lesson
     */
    public Map<Exercise, BooleanProperty> asked() {
        return asked;
    }

    private List<Exercise> chosen() {
        return asked.entrySet().stream()
                .filter(entry -> entry.getValue().get())
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * Returns what trainees are told of the marks before they begin.
     *
     * @return Markdown; empty without a lesson
     */
    public String rules() {
        return lesson.get()
                .map(it -> new ExamRules(texts.sibling(ExamRules.BUNDLE)).text(part(it, chosen())))
                .orElse("");
    }

    private static Lesson part(Lesson whole, List<Exercise> exercises) {
        return exercises.isEmpty()
                ? whole
                : new Lesson(
                        whole.id(),
                        whole.title(),
                        whole.introduction(),
                        whole.worldNote(),
                        whole.passMarkFraction(),
                        exercises);
    }

    /** Seals the paper, and saves it under a name that is not there yet. */
    public void seal() {
        Optional<Integer> time = whole(minutes.get(), 1, SealedPaper.MOST_MINUTES);
        Optional<Integer> percent = whole(pass.get(), 0, (int) PERCENT);
        Optional<Path> file = FileWish.typed(target.get());
        Optional<String> key = key();
        if (lesson.get().isEmpty()) {
            jobs.fault("seal.noLesson");
        } else if (chosen().isEmpty()) {
            jobs.fault("seal.noExercise");
        } else if (time.isEmpty()) {
            jobs.fault("seal.badMinutes", SealedPaper.MOST_MINUTES);
        } else if (percent.isEmpty()) {
            jobs.fault("seal.badPass");
        } else if (file.isEmpty()) {
            jobs.fault("seal.noFile");
        } else if (key.isPresent()) {
            Lesson part = part(lesson.get().get(), chosen());
            PaperMaker.Terms terms =
                    new PaperMaker.Terms(title.get().strip(), rules(), time.get(), percent.get() / PERCENT);
            jobs.run(() -> sealed(part, terms, key.get(), file.get()), saved -> jobs.news("seal.done", saved));
        }
    }

    private Path sealed(Lesson part, PaperMaker.Terms terms, String key, Path file) throws java.io.IOException {
        if (Files.exists(file)) {
            // Answers are bound to the bytes of a paper: writing over one that was given out would lose a class.
            throw new java.nio.file.FileAlreadyExistsException(file.toString());
        }
        AtomicSave.save(file, PaperFile.bytes(new PaperMaker().make(part, terms, key)));
        return file;
    }

    /**
     * Hands the chosen exercises out, on paper or as questions for a school's own system.
     *
     * @param format as what
     * @param words the words, in the unit of length in which it is to be read
     */
    public void handOut(HandOut format, Words words) {
        Optional<Path> file = FileWish.typed(handOutFile.get());
        if (lesson.get().isEmpty() || chosen().isEmpty()) {
            jobs.fault("seal.noExercise");
        } else if (file.isEmpty()) {
            jobs.fault("hand.noFile");
        } else {
            Lesson part = part(lesson.get().get(), chosen());
            jobs.run(
                    () -> {
                        AtomicSave.save(file.get(), format.bytes(part, words));
                        return file.get();
                    },
                    saved -> jobs.news("hand.done", saved));
        }
    }

    /**
     * Returns where a lesson is handed out to.
     *
     * @return the name of a file
     */
    public StringProperty handOutFileProperty() {
        return handOutFile;
    }

    private Optional<String> key() {
        try {
            return Optional.of(ExaminerKey.checkedPublicKey(publicKey.get()));
        } catch (IllegalArgumentException e) {
            jobs.fault(publicKey.get().isBlank() ? "seal.noKey" : "seal.badKey");
            return Optional.empty();
        }
    }

    private static Optional<Integer> whole(String text, int least, int most) {
        try {
            int number = Integer.parseInt(text.strip());
            return number >= least && number <= most ? Optional.of(number) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns the lesson whose exercises are asked.
     *
     * @return the lesson; empty until one is taken
     */
    public ReadOnlyObjectProperty<Optional<Lesson>> lessonProperty() {
        return lesson.getReadOnlyProperty();
    }

    public StringProperty lessonFileProperty() {
        return lessonFile;
    }

    public StringProperty titleProperty() {
        return title;
    }

    /**
     * Returns the time for the whole paper.
     *
     * @return what is typed [min]
     */
    public StringProperty minutesProperty() {
        return minutes;
    }

    /**
     * Returns the share of the marks from which the exam is passed.
     *
     * @return what is typed [%]
     */
    public StringProperty passProperty() {
        return pass;
    }

    /**
     * Returns the public key of the examiner.
     *
     * @return what is typed
     */
    public StringProperty publicKeyProperty() {
        return publicKey;
    }

    /**
     * Returns where the paper goes.
     *
     * @return the name of a file
     */
    public StringProperty targetProperty() {
        return target;
    }
}
