// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.Version;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program's name, what every command understands, and the list of commands. */
@Command(
        name = "cablewright",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Simulates reflections on metal cable and teaches people to read them.",
            "Without a command it opens the desktop on the built-in lesson; where there is no display it practises in "
                    + "the terminal, and where there is no terminal it plays the first exercise through.",
            ""
        },
        footerHeading = "%nHabits:%n",
        footer = {
            "  Quantities take a unit: 2ns, 150m, 500ft, 10MHz, 75ohm.",
            "  Data go to standard output, remarks to standard error.",
            "  Exit codes: 0 done, 1 the input was wrong, 2 usage, 70 a fault of the program.",
            "",
            "Example:",
            "  cablewright trace quay-camera-3.json --pulse 2ns --format png --out trace.png"
        })
final class RootCommand implements Runnable {

    @Option(
            names = {"-q", "--quiet"},
            scope = ScopeType.INHERIT,
            description = "Say nothing but results and errors.")
    private boolean quiet;

    @Option(
            names = "--feet",
            scope = ScopeType.INHERIT,
            description = "Show lengths in feet; files and CSV always hold metres.")
    private boolean feet;

    @Spec
    private CommandSpec spec;

    private final Environment surroundings;

    RootCommand(Environment surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }

    Environment surroundings() {
        return surroundings;
    }

    LengthUnit lengthUnit() {
        return feet ? LengthUnit.FEET : LengthUnit.METRES;
    }

    Quantities quantities() {
        return new Quantities(lengthUnit());
    }

    Words words() {
        return Words.in(lengthUnit(), surroundings.locale());
    }

    /** Says something on standard error that is not an error. */
    void remark(String text) {
        if (!quiet) {
            surroundings.remark(text);
        }
    }
}
