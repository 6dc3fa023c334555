// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.draft.ExerciseDraft;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.lessons.work.WorkFolder;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.util.Duration;

/** Keeps what is begun in a lesson: soon after each change, and at once when something else opens or the window closes. */
public final class WorkKeeper {

    private static final Duration REST = Duration.millis(400);

    private final WorkFolder folder;
    private final Threads threads;
    private final Consumer<String> failed;
    private final PauseTransition soon = new PauseTransition(REST);
    private Optional<PracticeViewModel> practice = Optional.empty();
    private String trainee = "";
    private Optional<String> file = Optional.empty();
    private boolean changed;

    /**
     * Makes a keeper that follows nothing yet.
     *
     * @param folder where work is kept
     * @param threads where to work and where to show
     * @param failed hears why something could not be kept
     */
    public WorkKeeper(WorkFolder folder, Threads threads, Consumer<String> failed) {
        this.folder = folder;
        this.threads = threads;
        this.failed = failed;
        soon.setOnFinished(event -> keepBeside());
    }

    /**
     * Follows a lesson from now on.
     *
     * @param lesson the lesson being done
     * @param name the trainee
     * @param lessonFile the lesson's file, if it has one
     */
    public void follow(PracticeViewModel lesson, String name, Optional<Path> lessonFile) {
        practice = Optional.of(lesson);
        trainee = name;
        file = lessonFile.map(Path::toString);
        lesson.indexProperty().addListener((o, before, now) -> touched(lesson));
        for (ExerciseViewModel exercise : lesson.exercises()) {
            exercise.flags().draftsProperty().addListener((o, before, now) -> touched(lesson));
            exercise.settings().whenChanged(() -> touched(lesson));
            exercise.hintsTakenProperty().addListener((o, before, now) -> touched(lesson));
            exercise.chosenProperty().addListener((o, before, now) -> touched(lesson));
            exercise.phaseProperty().addListener((o, before, now) -> touched(lesson));
        }
    }

    private void touched(PracticeViewModel lesson) {
        if (practice.filter(lesson::equals).isPresent()) {
            changed = true;
            soon.playFromStart();
        }
    }

    /** Keeps at once what was changed, and follows the lesson no more. */
    public void flush() {
        soon.stop();
        if (changed) {
            taken().ifPresent(this::keep);
        }
        practice = Optional.empty();
    }

    private void keepBeside() {
        taken().ifPresent(now -> threads.work().execute(() -> keep(now)));
    }

    private record Taken(
            String trainee, String lesson, String exercise, Optional<String> file, List<ExerciseDraft> drafts) {
        private Taken {
            drafts = List.copyOf(drafts);
        }
    }

    private Optional<Taken> taken() {
        changed = false;
        return practice.map(lesson -> {
            Lesson of = lesson.lesson();
            String open = of.exercises()
                    .get(Math.min(lesson.rowPlace(), of.exercises().size() - 1))
                    .id();
            return new Taken(trainee, of.id(), open, file, lesson.drafts());
        });
    }

    private void keep(Taken now) {
        try {
            UnfinishedWork before = folder.read(now.trainee())
                    .orElseGet(() ->
                            new UnfinishedWork(now.trainee(), now.lesson(), now.exercise(), now.file(), List.of()));
            folder.keep(before.with(now.lesson(), now.exercise(), now.file(), now.drafts()));
        } catch (IOException e) {
            threads.screen().execute(() -> failed.accept(String.valueOf(e.getMessage())));
        }
    }
}
