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
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.LineOptions;
import cablewright.ui.commandline.option.ListFormat;
import cablewright.ui.commandline.option.ReceiverOptions;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.output.ExplanationText;
import cablewright.ui.commandline.output.LatticeFile;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.PathLines;
import cablewright.ui.commandline.output.TraceTaker;
import cablewright.ui.drawing.lattice.LatticeMaker;
import cablewright.ui.words.NoticeWords;
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
@Command(name = "explain", mixinStandardHelpOptions = true)
public final class ExplainCommand implements Callable<Integer> {

    private static final int SAMPLES = 4096;

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "CABLE", descriptionKey = "parameter.cable")
    private Path cableFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private LineOptions line;

    @Mixin
    private ReceiverOptions receiver;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    private ListFormat format = ListFormat.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--lattice", paramLabel = "FILE")
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
        TraceTaker taker = new TraceTaker(cable, line.end(), line.sourceOhms(cable), Optional.empty(), settings, root);
        root.remark(taker.settingsLine());
        new NoticeWords(root.words())
                .withSteps(cable, settings.stimulus().topHertz())
                .forEach(notice -> root.remark(root.say("note", notice)));
        drawn.ifPresent(it -> it.write(
                new LatticeMaker(cable, line.end(), root.words()).of(attribution, least(instrument, settings))));
        output.write(written(explanation));
        return ExitCode.DONE;
    }

    private Attribution attribution(Cable cable, Instrument instrument, Settings settings) {
        Trace trace = Measurement.at(line.end(), cable, instrument, new PropagationCache())
                .trace(settings, receiver.seed());
        return Attribution.ofTrace(cable, instrument, trace, line.end(), () -> false);
    }

    private ExplanationText explanation(
            Cable cable, Instrument instrument, Settings settings, Attribution attribution) {
        List<EventVisibility> sights = VisibilityAnalysis.of(cable, instrument, settings, line.end());
        return new ExplanationText(
                cable,
                EventFacts.of(cable, instrument, settings, line.end(), sights),
                Suggestions.of(cable, instrument, settings, line.end(), sights, () -> false),
                new PathLines(cable, attribution, least(instrument, settings), root),
                root);
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
