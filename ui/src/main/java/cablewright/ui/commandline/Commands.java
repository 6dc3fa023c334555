// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.command.CatalogueCommand;
import cablewright.ui.commandline.command.CheckCommand;
import cablewright.ui.commandline.command.CompareLadderCommand;
import cablewright.ui.commandline.command.CompletionCommand;
import cablewright.ui.commandline.command.ExplainCommand;
import cablewright.ui.commandline.command.GenerateCommand;
import cablewright.ui.commandline.command.NetlistCommand;
import cablewright.ui.commandline.command.PrintCommand;
import cablewright.ui.commandline.command.ProveCommand;
import cablewright.ui.commandline.command.ReadCommand;
import cablewright.ui.commandline.command.RecordsCommand;
import cablewright.ui.commandline.command.ResponseCommand;
import cablewright.ui.commandline.command.StudyCommand;
import cablewright.ui.commandline.command.TraceCommand;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.exam.HandOutCommand;
import cablewright.ui.commandline.exam.KeysCommand;
import cablewright.ui.commandline.exam.MarkCommand;
import cablewright.ui.commandline.exam.SealCommand;
import cablewright.ui.commandline.exam.SitCommand;
import cablewright.ui.commandline.option.HelpBundle;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.practice.PractiseCommand;
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
                .addSubcommand(new CompareLadderCommand())
                .addSubcommand(new CheckCommand())
                .addSubcommand(new ProveCommand())
                .addSubcommand(new PrintCommand())
                .addSubcommand(new CatalogueCommand())
                .addSubcommand(new PractiseCommand(desktop))
                .addSubcommand(new KeysCommand())
                .addSubcommand(new SealCommand())
                .addSubcommand(new HandOutCommand())
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
