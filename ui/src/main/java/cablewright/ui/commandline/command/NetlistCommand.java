// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.exchange.netlist.Netlist;
import cablewright.simulator.exchange.netlist.NetlistSetup;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.LineOptions;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.drawing.text.TerminalStyle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A netlist that a general circuit simulator runs. */
@Command(name = "netlist", mixinStandardHelpOptions = true)
public final class NetlistCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "CABLE", descriptionKey = "parameter.cable")
    private Path cableFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private LineOptions line;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        Path file = root.surroundings().folder().resolve(cableFile);
        Output output = new Output(root.surroundings(), out).notOver(file);
        Cable cable = InputFiles.cable(file);
        double velocity = line.velocityFraction(cable);
        double range = line.rangeMetres(cable);
        Stimulus stimulus = stimulusOptions.stimulus(UsualPulse.seconds(velocity, range));
        double record =
                stimulus.halfHeightSeconds() + new Settings(stimulus, velocity, range, 0, 1).secondsThereAndBack(range);
        Cable tested = cable.seenFrom(line.end());
        NetlistSetup setup = new NetlistSetup(oneLine(cable.title()), line.sourceOhms(cable), stimulus, record);
        Netlist netlist = InputFiles.refusalsOf(file, () -> Netlist.of(tested, setup));
        netlist.notices().forEach(notice -> root.remark(root.say("note", notice)));
        output.write(netlist.text().getBytes(StandardCharsets.UTF_8));
        return ExitCode.DONE;
    }

    /** Titles in a netlist are one line of ASCII. */
    private String oneLine(String title) {
        return TerminalStyle.ASCII.plain(title.replaceAll("\\R", " "));
    }
}
