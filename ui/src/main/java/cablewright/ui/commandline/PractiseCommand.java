package cablewright.ui.commandline;

import java.nio.file.Path;
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
            "  printf 'flag 84.2 pinch damage\\ncommit\\n' | cablewright practise exercise.json --in-terminal"
        })
final class PractiseCommand implements Callable<Integer> {

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
            defaultValue = "trainee",
            description = "Name under which attempts are saved; usual is '${DEFAULT-VALUE}'.")
    private String trainee = "trainee";

    PractiseCommand(DesktopOpener desktop) {
        this.desktop = desktop;
    }

    @Override
    public Integer call() {
        String name = lesson.orElse(InputFiles.BUILT_IN);
        TerminalDesk desk = new TerminalDesk(root.surroundings(), root.lengthUnit(), trainee);
        if (inTerminal) {
            desk.practise(InputFiles.lesson(root.surroundings(), name));
            return ExitCode.DONE;
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
