// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.draft.ExerciseDraft;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.practice.PracticeSession;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * A lesson being done: its exercises in a row, one of them open. What was done in one stays while another is open. In a
 * sitting of practice the row grows: the next exercise is made when it is asked for.
 */
public final class PracticeViewModel {

    private final Lesson lesson;
    private final Optional<PracticeSession> session;
    private final Consumer<MarkSheet> committed;
    private final ObjectProperty<LengthUnit> unit;
    private final Threads threads;
    private final Texts texts;
    private final Clock clock;
    private final Marker marker = new Marker();
    private final LatestRun making;
    private final List<ExerciseViewModel> exercises = new ArrayList<>();
    private final ReadOnlyIntegerWrapper index = new ReadOnlyIntegerWrapper(-1);
    private final ReadOnlyIntegerWrapper round = new ReadOnlyIntegerWrapper();
    private final ReadOnlyObjectWrapper<Optional<PageViewModel>> page = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Map<LessonPage, PageViewModel> pages = new LinkedHashMap<>();
    private final Set<LessonPage> read = new HashSet<>();
    private final Map<String, GenerationRequest> twins = new HashMap<>();
    private final Map<Integer, Integer> origins = new HashMap<>();
    private boolean over;

    /**
     * Opens a lesson at its first exercise.
     *
     * @param lesson the lesson
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param texts texts of the desktop
     * @param clock gives the times at which exercises are opened and committed
     */
    public PracticeViewModel(
            Lesson lesson, ObjectProperty<LengthUnit> unit, Threads threads, Texts texts, Clock clock) {
        this(lesson, Optional.empty(), sheet -> {}, unit, threads, texts, clock);
    }

    /**
     * Opens a lesson, or a practice session, at its first exercise.
     *
     * @param lesson the lesson; for a sitting it holds the first exercise
     * @param session makes the exercises after that; empty for a lesson
     * @param committed hears of each marked attempt
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param texts texts of the desktop
     * @param clock gives the times at which exercises are opened and committed
     */
    public PracticeViewModel(
            Lesson lesson,
            Optional<PracticeSession> session,
            Consumer<MarkSheet> committed,
            ObjectProperty<LengthUnit> unit,
            Threads threads,
            Texts texts,
            Clock clock) {
        this.lesson = lesson;
        this.session = session;
        this.committed = committed;
        this.unit = unit;
        this.threads = threads;
        this.texts = texts;
        this.clock = clock;
        this.making = new LatestRun(threads);
        lesson.exercises().forEach(this::add);
        lesson.pages().forEach(it -> pages.put(it, new PageViewModel(it, threads)));
        select(0);
    }

    private void add(Exercise exercise) {
        add(exercise, committed);
    }

    private void add(Exercise exercise, Consumer<MarkSheet> listener) {
        ExerciseViewModel model = new ExerciseViewModel(exercise, marker, threads, texts, clock);
        model.axis().unitProperty().bind(unit);
        model.sheetProperty().addListener((o, before, now) -> now.ifPresent(listener));
        exercises.add(model);
    }

    /**
     * Goes on where a trainee left off.
     *
     * @param work what was begun
     */
    public void resume(UnfinishedWork work) {
        for (ExerciseViewModel exercise : exercises) {
            work.draft(lesson.id(), exercise.exercise().id()).ifPresent(exercise::resume);
        }
        if (work.lessonId().equals(lesson.id())) {
            select(work.exerciseId());
        }
    }

    /**
     * Opens an exercise by its name.
     *
     * @param exerciseId the name; one that the lesson does not have does nothing
     */
    public void select(String exerciseId) {
        for (int i = 0; i < lesson.exercises().size(); i++) {
            if (lesson.exercises().get(i).id().equals(exerciseId)) {
                select(i);
            }
        }
    }

    /**
     * Returns what was begun and not handed in, of the exercises of the lesson.
     *
     * @return drafts in the order of the exercises; none in a sitting of practice, whose exercises are made as it goes
     */
    public List<ExerciseDraft> drafts() {
        return session.isPresent()
                ? List.of()
                : exercises.subList(0, lesson.exercises().size()).stream()
                        .flatMap(exercise -> exercise.draft(lesson.id()).stream())
                        .toList();
    }

    /** Opens the open exercise anew, behind the others. It is not recorded: its cable has been seen. */
    public void tryAgain() {
        addBeside(current().exercise(), sheet -> {});
    }

    /**
     * Makes the same fault on a new cable and opens it, behind the others.
     *
     * @param request the twin
     */
    public void tryTwin(GenerationRequest request) {
        making.ask(
                () -> new ExerciseGenerator().generate(request),
                made -> {
                    twins.put(made.id(), request);
                    addBeside(made, committed);
                },
                what -> round.set(round.get() + 1));
    }

    private void addBeside(Exercise exercise, Consumer<MarkSheet> listener) {
        origins.put(exercises.size(), origins.getOrDefault(index.get(), index.get()));
        add(exercise, listener);
        select(exercises.size() - 1);
    }

    /**
     * Returns the request of which a twin was made.
     *
     * @param exerciseId an exercise's name
     * @return the request; empty where the exercise is no twin
     */
    public Optional<GenerationRequest> twinRequest(String exerciseId) {
        return Optional.ofNullable(twins.get(exerciseId));
    }

    /**
     * Returns the place in the row of the open exercise, or of the one beside which it stands as a twin or another try.
     *
     * @return its number, from 0
     */
    public int rowPlace() {
        return session.isPresent() ? index.get() : origins.getOrDefault(index.get(), index.get());
    }

    private int rowSize() {
        return session.isPresent() ? exercises.size() : lesson.exercises().size();
    }

    public Lesson lesson() {
        return lesson;
    }

    public List<ExerciseViewModel> exercises() {
        return Collections.unmodifiableList(exercises);
    }

    /**
     * Returns which exercise is open.
     *
     * @return its number, from 0
     */
    public ReadOnlyIntegerProperty indexProperty() {
        return index.getReadOnlyProperty();
    }

    public ExerciseViewModel current() {
        return exercises.get(index.get());
    }

    /**
     * Opens an exercise.
     *
     * @param number its number, from 0; numbers beyond the lesson do nothing
     */
    public void select(int number) {
        if (number >= 0 && number < exercises.size() && number != index.get()) {
            index.set(number);
            if (origins.containsKey(number)) {
                page.set(Optional.empty());
                current().open();
            } else {
                goOn(number);
            }
        }
    }

    /** Shows the next unread page before an exercise, or the exercise. */
    private void goOn(int number) {
        page.set(lesson.pagesBefore(number).stream()
                .filter(it -> !read.contains(it))
                .findFirst()
                .map(pages::get));
        if (page.get().isEmpty()) {
            current().open();
        }
    }

    /** Goes on from the page that is shown: to the next page, or to the exercise. */
    public void turnPage() {
        page.get().map(PageViewModel::page).ifPresent(shown -> {
            read.add(shown);
            goOn(shown.exercisesBefore());
            round.set(round.get() + 1);
        });
    }

    /**
     * Shows a page again.
     *
     * @param again the page
     */
    public void showAgain(LessonPage again) {
        read.remove(again);
        page.set(Optional.of(pages.get(again)));
    }

    private boolean hasUnreadEnd() {
        return lesson.pagesBefore(lesson.exercises().size()).stream().anyMatch(it -> !read.contains(it));
    }

    /**
     * Returns the page that is shown in place of the exercise.
     *
     * @return its model; empty while the exercise is shown
     */
    public ReadOnlyObjectProperty<Optional<PageViewModel>> pageProperty() {
        return page.getReadOnlyProperty();
    }

    /** Opens the next exercise, if there is one; in a sitting it is made first. */
    public void next() {
        if (rowPlace() + 1 < rowSize()) {
            select(rowPlace() + 1);
        } else if (hasUnreadEnd()) {
            goOn(lesson.exercises().size());
        } else if (session.isPresent()) {
            making.ask(session.get()::next, this::showMade, what -> showMade(Optional.empty()));
        }
    }

    private void showMade(Optional<Exercise> made) {
        if (made.isPresent()) {
            add(made.get());
            select(exercises.size() - 1);
        } else {
            over = true;
        }
        round.set(round.get() + 1);
    }

    /** Opens the exercise before, if there is one. */
    public void previous() {
        select(origins.containsKey(index.get()) ? rowPlace() : index.get() - 1);
    }

    /**
     * Returns whether there is a next exercise.
     *
     * @return false at the last of a lesson, and where the time of a round is up
     */
    public boolean hasNext() {
        boolean more = session.filter(sitting -> !over && !sitting.isOver()).isPresent();
        return rowPlace() + 1 < rowSize() || more || hasUnreadEnd();
    }

    /**
     * Counts what happened in a sitting, so that screens know when to look again.
     *
     * @return a number that grows
     */
    public ReadOnlyIntegerProperty roundProperty() {
        return round.getReadOnlyProperty();
    }

    /** Looks whether the time of the round is up. */
    public void lookAtTheClock() {
        if (session.isPresent() && session.get().isOver() && !over) {
            over = true;
            round.set(round.get() + 1);
        }
    }

    /**
     * Says how much of the time of a round is left.
     *
     * @return such as "8:32 left"; nothing where there is no limit
     */
    public String leftWords() {
        Optional<Duration> left = session.flatMap(PracticeSession::left);
        if (left.isEmpty()) {
            return "";
        }
        if (left.get().isZero()) {
            return texts.say("practise.timeUp");
        }
        String seconds = String.valueOf(left.get().toSecondsPart());
        return texts.say("practise.left", left.get().toMinutes(), seconds.length() < 2 ? "0" + seconds : seconds);
    }

    /**
     * Says that there is no next exercise.
     *
     * @return a sentence; for a sitting with what was earned in it
     */
    public String overWords() {
        return session.map(sitting ->
                        texts.say("result.over", sitting.answered(), Quantities.number(100 * sitting.fraction(), 0)))
                .orElseGet(() -> texts.say("result.last"));
    }
}
