package cablewright.ui.commandline;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.Attribution;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.EventSight;
import cablewright.simulator.explanation.Sightings;
import cablewright.simulator.explanation.Suggestions;
import cablewright.simulator.explanation.VisibilityRules;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
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
            "Then the ghosts that stand above the noise, each with the path that the wave took. CSV has the events only.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  cablewright explain quay-camera-3.json --pulse 2ns --averages 64",
            "  cablewright explain quay-camera-3.json --end far --format csv"
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
        Explanation explanation = InputFiles.refusalsOf(file, () -> explanation(cable, instrument, settings));
        TraceTaker taker =
                new TraceTaker(cable, line.end(), line.sourceOhms(cable), Optional.empty(), settings, root::remark);
        root.remark(taker.told(root.quantities()));
        new NoticeWords(root.quantities())
                .withSteps(cable, 1 / settings.stimulus().shortestEdgeSeconds())
                .forEach(notice -> root.remark("note: " + notice));
        output.write(written(explanation));
        return ExitCode.DONE;
    }

    private Explanation explanation(Cable cable, Instrument instrument, Settings settings) {
        List<EventSight> sights = Sightings.of(cable, instrument, settings, line.end());
        return new Explanation(
                cable,
                EventFacts.of(cable, instrument, settings, line.end(), sights),
                Suggestions.of(cable, instrument, settings, line.end(), sights, () -> false),
                Attribution.of(cable, instrument, settings, line.end()).ghosts(least(instrument, settings)),
                Words.in(root.lengthUnit()));
    }

    /** Least height of a ghost that a reader could take for an event. */
    private static double least(Instrument instrument, Settings settings) {
        return Math.max(
                VisibilityRules.MARGINAL_OVER_NOISE * instrument.noiseVoltsAfter(settings.averages()),
                instrument.stepVoltsAfter(settings.gainDecibels(), settings.averages()));
    }

    private byte[] written(Explanation explanation) {
        String text =
                switch (format) {
                    case CSV -> explanation.csv();
                    case JSON -> explanation.json();
                    case TEXT -> root.surroundings().style().plain(explanation.text());
                };
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
