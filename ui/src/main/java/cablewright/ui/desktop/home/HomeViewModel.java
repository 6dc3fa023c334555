// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.practice.AdaptivePractice;
import cablewright.lessons.practice.LessonProgress;
import cablewright.lessons.work.OwnLessons;
import cablewright.lessons.work.WorkFolder;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.StringProperty;

/** The lesson home of whoever is named: what to go on with, progress, reviews. Read anew when another name is typed. */
public final class HomeViewModel {

    private final ClassRecords records;
    private final WorkFolder work;
    private final Optional<Path> lessons;
    private final StringProperty trainee;
    private final String unnamed;
    private final Clock clock;
    private final LatestRun reading;
    private final ReadOnlyObjectWrapper<Optional<HomeState>> state = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Makes a home that was not read yet.
     *
     * @param records records of all trainees
     * @param work unfinished work
     * @param lessons the folder of one's own lessons
     * @param trainee who is at the keyboard
     * @param unnamed under which name the work of one is kept who gave none
     * @param threads where to work and where to show
     * @param clock gives the time
     */
    public HomeViewModel(
            ClassRecords records,
            WorkFolder work,
            Optional<Path> lessons,
            StringProperty trainee,
            String unnamed,
            Threads threads,
            Clock clock) {
        this.records = records;
        this.work = work;
        this.lessons = lessons;
        this.trainee = trainee;
        this.unnamed = unnamed;
        this.clock = clock;
        this.reading = new LatestRun(threads);
    }

    /** Under which name work and records are kept. */
    String whose() {
        String name = trainee.get().strip();
        return name.isEmpty() ? unnamed : name;
    }

    /** Reads what is kept of the trainee. */
    public void load() {
        String name = whose();
        reading.ask(() -> read(name), read -> state.set(Optional.of(read)), what -> state.set(Optional.empty()));
    }

    private HomeState read(String name) {
        List<AttemptRecord> own = records.read().records().stream()
                .filter(record -> record.trainee().equals(name))
                .toList();
        OwnLessons folder = lessons.map(OwnLessons::in).orElseGet(() -> new OwnLessons(List.of(), List.of()));
        List<Lesson> all = new ArrayList<>(BuiltInLessons.all());
        List<Optional<Path>> files = new ArrayList<>();
        all.forEach(lesson -> files.add(Optional.empty()));
        folder.lessons().forEach(found -> {
            all.add(found.lesson());
            files.add(Optional.of(found.file()));
        });
        Optional<UnfinishedWork> left = work.read(name);
        left.flatMap(HomeViewModel::opened)
                .filter(lesson -> all.stream().noneMatch(known -> known.id().equals(lesson.id())))
                .ifPresent(lesson -> {
                    all.add(lesson);
                    files.add(left.flatMap(UnfinishedWork::lessonFile).map(Path::of));
                });
        List<HomeState.Entry> entries = new ArrayList<>();
        List<LessonProgress> progress = LessonProgress.of(all, own);
        for (int i = 0; i < progress.size(); i++) {
            entries.add(new HomeState.Entry(progress.get(i), files.get(i)));
        }
        AdaptivePractice practice =
                new AdaptivePractice(List.of(ExerciseFamily.values()), BuiltInLessons.all(), own, 0);
        return new HomeState(
                entries,
                goOn(entries, left),
                WeakKind.ranked(own),
                practice.due(clock.instant()).size(),
                folder.faults());
    }

    /** The lesson of a file that was opened by hand, if it is still there and sound. */
    private static Optional<Lesson> opened(UnfinishedWork left) {
        Optional<Path> file = left.lessonFile().map(Path::of).filter(Files::isRegularFile);
        try {
            return file.isPresent() ? Optional.of(new DocumentReader().readLesson(file.get())) : Optional.empty();
        } catch (LessonFormatException e) {
            return Optional.empty();
        }
    }

    private static Optional<HomeState.GoOn> goOn(List<HomeState.Entry> entries, Optional<UnfinishedWork> left) {
        Optional<HomeState.GoOn> begun = left.flatMap(work -> entries.stream()
                .filter(entry -> entry.progress().lesson().id().equals(work.lessonId()))
                .flatMap(entry -> entry.progress().lesson().exercise(work.exerciseId()).stream()
                        .map(exercise -> new HomeState.GoOn(
                                entry,
                                exercise,
                                work.draft(work.lessonId(), work.exerciseId())
                                        .map(draft -> draft.flags().size())
                                        .orElse(0),
                                true)))
                .findFirst());
        return begun.filter(it -> it.flags() > 0
                        || !it.entry().progress().isSolved(it.exercise().id()))
                .or(() -> entries.stream()
                        .filter(entry -> !entry.progress().isPassed())
                        .filter(entry -> entry.progress().waitsFor().isEmpty())
                        .flatMap(entry -> entry.progress().next().stream()
                                .map(exercise -> new HomeState.GoOn(
                                        entry, exercise, 0, entry.progress().isBegun())))
                        .findFirst());
    }

    public StringProperty traineeProperty() {
        return trainee;
    }

    /**
     * Returns what is known of the trainee.
     *
     * @return the state; empty until it is read
     */
    public ReadOnlyObjectProperty<Optional<HomeState>> stateProperty() {
        return state.getReadOnlyProperty();
    }
}
