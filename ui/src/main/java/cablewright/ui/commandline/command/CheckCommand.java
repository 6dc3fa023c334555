// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.compile.CableCompiler;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.FitLines;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Says whether files are sound. */
@Command(name = "check", mixinStandardHelpOptions = true)
public final class CheckCommand implements Callable<Integer> {

    private static final double TOP_HERTZ = 1e9;

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "parameter.file")
    private List<Path> files;

    @Override
    public Integer call() {
        int wrong = 0;
        for (Path file : files) {
            List<String> problems = problems(root.surroundings().folder().resolve(file));
            wrong += problems.isEmpty() ? 0 : 1;
            problems.forEach(problem -> root.surroundings().print(problem + "\n"));
        }
        return wrong == 0 ? ExitCode.DONE : ExitCode.INPUT_WRONG;
    }

    private List<String> problems(Path file) {
        try {
            Document document = InputFiles.document(file);
            List<String> refused = refusals(file, document);
            if (refused.isEmpty()) {
                root.remark(root.say("check.sound", file, document.kind().format()));
                cables(document).forEach(cable -> FitLines.of(cable, root).forEach(root::remark));
            }
            return refused;
        } catch (InputProblem e) {
            return e.problems(root.surroundings());
        }
    }

    /** What only shows when the cables are compiled: conditions that can't be done where they lie. */
    private static List<String> refusals(Path file, Document document) {
        List<String> refused = new ArrayList<>();
        for (Cable cable : cables(document)) {
            for (Cable tested : List.of(cable, cable.seenFromFarEnd())) {
                try {
                    CableCompiler.compile(tested, TOP_HERTZ);
                } catch (IllegalArgumentException e) {
                    refused.add(file + ": cable \"" + cable.title() + "\": " + e.getMessage());
                    break;
                }
            }
        }
        return refused;
    }

    private static List<Cable> cables(Document document) {
        if (document instanceof Document.OfCable cable) {
            return List.of(cable.cable());
        }
        if (document instanceof Document.OfExercise exercise) {
            return List.of(exercise.exercise().cable());
        }
        if (document instanceof Document.OfLesson ofLesson) {
            Lesson lesson = ofLesson.lesson();
            return lesson.exercises().stream().map(Exercise::cable).toList();
        }
        return List.of();
    }
}
