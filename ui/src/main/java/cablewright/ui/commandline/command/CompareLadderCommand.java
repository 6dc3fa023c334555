// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.demonstration.LadderComparison;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.LineOptions;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.Table;
import cablewright.ui.words.Quantities;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What a cable shows when it is made of lumped sections, against the cable. */
@Command(name = "compare-ladder", mixinStandardHelpOptions = true)
public final class CompareLadderCommand implements Callable<Integer> {

    private static final double MOST = 10_000;

    /** How a table is written. */
    enum Form {
        TEXT,
        CSV
    }

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "CABLE", descriptionKey = "parameter.cable")
    private Path cableFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private LineOptions line;

    @Option(names = "--sections", paramLabel = "N", split = ",", defaultValue = "5,10,20,40")
    private List<Double> sections = List.of();

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    private Form format = Form.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        for (double count : sections) {
            if (!(count >= 1 && count <= MOST)) {
                throw InputProblem.of("option.range", "--sections", significant(count), 1, (int) MOST);
            }
        }
        Path file = root.surroundings().folder().resolve(cableFile);
        Output output = new Output(root.surroundings(), out).notOver(file);
        Cable cable = InputFiles.cable(file);
        double velocity = line.velocityFraction(cable);
        double range = line.rangeMetres(cable);
        Stimulus stimulus = stimulusOptions.stimulus(UsualPulse.seconds(velocity, range));
        double record =
                stimulus.halfHeightSeconds() + new Settings(stimulus, velocity, range, 0, 1).secondsThereAndBack(range);
        LadderComparison comparison = InputFiles.refusalsOf(
                file,
                () -> LadderComparison.of(
                        cable.seenFrom(line.end()), line.sourceOhms(cable), stimulus, record, sections));
        root.remark(root.say("ladder.wavelength", Quantities.significant(comparison.hertz() / 1e6)));
        root.remark(root.say("ladder.constants", significant(comparison.constantsVolts())));
        String text = format == Form.CSV
                ? csv(comparison)
                : root.surroundings().style().plain(text(comparison));
        output.write(text.getBytes(StandardCharsets.UTF_8));
        return ExitCode.DONE;
    }

    private String text(LadderComparison comparison) {
        Table table = new Table(
                root.say("ladder.head.perWavelength"),
                root.say("ladder.head.sections"),
                root.say("ladder.head.late"),
                root.say("ladder.head.worst"),
                root.say("ladder.head.rms"));
        for (LadderComparison.Row row : comparison.rows()) {
            String late = Double.isInfinite(row.lateBy())
                    ? root.say("ladder.stops")
                    : root.say("ladder.late", significant(100 * row.lateBy()));
            table.add(
                    Quantities.significant(row.perWavelength()),
                    String.valueOf(row.sections()),
                    late,
                    significant(row.worstVolts()),
                    significant(row.rmsVolts()));
        }
        return table.aligned();
    }

    private static String csv(LadderComparison comparison) {
        Table table = new Table("sections_per_wavelength", "sections", "late_share", "worst_v", "rms_v");
        for (LadderComparison.Row row : comparison.rows()) {
            table.add(
                    String.valueOf(row.perWavelength()),
                    String.valueOf(row.sections()),
                    String.valueOf(row.lateBy()),
                    String.valueOf(row.worstVolts()),
                    String.valueOf(row.rmsVolts()));
        }
        return table.csv();
    }

    private static String significant(double value) {
        return Quantities.significant(value);
    }
}
