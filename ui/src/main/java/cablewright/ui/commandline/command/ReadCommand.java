// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.simulator.exchange.SweepReport;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.reading.CandidateEvent;
import cablewright.simulator.reading.CandidateEvents;
import cablewright.simulator.reading.CandidateRules;
import cablewright.simulator.reading.Measured;
import cablewright.simulator.reading.MergedReading;
import cablewright.simulator.reading.PeeledProfile;
import cablewright.simulator.reading.TraceDifference;
import cablewright.simulator.reading.VelocityFinding;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.OptionLimit;
import cablewright.ui.commandline.option.QuantityReader;
import cablewright.ui.commandline.option.ReceiverOptions;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.option.StimulusOptions;
import cablewright.ui.commandline.option.TraceFormat;
import cablewright.ui.commandline.option.UsualPulse;
import cablewright.ui.commandline.output.CandidateList;
import cablewright.ui.commandline.output.ImpedanceLines;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.TakenTrace;
import cablewright.ui.commandline.output.TakenTrace.Column;
import cablewright.ui.commandline.output.TracePictures;
import cablewright.ui.measured.MeasuredLine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

/** A measured sweep, or a trace from a file, on an axis of distance. */
@Command(name = "read", mixinStandardHelpOptions = true)
public final class ReadCommand implements Callable<Integer> {

    private static final int SAMPLES = 4096;
    private static final double UNTOLD_OHMS = 50;
    private static final double TOLERATED = 0.01;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", descriptionKey = "parameter.file")
    private Path sourceFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private ReceiverOptions receiver;

    @Option(names = "--velocity", paramLabel = "VOP", converter = QuantityReader.Velocity.class)
    private Optional<Double> givenVelocity = Optional.empty();

    private double velocity = 1;

    @Option(names = "--range", paramLabel = "LENGTH", converter = QuantityReader.Length.class)
    private Optional<Double> range = Optional.empty();

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "1")
    private int port;

    @Option(names = "--source", paramLabel = "RESISTANCE", converter = QuantityReader.Resistance.class)
    private Optional<Double> source = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT")
    private Optional<TraceFormat> format = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--events")
    private boolean events;

    @Option(names = "--impedance")
    private boolean impedance;

    @Option(names = "--least", paramLabel = "HEIGHT", converter = QuantityReader.Voltage.class)
    private Optional<Double> least = Optional.empty();

    @Option(names = "--velocity-doubt", paramLabel = "VOP", converter = QuantityReader.Velocity.class)
    private Optional<Double> velocityDoubt = Optional.empty();

    @Option(names = "--other-end", paramLabel = "FILE")
    private Optional<Path> otherEnd = Optional.empty();

    @Option(names = "--length", paramLabel = "LENGTH", converter = QuantityReader.Length.class)
    private Optional<Double> length = Optional.empty();

    @Option(names = "--length-doubt", paramLabel = "LENGTH", converter = QuantityReader.Length.class)
    private Optional<Double> lengthDoubt = Optional.empty();

    @Option(names = "--against", paramLabel = "FILE")
    private Optional<Path> against = Optional.empty();

    @Override
    public Integer call() {
        checkOptions();
        boolean list = events || impedance || otherEnd.isPresent();
        TraceFormat chosen = format.or(() -> list && out.isEmpty() ? Optional.of(TraceFormat.TEXT) : Optional.empty())
                .orElseGet(() -> TraceFormat.of(Optional.empty(), out));
        Output output = new Output(root.surroundings(), out);
        if (list && chosen.isPicture()) {
            throw refusal(root.say("read.listFormat", chosen));
        }
        if (chosen.isPicture() && !output.isFile() && root.surroundings().interactive()) {
            throw refusal(root.say("option.pictureNeedsFile", chosen));
        }
        Path file = root.surroundings().folder().resolve(sourceFile);
        output.notOver(file);
        Shown shown = shown(file);
        if (against.isPresent()) {
            shown = difference(shown, shown(root.surroundings().folder().resolve(against.get())));
        }
        if (impedance) {
            output.write(profile(file, shown, chosen));
        } else {
            output.write(list ? listed(shown, chosen) : drawn(shown, chosen));
        }
        return ExitCode.DONE;
    }

    /** What the step sends back, taken for layers of impedance. */
    private byte[] profile(Path file, Shown shown, TraceFormat chosen) {
        Settings settings = shown.trace().settings();
        PeeledProfile profile = InputFiles.refusalsOf(
                file,
                () -> PeeledProfile.of(
                        shown.trace(),
                        shown.ohms(),
                        PeeledProfile.RISES_A_LAYER * settings.stimulus().resolutionSeconds()));
        root.remark(root.say("read.impedance"));
        ImpedanceLines lines = new ImpedanceLines(profile, settings);
        String text = chosen == TraceFormat.CSV
                ? lines.csv()
                : root.surroundings().style().plain(lines.text(root));
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void checkOptions() {
        givenVelocity.ifPresentOrElse(
                given -> velocity = OptionLimit.VELOCITY.require(spec, "--velocity", given),
                () -> root.remark(root.say("read.noVelocity")));
        if (impedance && !stimulusOptions.isStep()) {
            throw refusal(root.say("read.impedanceNeedsStep"));
        }
        if (impedance
                && (events
                        || otherEnd.isPresent()
                        || format.filter(TraceFormat.JSON::equals).isPresent())) {
            throw refusal(root.say("read.impedanceAlone"));
        }
        if (otherEnd.isPresent() && against.isPresent()) {
            throw refusal(root.say("option.exclude", "--other-end", "--against"));
        }
        if (length.isPresent() && otherEnd.isEmpty()) {
            throw refusal(root.say("read.lengthNeedsEnd"));
        }
        if (length.isPresent() && !(length.get() > 0)) {
            throw refusal(root.say("read.length"));
        }
        if (velocityDoubt.isPresent() && !(velocityDoubt.get() >= 0 && velocityDoubt.get() <= 0.5)) {
            throw refusal(root.say("read.velocityDoubt"));
        }
    }

    private ParameterException refusal(String why) {
        return new ParameterException(spec.commandLine(), why);
    }

    /** A trace with the rules by which candidates are sought on it. */
    private record Shown(String title, Trace trace, double ohms, CandidateRules rules, String column) {}

    private byte[] drawn(Shown shown, TraceFormat chosen) {
        Trace trace = shown.trace();
        double[] seconds = new double[trace.count()];
        double[] metres = new double[trace.count()];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = trace.seconds(i);
            metres[i] = trace.metres(i);
        }
        Map<String, Object> metadata = new LinkedHashMap<>();
        metadata.put("velocity_fraction", trace.settings().velocityFraction());
        metadata.put("range_m", trace.settings().rangeMetres());
        TakenTrace taken = new TakenTrace(
                shown.title(),
                metadata,
                List.of(
                        new Column("time_s", seconds),
                        new Column("distance_m", metres),
                        new Column(shown.column(), trace.copyOfVolts())));
        return new TracePictures(root.surroundings(), root.lengthUnit()).bytes(taken, trace.settings(), chosen);
    }

    private byte[] listed(Shown shown, TraceFormat chosen) {
        CandidateRules rules = least.map(shown.rules()::withLeastVolts).orElse(shown.rules());
        rules = velocityDoubt.map(rules::withVelocityUncertainty).orElse(rules);
        List<CandidateEvent> candidates = CandidateEvents.on(shown.trace(), rules);
        CandidateList list = new CandidateList(root, new VelocityFinding(velocity, rules.velocityUncertainty()));
        String text = otherEnd.isPresent() ? merged(list, candidates, rules, chosen) : alone(list, candidates, chosen);
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private String alone(CandidateList list, List<CandidateEvent> candidates, TraceFormat chosen) {
        return switch (chosen) {
            case CSV -> list.csv(candidates);
            case JSON -> list.json(candidates);
            default -> root.surroundings().style().plain(list.text(candidates));
        };
    }

    private String merged(
            CandidateList list, List<CandidateEvent> candidates, CandidateRules rules, TraceFormat chosen) {
        Shown other = shown(root.surroundings().folder().resolve(otherEnd.orElseThrow()));
        MergedReading merged = MergedReading.of(candidates, CandidateEvents.on(other.trace(), rules));
        Optional<Measured> known = length.map(metres -> new Measured(metres, lengthDoubt.orElse(0.01 * metres)));
        return switch (chosen) {
            case CSV -> list.csv(merged, known);
            case JSON -> list.json(merged, known);
            default -> root.surroundings().style().plain(list.text(merged, known));
        };
    }

    /** The first less the second, as a trace of its own. */
    private Shown difference(Shown shown, Shown before) {
        TraceDifference difference =
                InputFiles.refusalsOf(against.orElseThrow(), () -> TraceDifference.of(shown.trace(), before.trace()));
        if (difference.count() < 2) {
            throw InputProblem.of("read.noCommonTime", against.orElseThrow(), sourceFile);
        }
        double parting = 5
                * Math.max(difference.noiseVolts(), shown.rules().leastVolts() / 5)
                / Math.max(difference.noiseVolts(), 1e-12);
        root.remark(difference.firstMetres(parting).stream()
                .mapToObj(metres -> root.say("read.part", root.quantities().length(metres, 2)))
                .findFirst()
                .orElseGet(() -> root.say("read.noPart")));
        Trace trace = new Trace(
                before.trace().settings(),
                new Waveform(before.trace().sampleSeconds(), difference.copyOfVolts()),
                before.trace().zeroSeconds(),
                difference.noiseVolts(),
                Double.POSITIVE_INFINITY,
                0);
        return new Shown(
                root.say("read.less", shown.title(), before.title()),
                trace,
                shown.ohms(),
                shown.rules(),
                "difference_v");
    }

    private Shown shown(Path file) {
        try {
            if (!Files.exists(file)) {
                throw InputProblem.of("file.missing", file);
            }
            MeasuredLine line = MeasuredLine.read(file);
            if (port < 1 || port > line.ports()) {
                throw refusal(root.say("read.ports", port, line.ports()));
            }
            return InputFiles.refusalsOf(file, () -> shown(line));
        } catch (IOException e) {
            throw new InputProblem(file + ": " + e.getMessage());
        }
    }

    private Shown shown(MeasuredLine line) {
        double ohms = source.orElse(line.referenceOhms(port).orElse(UNTOLD_OHMS));
        MeasuredLine.View view = line.view(port, ohms);
        view.report().ifPresent(this::tell);
        double metres = range.orElseGet(() -> view.usualMetres(velocity));
        Stimulus stimulus =
                stimulusOptions.stimulus(Math.max(view.shortestPulseSeconds(), UsualPulse.seconds(velocity, metres)));
        Settings settings = new Settings(stimulus, velocity, metres, receiver.gainDecibels(), receiver.averages());
        Trace trace = view.trace(settings, instrument(ohms), receiver.seed());
        if (!line.isSweep()) {
            root.remark(root.say("read.samples", trace.count(), trace.sampleSeconds()));
        }
        return new Shown(line.name(), trace, ohms, view.rules(), "trace_v");
    }

    private Instrument instrument(double ohms) {
        return receiver.asMeasured(ohms, SAMPLES);
    }

    /** What the sweep can be trusted for, in sentences. */
    private void tell(SweepReport report) {
        root.remark(root.say(
                "read.sweep",
                report.frequencies(),
                format("%.4g", report.lowestHertz()),
                format("%.4g", report.highestHertz()),
                report.addedPoints(),
                format("%.4f", report.dcReflection()),
                format("%.4f", report.dcDoubt())));
        if (!report.isPassive(TOLERATED)) {
            root.remark(root.say(
                    "read.active", format("%.4f", report.largestMagnitude()), format("%.4g", report.largestAtHertz())));
        }
        if (!report.isCausal(TOLERATED)) {
            root.remark(root.say("read.early", format("%.2g", report.shareBeforeZero())));
        }
    }

    private static String format(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
