// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import cablewright.simulator.check.VisibleText;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.FaultReport;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.environment.ReaderGone;
import cablewright.ui.commandline.environment.TerminalSize;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs one command and turns whatever happens into words and an exit code. */
public final class Program {

    private static final int LEAST_WIDTH = 55;
    private static final String NAME = "cablewright: ";

    private final Environment surroundings;
    private final CommandLine commands;
    /** What the library of commands prints itself: help and version. It would not notice a full disk. */
    private final ByteArrayOutputStream help = new ByteArrayOutputStream();

    /**
     * Makes the program.
     *
     * @param surroundings where it runs
     * @param desktop opens the desktop
     */
    public Program(Environment surroundings, DesktopOpener desktop) {
        this.surroundings = surroundings;
        this.commands = Commands.all(surroundings, desktop);
        Ansi ansi = surroundings.style().colour() ? Ansi.ON : Ansi.OFF;
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(ansi));
        commands.setCaseInsensitiveEnumValuesAllowed(true);
        commands.registerConverter(Path.class, Program::path);
        commands.setUsageHelpWidth(
                Math.max(LEAST_WIDTH, TerminalSize.of(surroundings).columns()));
        commands.setOut(new PrintWriter(help, false, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(surroundings.err(), true, StandardCharsets.UTF_8));
        commands.setParameterExceptionHandler(this::refuseUsage);
        commands.setExecutionExceptionHandler(this::tellFailure);
    }

    /** Adds a command; for tests. */
    Program with(String name, Object command) {
        commands.addSubcommand(name, command);
        return this;
    }

    /**
     * Runs a command.
     *
     * @param arguments what was typed after the program's name
     * @return the exit code
     */
    public int run(String... arguments) {
        try {
            int exit = commands.execute(arguments);
            commands.getOut().flush();
            surroundings.writeOut(help.toByteArray());
            return exit;
        } catch (ReaderGone e) {
            return ExitCode.DONE;
        } catch (InputProblem e) {
            e.problems(surroundings).forEach(this::say);
            return ExitCode.INPUT_WRONG;
        } catch (OutOfMemoryError e) {
            say(surroundings.say("program.memory", Runtime.getRuntime().maxMemory() / (1 << 20)));
            return ExitCode.INPUT_WRONG;
        } catch (StackOverflowError | LinkageError e) {
            return tellFault(surroundings, List.of(arguments), e);
        }
    }

    /** A name of a file; what Java could not read from the command line in this locale is said as such. */
    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("the name \"" + VisibleText.line(name)
                    + "\" can't be used in this locale; set LC_ALL to one with UTF-8, such as C.UTF-8");
        }
    }

    private int refuseUsage(ParameterException e, String[] arguments) {
        CommandLine command = e.getCommandLine();
        say(e.getMessage());
        if (!UnmatchedArgumentException.printSuggestions(e, command.getErr())) {
            command.getErr()
                    .println(surroundings.say(
                            "program.try", command.getCommandSpec().qualifiedName()));
        }
        return ExitCode.USAGE;
    }

    private int tellFailure(Exception e, CommandLine command, ParseResult parsed) {
        if (e instanceof ReaderGone) {
            return ExitCode.DONE;
        }
        if (e instanceof InputProblem problem) {
            problem.problems(surroundings).forEach(this::say);
            return ExitCode.INPUT_WRONG;
        }
        return tellFault(surroundings, parsed.originalArgs(), e);
    }

    /**
     * Says that the program itself is at fault, and writes a report.
     *
     * @param surroundings where the program runs
     * @param arguments what was typed
     * @param fault what went wrong
     * @return the exit code
     */
    public static int tellFault(Environment surroundings, List<String> arguments, Throwable fault) {
        List<Path> folders =
                List.of(surroundings.folder().toAbsolutePath(), Path.of(System.getProperty("java.io.tmpdir")));
        Optional<Path> report = FaultReport.write(arguments, fault, folders);
        surroundings.remark(NAME
                + report.map(file -> surroundings.say("program.fault", file))
                        .orElseGet(() -> surroundings.say("program.faultOnly", fault)));
        return ExitCode.FAULT;
    }

    private void say(String problem) {
        surroundings.remark(NAME + problem);
    }
}
