// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.exercise.Lesson;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Practice of a lesson, in the desktop or in the terminal. */
@Command(name = "practise", mixinStandardHelpOptions = true)
public final class PractiseCommand implements Callable<Integer> {

    private static final String NOBODY = "trainee";

    private final DesktopOpener desktop;

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "LESSON", arity = "0..1", descriptionKey = "parameter.lesson")
    private Optional<String> lesson = Optional.empty();

    @Option(names = "--in-terminal")
    private boolean inTerminal;

    @Option(names = "--trainee", paramLabel = "NAME")
    private Optional<String> trainee = Optional.empty();

    @Option(names = "--rounds")
    private boolean rounds;

    @Option(names = "--family", paramLabel = "FAMILY", split = ",")
    private List<String> families = List.of();

    @Option(names = "--minutes", paramLabel = "N")
    private Optional<Integer> minutes = Optional.empty();

    @Option(names = "--review")
    private boolean review;

    @Option(names = "--log", paramLabel = "FILE")
    private Optional<Path> log = Optional.empty();

    public PractiseCommand(DesktopOpener desktop) {
        this.desktop = desktop;
    }

    @Override
    public Integer call() {
        String name = lesson.orElse(InputFiles.BUILT_IN);
        String who =
                trainee.map(String::strip).filter(given -> !given.isEmpty()).orElse(NOBODY);
        TerminalDesk desk = new TerminalDesk(root.surroundings(), root.lengthUnit(), who);
        TerminalRecords records = new TerminalRecords(root.surroundings(), log, !who.equals(NOBODY));
        if (rounds) {
            new TerminalRounds(root.surroundings(), desk, who, families, minutes, review, records).practise();
            return ExitCode.DONE;
        }
        if (!families.isEmpty() || minutes.isPresent() || review) {
            throw InputProblem.of("practise.rounds");
        }
        if (inTerminal) {
            Lesson opened = InputFiles.lesson(root.surroundings(), name);
            desk.practise(
                    opened,
                    Optional.empty(),
                    sheet -> records.append(AttemptRecord.of(
                            sheet, opened.id(), Clock.systemUTC().instant())));
            return ExitCode.DONE;
        }
        if (log.isPresent()) {
            throw InputProblem.of("practise.log");
        }
        InputFiles.lesson(root.surroundings(), name);
        try {
            desktop.open(
                    name.equals(InputFiles.BUILT_IN) || name.startsWith(InputFiles.BUILT_IN + ":")
                            ? Optional.empty()
                            : Optional.of(root.surroundings().folder().resolve(Path.of(name))));
            return ExitCode.DONE;
        } catch (DesktopOpener.NoWindow e) {
            throw InputProblem.of("practise.noWindow", e.getMessage());
        }
    }
}
