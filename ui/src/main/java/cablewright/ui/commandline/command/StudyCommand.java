// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.study.Parameter;
import cablewright.lessons.study.Sampling;
import cablewright.lessons.study.Shard;
import cablewright.lessons.study.Study;
import cablewright.lessons.study.StudyPlan;
import cablewright.lessons.study.StudyRun;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.instrument.Settings;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.environment.Version;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.LineOptions;
import cablewright.ui.commandline.option.QuantityReader;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.option.Variation;
import cablewright.ui.commandline.output.Output;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** How an event shows over a grid or a random sample of parameters, in shards. */
@Command(name = "study", mixinStandardHelpOptions = true, subcommands = StudyMergeCommand.class)
public final class StudyCommand implements Callable<Integer> {

    private static final int REMARKS = 10;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CABLE", arity = "0..1", descriptionKey = "parameter.cable")
    private Optional<Path> cableFile = Optional.empty();

    @Option(names = "--event", paramLabel = "ID")
    private Optional<String> event = Optional.empty();

    @Option(names = "--vary", paramLabel = "NAME=FROM..TO", converter = Variation.class)
    private List<Parameter> parameters = new ArrayList<>();

    @Option(names = "--random", paramLabel = "COUNT")
    private Optional<Integer> random = Optional.empty();

    @Option(names = "--seed", paramLabel = "NUMBER", defaultValue = "1")
    private long seed = 1;

    @Option(names = "--shard", paramLabel = "K/N")
    private Optional<String> shard = Optional.empty();

    @Option(names = "--averages", paramLabel = "COUNT", defaultValue = "64")
    private int averages = 64;

    @Option(names = "--gain", paramLabel = "GAIN", converter = QuantityReader.Level.class)
    private Optional<Double> gain = Optional.empty();

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
        Path file = root.surroundings().folder().resolve(required(cableFile, "CABLE"));
        Path results = root.surroundings().folder().resolve(required(out, "--out"));
        new Output(root.surroundings(), Optional.of(results)).notOver(file);
        Cable cable = InputFiles.cable(file);
        Study study = study(file, plan(cable));
        StudyRun run = new StudyRun(study, usage(() -> Shard.parse(shard.orElse("1/1"))));
        try {
            run.into(results, new Progress()::tell, () -> false);
        } catch (IOException e) {
            throw new InputProblem(FileFault.writing(results, e));
        } catch (IllegalArgumentException e) {
            throw new InputProblem(e.getMessage());
        }
        return ExitCode.DONE;
    }

    Environment surroundings() {
        return root.surroundings();
    }

    private <T> T required(Optional<T> given, String name) {
        return given.orElseThrow(() -> new ParameterException(spec.commandLine(), root.say("option.missing", name)));
    }

    private <T> T usage(Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    private StudyPlan plan(Cable cable) {
        double velocity = line.velocityFraction(cable);
        double range = line.rangeMetres(cable);
        if (random.isEmpty() && parameters.stream().anyMatch(p -> p.count() == 1 && p.from() != p.to())) {
            throw new ParameterException(spec.commandLine(), root.say("study.count", Variation.FORM));
        }
        return usage(() -> new StudyPlan(
                parameters,
                new Sampling(random.isPresent() ? OptionalInt.of(random.get()) : OptionalInt.empty(), seed),
                required(event, "--event"),
                line.end(),
                new Settings(
                        stimulusOptions.stimulus(UsualPulse.seconds(velocity, range)),
                        velocity,
                        range,
                        gain.orElse(0.0),
                        averages),
                line.sourceOhms(cable)));
    }

    private static Study study(Path file, StudyPlan plan) {
        try {
            return new Study(plan, file.getFileName().toString(), Files.readAllBytes(file), Version.number());
        } catch (LessonFormatException e) {
            throw new InputProblem(InputFiles.sentences(e));
        } catch (IllegalArgumentException e) {
            throw new InputProblem(file + ": " + e.getMessage());
        } catch (IOException e) {
            throw InputProblem.of("file.unreadable", file, e.getMessage());
        }
    }

    /** Says how far the run is, some ten times. */
    private final class Progress {

        private int said = -1;

        void tell(int done, int of) {
            int step = (int) ((long) REMARKS * done / Math.max(1, of));
            if (step > said) {
                said = step;
                root.remark(root.say("study.rows", done, of));
            }
        }
    }
}
