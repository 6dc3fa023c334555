// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exercise.Lesson;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.school.HandOut;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A lesson on paper, or for the system that a school runs already. */
@Command(name = "hand-out", mixinStandardHelpOptions = true)
public final class HandOutCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Parameters(index = "0", paramLabel = "LESSON", descriptionKey = "parameter.lesson")
    private String lessonName;

    @Option(names = "--format", paramLabel = "FORMAT", required = true)
    private HandOut format = HandOut.WORKSHEETS;

    @Option(
            names = {"-o", "--out"},
            required = true,
            paramLabel = "FILE")
    private Path out;

    @Override
    public Integer call() {
        Output output = new Output(root.surroundings(), Optional.of(out)).checked();
        Lesson lesson = InputFiles.lesson(root.surroundings(), lessonName);
        output.write(format.bytes(lesson, root.words()));
        return ExitCode.DONE;
    }
}
