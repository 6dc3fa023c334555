// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.RootCommand;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The script by which a shell completes commands and options. */
@Command(name = "completion", mixinStandardHelpOptions = true)
public final class CompletionCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        root.surroundings().print(AutoComplete.bash("cablewright", spec.root().commandLine()));
        return ExitCode.DONE;
    }
}
