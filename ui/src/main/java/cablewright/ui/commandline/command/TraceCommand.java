// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.LineOptions;
import cablewright.ui.commandline.option.ReceiverOptions;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.TraceFormat;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.TakenTrace;
import cablewright.ui.commandline.output.TracePictures;
import cablewright.ui.commandline.output.TraceTaker;
import cablewright.ui.words.NoticeWords;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The trace at one end of a cable, as numbers or as a picture. */
@Command(name = "trace", mixinStandardHelpOptions = true)
public final class TraceCommand implements Callable<Integer> {

    private static final int USUAL_POINTS = 4001;
    private static final int USUAL_SAMPLES = 4096;
    private static final int LEAST_SAMPLES = 256;
    private static final int MOST_SAMPLES = 65_536;
    private static final int MOST_POINTS = 1_000_000;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CABLE", descriptionKey = "parameter.cable")
    private Path cableFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private LineOptions line;

    @Mixin
    private ReceiverOptions receiver;

    @Option(names = "--crosstalk", paramLabel = "EVENT")
    private Optional<String> crosstalk = Optional.empty();

    @Option(names = "--points", paramLabel = "COUNT")
    private Optional<Integer> points = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT")
    private Optional<TraceFormat> format = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        TraceFormat chosen = TraceFormat.of(format, out);
        Output output = new Output(root.surroundings(), out);
        if (chosen.isPicture() && !output.isFile() && root.surroundings().interactive()) {
            throw new ParameterException(spec.commandLine(), root.say("option.pictureNeedsFile", chosen));
        }
        int count = points.orElse(USUAL_POINTS);
        if (count < 2 || count > MOST_POINTS) {
            throw new ParameterException(spec.commandLine(), root.say("option.points", 1_000_000));
        }
        Path file = root.surroundings().folder().resolve(cableFile);
        output.notOver(file);
        Cable cable = InputFiles.cable(file);
        Settings settings = settings(cable);
        TraceTaker taker = new TraceTaker(cable, line.end(), line.sourceOhms(cable), crosstalk, settings, root);
        TakenTrace trace = InputFiles.refusalsOf(
                file,
                () -> receiver.given()
                        ? taker.received(receiver.instrument(line.sourceOhms(cable), samples()), receiver.seed())
                        : taker.exact(count));
        root.remark(taker.settingsLine());
        new NoticeWords(root.words())
                .withSteps(cable, settings.stimulus().topHertz())
                .forEach(notice -> root.remark(root.say("note", notice)));
        output.write(new TracePictures(root.surroundings(), root.lengthUnit()).bytes(trace, settings, chosen));
        return ExitCode.DONE;
    }

    private Settings settings(Cable cable) {
        double velocity = line.velocityFraction(cable);
        double range = line.rangeMetres(cable);
        Stimulus stimulus = stimulusOptions.stimulus(UsualPulse.seconds(velocity, range));
        return new Settings(stimulus, velocity, range, receiver.gainDecibels(), receiver.averages());
    }

    /** A receiver's record has a power of two of samples. */
    private int samples() {
        int wanted = points.orElse(USUAL_SAMPLES);
        int samples = LEAST_SAMPLES;
        while (samples < wanted && samples < MOST_SAMPLES) {
            samples *= 2;
        }
        return samples;
    }
}
