// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.Suggestions;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.LineOptions;
import cablewright.ui.commandline.option.ListFormat;
import cablewright.ui.commandline.option.ReceiverOptions;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.output.ExplanationText;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.PathLines;
import cablewright.ui.commandline.output.TraceTaker;
import cablewright.ui.drawing.lattice.LatticeMaker;
import cablewright.ui.words.NoticeWords;
import cablewright.ui.words.Words;
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

/** What each event of a cable does to the trace, and whether it can be seen. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        header = {"Tells what each event of a cable does to the trace, and whether it can be seen.", ""},
        description = {
            "Tells for each event of a cable: distance, delay, impedance, reflection coefficient, loss to it and back, height "
                    + "on the trace, and whether it can be seen with what is set, and why.",
            "Height is the first lobe by which the event changes the noise-free trace. Loss is that of a full reflection at "
                    + "the same place, for the same pulse. The coefficient is the one over the other.",
            "Then the echoes from branches and the ghosts that stand above the noise, each with the path that the wave took, and "
                    + "every extremum of the trace that stands above the noise of the seed, with the paths that make it. CSV "
                    + "has the events only.",
            "--lattice draws the ways of the wave, distance across and time downward, each branch beside its joint.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  cablewright explain quay-camera-3.json --pulse 2ns --averages 64",
            "  cablewright explain quay-camera-3.json --end far --format csv",
            "  cablewright explain quay-camera-3.json --pulse 2ns --averages 64 --lattice ways.svg"
        })
final class ExplainCommand implements Callable<Integer> {

    private static final int SAMPLES = 4096;

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "CABLE", description = "A cable file, or an exercise file for its cable.")
    private Path cableFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private LineOptions line;

    @Mixin
    private ReceiverOptions receiver;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "text (usual), csv or json.")
    private ListFormat format = ListFormat.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description = "Write to this file instead of standard output.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--lattice",
            paramLabel = "FILE",
            description = "Also draw a lattice diagram into this file: .svg, .png, .pdf, or .txt for characters.")
    private Optional<Path> lattice = Optional.empty();

    @Override
    public Integer call() {
        Path file = root.surroundings().folder().resolve(cableFile);
        Output output = new Output(root.surroundings(), out).notOver(file);
        Cable cable = InputFiles.cable(file);
        double velocity = line.velocityFraction(cable);
        double range = line.rangeMetres(cable);
        Settings settings = new Settings(
                stimulusOptions.stimulus(UsualPulse.seconds(velocity, range)),
                velocity,
                range,
                receiver.gainDecibels(),
                receiver.averages());
        Instrument instrument = receiver.instrument(line.sourceOhms(cable), SAMPLES);
        Optional<LatticeFile> drawn = lattice.map(target -> new LatticeFile(root, target, file));
        Attribution attribution = InputFiles.refusalsOf(file, () -> attribution(cable, instrument, settings));
        ExplanationText explanation =
                InputFiles.refusalsOf(file, () -> explanation(cable, instrument, settings, attribution));
        TraceTaker taker =
                new TraceTaker(cable, line.end(), line.sourceOhms(cable), Optional.empty(), settings, root::remark);
        root.remark(taker.settingsLine(root.words()));
        new NoticeWords(root.words())
                .withSteps(cable, settings.stimulus().topHertz())
                .forEach(notice -> root.remark("note: " + notice));
        drawn.ifPresent(it -> it.write(
                new LatticeMaker(cable, line.end(), root.words()).of(attribution, least(instrument, settings))));
        output.write(written(explanation));
        return ExitCode.DONE;
    }

    private Attribution attribution(Cable cable, Instrument instrument, Settings settings) {
        Cable tested = cable.seenFrom(line.end());
        Trace trace = new Reflectometer(instrument)
                .measure(new SimulatedPort(tested, instrument.sourceOhms()), settings, receiver.seed());
        return Attribution.ofTrace(cable, instrument, trace, line.end(), () -> false);
    }

    private ExplanationText explanation(
            Cable cable, Instrument instrument, Settings settings, Attribution attribution) {
        Words words = root.words();
        List<EventVisibility> sights = VisibilityAnalysis.of(cable, instrument, settings, line.end());
        return new ExplanationText(
                cable,
                EventFacts.of(cable, instrument, settings, line.end(), sights),
                Suggestions.of(cable, instrument, settings, line.end(), sights, () -> false),
                new PathLines(cable, attribution, least(instrument, settings), words),
                words);
    }

    /** Least height of a ghost that a reader could take for an event. */
    private static double least(Instrument instrument, Settings settings) {
        return Math.max(
                VisibilityRules.MARGINAL_OVER_NOISE * instrument.noiseVoltsAfter(settings.averages()),
                instrument.stepVoltsAfter(settings.gainDecibels(), settings.averages()));
    }

    private byte[] written(ExplanationText explanation) {
        String text =
                switch (format) {
                    case CSV -> explanation.csv();
                    case JSON -> explanation.json();
                    case TEXT -> root.surroundings().style().plain(explanation.text());
                };
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
