// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.proof.ExerciseProof;
import cablewright.lessons.proof.LessonNumbers;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.words.ProofWords;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Says whether the exercises of a lesson are fit to set. */
@Command(name = "prove", mixinStandardHelpOptions = true)
public final class ProveCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "LESSON", descriptionKey = "parameter.lesson")
    private String name;

    @Option(names = "--exercise", paramLabel = "ID", descriptionKey = "exercise")
    private String exerciseId;

    @Override
    public Integer call() {
        Lesson lesson = InputFiles.lesson(root.surroundings(), name);
        List<Exercise> exercises = exerciseId == null
                ? lesson.exercises()
                : lesson.exercise(exerciseId).map(List::of).orElseThrow(() -> unknown(lesson));
        ProofWords words = new ProofWords(root.words());
        Marker marker = new Marker();
        boolean sound = true;
        for (Exercise exercise : exercises) {
            ExerciseProof proof = ExerciseProof.of(exercise, marker);
            root.surroundings().print(words.report(exercise, proof));
            sound &= proof.problems().isEmpty();
        }
        for (LessonNumbers.StatedNumber number : LessonNumbers.of(lesson)) {
            boolean wanted = exerciseId == null || exerciseId.equals(number.place());
            if (wanted && !number.isRight()) {
                root.surroundings().print(words.wrong(number) + "\n");
                sound = false;
            }
        }
        return sound ? ExitCode.DONE : ExitCode.INPUT_WRONG;
    }

    private InputProblem unknown(Lesson lesson) {
        return InputProblem.of(
                "prove.noExercise",
                name,
                exerciseId,
                String.join(", ", lesson.exercises().stream().map(Exercise::id).toList()));
    }
}
