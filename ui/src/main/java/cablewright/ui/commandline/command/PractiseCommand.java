// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.exercise.Lesson;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
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
@Command(
        name = "practise",
        mixinStandardHelpOptions = true,
        header = {"Opens a lesson, in the desktop or in the terminal.", ""},
        description = {
            "Opens the desktop at a lesson. With --in-terminal the same exercises are read, flagged and marked here, line by "
                    + "line; type 'help' there.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  cablewright practise lesson.json",
            "  cablewright practise --in-terminal",
            "  cablewright practise --rounds --family coax-drop --minutes 10 --trainee Ada",
            "  cablewright practise --rounds --review --log ada.jsonl",
            "  printf 'flag 84.2 pinch damage\\ncommit\\n' | cablewright practise exercise.json --in-terminal"
        })
final class PractiseCommand implements Callable<Integer> {

    private static final String NOBODY = "trainee";

    private final DesktopOpener desktop;

    @ParentCommand
    private RootCommand root;

    @Parameters(
            paramLabel = "LESSON",
            arity = "0..1",
            description =
                    "A lesson or exercise file, or 'built-in' (usual) for the lesson that comes with the program.")
    private Optional<String> lesson = Optional.empty();

    @Option(names = "--in-terminal", description = "Practise in the terminal.")
    private boolean inTerminal;

    @Option(
            names = "--trainee",
            paramLabel = "NAME",
            description = "Your name. With it each attempt is kept in your records, which the desktop shows too.")
    private Optional<String> trainee = Optional.empty();

    @Option(
            names = "--rounds",
            description = "Practise in the terminal on exercises that are made as you go and follow what you can do.")
    private boolean rounds;

    @Option(
            names = "--family",
            paramLabel = "FAMILY",
            split = ",",
            description = "With --rounds: families of line, such as coax-drop; usual are all.")
    private List<String> families = List.of();

    @Option(
            names = "--minutes",
            paramLabel = "N",
            description = "With --rounds: no new exercise after so many minutes, 1 to 600.")
    private Optional<Integer> minutes = Optional.empty();

    @Option(names = "--review", description = "With --rounds: only mistakes that are due again.")
    private boolean review;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description =
                    "A log (.jsonl) to keep attempts in, instead of your records. With --rounds what it tells is taken up.")
    private Optional<Path> log = Optional.empty();

    PractiseCommand(DesktopOpener desktop) {
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
            throw new InputProblem("--family, --minutes and --review go with --rounds");
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
            throw new InputProblem("--log goes with --in-terminal or --rounds; the desktop keeps records of its own");
        }
        InputFiles.lesson(root.surroundings(), name);
        try {
            desktop.open(
                    name.equals(InputFiles.BUILT_IN)
                            ? Optional.empty()
                            : Optional.of(root.surroundings().folder().resolve(Path.of(name))));
            return ExitCode.DONE;
        } catch (DesktopOpener.NoWindow e) {
            throw new InputProblem("no window can be opened here: " + e.getMessage()
                    + ". 'cablewright practise --in-terminal' needs none.");
        }
    }
}
