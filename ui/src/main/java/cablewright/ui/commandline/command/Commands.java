// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.option.HelpBundle;
import picocli.CommandLine;

/** The list of commands. */
public final class Commands {

    private static final String HELP = "cablewright.ui.commandline.help";

    private Commands() {}

    public static CommandLine all(Environment surroundings, DesktopOpener desktop) {
        CommandLine commands = new CommandLine(new RootCommand(surroundings))
                .addSubcommand(new TraceCommand())
                .addSubcommand(new ReadCommand())
                .addSubcommand(new ResponseCommand())
                .addSubcommand(new NetlistCommand())
                .addSubcommand(new ExplainCommand())
                .addSubcommand(new CheckCommand())
                .addSubcommand(new CatalogueCommand())
                .addSubcommand(new PractiseCommand(desktop))
                .addSubcommand(new KeysCommand())
                .addSubcommand(new SealCommand())
                .addSubcommand(new SitCommand())
                .addSubcommand(new MarkCommand())
                .addSubcommand(new GenerateCommand())
                .addSubcommand(new RecordsCommand())
                .addSubcommand(new StudyCommand())
                .addSubcommand(new CompletionCommand());
        commands.setResourceBundle(new HelpBundle(new Texts(HELP, surroundings.locale()).bundle()));
        return commands;
    }
}
