package cablewright.ui.commandline;

import cablewright.simulator.exchange.MeasuredPort;
import cablewright.simulator.exchange.RecordedTrace;
import cablewright.simulator.exchange.SweepReport;
import cablewright.simulator.exchange.TouchstoneReader;
import cablewright.simulator.exchange.TraceCsvReader;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reach;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;
import cablewright.ui.commandline.TakenTrace.Column;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        header = {"Reads a measured sweep, or a trace from a file, on an axis of distance.", ""},
        description = {
            "A Touchstone file (.s1p, .s2p) is shown as a reflectometer would show the line behind one of its ports: the "
                    + "sweep is carried on to 0 Hz, sent through with the pulse or step that is asked for, and received with "
                    + "the receiver options. What the sweep can't tell is said: a range or an edge beyond it is refused.",
            "A CSV file with a column of times or distances and one of voltages is laid at even distances.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  cablewright read line.s1p --velocity 0.66 --step 0.5ns --noise 0V --format text",
            "  cablewright read line.s2p --port 2 --velocity 0.66 --pulse 1ns --out line.png",
            "  cablewright read trace.csv --velocity 0.85 --out even.csv"
        })
final class ReadCommand implements Callable<Integer> {

    private static final int SAMPLES = 4096;
    private static final double SHARE_OF_RECORD = 0.9;
    private static final double TOLERATED = 0.01;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "A Touchstone file (.s1p, .s2p) or a trace as CSV.")
    private Path sourceFile;

    @Mixin
    private StimulusOptions stimulusOptions;

    @Mixin
    private ReceiverOptions receiver;

    @Option(
            names = "--velocity",
            paramLabel = "VOP",
            required = true,
            converter = QuantityReader.Velocity.class,
            description = "Velocity of propagation by which times are told as distances, such as 0.85 or 85%%.")
    private double velocity;

    @Option(
            names = "--range",
            paramLabel = "LENGTH",
            converter = QuantityReader.Length.class,
            description = "Distance shown; usual is nearly all that the file can tell.")
    private Optional<Double> range = Optional.empty();

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "1",
            description = "Port of a sweep, 1 or 2; usual is 1. The other port is closed by its reference resistance.")
    private int port;

    @Option(
            names = "--source",
            paramLabel = "RESISTANCE",
            converter = QuantityReader.Resistance.class,
            description = "Resistance of the source for a sweep, 1ohm to 10kohm; usual is the file's reference.")
    private Optional<Double> source = Optional.empty();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description =
                    "csv, json, text (a plot in characters), png, svg or pdf; usual is what --out ends in, or csv.")
    private Optional<TraceFormat> format = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description = "Write to this file instead of standard output.")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        if (!(velocity >= 0.05 && velocity <= 1)) {
            throw new ParameterException(spec.commandLine(), "--velocity is out of range; allowed is 0.05 to 1");
        }
        TraceFormat chosen = TraceFormat.of(format, out);
        Output output = new Output(root.surroundings(), out);
        if (chosen.isPicture() && !output.isFile() && root.surroundings().interactive()) {
            throw new ParameterException(
                    spec.commandLine(), "a " + chosen + " picture can't be shown here; name a file with --out");
        }
        Path file = root.surroundings().folder().resolve(sourceFile);
        output.notOver(file);
        Shown shown = InputFiles.refusalsOf(file, () -> shown(file));
        output.write(new TracePictures(root.surroundings(), root.lengthUnit())
                .bytes(shown.trace(), shown.settings(), chosen));
        return ExitCode.DONE;
    }

    private record Shown(TakenTrace trace, Settings settings) {}

    private Shown shown(Path file) {
        try {
            if (!Files.exists(file)) {
                throw new InputProblem(file + ": this file does not exist; look at the name and the folder.");
            }
            String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
            return name.endsWith(".s1p") || name.endsWith(".s2p") ? sweep(file) : recorded(file);
        } catch (IOException e) {
            throw new InputProblem(file + ": " + e.getMessage());
        }
    }

    private Shown sweep(Path file) throws IOException {
        var sweep = TouchstoneReader.read(file);
        if (port < 1 || port > sweep.ports().size()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--port is " + port + "; this file has " + sweep.ports().size() + " port(s)");
        }
        double ohms = source.orElse(sweep.ports().get(port - 1).referenceOhms());
        MeasuredPort measured = MeasuredPort.of(sweep, port, ohms, OptionalDouble.empty());
        tell(measured.report());
        double most = SHARE_OF_RECORD * Reach.of(measured).longestRecordSeconds() * velocity * 299_792_458.0 / 2;
        Settings settings = settings(most);
        Instrument instrument = receiver.instrument(ohms, SAMPLES);
        Trace trace = new Reflectometer(instrument).measure(measured, settings, receiver.seed());
        double[] seconds = new double[trace.count()];
        double[] metres = new double[trace.count()];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = trace.seconds(i);
            metres[i] = trace.metres(i);
        }
        return new Shown(taken(file, settings, seconds, metres, trace.copyOfVolts()), settings);
    }

    /** What the sweep can be trusted for, in sentences. */
    private void tell(SweepReport report) {
        root.remark(String.format(
                Locale.ROOT,
                "%d frequencies from %.4g to %.4g Hz; %d points below were estimated, reflection at 0 Hz %.4f ± %.4f",
                report.frequencies(),
                report.lowestHertz(),
                report.highestHertz(),
                report.addedPoints(),
                report.dcReflection(),
                report.dcDoubt()));
        if (!report.isPassive(TOLERATED)) {
            root.remark(String.format(
                    Locale.ROOT,
                    "note: the reflection is %.4f at %.4g Hz; no passive line can have made that",
                    report.largestMagnitude(),
                    report.largestAtHertz()));
        }
        if (!report.isCausal(TOLERATED)) {
            root.remark(String.format(
                    Locale.ROOT,
                    "note: %.2g of the energy comes before the wave was sent; the calibration or the record's length is off",
                    report.shareBeforeZero()));
        }
    }

    private Shown recorded(Path file) throws IOException {
        RecordedTrace record = TraceCsvReader.read(file);
        Waveform even = record.evenly(velocity);
        double first = record.firstSeconds(velocity);
        double most = (first + even.sampleSeconds() * (even.count() - 1)) * velocity * 299_792_458.0 / 2;
        Settings settings = settings(most);
        double[] seconds = new double[even.count()];
        double[] metres = new double[even.count()];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = first + even.time(i);
            metres[i] = settings.metresThereAndBack(seconds[i]);
        }
        root.remark(even.count() + " samples, " + even.sampleSeconds() + " s apart");
        return new Shown(taken(file, settings, seconds, metres, even.copyOfValues()), settings);
    }

    private Settings settings(double mostMetres) {
        double metres = range.orElse(mostMetres);
        Stimulus stimulus = stimulusOptions.stimulus(UsualPulse.seconds(velocity, metres));
        return new Settings(stimulus, velocity, metres, receiver.gainDecibels(), receiver.averages());
    }

    private static TakenTrace taken(Path file, Settings settings, double[] seconds, double[] metres, double[] volts) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("velocity_fraction", settings.velocityFraction());
        told.put("range_m", settings.rangeMetres());
        return new TakenTrace(
                file.getFileName().toString(),
                told,
                List.of(new Column("time_s", seconds), new Column("distance_m", metres), new Column("trace_v", volts)));
    }
}
