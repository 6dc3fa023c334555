// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

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
@Command(name = "cablewright", mixinStandardHelpOptions = true, versionProvider = Version.class)
public final class RootCommand implements Runnable {

    @Option(
            names = {"-q", "--quiet"},
            scope = ScopeType.INHERIT)
    private boolean quiet;

    @Option(names = "--feet", scope = ScopeType.INHERIT)
    private boolean feet;

    @Spec
    private CommandSpec spec;

    /** The bundle of the command line's own sentences. */
    public static final String MESSAGES = Environment.MESSAGES;

    private final Environment surroundings;

    public RootCommand(Environment surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), say("program.noCommand"));
    }

    public Environment surroundings() {
        return surroundings;
    }

    public LengthUnit lengthUnit() {
        return feet ? LengthUnit.FEET : LengthUnit.METRES;
    }

    public Quantities quantities() {
        return new Quantities(lengthUnit());
    }

    public Words words() {
        return Words.in(lengthUnit(), surroundings.locale());
    }

    /** Makes a sentence of the command line's own bundle. */
    public String say(String key, Object... arguments) {
        return surroundings.say(key, arguments);
    }

    /** Says something on standard error that is not an error. */
    public void remark(String text) {
        if (!quiet) {
            surroundings.remark(text);
        }
    }
}
