// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.file.FileFault;
import cablewright.lessons.study.StudyMerge;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.output.Output;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Puts the results files of a study's shards together. */
@Command(name = "merge", mixinStandardHelpOptions = true)
public final class StudyMergeCommand implements Callable<Integer> {

    @ParentCommand
    private StudyCommand study;

    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "parameter.file")
    private List<Path> files;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        Environment surroundings = study.surroundings();
        Output output = new Output(surroundings, out).checked();
        List<Path> found = files.stream().map(surroundings.folder()::resolve).toList();
        try {
            StudyMerge merged = StudyMerge.of(found);
            output.write(merged::writeTo);
        } catch (IOException e) {
            throw InputProblem.of("study.results", FileFault.sentence(e));
        } catch (IllegalArgumentException e) {
            throw new InputProblem(e.getMessage());
        }
        return ExitCode.DONE;
    }
}
