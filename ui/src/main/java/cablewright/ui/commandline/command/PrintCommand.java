// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.exercise.Lesson;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.print.LessonSheets;
import cablewright.ui.print.PaperSize;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Writes the paper of a lesson as PDF. */
@Command(name = "print", mixinStandardHelpOptions = true)
public final class PrintCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "LESSON", descriptionKey = "parameter.lesson")
    private String name;

    @Option(names = "--sheets", paramLabel = "KIND", required = true, descriptionKey = "sheets")
    private LessonSheets.Kind kind;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "a4", descriptionKey = "paper")
    private PaperSize paper;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            required = true,
            descriptionKey = "out")
    private Path out;

    @Override
    public Integer call() {
        Output output = new Output(root.surroundings(), Optional.of(out)).checked();
        Lesson lesson = InputFiles.lesson(root.surroundings(), name);
        LessonSheets sheets = new LessonSheets(lesson, paper, root.words());
        if (!sheets.has(kind)) {
            throw InputProblem.of("print.missing", name, kind.name().toLowerCase(Locale.ROOT));
        }
        output.write(sheets.make(kind).pdf());
        return ExitCode.DONE;
    }
}
